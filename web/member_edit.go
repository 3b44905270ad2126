package web

import (
	"fmt"
	"net/http"
	"slices"
	"strings"

	"boughline/notebook"
	"boughline/quantity"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// spareGirths is how many empty places for girths a form has.
const spareGirths = 2

func (a *app) newLimb(w http.ResponseWriter, r *http.Request) error {
	return a.withTree(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree) error {
		return a.memberForm(w, r, e, s, t, &survey.Member{ID: freeLimbID(t), Parent: stemOf(t)}, nil)
	})
}

func (a *app) editMember(w http.ResponseWriter, r *http.Request) error {
	return a.withMember(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree, m *survey.Member) error {
		return a.memberForm(w, r, e, s, t, m, nil)
	})
}

func (a *app) withMember(w http.ResponseWriter, r *http.Request, then func(*entry, *notebook.Site, *notebook.Tree, *survey.Member) error) error {
	return a.withTree(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree) error {
		m := memberOf(t, r.PathValue("member"))
		if m == nil {
			return errNoPage
		}
		return then(e, s, t, m)
	})
}

func memberOf(t *notebook.Tree, id string) *survey.Member {
	for i := range t.Members {
		if t.Members[i].ID == id {
			return &t.Members[i]
		}
	}
	return nil
}

func stemOf(t *notebook.Tree) string {
	for _, m := range t.Members {
		if m.Parent == "" {
			return m.ID
		}
	}
	return stemID
}

func freeLimbID(t *notebook.Tree) string {
	for i := 1; ; i++ {
		if id := fmt.Sprintf("L%d", i); memberOf(t, id) == nil {
			return id
		}
	}
}

func (a *app) memberForm(w http.ResponseWriter, r *http.Request, e *entry, s *notebook.Site, t *notebook.Tree, m *survey.Member, problems []string) error {
	f := view.Form{
		Page: a.newPage(r, memberName(m), a.treeTrail(s, t)...), Back: a.treeLink(s, t), Problems: problems, Revision: t.Revision,
		Live: a.treeLink(s, t, "margins") + "?member=" + queryEscape(m.ID),
	}
	spare := max(spareGirths+len(m.Stations), 3)
	if m.Parent == "" {
		f.Groups = []view.Group{
			{Fields: []view.Field{measuredField(e, "stem_length", e.units.long(), m.Length, quantity.Clinometer), thicknessField(e, "tip", m.Tip), barkField(e, m)}},
			{Legend: words.Girths, Fields: a.girthFields(r, e, m, spare)},
		}
		return a.form(w, r, e, f)
	}
	limb := []view.Field{e.field("limb", view.Text, m.ID), e.selectField("parent", m.Parent, parentChoices(t, m.ID))}
	f.Groups = []view.Group{
		{Legend: words.TheLimb, Fields: append(append(limb, a.shapeFields(r, e, m)...), thicknessField(e, "tip", m.Tip), barkField(e, m))},
		{Legend: words.Girths, Help: words.GirthsHelp, Fields: a.girthFields(r, e, m, spare)},
		{Legend: words.TheUnion, Fields: unionFields(e, unionOf(t, m.ID))},
	}
	if memberOf(t, m.ID) != nil {
		f.Extra = []view.Button{a.formButton(words.DeleteLimb, a.treeLink(s, t, "member", m.ID, "delete"))}
	}
	return a.form(w, r, e, f)
}

func thicknessField(e *entry, name string, m *survey.MeasuredLength) view.Field {
	return measuredField(e, name, e.units.thick(), m, quantity.ByEye)
}

func barkField(e *entry, m *survey.Member) view.Field {
	return measuredField(e, "bark", e.units.pick("mm", "in"), m.Bark, quantity.Calliper)
}

func parentChoices(t *notebook.Tree, but string) []view.Choice {
	var list []view.Choice
	for i := range t.Members {
		if m := &t.Members[i]; m.ID != but {
			list = append(list, view.Choice{Value: m.ID, Text: memberName(m)})
		}
	}
	return list
}

