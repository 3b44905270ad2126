package chance

import (
	"fmt"
	"math"
)

// System is the first-order reliability of a thing with several ways to fail.
type System struct {
	// Figure is that of the likeliest way; the chance of any way lies between it
	// and High, the sum of all ways.
	Figure
	High float64
	// Ways holds the design point of each way, nil where none was found: then
	// neither figure covers it, and Lost says why.
	Ways []*DesignPoint
	Lost []error
	// Holds is the chance, before anything was seen, of what was seen.
	Holds float64
}

// FirstOrder returns the first-order reliability given what was seen. With it,
// each way's design point is the likeliest point that fails and yet bore what was seen, and
// the chance that of both planes there, over the chance of bearing it.
// Errors: no way; no way has a design point; what was seen could not hold.
// Source: Hohenbichler & Rackwitz, 1983, on parallel systems; bounds of Cornell, 1967 (both from
// memory).
func (g Given) FirstOrder() (System, error) {
	s := System{Holds: 1, Ways: make([]*DesignPoint, len(g.Ways)), Lost: make([]error, len(g.Ways))}
	if g.Seen != nil {
		unseen, err := g.unseen().FirstOrder(nil)
		if err != nil {
			return System{}, fmt.Errorf("what was seen: %w", err)
		}
		s.Holds = Probability(-unseen.Beta)
	}
	if !(s.Holds > leastCarried) {
		return System{}, fmt.Errorf("first-order reliability: %w", g.cannotHold())
	}
	found := false
	for i := range g.Ways {
		point, err := g.way(i)
		if err != nil {
			s.Lost[i] = err
			continue
		}
		found = true
		point.Figure = figureOf(math.Min(1, point.Probability/s.Holds))
		s.Ways[i] = &point
		s.Probability = math.Max(s.Probability, point.Probability)
		s.High += point.Probability
	}
	if !found {
		return System{}, fmt.Errorf("first-order reliability: no way to fail has a design point: %v", s.Lost)
	}
	s.Figure, s.High = figureOf(s.Probability), math.Min(1, s.High)
	return s, nil
}

// way is the design point of one way, its chance that of failing and having held.
func (g Given) way(i int) (DesignPoint, error) {
	if g.Seen == nil {
		return Problem{Inputs: g.Inputs, Margin: g.Ways[i]}.FirstOrder(nil)
	}
	w := g.jointWalk(g.Ways[i])
	if err := w.run(); err != nil {
		return DesignPoint{}, err
	}
	return w.point(), nil
}

// Centres lists the design points that were found, about which to sample.
func (s System) Centres() [][]float64 {
	var list [][]float64
	for _, w := range s.Ways {
		if w != nil {
			list = append(list, w.U)
		}
	}
	return list
}
