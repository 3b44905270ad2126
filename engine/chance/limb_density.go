package chance

import (
	"fmt"
	"math"
)

// Density is how dense a chance lies at a value.
type Density struct{ Value, Density float64 }

// LimbDensities are the laws of one section as curves over the moment, N m: of
// what comes on it and of what it bears.
type LimbDensities struct{ Load, Strength []Density }

const (
	densityPoints = 90
	densityReach  = 4.0  // deviates of the laws that the curves go out to
	leastSigma    = 0.01 // at which a fixed value is drawn as a narrow peak
)

// Densities returns the density of the load S + Q and that of the strength X,
// given that the limb carries its own weight and that X K was not less than
// S + T where there is a load test, each with an area of 1 over its curve. They are
// for a drawing: S in the evidence and S in the load are drawn as if they were
// independent, which Chance does not assume. Errors as in Chance.
// Source: convolution of densities and Bayes' theorem, by the trapezoidal rule over the deviate of S.
func (c LimbCase) Densities() (LimbDensities, error) {
	m, err := c.model()
	if err != nil {
		return LimbDensities{}, fmt.Errorf("densities of a limb: %w", err)
	}
	load := curve(m.self.At(-densityReach)+m.ride.At(-densityReach), m.self.At(densityReach)+m.ride.At(densityReach), func(x float64) float64 {
		return overDeviates(func(z float64) float64 { return m.ride.density(x - m.self.At(z)) })
	})
	strength := curve(m.resistance.At(-densityReach), m.resistance.At(densityReach*3/4), func(x float64) float64 {
		return m.resistance.density(x) * overDeviates(func(z float64) float64 { return m.seen(x, m.self.At(z)) })
	})
	if load == nil || strength == nil {
		return LimbDensities{}, fmt.Errorf("densities of a limb: by these laws it cannot have borne what it was seen to bear")
	}
	return LimbDensities{Load: load, Strength: strength}, nil
}

// seen is the chance that a strength shows what was seen beside an own moment.
func (m limbModel) seen(strength, self float64) float64 {
	switch {
	case strength < self:
		return 0
	case m.test == 0:
		return 1
	}
	return cdf(-m.lasting.Deviate((self + m.test) / strength))
}

// density is that of the law, of a narrow peak where it is a fixed value.
func (l Lognormal) density(x float64) float64 {
	if x <= 0 {
		return 0
	}
	sigma := math.Max(l.Sigma, leastSigma)
	z := (math.Log(x) - l.Mu) / sigma
	return math.Exp(-z*z/2) / (x * sigma * math.Sqrt(2*math.Pi))
}

// overDeviates is the mean of a function of a standard normal deviate.
func overDeviates(of func(z float64) float64) float64 {
	const reach, step = 6.0, 0.1
	sum := 0.0
	for i := range int(2*reach/step) + 1 {
		z := -reach + step*float64(i)
		sum += math.Exp(-z*z/2) * of(z)
	}
	return sum * step / math.Sqrt(2*math.Pi)
}

// curve takes a function at points between two values and gives it an area of
// 1; nil where it has none.
func curve(low, high float64, of func(x float64) float64) []Density {
	list := make([]Density, densityPoints)
	step := (high - low) / (densityPoints - 1)
	area := 0.0
	for i := range list {
		list[i] = Density{low + step*float64(i), of(low + step*float64(i))}
		area += list[i].Density * step
	}
	if !(area > 0) {
		return nil
	}
	for i := range list {
		list[i].Density /= area
	}
	return list
}
