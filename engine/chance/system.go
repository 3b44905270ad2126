package chance

import (
	"errors"
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
}

// ErrNoDesignPoint says that the search for the likeliest failure of every way
// came to no end.
var ErrNoDesignPoint = errors.New("no way to fail has a design point")

// FirstOrder returns the first-order reliability given what was seen. With it,
// each way's design point is the likeliest point that fails and yet bore what was seen, and
// the chance that of both planes there, over the chance of bearing it.
// Errors: no way has a design point (ErrNoDesignPoint); what was seen could not hold (ErrCannotHold).
// Source: Hohenbichler & Rackwitz, 1983, on parallel systems; bounds of Cornell, 1967 (both from
// memory).
func (g Given) FirstOrder() (System, error) {
	s := System{Ways: make([]*DesignPoint, len(g.Ways)), Lost: make([]error, len(g.Ways))}
	found := false
	for i, way := range g.Ways {
		point, err := g.Inputs.likeliest(way)
		if errors.Is(err, ErrCannotHold) {
			return System{}, fmt.Errorf("first-order reliability: %w", err)
		}
		if err != nil {
			s.Lost[i] = err
			continue
		}
		found = true
		s.Ways[i] = &point
		s.Probability = math.Max(s.Probability, point.Probability)
		s.High += point.Probability
	}
	if !found {
		return System{}, fmt.Errorf("first-order reliability: %w: %w", ErrNoDesignPoint, errors.Join(s.Lost...))
	}
	s.Figure, s.High = FigureOf(s.Probability), math.Min(1, s.High)
	return s, nil
}

// likeliest is the design point of one way, given what was seen of it.
func (in Inputs) likeliest(way Way) (DesignPoint, error) {
	fails := Problem{Inputs: in, Margin: way.Fails}
	if way.Seen == nil {
		return fails.FirstOrder(nil)
	}
	unseen, err := Problem{Inputs: in, Margin: way.Seen}.FirstOrder(nil)
	if err != nil {
		return DesignPoint{}, fmt.Errorf("what was seen: %w", err)
	}
	holds := Probability(-unseen.Beta)
	if !(holds > leastCarried) {
		return DesignPoint{}, ErrCannotHold
	}
	w := in.jointWalk(way)
	if err := w.run(); err != nil {
		return DesignPoint{}, err
	}
	point := w.point()
	point.Figure = FigureOf(math.Min(1, point.Probability/holds))
	return point, nil
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
