package measure

import (
	"errors"
	"fmt"
	"math"

	hd "gonum.org/v1/gonum/num/hyperdual"
)

// reference takes in a known length or distance.
func (l *ledger) reference(place string, r Reference) {
	var v referenceView
	length := r.From != nil && r.To != nil && r.Length != ""
	distance := r.At != nil && r.Distance != ""
	switch {
	case length == distance:
		l.fault("%s: expected from, to and length, or at and distance, and not both", place)
		return
	case length:
		l.apart(place, r.From, r.To)
		v.from, v.to = l.mark(place+".from", r.From), l.mark(place+".to", r.To)
		v.known = l.value(lengthInView, place+".length", r.Length)
	default:
		v.distance = true
		v.from = l.mark(place+".at", r.At)
		v.known = l.value(distanceField, place+".distance", r.Distance)
	}
	if how := l.readings[v.known].How; weak(how) {
		l.how = lesser(l.how, how)
	}
	v.nearer = l.value(nearerField, place+".nearer", r.Nearer)
	l.references = append(l.references, v)
}

// limb takes in the stations and what they give.
func (l *ledger) limb(p Picture) {
	stray := l.parse(straysField, strays, p.Strays)
	for i, s := range p.Limb {
		place := fmt.Sprintf("limb[%d]", i)
		v := stationView{thick: len(s.Edges) > 0, stray: l.add(strays, stray)}
		switch {
		case !(len(s.Edges) == 2 && s.At == nil || len(s.Edges) == 0 && s.At != nil):
			l.fault("%s: %d edges; expected two edges, or at instead", place, len(s.Edges))
			return
		case v.thick:
			l.apart(place+".edges", &s.Edges[0], &s.Edges[1])
			v.edges = [2]markView{l.mark(place+".edges[0]", &s.Edges[0]), l.mark(place+".edges[1]", &s.Edges[1])}
			l.gives = append(l.gives, Output{"thickness", "thickness at " + s.name(i), Length})
		default:
			v.edges[0] = l.mark(place+".at", s.At)
		}
		if i > 0 {
			l.apart(fmt.Sprintf("limb[%d] and limb[%d]", i-1, i), p.Limb[i-1].middle(), s.middle())
			from := p.Limb[i-1].name(i - 1)
			l.gives = append(l.gives,
				Output{"along", fmt.Sprintf("along the limb from %s to %s", p.Limb[0].name(0), s.name(i)), Length},
				Output{"slope", fmt.Sprintf("slope of the limb from %s to %s", from, s.name(i)), Angle})
		}
		l.stations = append(l.stations, v)
	}
}

func (s Station) name(i int) string {
	if s.Name != "" {
		return s.Name
	}
	return fmt.Sprintf("station %d", i+1)
}

func (s Station) middle() *Mark {
	if len(s.Edges) == 0 {
		return s.At
	}
	return &Mark{(s.Edges[0][0] + s.Edges[1][0]) / 2, (s.Edges[0][1] + s.Edges[1][1]) / 2}
}

// free takes in the lengths and angles that stand by themselves, and gives
// the distance of the plane.
func (l *ledger) free(p Picture) {
	for i, s := range p.Lengths {
		place := fmt.Sprintf("lengths[%d]", i)
		l.apart(place, s.From, s.To)
		l.spans = append(l.spans, [2]markView{l.mark(place+".from", s.From), l.mark(place+".to", s.To)})
		l.gives = append(l.gives, Output{"length", "length of " + s.Name, Length})
	}
	for i, c := range p.Angles {
		place := fmt.Sprintf("angles[%d]", i)
		l.apart(place, c.At, c.One)
		l.apart(place, c.At, c.Other)
		l.corners = append(l.corners, [3]markView{l.mark(place+".at", c.At), l.mark(place+".one", c.One), l.mark(place+".other", c.Other)})
		l.gives = append(l.gives, Output{"angle", "angle of " + c.Name, Angle})
	}
	l.gives = append(l.gives, Output{"distance", "level distance from the camera to the limb's plane", Length})
}

// faces refuses marks that the plane is seen at too flat an angle from.
func (v *view) faces() error {
	x := make([]hd.Number, len(v.readings))
	for i, r := range v.readings {
		x[i] = num(r.Value)
	}
	c := v.camera(x)
	var all []markView
	for _, r := range v.references {
		all = append(all, r.from)
		if !r.distance {
			all = append(all, r.to)
		}
	}
	for _, s := range v.stations {
		all = append(all, s.edges[0])
		if s.thick {
			all = append(all, s.edges[1])
		}
	}
	for _, s := range v.spans {
		all = append(all, s[:]...)
	}
	for _, s := range v.corners {
		all = append(all, s[:]...)
	}
	for _, m := range all {
		r := c.ray(m)
		if dot(r, c.normal).Real < math.Sin(leastGrazing)*norm(r).Real {
			return errors.New("turned: a mark sees the limb's plane at less than 10 deg, or from behind; stand more square to the limb")
		}
	}
	return nil
}
