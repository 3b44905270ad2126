package frame

import (
	"fmt"
	"math"
	"slices"

	"boughline/quantity"
)

// line is the centreline of a member: its stations with their arc lengths.
type line struct {
	stations []Station
	along    []float64
}

func (l line) length() float64 { return l.along[len(l.along)-1] }

// segment returns the index of the station before arc length s, and the share
// of the way to the next one.
func (l line) segment(s float64) (int, float64) {
	i := 0
	for i+2 < len(l.along) && s >= l.along[i+1] {
		i++
	}
	return i, (s - l.along[i]) / (l.along[i+1] - l.along[i])
}

func (l line) point(s float64) quantity.Vec3 {
	i, t := l.segment(s)
	a, b := l.stations[i].Position, l.stations[i+1].Position
	return a.Add(b.Sub(a).Scale(t))
}

// piece returns the stretch from one break to the next.
func (l line) piece(m Member, from, to float64) piece {
	i, _ := l.segment((from + to) / 2)
	a, b := l.stations[i], l.stations[i+1]
	outer := func(s float64) Ellipse {
		return a.Outer.between(b.Outer, (s-l.along[i])/(l.along[i+1]-l.along[i]))
	}
	x := b.Position.Sub(a.Position).Unit()
	p := piece{
		from: from, to: to,
		start:     a.Position.Add(x.Scale(from - l.along[i])),
		axes:      axesAlong(x),
		outerFrom: outer(from), outerTo: outer(to),
	}
	for _, h := range m.Hollows {
		if middle := (from + to) / 2; middle > float64(h.From) && middle < float64(h.To) {
			p.innerFrom, p.innerTo = h.at(from), h.at(to)
		}
	}
	return p
}

func (h Hollow) at(s float64) Ellipse {
	return h.InnerFrom.between(h.InnerTo, (s-float64(h.From))/float64(h.To-h.From))
}

// trace checks a member's stations and hollows and measures its arc length.
func trace(m Member) (line, error) {
	if len(m.Stations) < 2 {
		return line{}, fmt.Errorf("stations: %d; expected at least 2", len(m.Stations))
	}
	l := line{stations: m.Stations, along: make([]float64, len(m.Stations))}
	for i, s := range m.Stations {
		if !(Section{Outer: s.Outer}).valid() {
			return line{}, fmt.Errorf("station %d: diameters %v and %v m; expected positive lengths",
				i, float64(s.Outer.Upright), float64(s.Outer.Across))
		}
		if i == 0 {
			continue
		}
		step := s.Position.Sub(m.Stations[i-1].Position).Norm()
		if !(step > joint) || math.IsInf(step, 0) {
			return line{}, fmt.Errorf("station %d: %v m from the one before; expected a distance above 0", i, step)
		}
		l.along[i] = l.along[i-1] + step
	}
	return l, checkHollows(m, l)
}

func checkHollows(m Member, l line) error {
	hollows := slices.Clone(m.Hollows)
	slices.SortFunc(hollows, func(a, b Hollow) int { return int(math.Copysign(1, float64(a.From-b.From))) })
	for i, h := range hollows {
		if !(h.From >= -joint && h.To > h.From+joint && float64(h.To) <= l.length()+joint) {
			return fmt.Errorf("hollow from %v to %v m; expected a stretch within 0 to %.6g m",
				float64(h.From), float64(h.To), l.length())
		}
		if i > 0 && h.From < hollows[i-1].To-joint {
			return fmt.Errorf("hollow from %v m overlaps the one before; expected them apart", float64(h.From))
		}
		if err := checkWalls(h, l); err != nil {
			return err
		}
	}
	return nil
}

// checkWalls looks at both ends of a hollow and at every station within it;
// diameters are linear in between, so nothing narrower lies there.
func checkWalls(h Hollow, l line) error {
	places := []float64{float64(h.From), float64(h.To)}
	for _, s := range l.along {
		if s > places[0] && s < places[1] {
			places = append(places, s)
		}
	}
	for _, s := range places {
		i, t := l.segment(s)
		wood := Section{l.stations[i].Outer.between(l.stations[i+1].Outer, t), h.at(s)}
		if !wood.valid() {
			return fmt.Errorf("hollow %.3f m along: inner %v by %v m in outer %v by %v m; expected wood all round", s,
				float64(wood.Inner.Upright), float64(wood.Inner.Across), float64(wood.Outer.Upright), float64(wood.Outer.Across))
		}
	}
	return nil
}
