package gear

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// Stretch returns how far the lower end of every link moves down against its
// upper end under the pull on the chain: n t^2 F l/(EA) for n parts that each
// take t F, from the energy stored in them. Metal without a stiffness and
// parts without a length count as rigid. An error names a textile part with a
// length but without a stiffness, which would otherwise hide its stretch.
func (c Chain) Stretch(pull quantity.Force) (each []quantity.Length, total quantity.Length, err error) {
	each = make([]quantity.Length, len(c))
	for i, link := range c {
		if each[i], err = link.stretch(pull); err != nil {
			return nil, 0, fmt.Errorf("links[%d] (%s): %w", i, link.Name, err)
		}
		total += each[i]
	}
	return each, total, nil
}

func (l Link) stretch(pull quantity.Force) (quantity.Length, error) {
	switch {
	case l.Length == 0:
		return 0, nil
	case l.AxialStiffness == 0 && l.Material == Metal:
		return 0, nil
	case !(l.Length > 0 && l.AxialStiffness > 0):
		return 0, fmt.Errorf("length, axial_stiffness: %v m, %v N; expected both above 0", l.Length, l.AxialStiffness)
	}
	share := float64(l.parts()) * l.partPull() * l.partPull()
	return quantity.Length(share * float64(pull) * float64(l.Length) / float64(l.AxialStiffness)), nil
}

// Stiffness returns the pull for each metre the chain stretches, +Inf for a
// rigid chain. Errors as for Stretch.
func (c Chain) Stiffness() (quantity.Stiffness, error) {
	_, total, err := c.Stretch(1)
	if err != nil {
		return 0, err
	}
	if total == 0 {
		return quantity.Stiffness(math.Inf(1)), nil
	}
	return quantity.Stiffness(1 / total), nil
}

// AxialStiffnessFrom returns EA of a rope that grows by the elongation when
// the pull rises by the step, as EN 1891 tests it: from 50 to 150 kg with at
// most 5 %.
func AxialStiffnessFrom(step quantity.Force, elongation quantity.Proportion) (quantity.Force, error) {
	if !(step > 0 && elongation > 0) {
		return 0, fmt.Errorf("step, elongation: %v N, %v; expected both above 0", step, elongation)
	}
	return step / quantity.Force(elongation), nil
}
