package web

import (
	"cmp"
	"fmt"
	"math"
	"net/http"
	"net/url"
	"slices"
	"strings"

	"boughline/assess/wording"
	"boughline/notebook"
	"boughline/quantity"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

func lineOf(s *survey.Survey, id string) *survey.Line {
	for i := range s.Lines {
		if s.Lines[i].ID == id {
			return &s.Lines[i]
		}
	}
	return nil
}

func (a *app) withLine(w http.ResponseWriter, r *http.Request, then func(*entry, *notebook.Site, *survey.Line) error) error {
	return a.withSite(w, r, func(e *entry, s *notebook.Site) error {
		l := lineOf(&s.Head, r.PathValue("line"))
		if l == nil {
			return errNoPage
		}
		return then(e, s, l)
	})
}

func (a *app) newLine(w http.ResponseWriter, r *http.Request) error {
	return a.withSite(w, r, func(e *entry, s *notebook.Site) error {
		l := startLine(s, cmp.Or(e.text("kind"), survey.HammockLine))
		if l == nil {
			return errNoPage
		}
		return a.lineForm(w, r, e, s, l, nil)
	})
}

// startLine is what a new form shows, nil for a kind that is none.
func startLine(s *notebook.Site, kind string) *survey.Line {
	if wording.LineKind(kind) == "" {
		return nil
	}
	l := &survey.Line{Kind: kind, Ends: make([]survey.LineEnd, endsOf(kind))}
	for i := 1; l.ID == "" || lineOf(&s.Head, l.ID) != nil; i++ {
		l.ID = fmt.Sprintf("%s %d", wording.LineKind(kind), i)
	}
	return l
}

func endsOf(kind string) int {
	if kind == survey.ClimbingLine {
		return 1
	}
	return 2
}

func (a *app) editLine(w http.ResponseWriter, r *http.Request) error {
	return a.withLine(w, r, func(e *entry, s *notebook.Site, l *survey.Line) error { return a.lineForm(w, r, e, s, l, nil) })
}

func (a *app) lineForm(w http.ResponseWriter, r *http.Request, e *entry, s *notebook.Site, l *survey.Line, problems []string) error {
	f := view.Form{
		Page: a.newPage(r, words.LineOf+": "+l.ID, a.siteTrail(s)...), Problems: problems, Revision: s.Revision,
		Back: a.link("site", s.ID, "lines"), Groups: a.lineGroups(e, s, l),
	}
	if lineOf(&s.Head, l.ID) != nil {
		f.Back = a.link("site", s.ID, "line", l.ID)
		f.Extra = []view.Button{a.formButton(words.DeleteLine, a.link("site", s.ID, "line", l.ID, "delete"))}
	}
	return a.form(w, r, e, f)
}

func (a *app) lineGroups(e *entry, s *notebook.Site, l *survey.Line) []view.Group {
	groups := []view.Group{{Legend: words.LineOf, Fields: []view.Field{
		e.selectField("line_kind", l.Kind, []view.Choice{{Value: l.Kind, Text: wording.LineKind(l.Kind)}}),
		e.selectField("line_with", l.Riders, ridersChoices(s)), e.selectField("line_gear", l.Chain, chainChoices(s)),
		e.selectField("sleeve", l.Sleeve, choices(words.NotChosen, "none", "hose", "strap", "pad")),
	}}}
	for i := range endsOf(l.Kind) {
		var end survey.LineEnd
		if i < len(l.Ends) {
			end = l.Ends[i]
		}
		groups = append(groups, view.Group{Legend: anchorLegend(l.Kind, i), Fields: anchorFields(e, s, i, end)})
	}
	if l.Kind == survey.ClimbingLine {
		groups = append(groups, view.Group{Legend: words.TheRedirect, Fields: redirectFields(e, s, l)})
	} else {
		groups = append(groups, view.Group{Legend: words.HowItHangs, Fields: hangFields(e, l)},
			view.Group{Legend: words.GroundBelow, Fields: a.lineGroundFields(e, l)})
	}
	return append(groups, view.Group{Fields: []view.Field{e.field("note", view.Long, l.Note)}})
}

func anchorLegend(kind string, i int) string {
	if kind == survey.ClimbingLine {
		return words.TheAnchor
	}
	return []string{words.FirstAnchor, words.SecondAnchor}[i]
}

func anchorFields(e *entry, s *notebook.Site, i int, end survey.LineEnd) []view.Field {
	at := func(name string) string { return fmt.Sprintf("%s_%d", name, i) }
	along := &end.At
	if end.Tree == "" {
		along = nil
	}
	return []view.Field{
		e.selectField(at("place"), placeValue(end.Tree, end.Member), placeChoices(s)),
		measuredField(e, at("anchor_at"), e.units.long(), along, quantity.Taped),
		measuredField(e, at("anchor_height"), e.units.long(), end.Height, quantity.Taped),
		e.selectField(at("anchor_part"), end.Anchor, partChoices(s)),
	}
}

// placeValue names a member of a tree in one word.
func placeValue(tree, member string) string {
	if tree == "" {
		return ""
	}
	return url.QueryEscape(tree) + "/" + url.QueryEscape(member)
}

func placeOf(value string) (tree, member string, ok bool) {
	first, second, cut := strings.Cut(value, "/")
	tree, errTree := url.QueryUnescape(first)
	member, errMember := url.QueryUnescape(second)
	return tree, member, cut && errTree == nil && errMember == nil
}

func placeChoices(s *notebook.Site) []view.Choice {
	list := []view.Choice{{Text: words.NotChosen}}
	for i := range s.Trees {
		t := &s.Trees[i]
		for j := range t.Members {
			m := &t.Members[j]
			list = append(list, view.Choice{Value: placeValue(t.ID, m.ID), Text: treeName(t) + ", " + memberName(m)})
		}
	}
	return list
}

// partChoices are the parts of all chains that go round something.
func partChoices(s *notebook.Site) []view.Choice {
	list := []view.Choice{{Text: words.NotChosen}}
	for _, c := range s.Head.Chains {
		for _, p := range c.Parts {
			if choice := (view.Choice{Value: p.Name, Text: p.Name}); (p.Kind == "sling" || p.Hitch != "") && !slices.Contains(list, choice) {
				list = append(list, choice)
			}
		}
	}
	return list
}

func hangFields(e *entry, l *survey.Line) []view.Field {
	long := e.units.long()
	fields := []view.Field{measuredField(e, "sag", long, l.Sag, quantity.Taped)}
	if l.Kind == survey.TraverseLine {
		fields = append(fields, chosenField(e, "pretension", "kN", l.Pretension))
	} else {
		fields = append(fields, chosenField(e, "body", long, l.Body))
	}
	return append(fields, measuredField(e, "span", long, l.Span, quantity.Taped),
		measuredField(e, "rise", long, l.Rise, quantity.Laser), chosenField(e, "line_azimuth", degrees, l.Azimuth))
}

func redirectFields(e *entry, s *notebook.Site, l *survey.Line) []view.Field {
	var r survey.Redirect
	var at *survey.MeasuredLength
	on := ""
	if l.Redirect != nil {
		r, at = *l.Redirect, &l.Redirect.At
		on = placeValue(l.Ends[0].Tree, r.Member)
	}
	return []view.Field{
		e.selectField("fixed", l.Fixed, choices(words.NotChosen, survey.FixedAtLimb, survey.FixedDoubled, survey.FixedAtBase)),
		e.selectField("redirect_on", on, placeChoices(s)), measuredField(e, "redirect_at", e.units.long(), at, quantity.Laser),
		measuredField(e, "redirect_angle", degrees, r.Angle, quantity.Clinometer),
	}
}

func (a *app) lineGroundFields(e *entry, l *survey.Line) []view.Field {
	ground := &survey.Hang{Ground: l.Ground}
	fields := a.groundFields(e, ground)[:2] // surface and depth; a line has slopes of its own
	if middle, far, simple := lineSlopes(l.Ground); simple {
		fields = append(fields, measuredField(e, "ground_middle", e.units.long(), middle, quantity.Laser),
			measuredField(e, "ground_far", e.units.long(), far, quantity.Laser))
	}
	return fields
}

// lineSlopes picks the two heights of the form out of a profile; a profile of
// other points is left as it is.
func lineSlopes(g *survey.Ground) (middle, far *survey.MeasuredLength, simple bool) {
	switch {
	case g == nil || len(g.Along) == 0:
		return nil, nil, true
	case len(g.Along) == 3 && g.Along[0].At.Value == 0 && math.Abs(float64(g.Along[1].At.Value*2-g.Along[2].At.Value)) < 1e-6:
		return &g.Along[1].Height, &g.Along[2].Height, true
	}
	return nil, nil, false
}
