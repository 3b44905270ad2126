package web

import (
	"fmt"
	"net/http"
	"slices"

	"boughline/notebook"
	"boughline/quantity"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

func hangOf(t *notebook.Tree, id string) *survey.Hang {
	for i := range t.Hangs {
		if t.Hangs[i].ID == id {
			return &t.Hangs[i]
		}
	}
	return nil
}

func (a *app) withHang(w http.ResponseWriter, r *http.Request, then func(*entry, *notebook.Site, *notebook.Tree, *survey.Hang) error) error {
	return a.withTree(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree) error {
		h := hangOf(t, r.PathValue("hang"))
		if h == nil {
			return errNoPage
		}
		return then(e, s, t, h)
	})
}

// freeHangID is unique on the whole site, as the survey wants it.
func freeHangID(s *notebook.Site, t *notebook.Tree) string {
	for i := 1; ; i++ {
		id := fmt.Sprintf("%s swing %d", t.ID, i)
		taken := slices.ContainsFunc(s.Trees, func(t notebook.Tree) bool { return hangOf(&t, id) != nil })
		if !taken {
			return id
		}
	}
}

func (a *app) newHang(w http.ResponseWriter, r *http.Request) error {
	return a.withTree(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree) error {
		return a.hangForm(w, r, e, s, t, startHang(s, t, r.URL.Query().Get("member")), nil)
	})
}

// startHang is what a new form shows: nothing that was measured, a low swing.
func startHang(s *notebook.Site, t *notebook.Tree, member string) *survey.Hang {
	h := &survey.Hang{ID: freeHangID(s, t), Member: member, Amplitude: survey.ChosenAngle{Value: 45 * quantity.Degree}}
	if len(s.Head.Riders) > 0 {
		h.Riders = s.Head.Riders[0].ID
	}
	if len(s.Head.Chains) > 0 {
		h.Chain = s.Head.Chains[0].ID
	}
	return h
}

func (a *app) editHang(w http.ResponseWriter, r *http.Request) error {
	return a.withHang(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree, h *survey.Hang) error {
		return a.hangForm(w, r, e, s, t, h, nil)
	})
}

func (a *app) hangForm(w http.ResponseWriter, r *http.Request, e *entry, s *notebook.Site, t *notebook.Tree, h *survey.Hang, problems []string) error {
	f := view.Form{
		Page: a.newPage(r, words.HangTitle+" "+h.ID, a.treeTrail(s, t)...), Problems: problems, Revision: t.Revision, Back: a.treeLink(s, t),
		Live:   a.treeLink(s, t, "margins") + "?hang=" + queryEscape(h.ID),
		Groups: a.hangGroups(r, e, s, t, h),
	}
	if hangOf(t, h.ID) != nil {
		f.Back = a.treeLink(s, t, "hang", h.ID)
		f.Aside = &view.Link{Text: words.EditAllPlaces, To: a.treeLink(s, t, "hang", h.ID, "places")}
		f.Extra = []view.Button{a.formButton(words.DeleteHang, a.treeLink(s, t, "hang", h.ID, "delete"))}
	}
	return a.form(w, r, e, f)
}

func (a *app) hangGroups(r *http.Request, e *entry, s *notebook.Site, t *notebook.Tree, h *survey.Hang) []view.Group {
	long := e.units.long()
	at := &h.At
	line := &h.Line
	if h.Line.Value == 0 {
		at, line = nil, nil
	}
	return []view.Group{
		{Legend: words.TheHang, Fields: []view.Field{
			e.selectField("member", h.Member, limbChoices(t)),
			measuredField(e, "hang_at", long, at, quantity.Taped), chosenField(e, "line", long, line),
			chosenField(e, "amplitude", degrees, &h.Amplitude), chosenField(e, "swing", degrees, h.SwingAzimuth),
			a.measurable(r, measuredField(e, "limb_height", long, h.Height, quantity.Clinometer), "heights"),
			e.selectField("riders", h.Riders, ridersChoices(s)), e.selectField("chain", h.Chain, chainChoices(s)),
			e.selectField("sleeve", h.Sleeve, choices(words.NotChosen, "none", "hose", "strap", "pad")),
		}},
		{Legend: words.TheGround, Fields: a.groundFields(e, h)},
		{Legend: words.ThePeople, Fields: peopleFields(e, h)},
		{Fields: []view.Field{e.field("note", view.Long, h.Note)}},
	}
}

func limbChoices(t *notebook.Tree) []view.Choice {
	var list []view.Choice
	for i := range t.Members {
		if m := &t.Members[i]; m.Parent != "" {
			list = append(list, view.Choice{Value: m.ID, Text: memberName(m)})
		}
	}
	return list
}

func ridersChoices(s *notebook.Site) []view.Choice {
	var list []view.Choice
	for _, g := range s.Head.Riders {
		list = append(list, view.Choice{Value: g.ID, Text: g.ID})
	}
	return list
}

func chainChoices(s *notebook.Site) []view.Choice {
	var list []view.Choice
	for _, c := range s.Head.Chains {
		list = append(list, view.Choice{Value: c.ID, Text: c.ID})
	}
	return list
}

func (a *app) groundFields(e *entry, h *survey.Hang) []view.Field {
	ground := survey.Ground{}
	if h.Ground != nil {
		ground = *h.Ground
	}
	fields := []view.Field{
		e.selectField("surface", ground.Surface, a.surfaceChoices()),
		measuredField(e, "depth_loose", e.units.thick(), ground.DepthLoose, quantity.Taped),
	}
	if behind, ahead, simple := simpleGround(h.Ground); simple {
		fields = append(fields,
			measuredField(e, "slope_ahead", e.units.long(), ahead, quantity.Clinometer),
			measuredField(e, "slope_behind", e.units.long(), behind, quantity.Clinometer))
	}
	return fields
}

