package chance

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/mat"
)

// curved returns the chance by the curvatures k of the limit state at the
// design point, Phi(-beta) times the product of (1 + beta k)^(-1/2), which is asymptotic for
// beta above 0. The product is a determinant within the plane across alpha.
// Source: Breitung, 1984, Journal of Engineering Mechanics 110:357 (from memory).
func (w *walk) curved(beta float64, alpha []float64) *Figure {
	if beta <= 0 {
		return nil
	}
	n := len(alpha)
	across := mat.NewDense(n, n, nil)
	for i := range n {
		for j := range n {
			across.Set(i, j, -alpha[i]*alpha[j])
		}
		across.Set(i, i, 1-alpha[i]*alpha[i])
	}
	var left, both mat.Dense
	left.Mul(across, w.hessian())
	both.Mul(&left, across)
	matrix := mat.NewSymDense(n, nil)
	for i := range n {
		for j := i; j < n; j++ {
			matrix.SetSym(i, j, beta*(both.At(i, j)+both.At(j, i))/(2*w.steepness))
		}
		matrix.SetSym(i, i, 1+matrix.At(i, i))
	}
	var factor mat.Cholesky
	if !factor.Factorize(matrix) {
		return nil
	}
	probability := Probability(beta) / math.Sqrt(factor.Det())
	if !(probability < 1) {
		return nil
	}
	figure := FigureOf(probability)
	return &figure
}

// hessian returns the second derivatives of the margin at u, by differences of
// its slopes.
func (w *walk) hessian() *mat.SymDense {
	const difference = 1e-3
	n := len(w.u)
	u := slices.Clone(w.u)
	slopes := make([][2][]float64, n)
	for i, at := range w.u {
		for side, h := range [2]float64{difference, -difference} {
			slopes[i][side] = make([]float64, n)
			u[i] = at + h
			w.gradient(slopes[i][side], u)
		}
		u[i] = at
	}
	matrix := mat.NewSymDense(n, nil)
	second := func(i, j int) float64 { return (slopes[i][0][j] - slopes[i][1][j]) / (2 * difference) }
	for i := range n {
		for j := i; j < n; j++ {
			matrix.SetSym(i, j, (second(i, j)+second(j, i))/2)
		}
	}
	return matrix
}
