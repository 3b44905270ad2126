package frame

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// check looks for loads that cannot be placed on the frame.
func (f *Frame) check(c LoadCase) error {
	if !finite(c.Gravity) {
		return fmt.Errorf("gravity %v; expected finite numbers", c.Gravity)
	}
	for i, p := range c.Points {
		if err := f.place(p.At); err != nil {
			return fmt.Errorf("point load %d: %w", i, err)
		}
		if !finite(p.Force) {
			return fmt.Errorf("point load %d: force %v; expected finite numbers", i, p.Force)
		}
	}
	for i, l := range c.Lines {
		for _, along := range []quantity.Length{l.From, l.To} {
			if err := f.place(Place{l.Member, along}); err != nil {
				return fmt.Errorf("line load %d: %w", i, err)
			}
		}
		if !(l.From < l.To) || !finite(l.FromForce) || !finite(l.ToForce) {
			return fmt.Errorf("line load %d: from %v to %v m, %v to %v N/m; expected a stretch above 0 and finite forces",
				i, float64(l.From), float64(l.To), l.FromForce, l.ToForce)
		}
	}
	return nil
}

func (f *Frame) place(at Place) error {
	if at.Member < 0 || at.Member >= len(f.members) {
		return fmt.Errorf("member %d; expected 0 to %d", at.Member, len(f.members)-1)
	}
	if length := f.members[at.Member].length; !(at.Along >= -joint && float64(at.Along) <= length+joint) {
		return fmt.Errorf("%v m along member %d; expected 0 to %.6g m", float64(at.Along), at.Member, length)
	}
	return nil
}

func finite(v quantity.Vec3) bool {
	sum := v.X + v.Y + v.Z
	return !math.IsNaN(sum) && !math.IsInf(sum, 0)
}
