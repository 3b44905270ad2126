package chance

import (
	"math"

	"pgregory.net/rapid"
)

// riddenLimb is a limb that bends under a rider, an invented one: strength,
// diameter, rider, angle at the turn in degrees, dynamic factor and arm are random.
type riddenLimb struct {
	strength, dynamic, mass Variable[float64]
	d, theta, arm           Normal
	self                    float64
}

// ridden is a limb of a mean diameter in metres.
func ridden(d float64) riddenLimb {
	return riddenLimb{
		strength: Variable[float64]{55e6, 0.16}, d: Normal{d, 0.05 * d}, mass: Variable[float64]{60, 0.2},
		theta: Normal{50, 6}, dynamic: Variable[float64]{1.15, 0.08}, arm: Normal{2.5, 0.05}, self: 600,
	}
}

func (l riddenLimb) problem(t rapid.TB) Problem {
	laws := make([]Law, 0, 6)
	lognormal := func(v Variable[float64]) Law {
		law, err := LognormalOf(v.Mean, v.CoV)
		if err != nil {
			t.Fatal(err)
		}
		return law
	}
	laws = append(laws, lognormal(l.strength), l.d, lognormal(l.mass), l.theta, lognormal(l.dynamic), l.arm)
	self := l.self / (l.d.Mean * l.d.Mean)
	return problemOf(t, laws, func(x []float64) float64 {
		strength, d, mass, theta, dynamic, arm := x[0], x[1], x[2], x[3], x[4], x[5]
		rise := math.Sin(theta * (math.Pi / 360)) // 3 - 2 cos theta = 1 + 4 sin^2(theta/2)
		pull := mass * 9.80665 * (1 + 4*rise*rise)
		return d*d*(strength*(math.Pi/32)*d-self) - pull*dynamic*arm
	})
}

func problemOf(t rapid.TB, laws []Law, margin func(x []float64) float64, ties ...Correlation) Problem {
	t.Helper()
	inputs, err := NewInputs(laws, ties...)
	if err != nil {
		t.Fatal(err)
	}
	return Problem{Inputs: inputs, Margin: margin}
}
