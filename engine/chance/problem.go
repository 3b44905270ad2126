package chance

import (
	"fmt"
	"math"
)

// Problem asks how likely it is that a margin is less than 0. Margin is called
// from several goroutines at once and must not keep or change x; where several checks
// count, it is the least of their margins. A margin that is not a number counts as failed.
//
// It covers what the margin models, not defects nobody saw.
type Problem struct {
	Inputs Inputs
	Margin func(x []float64) float64
	// Gradient sets dst to the derivatives of the margin by the inputs. Nil
	// leaves them to central differences.
	Gradient func(dst, x []float64)
}

func (p Problem) check() error {
	if p.Inputs.Len() == 0 {
		return fmt.Errorf("no random input; expected one or more")
	}
	if p.Margin == nil {
		return fmt.Errorf("no margin; expected a function of the inputs")
	}
	return nil
}

// standard is the problem in the space of independent standard normal variables.
type standard struct {
	Problem
	x, slope []float64
}

func (p Problem) standard() *standard {
	n := p.Inputs.Len()
	return &standard{Problem: p, x: make([]float64, n), slope: make([]float64, n)}
}

func (s *standard) margin(u []float64) float64 {
	s.Inputs.Values(s.x, u)
	return s.Margin(s.x)
}

// difference is the step of central differences in standard deviations: errors
// of rounding and of the third derivative are both about 1e-9.
const difference = 1e-4

// gradient sets dst to the derivatives of the margin by u; it changes u and puts
// it back.
func (s *standard) gradient(dst, u []float64) {
	if s.Gradient != nil {
		s.chain(dst, u)
		return
	}
	for i, at := range u {
		u[i] = at + difference
		above := s.margin(u)
		u[i] = at - difference
		dst[i] = (above - s.margin(u)) / (2 * difference)
		u[i] = at
	}
}

// chain turns the given derivatives by x into those by u.
func (s *standard) chain(dst, u []float64) {
	in := s.Inputs
	in.Values(s.x, u)
	s.Gradient(s.slope, s.x)
	for i, law := range in.laws {
		z := u[i]
		if in.lower != nil {
			z = dot(in.lower[i][:i+1], u)
		}
		s.slope[i] *= (law.At(z+difference) - law.At(z-difference)) / (2 * difference)
	}
	copy(dst, s.slope)
	for i := range in.lower { // row i is needed by places up to i only
		dst[i] = 0
		for j := i; j < len(u); j++ {
			dst[i] += in.lower[j][i] * s.slope[j]
		}
	}
}

func norm(v []float64) float64 { return math.Sqrt(dot(v, v)) }