func (a *app) shapeFields(r *http.Request, e *entry, m *survey.Member) []view.Field {
	fields := []view.Field{a.measurable(r, measuredField(e, "rises_at", e.units.long(), m.RisesAt, quantity.Clinometer), "heights")}
	if len(m.Path) > 0 {
		return fields // drawn as a line of points; this form leaves it
	}
	return append(fields,
		measuredField(e, "azimuth", degrees, m.Azimuth, quantity.Compass),
		measuredField(e, "inclination", degrees, m.Inclination, quantity.Clinometer),
		measuredField(e, "length", e.units.long(), m.Length, quantity.Clinometer),
	)
}

// girthFields are places and girths in pairs.
func (a *app) girthFields(r *http.Request, e *entry, m *survey.Member, places int) []view.Field {
	var fields []view.Field
	for i := range places {
		var station survey.Station
		if i < len(m.Stations) {
			station = m.Stations[i]
		}
		at := e.field(fmt.Sprintf("at_%d", i), view.Number, "")
		if !e.listed && i < len(m.Stations) {
			at.Value = number(station.At.Value, e.units.long())
		}
		at.Unit, at.Pair = e.units.long(), true
		name := fmt.Sprintf("girth_%d", i)
		girth := measuredField(e, name, e.units.thick(), girthOf(&station), quantity.Taped)
		if !e.listed {
			girth.Value = girthText(&station, e.units)
		}
		girth.Pair = true
		if i > 0 {
			at.Help, girth.Help = "", ""
		} else {
			girth = a.measurable(r, girth, "thickness")
		}
		fields = append(fields, at, girth)
	}
	return fields
}

// girthOf is the measured value of a station that has only one.
func girthOf(s *survey.Station) *survey.MeasuredLength {
	if s.Girth != nil {
		return s.Girth
	}
	return s.Diameter
}

// across marks a thickness that is no girth.
const across = "across"

func girthText(s *survey.Station, u units) string {
	unit := u.thick()
	switch {
	case s.Diameter != nil:
		return number(s.Diameter.Value, unit) + " " + unit + " " + across
	case s.Upright != nil && s.Across != nil:
		return number(s.Upright.Value, unit) + " x " + number(s.Across.Value, unit) + " " + unit
	}
	return show(s.Girth, unit)
}

func unionOf(t *notebook.Tree, member string) *survey.Union {
	for i := range t.Unions {
		if t.Unions[i].Member == member {
			return &t.Unions[i]
		}
	}
	return nil
}

func unionFields(e *entry, u *survey.Union) []view.Field {
	union := survey.Union{}
	if u != nil {
		union = *u
	}
	return []view.Field{
		e.selectField("form_of", union.Form, choices(words.NotChosen, survey.FormU, survey.FormV, survey.NotSeen)),
		e.selectField("union_bark", union.Bark, choices(words.NotChosen, survey.BarkRidge, survey.BarkInclude, survey.NotSeen)),
		measuredField(e, "above", e.units.thick(), union.Parent, quantity.Taped),
	}
}

// readMember writes what was typed into the member with the id, which is new
// where the tree has none.
func readMember(e *entry, t *notebook.Tree, id string) {
	m := memberOf(t, id)
	if m == nil {
		notebook.NewLimb(t)
		t.Members = append(t.Members, survey.Member{ID: id, Parent: stemOf(t)})
		m = &t.Members[len(t.Members)-1]
	}
	if m.Parent == "" {
		m.Length = measured(e, "stem_length", e.units.long(), m.Length)
	} else {
		m.Parent = e.text("parent")
		readShape(e, m)
		readUnion(e, t, id)
	}
	m.Tip = measured(e, "tip", e.units.thick(), m.Tip)
	m.Bark = measured(e, "bark", e.units.pick("mm", "in"), m.Bark)
	readGirths(e, m)
	if len(m.Stations) == 0 {
		e.faults["girth_0"] = words.WantValue
	}
	if name := e.text("limb"); m.Parent != "" && name != "" && name != id {
		rename(t, id, name)
	}
}

func readShape(e *entry, m *survey.Member) {
	m.RisesAt = measured(e, "rises_at", e.units.long(), m.RisesAt)
	if len(m.Path) > 0 {
		return
	}
	m.Azimuth = measured(e, "azimuth", degrees, m.Azimuth)
	m.Inclination = measured(e, "inclination", degrees, m.Inclination)
	m.Length = measured(e, "length", e.units.long(), m.Length)
}

