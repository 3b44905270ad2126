package web

import (
	"fmt"
	"net/http"
	"strconv"
	"strings"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/notebook"
	"boughline/quantity"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

func (a *app) showOutcome(w http.ResponseWriter, r *http.Request) error {
	return a.withHang(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree, h *survey.Hang) error {
		page := view.Outcome{
			Page: a.newPage(r, words.OutcomeOf+": "+h.ID, a.treeTrail(s, t)...), Cautions: wording.Cautions(),
			Edit: view.Link{Text: words.ChangeHang, To: a.treeLink(s, t, "hang", h.ID, "edit")},
			More: []view.Link{
				{Text: words.RigTitle, To: a.treeLink(s, t, "hang", h.ID, "rig")},
				{Text: words.EditAllPlaces, To: a.treeLink(s, t, "hang", h.ID, "places")},
				{Text: words.DayCard, To: a.treeLink(s, t, "hang", h.ID, "day")},
				{Text: words.LoadTestTitle, To: a.treeLink(s, t, "hang", h.ID, "test")},
				{Text: words.ChanceTitle, To: a.treeLink(s, t, "hang", h.ID, "chance")},
			},
		}
		found, err := a.Notebook.Outcomes(s, t)
		if err != nil {
			page.Fault = err.Error()
			return a.send(w, r, http.StatusOK, view.OutcomePage(page))
		}
		for _, result := range found.Hangs {
			if result.ID == h.ID {
				a.outcome(r, &page, e.units.in(), s, t, result)
			}
		}
		return a.sendDrawn(w, r, page.Page, page.Drawings, view.OutcomePage(page))
	})
}

func (a *app) outcome(r *http.Request, page *view.Outcome, in wording.Units, s *notebook.Site, t *notebook.Tree, h assess.Hang) {
	page.Drawings = a.hangDrawings(r, s, t, h)
	page.Shape, page.Sentence = wording.Shape(h.Outcome), wording.Outcome(h.Outcome)
	page.Asked = append([]view.Row{{Name: words.LimbTitle, Value: h.Member}}, useRows(in, h.Asked)...)
	if h.Limits != nil {
		page.Limits, page.Ground = limitRows(in, *h.Limits), groundSentences(in, *h.Limits)
	}
	for _, reason := range h.Reasons {
		shown := reasonView(in, reason)
		if reason.Remark {
			page.Remarks = append(page.Remarks, shown)
			continue
		}
		shown.Act = a.act(s, t, h, reason)
		page.Reasons = append(page.Reasons, shown)
	}
	for _, c := range h.Checks {
		page.Checks = append(page.Checks, checkView(in, c, fmt.Sprintf("%s: %s", wording.Check(c), in.Comparison(c))))
	}
}

func useRows(in wording.Units, u assess.Use) []view.Row {
	return []view.Row{
		{Name: words.RidersTitle, Value: fmt.Sprintf("%d, %s %s", u.Riders, words.Together, in.AtMost(float64(u.Mass), "kg"))},
		{Name: words.SeatAndLine, Value: in.Quantity(float64(u.Seat), "kg")},
		{Name: words.LineLength, Value: in.Quantity(float64(u.Line), "m")},
		{Name: words.SwingsUpTo, Value: in.AtMost(float64(u.Amplitude), "rad")},
		{Name: words.GustsTo, Value: in.AtMost(float64(u.Gust), "m/s")},
	}
}

func limitRows(in wording.Units, l assess.Limits) []view.Row {
	rows := useRows(in, l.Use)
	rows[0] = view.Row{Name: words.RidersTitle, Value: fmt.Sprintf(words.RidersAtMost, l.Riders, in.AtMost(float64(l.Mass), "kg"))}
	if l.Beaufort > 0 {
		rows = append(rows, view.Row{Name: fmt.Sprintf("%s %d", words.Beaufort, l.Beaufort), Value: l.SeenInTrees})
	}
	rows = append(rows,
		view.Row{Name: words.KeepClear, Value: in.Quantity(float64(l.KeptClear), "m")},
		view.Row{Name: words.FallFrom, Value: in.Quantity(float64(l.FallFrom), "m")},
		view.Row{Name: words.LoadTest, Value: in.Quantity(float64(l.TestMass), "kg")},
	)
	if len(l.Departures) > 0 {
		rows = append(rows, view.Row{Name: words.Departure, Value: wording.Departures(l.Departures)})
	}
	return rows
}

// groundSentences say both figures of the ground to be kept clear and both of
// the fall, and which of them counts.
func groundSentences(in wording.Units, l assess.Limits) []string {
	length := func(l quantity.Length) string { return in.Quantity(float64(l), "m") }
	return []string{
		fmt.Sprintf(words.ClearTwo, length(l.StandardClear), length(l.LetGo), length(l.KeptClear)),
		fmt.Sprintf(words.FallTwo, length(l.StandardFall), length(l.FallFrom)),
	}
}

