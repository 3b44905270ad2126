package numeric

import (
	"errors"
	"math"
	"testing"

	"gonum.org/v1/gonum/mat"
	"pgregory.net/rapid"
)

// drawPositive draws a positive definite matrix of a random profile, as a
// skyline and as a dense matrix: its diagonal outweighs each row.
func drawPositive(t *rapid.T) (*Skyline, *mat.SymDense) {
	n := rapid.IntRange(1, 30).Draw(t, "order")
	first := make([]int, n)
	for j := range first {
		first[j] = rapid.IntRange(0, j).Draw(t, "first")
	}
	s, dense := NewSkyline(first), mat.NewSymDense(n, nil)
	sums := make([]float64, n)
	for j := range n {
		for i := first[j]; i < j; i++ {
			v := rapid.Float64Range(-5, 5).Draw(t, "entry")
			s.Add(i, j, v/2)
			s.Add(j, i, v/2)
			dense.SetSym(i, j, v)
			sums[i], sums[j] = sums[i]+math.Abs(v), sums[j]+math.Abs(v)
		}
	}
	for j, sum := range sums {
		s.Add(j, j, sum+1)
		dense.SetSym(j, j, sum+1)
	}
	return s, dense
}

func drawVector(t *rapid.T, n int) []float64 {
	return rapid.SliceOfN(rapid.Float64Range(-10, 10), n, n).Draw(t, "vector")
}

// The dense Cholesky solution of gonum.
func TestSkylineSolvesLikeDense(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, dense := drawPositive(t)
		b := drawVector(t, s.Order())
		var factor mat.Cholesky
		if !factor.Factorize(dense) {
			t.Fatal("dense matrix is not positive definite")
		}
		var want mat.VecDense
		if err := factor.SolveVecTo(&want, mat.NewVecDense(len(b), append([]float64(nil), b...))); err != nil {
			t.Fatal(err)
		}
		if err := s.Factor(); err != nil {
			t.Fatal(err)
		}
		s.Solve(b)
		for i := range b {
			if math.Abs(b[i]-want.AtVec(i)) > 1e-10 {
				t.Fatalf("x[%d] = %v, want %v", i, b[i], want.AtVec(i))
			}
		}
	})
}

func TestSkylineMultipliesLikeDense(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, dense := drawPositive(t)
		x := drawVector(t, s.Order())
		var want mat.VecDense
		want.MulVec(dense, mat.NewVecDense(len(x), x))
		y := make([]float64, len(x))
		s.Multiply(y, x)
		for i := range y {
			if math.Abs(y[i]-want.AtVec(i)) > 1e-9 {
				t.Fatalf("y[%d] = %v, want %v", i, y[i], want.AtVec(i))
			}
		}
	})
}

func TestSkylineRefusesIndefinite(t *testing.T) {
	s := NewSkyline([]int{0, 0})
	s.Add(0, 0, 1)
	s.Add(0, 1, 2)
	s.Add(1, 1, 4) // the second row is twice the first
	if err := s.Factor(); !errors.Is(err, ErrNotPositive) {
		t.Fatalf("got %v, want %v", err, ErrNotPositive)
	}
}

// band fills the band of a chain of nodes with six freedoms each.
func band(s *Skyline) {
	s.Zero()
	for j := range s.Order() {
		s.Add(j, j, 30)
		for i := max(0, j-j%6-6); i < j; i++ {
			s.Add(i, j, 1/float64(1+j-i))
		}
	}
}

// 240 rows, half-bandwidth 12: about 240 x 12 x 12 = 35 000 multiplications to
// factor and 4 x 240 x 12 = 11 500 to solve.
func BenchmarkSkylineFactorSolve(b *testing.B) {
	first := make([]int, 240)
	for j := range first {
		first[j] = max(0, j-j%6-6)
	}
	s := NewSkyline(first)
	x := make([]float64, 240)
	b.ReportAllocs()
	for b.Loop() {
		band(s)
		if err := s.Factor(); err != nil {
			b.Fatal(err)
		}
		for i := range x {
			x[i] = 1
		}
		s.Solve(x)
	}
}

func BenchmarkSkylineSolve(b *testing.B) {
	first := make([]int, 240)
	for j := range first {
		first[j] = max(0, j-j%6-6)
	}
	s := NewSkyline(first)
	band(s)
	if err := s.Factor(); err != nil {
		b.Fatal(err)
	}
	x := make([]float64, 240)
	b.ReportAllocs()
	for b.Loop() {
		for i := range x {
			x[i] = 1
		}
		s.Solve(x)
	}
}