// groundReach is how far from the plumb line the two heights of the short form
// are taken.
const groundReach quantity.Length = 12

// simpleGround picks the two heights of the short form out of a profile; a
// profile of other points is left as it is.
func simpleGround(g *survey.Ground) (behind, ahead *survey.MeasuredLength, simple bool) {
	if g == nil || len(g.Along) == 0 {
		return nil, nil, true
	}
	if len(g.Along) == 3 && g.Along[0].At.Value == -groundReach && g.Along[1].At.Value == 0 && g.Along[2].At.Value == groundReach {
		return &g.Along[0].Height, &g.Along[2].Height, true
	}
	return nil, nil, false
}

func peopleFields(e *entry, h *survey.Hang) []view.Field {
	var azimuth, way *survey.ChosenAngle
	var far *survey.ChosenLength
	if len(h.Waiting) > 0 {
		azimuth, far = &h.Waiting[0].Azimuth, &h.Waiting[0].Distance
	}
	if len(h.WayIn) > 0 {
		way = &h.WayIn[0].Azimuth
	}
	return []view.Field{
		chosenField(e, "waiting", degrees, azimuth), chosenField(e, "waiting_far", e.units.long(), far), chosenField(e, "way_in", degrees, way),
	}
}

// readHang writes what was typed into the hang with the id, which is new where
// the tree has none.
func readHang(e *entry, t *notebook.Tree, id string) {
	h := hangOf(t, id)
	if h == nil {
		t.Hangs = append(t.Hangs, survey.Hang{ID: id})
		h = &t.Hangs[len(t.Hangs)-1]
	}
	long := e.units.long()
	h.Member, h.Riders, h.Chain, h.Sleeve, h.Note = e.text("member"), e.text("riders"), e.text("chain"), e.text("sleeve"), e.text("note")
	h.At = need(e, "hang_at", measured(e, "hang_at", long, &h.At))
	h.Line = need(e, "line", chosen(e, "line", long, &h.Line))
	h.Amplitude = need(e, "amplitude", chosen(e, "amplitude", degrees, &h.Amplitude))
	h.SwingAzimuth = chosen(e, "swing", degrees, h.SwingAzimuth)
	h.Height = measured(e, "limb_height", long, h.Height)
	readGround(e, h)
	readPeople(e, h)
}

func readGround(e *entry, h *survey.Hang) {
	behind, ahead, simple := simpleGround(h.Ground)
	surface := e.text("surface")
	ground := survey.Ground{Surface: surface}
	if h.Ground != nil {
		ground.Along, ground.DepthLoose = h.Ground.Along, h.Ground.DepthLoose
	}
	ground.DepthLoose = measured(e, "depth_loose", e.units.thick(), ground.DepthLoose)
	if simple {
		ahead, behind = measured(e, "slope_ahead", e.units.long(), ahead), measured(e, "slope_behind", e.units.long(), behind)
		ground.Along = simpleProfile(behind, ahead)
	}
	h.Ground = nil
	if surface != "" && len(ground.Along) > 0 {
		h.Ground = &ground
	} else if surface != "" || ahead != nil || behind != nil {
		e.faults["surface"] = words.WantGround
	}
}

// simpleProfile is nothing where one of the two heights is missing.
func simpleProfile(behind, ahead *survey.MeasuredLength) []survey.GroundPoint {
	if behind == nil || ahead == nil {
		return nil
	}
	origin := survey.MeasuredLength{SdStated: true, How: quantity.Taped}
	return []survey.GroundPoint{
		{At: survey.ChosenLength{Value: -groundReach}, Height: *behind},
		{Height: origin},
		{At: survey.ChosenLength{Value: groundReach}, Height: *ahead},
	}
}

// wayFar is where the way in of the short form begins, seen from the stem.
const wayFar quantity.Length = 25

func readPeople(e *entry, h *survey.Hang) {
	var kept survey.Spot
	if len(h.Waiting) > 0 {
		kept = h.Waiting[0]
	}
	azimuth, far := chosen(e, "waiting", degrees, &kept.Azimuth), chosen(e, "waiting_far", e.units.long(), &kept.Distance)
	switch {
	case azimuth != nil && far != nil:
		h.Waiting = append([]survey.Spot{{Azimuth: *azimuth, Distance: *far}}, h.Waiting[min(1, len(h.Waiting)):]...)
	case azimuth == nil && far == nil:
		h.Waiting = h.Waiting[min(1, len(h.Waiting)):]
	default:
		e.faults["waiting_far"] = words.WantBoth
	}
	readWay(e, h)
}

func readWay(e *entry, h *survey.Hang) {
	if len(h.WayIn) > 0 && e.text("way_in") == number(h.WayIn[0].Azimuth.Value, degrees) {
		return
	}
	way := chosen[quantity.Angle](e, "way_in", degrees, nil)
	h.WayIn = nil
	if way == nil {
		return
	}
	near := wayFar
	if len(h.Waiting) > 0 {
		near = min(near, h.Waiting[0].Distance.Value)
	}
	h.WayIn = []survey.Spot{{Azimuth: *way, Distance: survey.ChosenLength{Value: near}}, {Azimuth: *way, Distance: survey.ChosenLength{Value: wayFar}}}
}
