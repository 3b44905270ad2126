package web

import (
	"cmp"
	"context"
	"fmt"
	"net/http"
	"strconv"

	"boughline/assess"
	"boughline/assess/hangsearch"
	"boughline/assess/wording"
	"boughline/notebook"
	"boughline/quantity"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// searchPlace shows what to look for and, where a group is chosen, what was
// found. One limb is searched in one request: a phone is slow.
func (a *app) searchPlace(w http.ResponseWriter, r *http.Request) error {
	return a.withTree(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree) error {
		page := a.placePage(r, e, s, t)
		if len(page.Fields) == 0 || e.text("riders") == "" {
			return a.send(w, r, http.StatusOK, view.PlacePage(page))
		}
		place, err := a.findPlace(r.Context(), e, s, t)
		if err != nil {
			page.Faults = []string{err.Error()}
			return a.send(w, r, http.StatusUnprocessableEntity, view.PlacePage(page))
		}
		a.placeFound(r, &page, e, place)
		return a.sendDrawn(w, r, page.Page, page.Drawings, view.PlacePage(page))
	})
}

// askForPlace looks again, for what is written down now, and asks for what it
// finds: nothing that a form carries is taken for a judged place.
func (a *app) askForPlace(w http.ResponseWriter, r *http.Request) error {
	return a.withTree(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree) error {
		refuse := func(problems []string) error {
			page := a.placePage(r, e, s, t)
			page.Faults = problems
			return a.send(w, r, http.StatusUnprocessableEntity, view.PlacePage(page))
		}
		place, err := a.findPlace(r.Context(), e, s, t)
		switch {
		case err != nil:
			return refuse([]string{err.Error()})
		case place.Best == nil:
			return refuse([]string{words.PlaceGone})
		}
		h := place.Best.Hang
		h.ID = freeHangID(s, t)
		err = a.Notebook.ChangeTree(r.Context(), s.ID, t.ID, e.edit(words.DidAddHang+h.ID, nil), func(t *notebook.Tree) error {
			t.Hangs = append(t.Hangs, h)
			return nil
		})
		return a.saved(w, r, err, a.treeLink(s, t, "hang", h.ID), refuse)
	})
}

func (a *app) placePage(r *http.Request, e *entry, s *notebook.Site, t *notebook.Tree) view.Place {
	page := view.Place{
		Page:   a.newPage(r, words.WhereToHang, a.treeTrail(s, t)...),
		Action: a.treeLink(s, t, "place"), Back: a.treeLink(s, t), Cautions: wording.Cautions(),
	}
	limbs, groups := limbChoices(t), ridersChoices(s)
	switch {
	case len(limbs) == 0:
		page.Faults = []string{words.PlaceNoLimb}
		return page
	case len(groups) == 0:
		page.Faults = []string{words.PlaceNoRiders}
		return page
	}
	var aims []view.Choice
	for _, aim := range hangsearch.Aims() {
		aims = append(aims, view.Choice{Value: string(aim), Text: wording.Aim(string(aim))})
	}
	amplitudes := []view.Choice{{Text: words.AnyAmplitude}}
	for _, d := range []string{"60", "50", "40", "30", "20"} {
		amplitudes = append(amplitudes, view.Choice{Value: d, Text: d + " °"})
	}
	page.Fields = []view.Field{
		{Name: "limb", Label: words.LimbTitle, Kind: view.Select, Value: e.text("limb"), Choices: limbs},
		{Name: "riders", Label: words.RidersTitle, Kind: view.Select, Value: e.text("riders"), Choices: groups},
		{Name: "aim", Label: words.PlaceAim, Kind: view.Select, Value: e.text("aim"), Choices: aims},
		{Name: "to_each_side", Label: words.PlaceAmplitude, Kind: view.Select, Value: e.text("to_each_side"), Choices: amplitudes},
	}
	return page
}

// findPlace searches the limb that a request names.
func (a *app) findPlace(ctx context.Context, e *entry, s *notebook.Site, t *notebook.Tree) (*hangsearch.Place, error) {
	limb := e.text("limb")
	if m := memberOf(t, limb); m == nil || m.Parent == "" {
		return nil, fmt.Errorf("%s %q: %s", words.LimbTitle, limb, words.WantValue)
	}
	o := hangsearch.Options{Trees: []string{t.ID}, Limbs: []string{limb}, Groups: []string{e.text("riders")}, Aim: hangsearch.Aim(e.text("aim"))}
	if text := e.text("to_each_side"); text != "" {
		d, err := strconv.Atoi(text)
		if err != nil || d < 1 || d > 70 {
			return nil, fmt.Errorf("%s %q: %s 1 ... 70", words.PlaceAmplitude, text, words.Expected)
		}
		o.Amplitudes = []quantity.Angle{quantity.Angle(d) * quantity.Degree}
	}
	found, err := hangsearch.Search(ctx, s.Near(t), a.Notebook.Knowledge(), o)
	if err != nil {
		return nil, err
	}
	if len(found.Trees) == 0 || len(found.Trees[0].Places) == 0 {
		return nil, fmt.Errorf("%s %q: %s", words.LimbTitle, limb, words.NotWorkedOut)
	}
	return &found.Trees[0].Places[0], nil
}

