package sheet

import (
	"fmt"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/draw"
	"boughline/sheet/figure"
	"boughline/sheet/words"
	"boughline/survey"
)

// treeDrawings adds the tree from the side and from above with its findings.
func (s *Sheet) treeDrawings(u *subject, t *survey.Tree) {
	drawn, err := u.figures.Tree(t.ID)
	if err != nil {
		return
	}
	s.heading(2, words.Drawings)
	s.add(&Figures{Scenes: []*draw.Scene{figure.Elevation(drawn, nil), figure.Plan(drawn, nil)}})
}

// hangDrawings adds the drawings of a hang; one that cannot be worked out has
// none, and its reasons say why.
func (s *Sheet) hangDrawings(u *subject, h assess.Hang) {
	j, ok := u.judged(h)
	if !ok {
		return
	}
	// Those of about one height follow one another, to stand side by side.
	scenes := []*draw.Scene{figure.Plan(j.Figure.Tree, &j), figure.Elevation(j.Figure.Tree, &j)}
	if swing, err := figure.Swing(j); err == nil {
		scenes = append(scenes, swing)
	}
	scenes = append(scenes, figure.SectionOf(j, 0), figure.Bending(j))
	if rig, err := figure.Rig(j); err == nil {
		scenes = append(scenes, rig)
	}
	scenes = append(scenes, figure.Margins(checkMargins(h)))
	if h.Chance != nil && h.Chance.Index > 0 {
		scenes = append(scenes, figure.Chance(figure.ChanceInput{Key: h.ID, Title: fmt.Sprintf(words.ChanceDrawn, h.ID), Beta: h.Chance.Index, Target: h.Chance.Target, Notes: []string{words.ChanceNote}}))
	}
	s.heading(2, words.Drawings)
	s.add(&Figures{Scenes: scenes})
}

// checkMargins are the margins of the checks of a hang, to be drawn.
func checkMargins(h assess.Hang) figure.MarginsInput {
	in := figure.MarginsInput{Key: h.ID, Title: fmt.Sprintf(words.MarginsDrawn, h.ID)}
	for _, c := range h.Checks {
		in.Bars = append(in.Bars, figure.MarginBar{Words: wording.Check(c), Margin: c.Margin, Best: c.Best})
	}
	return in
}
