package sheet

import (
	"fmt"

	"boughline/assess/wording"
	"boughline/quantity"
	"boughline/sheet/words"
	"boughline/survey"
)

// treeName is what people call a tree.
func treeName(t *survey.Tree) string {
	if t.Name != "" {
		return t.Name
	}
	return t.ID
}

// treeFacts lists the tree as measured.
func (s *Sheet) treeFacts(u *subject, t *survey.Tree) {
	f := &facts{Table{Caption: words.TreeFacts, Columns: []Column{{Title: words.Fact, Wide: 3}, {Title: words.Value, Wide: 5}}}}
	f.put(words.Species, t.Species)
	f.put(words.Surveyor, u.Survey.Surveyor)
	if p := u.Survey.Place; p != nil {
		f.put(words.Coordinates, fmt.Sprintf("%.5f, %.5f", p.Latitude, p.Longitude))
	}
	if t.East != nil && t.North != nil {
		f.put(words.StandsAt, fmt.Sprintf(words.StandsEast, measured(t.East, "m"), measured(t.North, "m")))
	}
	f.put(words.Height, measured(t.Height, "m"))
	if c := t.Crown; c != nil {
		f.put(words.CrownWidth, measured(c.Width, "m"))
		f.put(words.CrownBase, measured(c.BaseHeight, "m"))
	}
	for i := range t.Members {
		f.member(&t.Members[i])
	}
	for i := range t.Stood {
		g := &t.Stood[i]
		f.put(words.GustStood, fmt.Sprintf(words.GustText, measured(&g.Speed, "m/s"), g.On, g.Source))
	}
	f.put(words.Note, t.Note)
	s.heading(1, words.TheTree)
	s.add(&f.Table)
}

// facts is a table of what and value.
type facts struct{ Table }

// put adds a row; a value that is not known is left out.
func (f *facts) put(what, value string) {
	if value != "" {
		f.Rows = append(f.Rows, []string{what, value})
	}
}

func (f *facts) member(m *survey.Member) {
	f.put(fmt.Sprintf(words.MemberLong, m.ID), measured(m.Length, "m"))
	for i := range m.Stations {
		st := &m.Stations[i]
		at := fmt.Sprintf(words.MemberThick, m.ID, wording.Quantity(float64(st.At.Value), "m"))
		f.put(at, prefixed("girth ", measured(st.Girth, "m")))
		f.put(at, prefixed("diameter ", measured(st.Diameter, "m")))
		f.put(at, prefixed("upright ", measured(st.Upright, "m")))
		f.put(at, prefixed("across ", measured(st.Across, "m")))
	}
}

func prefixed(before, text string) string {
	if text == "" {
		return ""
	}
	return before + text
}

// measured writes a measured value with how it was got; empty where it was not.
func measured[Q quantity.Kind](m *quantity.Measured[Q], unit string) string {
	if m == nil {
		return ""
	}
	text := wording.Quantity(float64(m.Value), unit)
	if m.How != "" {
		text += " (" + string(m.How) + ")"
	}
	return text
}