func (a *app) placeFound(r *http.Request, page *view.Place, e *entry, p *hangsearch.Place) {
	if len(p.Band.Rows) > 0 && (p.Miss == nil || p.Miss.Bind.Code != assess.GroundNotSurveyed) {
		page.Drawings = []view.Drawing{easel{a, r, nil}.drawn(bandFigure(p))}
	}
	if p.Best == nil {
		missedPlace(page, e.units, p.Miss)
		return
	}
	h := p.Best.Hang
	page.Head = words.PlaceFound
	page.Lines = []string{wording.Shape(p.Best.Outcome) + " " + wording.Outcome(p.Best.Outcome)}
	for _, reason := range p.Best.Judged.Reasons {
		if !reason.Remark && reason.Check == nil && reason.Outcome == p.Best.Outcome {
			page.Lines = append(page.Lines, words.Because+": "+e.units.in().Reason(reason))
			break
		}
	}
	page.Rows = append(placeRows(e.units, h, p.Best), edgeRows(e.units, p.Best)...)
	ask := a.formButton(words.AskForPlace, page.Action)
	for _, name := range []string{"limb", "riders", "aim", "to_each_side"} {
		ask.Hidden = append(ask.Hidden, view.Choice{Value: name, Text: e.text(name)})
	}
	page.Ask = &ask
}

func placeRows(u units, h survey.Hang, f *hangsearch.Found) []view.Row {
	rows := []view.Row{
		{Name: words.AlongTheLimb, Value: u.place(h.At.Value)}, {Name: words.LineLength, Value: u.place(h.Line.Value)},
		{Name: words.SwingTowards, Value: u.in().Quantity(float64(h.SwingAzimuth.Value), "rad")},
		{Name: words.SwingsUpTo, Value: u.in().Quantity(float64(h.Amplitude.Value), "rad")},
		{Name: words.FallFrom, Value: u.place(f.Fall)}, {Name: words.LeastInHand, Value: bindText(f.Least)},
	}
	for _, spot := range h.Waiting {
		rows = append(rows, view.Row{Name: words.PeopleWait, Value: u.in().Quantity(float64(spot.Azimuth.Value), "rad") + ", " + u.place(spot.Distance.Value) + " " + words.Away})
	}
	return rows
}

func edgeRows(u units, f *hangsearch.Found) []view.Row {
	var rows []view.Row
	for _, side := range []struct {
		name string
		edge *hangsearch.Edge
	}{{words.EdgeNearer, f.Nearer}, {words.EdgeFarther, f.Farther}, {words.EdgeShorter, f.Shorter}, {words.EdgeLonger, f.Longer}} {
		row := view.Row{Name: side.name, Value: words.EdgeNone}
		if side.edge != nil {
			row.Value = u.place(side.edge.At) + ": " + bindText(side.edge.Bind)
		}
		rows = append(rows, row)
	}
	return rows
}

func missedPlace(page *view.Place, u units, m *hangsearch.Miss) {
	page.Head = words.PlaceMissed
	if m.Bind.Code == assess.GroundNotSurveyed {
		page.Lines = []string{words.PlaceGround, words.PlaceWeak}
		if m.Along > 0 {
			page.Lines[1] = fmt.Sprintf(words.PlaceStrength, u.place(m.Along))
		}
		return
	}
	nearest := u.place(m.Along) + " " + words.AlongIt
	if m.Line > 0 {
		nearest += ", " + words.LineLength + " " + u.place(m.Line)
	}
	page.Rows = []view.Row{{Name: words.PlaceNearest, Value: nearest}, {Name: words.ShortBy, Value: bindText(m.Bind)}}
	for _, c := range m.Changes {
		text := wording.Change(c)
		if c.Code == assess.ChangeLighter && c.Value > 0 {
			text = words.RidersTitle + ", " + words.Together + ": " + u.in().AtMost(c.Value, c.Unit)
		}
		page.Rows = append(page.Rows, view.Row{Name: words.WouldChange, Value: text})
	}
}

func bindText(b hangsearch.Bind) string {
	return cmp.Or(wording.CheckTitle(b.Code, b.Part), string(b.Code)) + " " + wording.Margin(b.Margin)
}

// place writes how far along something a place is.
func (u units) place(l quantity.Length) string {
	if u.feet {
		return u.in().Quantity(float64(l), "m")
	}
	return fmt.Sprintf("%.2f m", float64(l))
}
