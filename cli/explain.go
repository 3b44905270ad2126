package cli

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/source"
)

// everything opens all reasons and checks.
const everything assess.Code = "all"

// explain opens one reason or check of every hang, or all of them, down to
// formula, values, limits and sources.
func explain(w io.Writer, a assess.Assessment, code assess.Code) error {
	var b strings.Builder
	var known []string
	for _, h := range judged(a) {
		for _, c := range h.Checks {
			known = append(known, string(c.Code))
			if c.Code == code || code == everything {
				b.WriteString(explainCheck(h, c))
			}
		}
		for _, r := range h.Reasons {
			if r.Check == nil {
				known = append(known, string(r.Code))
				if r.Code == code || code == everything {
					b.WriteString(explainReason(h, r))
				}
			}
		}
	}
	if b.Len() == 0 {
		slices.Sort(known)
		return refusal{fmt.Errorf("--explain: %q is no reason here; expected one of %s", code, strings.Join(slices.Compact(known), ", "))}
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// judged lists the hangs, and the lines as what reasons and checks belong to.
func judged(a assess.Assessment) []assess.Hang {
	list := slices.Clone(a.Hangs)
	for _, l := range a.Lines {
		list = append(list, assess.Hang{ID: l.ID, Checks: l.Checks, Reasons: l.Reasons})
	}
	return list
}

func explainCheck(h assess.Hang, c assess.Check) string {
	var b strings.Builder
	b.WriteString(hanging(h.ID, wording.Check(c), max(column, len(h.ID)+2)))
	b.WriteString(hanging("  formula", wording.Formula(c.Code), column))
	b.WriteString(hanging("  from", wording.Basis(c.Code), column))
	b.WriteString(hanging("  demand", wording.Quantity(c.Demand, c.Unit), column))
	b.WriteString(hanging("  capacity", wording.Quantity(c.Capacity, c.Unit), column))
	b.WriteString(hanging("  margin", fmt.Sprintf("%s at the unfavourable 5 %% values, %s at the favourable ones", wording.Margin(c.Margin), wording.Margin(c.Best)), column))
	b.WriteString(hanging("  alone", wording.Outcome(c.Alone), column))
	return b.String() + terms(c.Terms) + "\n"
}

func explainReason(h assess.Hang, r assess.Reason) string {
	var b strings.Builder
	b.WriteString(hanging(h.ID, wording.Reason(r), max(column, len(h.ID)+2)))
	b.WriteString(hanging("  from", wording.Basis(r.Code), column))
	if change := wording.Change(r.Change); change != "" {
		b.WriteString(hanging("  change", change, column))
	}
	if r.Path != "" {
		b.WriteString(hanging("  survey", r.Path, column))
	}
	if r.Sign != nil && r.Sign.CloserLook != "" {
		b.WriteString(hanging("  closer", r.Sign.CloserLook, column))
	}
	b.WriteString(citations(r.Refs))
	return b.String() + terms(r.Terms) + "\n"
}

func terms(list []assess.Term) string {
	var b strings.Builder
	for _, t := range list {
		b.WriteString(hanging("  where", wording.Term(t), column))
		if t.Note != "" {
			b.WriteString(hanging("", "("+strings.TrimRight(t.Note, "; ")+")", column+2))
		}
		if t.Path != "" {
			b.WriteString(hanging("", "survey: "+t.Path, column+2))
		}
		for _, ref := range t.Refs {
			b.WriteString(hanging("", "source: "+ref.Citation(), column+2))
		}
	}
	return b.String()
}

func citations(refs []source.Ref) string {
	var b strings.Builder
	for _, ref := range refs {
		b.WriteString(hanging("  source", ref.Citation(), column))
	}
	return b.String()
}
