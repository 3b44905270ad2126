package sheet

import (
	"fmt"

	"boughline/assess/wording"
	"boughline/sheet/words"
)

var assessmentKind = Kind{Name: "assessment", Says: words.AssessmentSays, NeedsTree: true, build: assessment}

// assessment is the whole of what is known of one tree: outcome and findings
// first, then each hang with its limits, reasons, drawings and checks.
func assessment(u *subject) (*Sheet, error) {
	t := u.tree(u.Tree)
	hangs := u.of(t.ID)
	s := &Sheet{Title: fmt.Sprintf(words.AssessmentTitle, treeName(t)), Subtitle: fmt.Sprintf(words.Of, u.Survey.Site, u.Survey.Day)}
	s.outcomes(hangs)
	s.findings(u, t, hangs)
	s.add(&Cautions{wording.Cautions()})
	s.treeFacts(u, t)
	s.looks(u, t)
	s.treeDrawings(u, t)
	for _, h := range hangs {
		s.hang(u, h)
	}
	s.photos(photosOf(u.Photos, t.ID))
	s.history(u.History)
	if u.Working {
		for _, h := range hangs {
			s.add(&NewPage{})
			s.working(u, h)
		}
	}
	s.sources(hangs)
	s.sign(words.WhoJudged, words.WhoAccepts, words.WhoArborist)
	return s, nil
}

// sign closes a sheet with places to sign.
func (s *Sheet) sign(who ...string) {
	s.heading(1, words.Signing)
	s.add(&Signatures{who})
}

// photos adds pictures, where there are any.
func (s *Sheet) photos(list []Photo) {
	if len(list) > 0 {
		s.heading(1, words.PhotosTitle)
		s.add(&Photos{list})
	}
}

// history tells how a record came to be, where that is known.
func (s *Sheet) history(list []Event) {
	if len(list) == 0 {
		return
	}
	t := &Table{Caption: words.HistoryShown, Columns: []Column{{Title: words.On, Wide: 2}, {Title: words.By, Wide: 2}, {Title: words.Changed, Wide: 6}}}
	for _, e := range list {
		t.Rows = append(t.Rows, []string{e.On, e.By, e.What})
	}
	s.heading(1, words.HistoryTitle)
	s.add(t)
}
