package cli

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"boughline/assess/wording"
	"boughline/engine/signs"
	"boughline/knowledge"
)

// signSheet writes all that is known of one sign.
func signSheet(w io.Writer, s signs.Sign, k *knowledge.Base) error {
	var b strings.Builder
	add := func(first, text string) {
		if text != "" {
			b.WriteString(hanging("  "+first, text, column+6))
		}
	}
	b.WriteString(s.ID + "  " + s.Name + memoryMark(s.FromMemory, s.PartlyFromMemory) + "\n")
	add("zone", strings.ReplaceAll(string(s.Zone), "_", " "))
	add("look for", s.LookFor)
	add("may mean", s.MayMean)
	add("worse if", s.WorseIf)
	add("look closer", s.CloserLook)
	add("with", wording.Methods(s.Methods))
	add("occurs on", strings.Join(s.Hosts, ", "))
	add("needs", wording.Need(s.Needs))
	add("stand-ins", wording.Instead(&s, standIns(s, k)))
	add("hidden by", covers(s.HiddenBy))
	add("load path", wording.Effect(s.OnLoadPath))
	add("above people", wording.Effect(s.AbovePeople))
	add("elsewhere", wording.Effect(s.Elsewhere))
	add("differs", s.Departure)
	for _, r := range rulesWith(k, s.ID) {
		add("together", ruleText(r, s.ID, k))
	}
	for _, ref := range s.Refs {
		add("source", ref.Citation())
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// ruleText words a rule from the side of one of its signs.
func ruleText(r signs.Rule, id string, k *knowledge.Base) string {
	var others []string
	for _, c := range r.All {
		if !slices.Contains(c.AnyOf, id) {
			others = append(others, clauseText(c, k))
		}
	}
	return fmt.Sprintf("with %s: %s; %s%s [%s]", strings.Join(others, ", and "), r.Means, wording.Effect(r.OnLoadPath), memoryMark(r.FromMemory, r.PartlyFromMemory), r.ID)
}

func standIns(s signs.Sign, k *knowledge.Base) []*signs.Sign {
	var list []*signs.Sign
	for _, id := range s.StandIns {
		if other, ok := k.Sign(id); ok {
			list = append(list, &other)
		}
	}
	return list
}

func covers(list []signs.Cover) string {
	var words []string
	for _, c := range list {
		words = append(words, string(c))
	}
	return strings.Join(words, ", ")
}
