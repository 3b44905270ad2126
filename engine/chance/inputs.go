package chance

import (
	"fmt"

	"gonum.org/v1/gonum/mat"
)

// Inputs are the random inputs of a problem, in a fixed order, as a map from
// independent standard normal variables u.
type Inputs struct {
	laws  []Law
	lower [][]float64 // rows of the Cholesky factor of the correlation; nil if independent
}

// Correlation ties the inputs at two places. Rho is the correlation of their
// standard normal deviates, which is that of the inputs themselves if both are normal.
type Correlation struct {
	First, Second int
	Rho           float64
}

// NewInputs returns inputs with the given laws, independent but for the ties.
// Errors: no law, a tie of an input that is not there or with itself, and correlations that
// contradict one another (their matrix is not positive definite).
// Source: Nataf's model, Liu & Der Kiureghian, 1986, Probabilistic Engineering
// Mechanics 1:105, with the correlation of the deviates given (from memory).
func NewInputs(laws []Law, ties ...Correlation) (Inputs, error) {
	if len(laws) == 0 {
		return Inputs{}, fmt.Errorf("no random input; expected one or more")
	}
	in := Inputs{laws: laws}
	if len(ties) == 0 {
		return in, nil
	}
	matrix := mat.NewSymDense(len(laws), nil)
	for i := range laws {
		matrix.SetSym(i, i, 1)
	}
	for _, t := range ties {
		if min(t.First, t.Second) < 0 || max(t.First, t.Second) >= len(laws) || t.First == t.Second {
			return Inputs{}, fmt.Errorf("correlation of inputs %d and %d; expected two of the %d inputs", t.First, t.Second, len(laws))
		}
		matrix.SetSym(t.First, t.Second, t.Rho)
	}
	var factor mat.Cholesky
	if !factor.Factorize(matrix) {
		return Inputs{}, fmt.Errorf("correlations %v contradict one another; expected a positive definite matrix", ties)
	}
	var lower mat.TriDense
	factor.LTo(&lower)
	for i := range laws {
		in.lower = append(in.lower, mat.Row(nil, i, &lower))
	}
	return in, nil
}

// Len returns the number of inputs.
func (in Inputs) Len() int { return len(in.laws) }

// Values sets x to the values of the inputs at u, independent standard normal
// variables; x may be u.
func (in Inputs) Values(x, u []float64) {
	copy(x, u)
	if in.lower != nil {
		in.correlate(x)
	}
	for i, law := range in.laws {
		x[i] = law.At(x[i])
	}
}

// Deviates sets u to the independent standard normal variables at which the
// inputs have the values x; u must not be x.
func (in Inputs) Deviates(u, x []float64) {
	for i, law := range in.laws {
		u[i] = law.Deviate(x[i])
		if in.lower != nil {
			row := in.lower[i]
			u[i] = (u[i] - dot(row[:i], u)) / row[i]
		}
	}
}

// dot returns the sum of a[i] b[i] over the elements of a.
func dot(a, b []float64) float64 {
	sum := 0.0
	for i, v := range a {
		sum += v * b[i]
	}
	return sum
}
