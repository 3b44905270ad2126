package numeric

import (
	"errors"
	"fmt"
)

// ErrNotPositive says that a matrix has no factor because it is not positive
// definite: a structure that can move freely, or a stiffness that is 0.
var ErrNotPositive = errors.New("matrix is not positive definite")

// Skyline is a symmetric matrix stored by columns from the first entry that is
// not zero down to the diagonal. Factor replaces it by its factors L D Lt in
// place; nothing outside the profile ever fills in. Methods allocate nothing.
//
// Source: active column solution, K.-J. Bathe, Finite Element Procedures,
// section 8.2.3 (from memory).
type Skyline struct {
	first  []int // first row of each column
	start  []int // place of that entry in values; one more at the end
	values []float64
}

// NewSkyline returns the zero matrix whose column j has its first entry in row
// first[j], which must lie in 0 to j.
func NewSkyline(first []int) *Skyline {
	s := &Skyline{first: append([]int(nil), first...), start: make([]int, len(first)+1)}
	for j, row := range first {
		if row < 0 || row > j {
			panic(fmt.Sprintf("numeric: column %d starts in row %d", j, row))
		}
		s.start[j+1] = s.start[j] + j - row + 1
	}
	s.values = make([]float64, s.start[len(first)])
	return s
}

// Order returns the number of rows.
func (s *Skyline) Order() int { return len(s.first) }

// Entries returns the number of stored values.
func (s *Skyline) Entries() int { return len(s.values) }

// Zero sets all entries to 0 for a new matrix of the same profile.
func (s *Skyline) Zero() { clear(s.values) }

// Add adds v to the entry in row i and column j, and so to its mirror image.
// It panics outside the profile.
func (s *Skyline) Add(i, j int, v float64) {
	if i > j {
		i, j = j, i
	}
	if i < s.first[j] {
		panic("numeric: entry outside the profile")
	}
	s.values[s.start[j+1]-1-(j-i)] += v
}

// column returns the entries of column j from its first row to the diagonal.
func (s *Skyline) column(j int) []float64 { return s.values[s.start[j]:s.start[j+1]] }

// Factor replaces the matrix by its factors. It returns ErrNotPositive, with
// the row, when a pivot is not above 0.
func (s *Skyline) Factor() error {
	for j := range s.first {
		column, top := s.column(j), s.first[j]
		s.reduce(column, top, j)
		diagonal := column[j-top]
		for k := range column[:j-top] {
			pivot := s.values[s.start[top+k+1]-1]
			g := column[k]
			column[k] = g / pivot
			diagonal -= g * column[k]
		}
		if !(diagonal > 0) {
			return fmt.Errorf("row %d: %w", j, ErrNotPositive)
		}
		column[j-top] = diagonal
	}
	return nil
}

// reduce eliminates the rows above the diagonal of column j.
func (s *Skyline) reduce(column []float64, top, j int) {
	for i := top + 1; i < j; i++ {
		other, from := s.column(i), s.first[i]
		if from < top {
			other, from = other[top-from:], top
		}
		n := i - from
		column[i-top] -= dot(other[:n], column[from-top:from-top+n])
	}
}

// Solve replaces the right-hand side b by the solution. The matrix must have
// been factored.
func (s *Skyline) Solve(b []float64) {
	for j := range s.first {
		column, top := s.column(j), s.first[j]
		n := j - top
		b[j] -= dot(column[:n], b[top:j])
	}
	for j := range s.first {
		b[j] /= s.values[s.start[j+1]-1]
	}
	for j := len(s.first) - 1; j >= 0; j-- {
		column, top := s.column(j), s.first[j]
		x := b[j]
		target := b[top:j]
		for k, v := range column[:len(target)] {
			target[k] -= v * x
		}
	}
}

// Multiply sets y to the matrix times x. The matrix must not have been
// factored.
func (s *Skyline) Multiply(y, x []float64) {
	clear(y)
	for j := range s.first {
		column, top := s.column(j), s.first[j]
		n := j - top
		y[j] += column[n]*x[j] + dot(column[:n], x[top:j])
		target := y[top:j]
		for k, v := range column[:len(target)] {
			target[k] += v * x[j]
		}
	}
}

func dot(a, b []float64) float64 {
	sum := 0.0
	b = b[:len(a)]
	for k, v := range a {
		sum += v * b[k]
	}
	return sum
}
