package frame

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"

	"gonum.org/v1/gonum/mat"

	"boughline/engine/numeric"
	"boughline/quantity"
)

// modes iterates on a subspace: solve with the inertia of the last vectors,
// then take the modes of the small problem that they span (Bathe & Wilson
// 1972, from memory). keep, where given, holds the vectors in a plane.
func (a *Analysis) modes(count int, keep func([]float64)) ([]Mode, error) {
	n := a.matrix.Order()
	if count < 1 || count > n/2 {
		return nil, fmt.Errorf("modes: %d; expected 1 to %d for this mesh", count, n/2)
	}
	if a.frame.material.Density <= 0 {
		return nil, fmt.Errorf("material density: 0; expected the density of the wood")
	}
	size := min(2*count+4, count+8, n)
	if keep != nil {
		size = min(size, n/3) // two of six freedoms are left
	}
	s := newSubspace(a, size, keep)
	last := make([]float64, count)
	const most, settled = 200, 1e-8
	for range most {
		squares, err := s.step()
		if err != nil {
			return nil, err
		}
		change := 0.0
		for i := range last {
			change = math.Max(change, math.Abs(squares[i]-last[i])/squares[i])
		}
		if copy(last, squares); change < settled {
			return s.pick(last), nil
		}
	}
	return nil, fmt.Errorf("%d modes: %w", count, ErrNoConvergence)
}

// subspace holds the vectors of the iteration.
type subspace struct {
	a       *Analysis
	mass    *numeric.Skyline
	keep    func([]float64)
	x, y, z [][]float64 // vectors, inertia of x or solution, inertia of y
}

func newSubspace(a *Analysis, size int, keep func([]float64)) *subspace {
	s := &subspace{a: a, mass: a.massMatrix(), keep: keep}
	s.x, s.y, s.z = vectors(size, a), vectors(size, a), vectors(size, a)
	random := rand.New(rand.NewPCG(1, 2)) // fixed: the same modes every time
	for _, x := range s.x {
		for i := range x {
			x[i] = random.NormFloat64()
		}
	}
	return s
}

func vectors(count int, a *Analysis) [][]float64 {
	v := make([][]float64, count)
	for i := range v {
		v[i] = make([]float64, a.matrix.Order())
	}
	return v
}

// step runs one iteration and returns the squares of the circular frequencies.
func (s *subspace) step() ([]float64, error) {
	for i, x := range s.x {
		if s.keep != nil {
			s.keep(x)
		}
		s.mass.Multiply(s.z[i], x)
		copy(s.y[i], s.z[i])
		s.a.matrix.Solve(s.y[i])
	}
	size := len(s.x)
	stiffness, inertia := mat.NewSymDense(size, nil), mat.NewSymDense(size, nil)
	for i := range size {
		for j := i; j < size; j++ {
			stiffness.SetSym(i, j, inner(s.y[i], s.z[j])) // yt K y, for K y = z
		}
	}
	for i := range size {
		s.mass.Multiply(s.z[i], s.y[i])
	}
	for i := range size {
		for j := i; j < size; j++ {
			inertia.SetSym(i, j, inner(s.y[i], s.z[j]))
		}
	}
	squares, vectors, err := generalised(stiffness, inertia)
	if err != nil {
		return nil, err
	}
	for j, x := range s.x {
		clear(x)
		for i, y := range s.y {
			k := vectors.At(i, j)
			for r := range x {
				x[r] += k * y[r]
			}
		}
	}
	return squares, nil
}

func inner(a, b []float64) float64 {
	sum := 0.0
	for i, v := range a {
		sum += v * b[i]
	}
	return sum
}

// generalised solves K q = w2 M q for small symmetric matrices, w2 ascending
// and qt M q = 1. It works on M q = q/w2 with K = L Lt, which stays sound when
// M is all but singular.
func generalised(k, m *mat.SymDense) ([]float64, *mat.Dense, error) {
	size := k.SymmetricDim()
	var factor mat.Cholesky
	if !factor.Factorize(k) {
		return nil, nil, fmt.Errorf("vectors that depend on each other: %w", ErrNoConvergence)
	}
	var upper mat.TriDense
	factor.UTo(&upper)
	var half, full mat.Dense // U^-T M U^-1
	if err := half.Solve(upper.T(), m); err != nil {
		return nil, nil, fmt.Errorf("small problem: %w", err)
	}
	if err := full.Solve(upper.T(), half.T()); err != nil {
		return nil, nil, fmt.Errorf("small problem: %w", err)
	}
	symmetric := mat.NewSymDense(size, nil)
	for i := range size {
		for j := i; j < size; j++ {
			symmetric.SetSym(i, j, (full.At(i, j)+full.At(j, i))/2)
		}
	}
	var eigen mat.EigenSym
	if !eigen.Factorize(symmetric, true) {
		return nil, nil, fmt.Errorf("small problem: %w", ErrNoConvergence)
	}
	var q, vectors mat.Dense
	eigen.VectorsTo(&q)
	if err := vectors.Solve(&upper, &q); err != nil {
		return nil, nil, fmt.Errorf("small problem: %w", err)
	}
	return ascending(eigen.Values(nil), &vectors)
}

// ascending turns the eigenvalues 1/w2 around and scales each vector to a
// modal mass of 1.
func ascending(inverses []float64, vectors *mat.Dense) ([]float64, *mat.Dense, error) {
	size := len(inverses)
	slices.Reverse(inverses)
	ordered := mat.NewDense(size, size, nil)
	squares := make([]float64, size)
	for j, inverse := range inverses {
		squares[j] = 1 / inverse
		for i := range size {
			ordered.Set(i, j, vectors.At(i, size-1-j)/math.Sqrt(math.Abs(inverse)))
		}
	}
	return squares, ordered, nil
}

// pick returns the settled modes.
func (s *subspace) pick(squares []float64) []Mode {
	modes := make([]Mode, len(squares))
	for i, square := range squares {
		modes[i] = Mode{
			Frequency: quantity.Frequency(math.Sqrt(square) / (2 * math.Pi)),
			analysis:  s.a,
			shape:     slices.Clone(s.x[i]),
		}
	}
	return modes
}
