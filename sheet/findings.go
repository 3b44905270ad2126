package sheet

import (
	"fmt"
	"strings"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/sheet/figure"
	"boughline/sheet/words"
	"boughline/survey"
)

// findings is the table of the signs seen on a tree, where each is and what it
// does to each hang.
func (s *Sheet) findings(u *subject, t *survey.Tree, hangs []assess.Hang) {
	s.heading(1, words.Findings)
	drawn, err := u.figures.Tree(t.ID)
	if err != nil || len(drawn.Findings) == 0 {
		s.say(words.NoFinding)
		return
	}
	table := &Table{Caption: words.FindingsShown, Columns: []Column{
		{Title: words.Mark, Wide: 1.2}, {Title: words.Sign2, Wide: 4}, {Title: words.Place, Wide: 3}, {Title: words.SeenOn, Wide: 1.9}, {Title: words.Does, Wide: 5}}}
	for _, f := range drawn.Findings {
		table.Rows = append(table.Rows, []string{f.Survey.ID, signWords(f), figure.FindingPlace(f), f.Survey.SeenOn.String(), does(f.Survey.ID, hangs)})
	}
	s.add(table)
}

// signWords names a sign with all that was written of this finding.
func signWords(f assess.FindingFigure) string {
	parts := []string{f.Sign.Name}
	if f.Survey.Fungus != "" {
		parts = append(parts, fmt.Sprintf(words.ThoughtToBe, f.Survey.Fungus))
	}
	if c := f.Survey.Closer; c != nil {
		parts = append(parts, fmt.Sprintf(words.ClosedLook, c.On, c.How, c.Result))
	}
	if c := f.Survey.Cleared; c != nil {
		parts = append(parts, fmt.Sprintf(words.ClearedOn, c.On, c.How))
	}
	if f.Survey.Note != "" {
		parts = append(parts, f.Survey.Note)
	}
	return strings.Join(parts, "; ")
}

// does says what a finding leads to for every hang of the tree.
func does(finding string, hangs []assess.Hang) string {
	var parts []string
	for _, h := range hangs {
		for _, r := range h.Reasons {
			if r.Finding == finding && r.OnTree == "" {
				parts = append(parts, fmt.Sprintf(words.DoesToHang, h.ID, wording.Effect(r.Effect)))
				break // the worst comes first
			}
		}
	}
	if len(parts) == 0 {
		return words.NotJudged
	}
	return strings.Join(parts, "; ")
}

// looks is the table of the zones that were looked at, from the crown down.
func (s *Sheet) looks(u *subject, t *survey.Tree) {
	table := &Table{Caption: words.LooksShown, Columns: []Column{
		{Title: words.Zone, Wide: 2.5}, {Title: words.State, Wide: 2}, {Title: words.On, Wide: 1.9}, {Title: words.By, Wide: 2}, {Title: words.Conditions, Wide: 6}}}
	for _, zone := range survey.Zones {
		found := false
		for i := range t.Looks {
			if l := &t.Looks[i]; l.Zone == zone {
				found = true
				table.Rows = append(table.Rows, []string{zoneWords(zone, l.Members), l.State, l.On.String(), l.By, conditions(u, l)})
			}
		}
		if !found {
			table.Rows = append(table.Rows, []string{zoneWords(zone, nil), words.NotLooked, "", "", ""})
		}
	}
	s.heading(1, words.Looks)
	s.add(table)
}

func zoneWords(zone string, members []string) string {
	text := strings.ReplaceAll(zone, "_", " ")
	if len(members) > 0 {
		text += " " + strings.Join(members, ", ")
	}
	return text
}

func conditions(u *subject, l *survey.Look) string {
	var parts []string
	for _, p := range []string{l.Leaves, prefixed("air: ", l.Air), l.Note} {
		if p != "" {
			parts = append(parts, p)
		}
	}
	if len(l.InTheWay) > 0 {
		parts = append(parts, fmt.Sprintf(words.Behind, strings.Join(l.InTheWay, ", ")))
	}
	var hidden []string
	for _, id := range l.NotVisible {
		if sign, ok := u.Knowledge.Sign(id); ok {
			hidden = append(hidden, sign.Name)
		}
	}
	if len(hidden) > 0 {
		parts = append(parts, fmt.Sprintf(words.Except, strings.Join(hidden, ", ")))
	}
	return strings.Join(parts, "; ")
}
