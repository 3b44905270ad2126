package sheet

import (
	"fmt"

	"boughline/assess/rigging"
	"boughline/assess/wording"
	"boughline/draw"
	"boughline/sheet/figure"
	"boughline/sheet/words"
)

var rigKind = Kind{Name: "rig", Says: words.RigSays, NeedsHang: true, build: rigSheet}

// rigSheet is how a hang is rigged, for whoever rigs it.
func rigSheet(u *subject) (*Sheet, error) {
	r, err := rigging.Of(u.Survey, u.Knowledge, u.Hang, rigging.Options{})
	if err != nil {
		return nil, err
	}
	s := &Sheet{Title: fmt.Sprintf(words.RigTitle, r.Hang), Subtitle: fmt.Sprintf(words.RigOf, r.Limb, treeName(u.tree(u.Tree)), u.Survey.Site, u.Survey.Day)}
	s.add(&Paragraph{Words: shaped(r.Outcome, wording.Outcome(r.Outcome)), Strong: true})
	if !r.Outcome.Rideable() {
		s.add(&Paragraph{Words: wording.RigNotNow, Strong: true})
	}
	s.add(&Cautions{append(wording.RigCautions(), wording.Cautions()...)})
	for _, part := range wording.Rigging(r) {
		s.rigPart(part)
	}
	s.rigDrawing(u)
	s.sign(words.WhoRigs, words.WhoChecks)
	return s, nil
}

// rigPart leaves out what the chain does not have.
func (s *Sheet) rigPart(part wording.RigPart) {
	var items []string
	for _, item := range part.Items {
		switch {
		case item.Minor:
		case item.Margin != "":
			items = append(items, fmt.Sprintf(words.RigMargin, item.Margin, item.Text))
		default:
			items = append(items, item.Text)
		}
	}
	s.heading(1, part.Title)
	s.say(part.Help)
	s.add(&List{Items: items})
}

// rigDrawing adds the rig and where it hangs in the tree.
func (s *Sheet) rigDrawing(u *subject) {
	for _, h := range u.hangs {
		if j, ok := u.judged(h); ok {
			if rig, err := figure.Rig(j); err == nil {
				s.heading(1, words.Drawings)
				s.add(&Figures{Scenes: []*draw.Scene{rig, figure.Elevation(j.Figure.Tree, &j)}})
			}
		}
	}
}
