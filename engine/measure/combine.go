package measure

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/stat/distuv"
)

// Combined is what several readings of the same thing say together.
type Combined struct {
	Mean float64 `json:"mean"`
	// SdInternal follows from the stated errors alone; SdWidened is greater
	// where the readings differ by more than those explain.
	SdInternal float64 `json:"sd_internal"`
	SdWidened  float64 `json:"sd_widened"`
	Chi2       float64 `json:"chi2"`
	Degrees    int     `json:"degrees"`
	P          float64 `json:"p_value"`     // of a greater Chi2, if the stated errors are right
	SdOfOne    float64 `json:"sd_observed"` // of one reading, from the spread alone
	Spread     float64 `json:"spread"`      // greatest less least
}

// disagreement is the probability below which readings are said to disagree
// (house).
const disagreement = 0.05

// Agree reports whether the stated errors explain the spread of the readings.
func (c Combined) Agree() bool { return c.P >= disagreement }

// Combine gives the mean of two or more independent readings weighted by 1/sd^2, and tests
// them: Chi2 against its law with one degree of freedom less than readings. Where they
// differ by more than stated the error is widened by the root of Chi2 per degree of freedom
// (Birge 1932, from memory); it is never narrowed. A blunder is not cured by widening.
func Combine(readings []Reading) (Combined, error) {
	if len(readings) < 2 {
		return Combined{}, fmt.Errorf("%d readings; expected two or more to combine", len(readings))
	}
	weights, mean := 0.0, 0.0
	for i, r := range readings {
		if !(r.Sd > 0) || math.IsInf(r.Sd, 1) || math.IsNaN(r.Value) || math.IsInf(r.Value, 0) {
			return Combined{}, fmt.Errorf("reading %d is %v with a standard deviation of %v; expected finite numbers, the latter more than 0, so that it has a weight", i+1, r.Value, r.Sd)
		}
		w := 1 / (r.Sd * r.Sd)
		weights += w
		mean += (r.Value - mean) * w / weights
	}
	c := Combined{Mean: mean, SdInternal: 1 / math.Sqrt(weights), Degrees: len(readings) - 1}
	c.spread(readings)
	c.P = distuv.ChiSquared{K: float64(c.Degrees)}.Survival(c.Chi2)
	c.SdWidened = c.SdInternal * math.Max(1, math.Sqrt(c.Chi2/float64(c.Degrees)))
	return c, nil
}

// spread fills in what the differences between the readings say.
func (c *Combined) spread(readings []Reading) {
	least, most, plain := readings[0].Value, readings[0].Value, 0.0
	for _, r := range readings {
		z := (r.Value - c.Mean) / r.Sd
		c.Chi2 += z * z
		least, most = math.Min(least, r.Value), math.Max(most, r.Value)
		plain += r.Value / float64(len(readings))
	}
	sum := 0.0
	for _, r := range readings {
		sum += (r.Value - plain) * (r.Value - plain)
	}
	c.Spread, c.SdOfOne = most-least, math.Sqrt(sum/float64(c.Degrees))
}

// Difference returns the difference of two readings over its own standard
// deviation: beyond 2 either way they hardly fit.
func Difference(a, b Reading) float64 {
	return (a.Value - b.Value) / math.Hypot(a.Sd, b.Sd)
}