// readGirths reads the stations in the order of their places.
func readGirths(e *entry, m *survey.Member) {
	kept := m.Stations
	m.Stations = nil
	for i := 0; e.values.Has(fmt.Sprintf("girth_%d", i)); i++ {
		var station survey.Station
		if i < len(kept) {
			station = kept[i]
		}
		at, girth := fmt.Sprintf("at_%d", i), fmt.Sprintf("girth_%d", i)
		if e.text(at) == "" && e.text(girth) == "" {
			continue
		}
		place := station.At
		station.At = need(e, at, chosen(e, at, e.units.long(), &place))
		readThickness(e, girth, &station)
		m.Stations = append(m.Stations, station)
	}
	slices.SortStableFunc(m.Stations, func(a, b survey.Station) int {
		switch {
		case a.At.Value < b.At.Value:
			return -1
		case a.At.Value > b.At.Value:
			return 1
		}
		return 0
	})
}

// readThickness reads a girth, a thickness across, or an upright one and one
// across.
func readThickness(e *entry, name string, s *survey.Station) {
	text := e.text(name)
	if text == girthText(s, e.units) && s.Girth == nil && text != "" {
		return // as it stands
	}
	unit := e.units.thick()
	upright, wide, two := strings.Cut(text, "x")
	switch {
	case two:
		how := " " + e.values.Get(name+"_how")
		s.Girth, s.Diameter = nil, nil
		s.Upright, s.Across = parsed(e, name, typed(lastUnit(upright, wide, unit), unit)+how), parsed(e, name, typed(wide, unit)+how)
	case strings.HasSuffix(text, across):
		s.Girth, s.Upright, s.Across = nil, nil, nil
		thick := typed(strings.TrimSuffix(text, across), unit)
		if !endsInHow(thick) {
			thick += " " + e.values.Get(name+"_how")
		}
		s.Diameter = parsed(e, name, thick)
	default:
		s.Diameter, s.Upright, s.Across = nil, nil, nil
		girth := measured(e, name, unit, s.Girth)
		s.Girth = girth
		need(e, name, girth)
	}
}

// lastUnit gives the first of two sizes the unit of the second.
func lastUnit(first, second, usual string) string {
	fields := strings.Fields(second)
	if len(fields) == 2 && len(strings.Fields(first)) == 1 {
		return strings.TrimSpace(first) + " " + fields[1]
	}
	return first
}

func parsed(e *entry, name, text string) *survey.MeasuredLength {
	m, err := quantity.Parse[quantity.Length](text)
	if err != nil {
		e.fault(name, err)
		return nil
	}
	return &m
}

func readUnion(e *entry, t *notebook.Tree, member string) {
	if !e.values.Has("form_of") {
		return
	}
	u := unionOf(t, member)
	form, bark := e.text("form_of"), e.text("union_bark")
	if form == "" && bark == "" && e.text("above") == "" {
		t.Unions = slices.DeleteFunc(t.Unions, func(u survey.Union) bool { return u.Member == member })
		return
	}
	if u == nil {
		t.Unions = append(t.Unions, survey.Union{Member: member})
		u = &t.Unions[len(t.Unions)-1]
	}
	u.Form, u.Bark = orNotSeen(form), orNotSeen(bark)
	u.Parent = measured(e, "above", e.units.thick(), u.Parent)
}

func orNotSeen(text string) string {
	if text == "" {
		return survey.NotSeen
	}
	return text
}

// rename gives a member another name wherever the tree speaks of it.
func rename(t *notebook.Tree, from, to string) {
	put := func(name *string) {
		if *name == from {
			*name = to
		}
	}
	for i := range t.Members {
		put(&t.Members[i].ID)
		put(&t.Members[i].Parent)
	}
	for i := range t.Unions {
		put(&t.Unions[i].Member)
	}
	for i := range t.Findings {
		put(&t.Findings[i].Member)
	}
	for i := range t.Hangs {
		put(&t.Hangs[i].Member)
	}
	for i := range t.Looks {
		for j := range t.Looks[i].Members {
			put(&t.Looks[i].Members[j])
		}
	}
}
