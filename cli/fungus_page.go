package cli

import (
	"fmt"
	"io"
	"strings"

	"boughline/engine/fungi"
	"boughline/knowledge"
)

// fungusReport is the JSON form of an identification.
type fungusReport struct {
	Answer    string       `json:"answer"`
	Ranked    []fungusLine `json:"ranked"`
	Else      float64      `json:"something_else"` // the share that the ranking leaves
	Meaning   string       `json:"meaning"`
	Advice    string       `json:"advice"`
	Weakens   []string     `json:"weakens"`
	SomeToo   []string     `json:"some_weaken_too"`
	Remaining []string     `json:"remaining"`
	RuleOut   string       `json:"rule_out,omitempty"`
	AskNext   *string      `json:"ask_next"`
	ReadAs    []string     `json:"read_as"`
	Unread    []string     `json:"unread"`
	Memory    bool         `json:"partly_from_memory"`
	Sources   []string     `json:"sources"`
	Caution   string       `json:"caution"`
}

type fungusLine struct {
	Name        string  `json:"name"`
	Common      string  `json:"common,omitempty"`
	Probability float64 `json:"probability"`
	FromMemory  bool    `json:"partly_from_memory"`
}

// fungusCaution stands under every identification.
const fungusCaution = "A help for looking, no more: a mycologist names fungi, an arborist judges the tree. Decay reaches farther than what shows. How far a description is trusted is a house choice; rows from memory are marked, and no independent mycologist has checked them. Never eat anything by this key."

func newFungusReport(id knowledge.Identification) fungusReport {
	m := id.Meaning
	r := fungusReport{
		Answer: string(id.Answer), Meaning: id.Says, Advice: m.Advice.String(), Weakens: listed(m.Shared), SomeToo: listed(m.Some),
		Remaining: listed(m.Remaining), RuleOut: m.RuleOut, ReadAs: listed(id.Evidence.Lines()), Unread: listed(id.Evidence.Unread),
		Memory: id.Memory, Sources: []string{}, Caution: fungusCaution,
	}
	ranking := id.Ranking()
	for _, one := range ranking {
		r.Ranked = append(r.Ranked, fungusLine(one))
	}
	r.Else = knowledge.Rest(ranking)
	if id.Ask != nil {
		r.AskNext = &id.AskText
	}
	for _, ref := range id.Refs {
		r.Sources = append(r.Sources, ref.Citation())
	}
	return r
}

// listed is a list that JSON writes as [] where it is empty.
func listed(list []string) []string { return append([]string{}, list...) }

// leastShown is the share below which a name does not stand on the page.
const leastShown = 0.01

func writeFungus(w io.Writer, k *knowledge.Base, id knowledge.Identification) error {
	var b strings.Builder
	first := string(id.Answer)
	if id.Answer == fungi.Named {
		first = "it may be"
	}
	fmt.Fprintf(&b, "%s\n", strings.ToUpper(first[:1])+first[1:])
	ranking := id.Ranking()
	for _, one := range ranking {
		if one.Probability >= leastShown {
			b.WriteString(hanging(share(one.Probability), fungusName(one), column))
		}
	}
	if rest := knowledge.Rest(ranking); rest >= leastShown {
		b.WriteString(hanging(share(rest), "something else", column))
	}
	b.WriteString(hanging("  means", id.Says, column))
	if id.Ask != nil {
		b.WriteString(hanging("  ask next", id.AskText, column))
	}
	b.WriteString(hanging("  read as", strings.Join(id.Evidence.Lines(), "; "), column))
	for _, text := range id.Evidence.Unread {
		b.WriteString(hanging("  unread", fmt.Sprintf("%q counts for nothing: say it in other words", text), column))
	}
	b.WriteString(citations(id.Refs))
	b.WriteString(hanging("!", fungusCaution, 2))
	_, err := io.WriteString(w, b.String())
	return err
}

func share(p float64) string { return fmt.Sprintf("  %3.0f %%", 100*p) }

func fungusName(one knowledge.RankedName) string {
	text := one.Name
	if one.Common != "" {
		text += " (" + strings.Join(strings.Split(one.Common, ";"), ", ") + ")"
	}
	if one.FromMemory && one.Common != "" {
		text += " [partly from memory]"
	}
	return text
}
