package chance

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/interp"
)

// Tabled is a law read from a table, for one whose quantiles are slow to find.
type Tabled struct {
	law   Law
	curve interp.FritschButland
}

// The table holds the deviates from -tabledReach to tabledReach; beyond them it
// stays at its ends, a chance of 1e-17 on either side.
const (
	tabledReach = 8.5
	tabledSteps = 32 // for each unit of z
)

// TabledOf tabulates a law and reads it by monotone cubic pieces; between its
// places a smooth law is met to about 1e-6 of its spread.
// Errors: a value that is not finite, values that fall.
// Source: Fritsch & Butland, 1984, SIAM Journal on Scientific and Statistical Computing 5:300
// (from memory).
func TabledOf(law Law) (Tabled, error) {
	t := Tabled{law: law}
	var zs, values []float64
	for i := range int(2*tabledReach*tabledSteps) + 1 {
		z := -tabledReach + float64(i)/tabledSteps
		x := law.At(z)
		if math.IsNaN(x) || math.IsInf(x, 0) || len(values) > 0 && x < values[len(values)-1] {
			return Tabled{}, fmt.Errorf("law with the value %v at the deviate %v; expected finite values that do not fall", x, z)
		}
		zs, values = append(zs, z), append(values, x)
	}
	if err := t.curve.Fit(zs, values); err != nil {
		return Tabled{}, fmt.Errorf("table of a law: %w", err)
	}
	return t, nil
}

// At returns the value at the standard normal deviate z.
func (t Tabled) At(z float64) float64 { return t.curve.Predict(z) }

// Deviate returns the standard normal deviate of a value, by the law itself.
func (t Tabled) Deviate(x float64) float64 { return t.law.Deviate(x) }
