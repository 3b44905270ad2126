package sheet

import (
	"boughline/assess/wording"
	"boughline/draw"
	"boughline/knowledge"
	day "boughline/outing/wording"
	"boughline/quantity"
	"boughline/sheet/figure"
	"boughline/sheet/words"
)

var dayCardKind = Kind{Name: "day-card", Says: words.DayCardSays, Takes: TakesOuting, build: dayCard}

// dayCard is the card that hangs beside a swing on its day: the limits first,
// then the rules, the ground that is kept clear, and who signs.
func dayCard(u *subject) (*Sheet, error) {
	c := u.Outing.Card
	s := &Sheet{Title: day.Title(c), Subtitle: day.Where(c), OnePage: true}
	for _, l := range day.Limits(c) {
		s.add(&Paragraph{Words: l.Head + ": " + l.Text, Strong: true})
	}
	pace := quantity.Length(u.Knowledge.Parameter(knowledge.PaceLength).Value)
	t := &Table{Caption: words.DayCardRules, Columns: []Column{{Title: words.DayCardGoes, Wide: 1.5}, {Title: words.DayCardIs, Wide: 8}}}
	for _, l := range day.Rules(c, pace) {
		t.Rows = append(t.Rows, []string{l.Head, l.Text})
	}
	s.add(t)
	s.keptClear(u)
	s.add(&Cautions{append([]string{day.Lapses(c)}, wording.Cautions()...)})
	s.add(&Paragraph{Words: day.Signature(c)}, &Signatures{[]string{words.WhoInCharge}})
	return s, nil
}

// keptClear adds the ground of the card.
func (s *Sheet) keptClear(u *subject) {
	for _, h := range u.hangs {
		if j, ok := u.judged(h); ok {
			s.add(&Figures{Scenes: []*draw.Scene{figure.KeptClear(j, u.Outing.Card.Limits.KeptClearArea)}, Wide: true})
		}
	}
}
