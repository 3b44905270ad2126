package web

import (
	"cmp"
	"fmt"
	"math"
	"net/http"
	"slices"

	"boughline/notebook"
	"boughline/quantity"
	"boughline/survey"
	"boughline/web/words"
)

func (a *app) createLine(w http.ResponseWriter, r *http.Request) error {
	return a.withSite(w, r, func(e *entry, s *notebook.Site) error {
		l := startLine(s, e.text("line_kind"))
		if l == nil {
			return errNoPage
		}
		return a.keepLine(w, r, e, s, l, words.DidAddLine)
	})
}

func (a *app) saveLine(w http.ResponseWriter, r *http.Request) error {
	return a.withLine(w, r, func(e *entry, s *notebook.Site, l *survey.Line) error {
		kept := *l
		return a.keepLine(w, r, e, s, &kept, words.DidEditLine)
	})
}

// keepLine writes what was typed into a line and keeps it with the site.
func (a *app) keepLine(w http.ResponseWriter, r *http.Request, e *entry, s *notebook.Site, l *survey.Line, did string) error {
	readLine(e, s, l)
	err := e.taken()
	if err == nil {
		err = a.Notebook.ChangeSite(r.Context(), s.ID, e.edit(did+l.ID, nil), func(now *survey.Survey) error {
			if kept := lineOf(now, l.ID); kept != nil {
				*kept = *l
			} else {
				now.Lines = append(slices.Clone(now.Lines), *l)
			}
			return nil
		})
	}
	return a.saved(w, r, err, a.link("site", s.ID, "line", l.ID), func(problems []string) error { return a.lineForm(w, r, e, s, l, problems) })
}

func (a *app) deleteLine(w http.ResponseWriter, r *http.Request) error {
	return a.withLine(w, r, func(e *entry, s *notebook.Site, l *survey.Line) error {
		err := a.Notebook.ChangeSite(r.Context(), s.ID, e.edit(words.DidDeleteLine+l.ID, nil), func(now *survey.Survey) error {
			now.Lines = slices.DeleteFunc(slices.Clone(now.Lines), func(other survey.Line) bool { return other.ID == l.ID })
			return nil
		})
		return a.saved(w, r, err, a.link("site", s.ID, "lines"), func(problems []string) error { return a.lineForm(w, r, e, s, l, problems) })
	})
}

func readLine(e *entry, s *notebook.Site, l *survey.Line) {
	long := e.units.long()
	l.Riders, l.Chain, l.Sleeve, l.Note = e.text("line_with"), e.text("line_gear"), e.text("sleeve"), e.text("note")
	ends := make([]survey.LineEnd, endsOf(l.Kind))
	copy(ends, l.Ends)
	for i := range ends {
		readAnchor(e, i, &ends[i])
	}
	l.Ends = ends
	if l.Kind == survey.ClimbingLine {
		readRedirect(e, l)
		return
	}
	l.Sag = measured(e, "sag", long, l.Sag)
	l.Pretension = chosen(e, "pretension", "kN", l.Pretension)
	l.Body = chosen(e, "body", long, l.Body)
	l.Span, l.Rise = measured(e, "span", long, l.Span), measured(e, "rise", long, l.Rise)
	l.Azimuth = chosen(e, "line_azimuth", degrees, l.Azimuth)
	readLineGround(e, s, l)
}

func readAnchor(e *entry, i int, end *survey.LineEnd) {
	at := func(name string) string { return fmt.Sprintf("%s_%d", name, i) }
	tree, member, ok := placeOf(e.text(at("place")))
	if !ok {
		e.faults[at("place")] = words.WantAnchor
	}
	end.Tree, end.Member, end.Anchor = tree, member, e.text(at("anchor_part"))
	end.At = need(e, at("anchor_at"), measured(e, at("anchor_at"), e.units.long(), &end.At))
	end.Height = measured(e, at("anchor_height"), e.units.long(), end.Height)
}

func readRedirect(e *entry, l *survey.Line) {
	l.Fixed = e.text("fixed")
	_, member, ok := placeOf(e.text("redirect_on"))
	if !ok {
		l.Redirect = nil
		return
	}
	r := survey.Redirect{}
	if l.Redirect != nil {
		r = *l.Redirect
	}
	r.Member = member
	r.At = need(e, "redirect_at", measured(e, "redirect_at", e.units.long(), &r.At))
	r.Angle = measured(e, "redirect_angle", degrees, r.Angle)
	l.Redirect = &r
}

// readLineGround makes a profile of three points out of the two heights.
func readLineGround(e *entry, s *notebook.Site, l *survey.Line) {
	middle, far, simple := lineSlopes(l.Ground)
	ground := survey.Ground{}
	if l.Ground != nil {
		ground = *l.Ground
	}
	ground.Surface = e.text("surface")
	ground.DepthLoose = measured(e, "depth_loose", e.units.thick(), ground.DepthLoose)
	if simple {
		middle, far = measured(e, "ground_middle", e.units.long(), middle), measured(e, "ground_far", e.units.long(), far)
		ground.Along = lineProfile(spanOf(s, l), middle, far)
	}
	l.Ground = nil
	if ground.Surface != "" && len(ground.Along) > 0 {
		l.Ground = &ground
	} else if ground.Surface != "" || middle != nil || far != nil {
		e.faults["surface"] = words.WantTwoHeights
	}
}

// spanOf is the span stated, or the distance of the trees.
func spanOf(s *notebook.Site, l *survey.Line) quantity.Length {
	if l.Span != nil {
		return l.Span.Value
	}
	a, errA := s.Tree(l.Ends[0].Tree)
	b, errB := s.Tree(l.Ends[1].Tree)
	if errA != nil || errB != nil || a.East == nil || a.North == nil || b.East == nil || b.North == nil {
		return 0
	}
	return quantity.Length(math.Hypot(float64(a.East.Value-b.East.Value), float64(a.North.Value-b.North.Value)))
}

// lineProfile is nothing where a height or the span is missing.
func lineProfile(span quantity.Length, middle, far *survey.MeasuredLength) []survey.GroundPoint {
	if middle == nil || far == nil || span == 0 {
		return nil
	}
	half := quantity.Length(math.Round(float64(span)*50) / 100)
	origin := survey.MeasuredLength{SdStated: true, How: cmp.Or(middle.How, quantity.Taped)}
	return []survey.GroundPoint{
		{Height: origin}, {At: survey.ChosenLength{Value: half}, Height: *middle}, {At: survey.ChosenLength{Value: 2 * half}, Height: *far},
	}
}
