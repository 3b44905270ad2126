package chance

import (
	"fmt"
	"math"
)

// Sensitivity tells how much of the variance of a margin comes from each input.
type Sensitivity struct {
	Mean, Variance float64   // of the margin
	First          []float64 // share of an input on its own
	Total          []float64 // share of it with all it acts together with
	// Half widths of the 95 % intervals of First and Total; nil if not sampled.
	FirstHalf, TotalHalf []float64
}

// mostPoints bounds the memory of a tensor rule to 32 megabytes.
const mostPoints = 1 << 22

// Sobol returns the first-order and total indices of the margin by a tensor
// Gauss-Hermite rule with so many points for each input: exact for a margin that is a
// polynomial of degree below 2 points in the standard normal variables, close for a smooth one.
// Errors: correlated inputs, points below 2, more than 4 million points in all, a margin
// without variance.
// Source: Sobol, 1993; Homma & Saltelli, 1996 (both from memory).
func (p Problem) Sobol(points int) (Sensitivity, error) {
	n := p.Inputs.Len()
	err := p.checkIndependent()
	switch {
	case err != nil:
	case points < 2:
		err = fmt.Errorf("%d points; expected 2 or more", points)
	case math.Pow(float64(points), float64(n)) > mostPoints:
		err = fmt.Errorf("%d points for each of %d inputs; expected no more than %d in all", points, n, mostPoints)
	}
	if err != nil {
		return Sensitivity{}, fmt.Errorf("Sobol indices: %w", err)
	}
	g := p.grid(points)
	s := Sensitivity{Mean: g.mean(g.values)}
	s.Variance = g.variance(g.values, s.Mean)
	if rounding := 1e-13 * s.Mean; !(s.Variance > rounding*rounding) {
		return Sensitivity{}, fmt.Errorf("Sobol indices: variance of the margin %v; expected more than 0", s.Variance)
	}
	for i := range n {
		s.First = append(s.First, g.variance(g.only(i), s.Mean)/s.Variance)
		s.Total = append(s.Total, 1-g.variance(g.without(i), s.Mean)/s.Variance)
	}
	return s, nil
}

func (p Problem) checkIndependent() error {
	if err := p.check(); err != nil {
		return err
	}
	if p.Inputs.lower != nil {
		return fmt.Errorf("correlated inputs; expected independent ones")
	}
	return nil
}

// grid holds a function of n variables at the points of a tensor rule; the
// first variable varies slowest.
type grid struct {
	weight []float64 // of the points of one variable; they add up to 1
	values []float64
}

// grid works the margin out at the points of the rule.
func (p Problem) grid(points int) grid {
	n := p.Inputs.Len()
	z, weight := make([]float64, points), make([]float64, points)
	gaussHermite(z, weight)
	size := 1
	for range n {
		size *= points
	}
	g := grid{weight: weight, values: make([]float64, size)}
	for j := range z {
		z[j] *= math.Sqrt2
		weight[j] /= math.Sqrt(math.Pi)
	}
	axes := make([][]float64, n)
	for i, law := range p.Inputs.laws {
		axes[i] = make([]float64, points)
		for j := range z {
			axes[i][j] = law.At(z[j])
		}
	}
	x := make([]float64, n)
	for at := range g.values {
		rest := at
		for i := n - 1; i >= 0; i-- {
			x[i] = axes[i][rest%points]
			rest /= points
		}
		g.values[at] = p.Margin(x)
	}
	return g
}

// fold returns values without the variable whose neighbours are stride apart,
// by its mean.
func (g grid) fold(values []float64, stride int) []float64 {
	points := len(g.weight)
	folded := make([]float64, len(values)/points)
	for at := range folded {
		first := at/stride*stride*points + at%stride
		for j, w := range g.weight {
			folded[at] += w * values[first+j*stride]
		}
	}
	return folded
}

// without returns the mean over variable i for the values of all others.
func (g grid) without(i int) []float64 {
	stride := len(g.values)
	for range i + 1 {
		stride /= len(g.weight)
	}
	return g.fold(g.values, stride)
}

// only returns the mean over all other variables for the values of variable i.
func (g grid) only(i int) []float64 {
	values := g.values
	for range i {
		values = g.fold(values, len(values)/len(g.weight))
	}
	for len(values) > len(g.weight) {
		values = g.fold(values, 1)
	}
	return values
}

func (g grid) mean(values []float64) float64 {
	for len(values) > 1 {
		values = g.fold(values, 1)
	}
	return values[0]
}

func (g grid) variance(values []float64, mean float64) float64 {
	squares := make([]float64, len(values))
	for k, v := range values {
		squares[k] = (v - mean) * (v - mean)
	}
	return g.mean(squares)
}
