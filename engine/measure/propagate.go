package measure

import (
	"math"

	hd "gonum.org/v1/gonum/num/hyperdual"
)

// formula gives the results of a kind from its readings, in the order of its
// fields. Written once, it gives values and exact first and second derivatives.
type formula func(x []hd.Number) []hd.Number

// carried is one result of a formula with what its readings do to it.
type carried struct {
	value    float64
	gradient []float64 // by reading
	second   []float64 // second derivative by the same reading
}

// carry evaluates the formula with its derivatives by each reading. Source:
// hyper-dual numbers, Fike and Alonso 2011 (named by the library used).
func carry(f formula, readings []Reading) []carried {
	x := make([]hd.Number, len(readings))
	for i, r := range readings {
		x[i] = num(r.Value)
	}
	var all []carried
	for i := range x {
		x[i].E1mag, x[i].E2mag = 1, 1
		results := f(x)
		x[i].E1mag, x[i].E2mag = 0, 0
		if all == nil {
			all = make([]carried, len(results))
		}
		for k, y := range results {
			all[k].value = y.Real
			all[k].gradient = append(all[k].gradient, y.E1mag)
			all[k].second = append(all[k].second, y.E1E2mag)
		}
	}
	return all
}

// sd returns the first-order standard deviation for independent readings, and
// the share of the variance that each has in it; none where nothing is unsure.
// Source: law of propagation, JCGM 100 (GUM) 5.1.2 (from memory).
func (c carried) sd(readings []Reading) (sd float64, share []float64) {
	share = make([]float64, len(readings))
	for i, r := range readings {
		part := c.gradient[i] * r.Sd
		sd = math.Hypot(sd, part)
	}
	for i, r := range readings {
		if sd > 0 {
			part := c.gradient[i] * r.Sd / sd
			share[i] = part * part
		}
	}
	return sd, share
}

// meanShift returns how far the mean of the result lies from the value, to
// second order: half the second derivatives times the variances. Source:
// Taylor series of the mean, as JCGM 100 (GUM) 5.1.2 note has it (from memory).
func (c carried) meanShift(readings []Reading) float64 {
	shift := 0.0
	for i, r := range readings {
		shift += c.second[i] * r.Sd * r.Sd / 2
	}
	return shift
}

// bending returns what the second derivatives add to the standard deviation:
// the root of the sum of (second derivative times variance)^2. The variance of
// a function of normal readings is at most the mean of the squared gradient
// times their variances (Gaussian Poincare inequality, from memory); this is the second-order part
// of that mean, without third derivatives and mixed ones.
func (c carried) bending(readings []Reading) (sd float64) {
	for i, r := range readings {
		sd = math.Hypot(sd, c.second[i]*r.Sd*r.Sd)
	}
	return sd
}
