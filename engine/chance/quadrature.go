package chance

import (
	"math"

	"gonum.org/v1/gonum/integrate/quad"
)

// expectation returns the mean of f, at least 0, over a standard normal variable by
// the trapezoidal rule, whose error falls faster than any power of the step on
// such integrands. steepness is the greatest rise of f on the probit scale for a
// unit of z; the step shrinks with it. f times the density has one peak, so terms
// are added outwards from the centre, best near the peak, until they no longer count.
// Source: Goodwin, 1949, on the trapezoidal rule with a normal weight (from memory).
func expectation(accuracy accuracy, steepness, centre float64, f func(z float64) float64) float64 {
	const nothingLeft = 37 // the density is 0 in double precision
	step := accuracy.coarseness / math.Sqrt(1+steepness*steepness)
	sum := phi(centre) * f(centre)
	for _, stride := range [...]float64{step, -step} {
		before := 0.0
		for z := centre + stride; math.Abs(z) < nothingLeft; z += stride {
			term := phi(z) * f(z)
			sum += term
			if term <= before && term <= accuracy.negligible*sum {
				break
			}
			before = term
		}
	}
	return sum * step
}

// accuracy is what expectation trades for time: the step for a steepness of 0,
// and the share of a term that no longer counts.
type accuracy struct{ coarseness, negligible float64 }

var (
	fine = accuracy{coarseness: 0.9, negligible: 1e-11}    // relative error about 1e-10
	fast = accuracy{coarseness: 1, negligible: negligible} // about 1e-6
)

// negligible is the share of an integral that may be left out at an end.
const negligible = 1e-8

// points is the number of points of a Gauss-Legendre rule that serves pieces of
// pieceWidth standard deviations of a normal density to about 1e-6.
const (
	points     = 8
	pieceWidth = 5.0
)

// gauss is that rule on -1 to 1.
var gauss = gaussLegendre()

type rule struct{ x, weight [points]float64 }

func gaussLegendre() (r rule) {
	quad.Legendre{}.FixedLocations(r.x[:], r.weight[:], -1, 1)
	return r
}
