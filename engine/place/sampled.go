package place

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// axes are the values of a grid.
type axes struct{ along, line []quantity.Length }

// sampled is a field with its parts of one argument worked out on the grid.
type sampled struct {
	axes
	name      string
	fromAlong []float64
	fromLine  []float64
	rate      []float64 // of PerAlong, nil where there is none
	both      func(along, line quantity.Length) float64
	shape     *Shape
	bounds    *bounds            // for Refine
	seen      map[[2]int]float64 // what both gave, for Refine
	notNumber error              // the first pair at which both gave no number
}

func sample(f Field, name string, on axes) (*sampled, error) {
	s := &sampled{axes: on, name: name, both: f.Both, shape: f.Shape}
	var err error
	if s.fromAlong, err = tabulate(f.Along, on.along, name, "along"); err != nil {
		return nil, err
	}
	if s.fromLine, err = tabulate(f.Line, on.line, name, "line"); err != nil {
		return nil, err
	}
	if f.PerAlong != nil {
		s.rate, err = tabulate(f.PerAlong, on.line, name, "line")
	}
	return s, err
}

// tabulate works a part of one argument out; a part left nil has no table.
func tabulate(part func(quantity.Length) float64, values []quantity.Length, name, axis string) ([]float64, error) {
	if part == nil {
		return nil, nil
	}
	table := make([]float64, len(values))
	for i, x := range values {
		table[i] = part(x)
		if math.IsNaN(table[i]) || math.IsInf(table[i], 0) {
			return nil, fmt.Errorf("%s: %v at %s %v m; expected a finite number", name, table[i], axis, x)
		}
	}
	return table, nil
}

// at gives the number at a pair. The conversion of the product keeps the
// rounding the same on every machine and in the bounds.
func (s *sampled) at(i, j int) float64 {
	v := 0.0
	if s.fromAlong != nil {
		v = s.fromAlong[i]
	}
	if s.fromLine != nil {
		v += s.fromLine[j]
	}
	if s.rate != nil {
		v += float64(float64(s.along[i]) * s.rate[j])
	}
	if s.both != nil {
		v += s.call(i, j)
	}
	return v
}

// row gives the numbers of all hang points with one line.
func (s *sampled) row(j int, out []float64) {
	fromLine := 0.0
	if s.fromLine != nil {
		fromLine = s.fromLine[j]
	}
	if s.fromAlong == nil {
		for i := range out {
			out[i] = fromLine
		}
	} else {
		for i, v := range s.fromAlong[:len(out)] {
			out[i] = v + fromLine
		}
	}
	if s.rate != nil {
		rate := s.rate[j]
		for i, along := range s.along {
			out[i] += float64(float64(along) * rate)
		}
	}
	if s.both != nil {
		for i := range out {
			out[i] += s.call(i, j)
		}
	}
}

// call works the part of two arguments out.
func (s *sampled) call(i, j int) float64 {
	if v, ok := s.seen[[2]int{i, j}]; ok {
		return v
	}
	v := s.both(s.along[i], s.line[j])
	if s.seen != nil {
		s.seen[[2]int{i, j}] = v
	}
	if (math.IsNaN(v) || math.IsInf(v, 0)) && s.notNumber == nil {
		s.notNumber = fmt.Errorf("%s: %v at along %v m, line %v m; expected a finite number", s.name, v, s.along[i], s.line[j])
	}
	return v
}
