package frame

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// LowestFrequency returns the lowest frequency of those modes that a push of
// the whole frame in some one direction excites: the sway that wind and swings
// can stir up. It is found by subspace iteration from the three shifts of the
// whole, so that turning or mirroring the frame changes nothing. Modes whose
// parts cancel, such as two equal limbs against each other, are passed over;
// Modes finds those as well. A fixed number of steps leaves a relative error of
// 1e-9 for a single limb and up to some 1e-3, high, where two modes lie close.
// Errors: no density.
// Source: subspace iteration, Bathe & Wilson, 1972 (from memory).
func (a *Analysis) LowestFrequency() (quantity.Frequency, error) {
	if a.frame.material.Density <= 0 {
		return 0, fmt.Errorf("material density: 0; expected the density of the wood")
	}
	s := &subspace{a: a, mass: a.massMatrix()}
	s.x, s.y, s.z = vectors(3, a), vectors(3, a), vectors(3, a)
	for k, x := range s.x {
		for i := k; i < len(x); i += freedoms {
			x[i] = 1
		}
	}
	const steps = 8
	square := 0.0
	for range steps {
		squares, err := s.step()
		if err != nil {
			return 0, fmt.Errorf("lowest frequency: %w", err)
		}
		square = squares[0]
	}
	return quantity.Frequency(math.Sqrt(square) / (2 * math.Pi)), nil
}