func reasonView(in wording.Units, r assess.Reason) view.Reason {
	if r.Check != nil {
		shown := checkView(in, *r.Check, in.Reason(r))
		shown.Change = wording.Change(r.Change)
		return shown
	}
	shown := view.Reason{Text: in.Reason(r), Change: wording.Change(r.Change), Basis: wording.Basis(r.Code), Rows: termRows(in, r.Terms)}
	if r.Sign != nil {
		shown.Closer = r.Sign.CloserLook
	}
	for _, ref := range r.Refs {
		shown.Sources = append(shown.Sources, ref.Citation())
	}
	return shown
}

func checkView(in wording.Units, c assess.Check, text string) view.Reason {
	return view.Reason{
		Text: text, Margin: wording.Margin(c.Margin), Formula: wording.Formula(c.Code), Basis: wording.Basis(c.Code),
		Demand: in.Quantity(c.Demand, c.Unit), Capacity: in.Quantity(c.Capacity, c.Unit),
		Margins: fmt.Sprintf("%s %s %s", wording.Margin(c.Margin), words.MarginHelp, wording.Margin(c.Best)),
		Alone:   wording.Outcome(c.Alone), Rows: termRows(in, c.Terms),
	}
}

func termRows(in wording.Units, terms []assess.Term) []view.Row {
	var rows []view.Row
	for _, t := range terms {
		row := view.Row{Name: t.Symbol + " =", Value: in.Quantity(t.Value, t.Unit), About: t.Name}
		if t.Sd > 0 {
			row.Value += " ± " + in.Quantity(t.Sd, t.Unit)
		}
		if t.How != "" {
			row.About += ", " + string(t.How)
		}
		if t.Note != "" {
			row.About += " (" + strings.TrimRight(t.Note, "; ") + ")"
		}
		var cited []string
		for _, ref := range t.Refs {
			cited = append(cited, ref.Citation())
		}
		row.Source = strings.Join(cited, "; ")
		rows = append(rows, row)
	}
	return rows
}

// act is the page where the cause of a reason can be put right, nil where none
// is.
func (a *app) act(s *notebook.Site, t *notebook.Tree, h assess.Hang, r assess.Reason) *view.Link {
	switch {
	case r.Code == assess.LookMissing, r.Code == assess.LookBlocked, r.Code == assess.LookOld, r.Code == assess.SignNotVisible:
		return &view.Link{Text: words.DoIt + ": " + words.Zone(r.Zone), To: a.treeLink(s, t, "look", r.Zone)}
	case r.Finding != "" && r.OnTree == "":
		return &view.Link{Text: words.SayMore, To: a.treeLink(s, t, "finding", r.Finding)}
	}
	switch r.Code {
	case assess.TestNotRead, assess.LoadTested:
		return &view.Link{Text: words.LoadTestTitle, To: a.treeLink(s, t, "hang", h.ID, "test")}
	case assess.ShapeNotMeasured, assess.DiameterGuessed, assess.UnionNotDescribed, assess.UnionNotSeen, assess.UnionIsV:
		m := memberMeant(t, h, r)
		return &view.Link{Text: words.Measure + ": " + memberName(m), To: a.treeLink(s, t, "member", m.ID)}
	case assess.CrownNotMeasured:
		return &view.Link{Text: words.Measure + ": " + words.EditTree, To: a.treeLink(s, t, "edit")}
	case assess.WindNotDescribed:
		return &view.Link{Text: words.SiteAndDay, To: a.link("site", s.ID, "edit")}
	case assess.RidersNotKnown:
		return &view.Link{Text: words.RidersTitle, To: a.link("site", s.ID, "riders")}
	case assess.GearUnmarked, assess.GearCondition, assess.ChainIncomplete, assess.GearRetired, assess.GearDespite, assess.GearLink:
		return &view.Link{Text: words.Gear, To: a.link("site", s.ID, "gear")}
	case assess.GroundNotSurveyed, assess.GroundGuessed, assess.GroundTooShort, assess.WaitingNotStated, assess.WaitingTooNear, assess.DepthNotMeasured, assess.HeightsDisagree,
		assess.LineGoesSlack, assess.SeatClearance, assess.FootClearance, assess.StemClearance, assess.FallHeight:
		return &view.Link{Text: words.ChangeHang, To: a.treeLink(s, t, "hang", h.ID, "edit")}
	}
	return nil
}

// memberMeant is the member that a reason is about: that of its path, that of
// its text, or the limb of the hang.
func memberMeant(t *notebook.Tree, h assess.Hang, r assess.Reason) *survey.Member {
	if _, rest, ok := strings.Cut(r.Path, ".members["); ok {
		number, _, _ := strings.Cut(rest, "]")
		if i, err := strconv.Atoi(number); err == nil && i < len(t.Members) {
			return &t.Members[i]
		}
	}
	if m := memberOf(t, r.Text); m != nil {
		return m
	}
	return memberOf(t, h.Member)
}
