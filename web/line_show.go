package web

import (
	"cmp"
	"fmt"
	"net/http"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/notebook"
	"boughline/sheet/figure"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

func (a *app) showLine(w http.ResponseWriter, r *http.Request) error {
	return a.withLine(w, r, func(e *entry, s *notebook.Site, l *survey.Line) error {
		page := view.Outcome{
			Page: a.newPage(r, words.OutcomeOf+": "+l.ID, a.siteTrail(s)...), Cautions: wording.Cautions(),
			Edit: view.Link{Text: words.ChangeLine, To: a.link("site", s.ID, "line", l.ID, "edit")},
			More: []view.Link{{Text: words.Lines, To: a.link("site", s.ID, "lines")}},
		}
		found, err := a.Notebook.Line(s, l.ID)
		if err != nil {
			page.Fault = err.Error()
		} else {
			a.lineResult(r, &page, e.units.in(), s, found)
		}
		return a.sendDrawn(w, r, page.Page, page.Drawings, view.OutcomePage(page))
	})
}

func (a *app) lineResult(r *http.Request, page *view.Outcome, in wording.Units, s *notebook.Site, l assess.Line) {
	if scene, err := figure.Line(l); err == nil {
		page.Drawings = []view.Drawing{easel{a, r, nil}.drawn(scene)}
	}
	page.Shape, page.Sentence = wording.Shape(l.Outcome), wording.Outcome(l.Outcome)
	page.Asked = lineRows(l)
	if l.Limits != nil {
		page.Limits = lineLimitRows(in, *l.Limits)
	}
	for _, reason := range l.Reasons {
		shown := reasonView(in, reason)
		if reason.Remark {
			page.Remarks = append(page.Remarks, shown)
			continue
		}
		shown.Act = a.lineAct(s, l, reason)
		page.Reasons = append(page.Reasons, shown)
	}
	for _, c := range l.Checks {
		page.Checks = append(page.Checks, checkView(in, c, fmt.Sprintf("%s: %s", wording.Check(c), in.Comparison(c))))
	}
}

// lineRows say what is asked for, how it hangs and how it pulls.
func lineRows(l assess.Line) []view.Row {
	rows := []view.Row{{Name: words.OnWhat, Value: wording.LineTitle(l)}}
	if l.Shape == nil {
		return rows
	}
	rows = append(rows, view.Row{Name: words.RidersTitle, Value: wording.LineUse(l.Asked)}, view.Row{Name: words.HangsSo, Value: wording.LineShape(l)})
	for _, e := range l.Ends {
		rows = append(rows, view.Row{Name: words.PullAt, Value: wording.LinePull(e)})
	}
	return append(rows, view.Row{Name: words.NotInIt, Value: wording.LeavesOut(l.LeftOut)})
}

func lineLimitRows(in wording.Units, l assess.LineLimits) []view.Row {
	rows := []view.Row{
		{Name: words.RidersTitle, Value: fmt.Sprintf(words.PeopleAtMost, l.Riders, in.AtMost(float64(l.Mass), "kg"))},
		{Name: words.GearMass, Value: in.Quantity(float64(l.Gear), "kg")},
		{Name: words.GustsTo, Value: in.AtMost(float64(l.Gust), "m/s")},
	}
	if l.Beaufort > 0 {
		rows = append(rows, view.Row{Name: fmt.Sprintf("%s %d", words.Beaufort, l.Beaufort), Value: l.SeenInTrees})
	}
	rows = append(rows, view.Row{Name: words.LoadTest, Value: in.Quantity(float64(l.TestMass), "kg")})
	if len(l.Departures) > 0 {
		rows = append(rows, view.Row{Name: words.Departure, Value: wording.Departures(l.Departures)})
	}
	return rows
}

// lineAct is the page where the cause of a reason can be put right: that of the
// tree at the end that it speaks of, or of the line, the gear, the riders.
func (a *app) lineAct(s *notebook.Site, l assess.Line, r assess.Reason) *view.Link {
	switch r.Code {
	case assess.GearUnmarked, assess.GearCondition, assess.ChainIncomplete, assess.GearRetired, assess.GearLink, assess.StrapWidth:
		return &view.Link{Text: words.Gear, To: a.link("site", s.ID, "gear")}
	case assess.RidersNotKnown:
		return &view.Link{Text: words.RidersTitle, To: a.link("site", s.ID, "riders")}
	case assess.WindNotDescribed:
		return &view.Link{Text: words.SiteAndDay, To: a.link("site", s.ID, "edit")}
	case assess.GroundNotSurveyed, assess.GroundGuessed, assess.GroundTooShort, assess.HeightAssumed, assess.SpanDisagrees, assess.StrapNotMeasured,
		assess.LineClearance, assess.FallHeight, assess.NotComputed:
		return &view.Link{Text: words.ChangeLine, To: a.link("site", s.ID, "line", l.ID, "edit")}
	}
	for _, e := range l.Ends {
		t, err := s.Tree(e.Tree)
		if err != nil || r.End == "" || r.End != cmp.Or(e.TreeName, e.Tree) {
			continue
		}
		switch {
		case r.Code == assess.LookMissing, r.Code == assess.LookBlocked, r.Code == assess.LookOld, r.Code == assess.SignNotVisible:
			return &view.Link{Text: words.DoIt + ": " + words.Zone(r.Zone), To: a.treeLink(s, t, "look", r.Zone)}
		case r.Finding != "" && r.OnTree == "":
			return &view.Link{Text: words.SayMore, To: a.treeLink(s, t, "finding", r.Finding)}
		}
		return &view.Link{Text: treeName(t), To: a.treeLink(s, t)}
	}
	return nil
}
