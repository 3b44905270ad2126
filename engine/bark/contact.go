package bark

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// Contact is a line or strap that bears on a round limb.
type Contact struct {
	Leg    quantity.Force  // pull in one leg, 0 or more
	Along  quantity.Force  // pull along the limb on the whole contact, sign ignored
	Radius quantity.Length // of the limb over bark
	Wrap   quantity.Angle  // angle of the limb that is touched, above 0
}

// Pressure returns the mean pressure on the bark under a width w of a line
// with the pull T, p = T/(w R). For a basket of two plumb legs that carry W in
// all, that is W/(w D). Uneven bark and the edges of a strap press harder
// than the mean. Balance of a thin belt, any textbook of mechanics.
func (c Contact) Pressure(width quantity.Length) (quantity.Stress, error) {
	if err := c.validate(width); err != nil {
		return 0, err
	}
	return quantity.Stress(float64(c.Leg) / float64(width*c.Radius)), nil
}

// Shear returns the mean shear stress along the limb between bark and wood
// under a width w, Along/(w R wrap), to be held against the bond of bark to
// wood. In the growing season that bond is weaker, for spruce by a quarter and
// more: Vilkovsky et al. 2022, Forests 13:637 (abstract read), 0.36 to
// 0.49 MPa dormant, 0.26 to 0.46 MPa growing, along the grain.
func (c Contact) Shear(width quantity.Length) (quantity.Stress, error) {
	if err := c.validate(width); err != nil {
		return 0, err
	}
	area := float64(width*c.Radius) * float64(c.Wrap)
	return quantity.Stress(math.Abs(float64(c.Along)) / area), nil
}

func (c Contact) validate(width quantity.Length) error {
	switch {
	case !(c.Leg >= 0):
		return fmt.Errorf("contact.leg: %v N; expected a pull of 0 or more", c.Leg)
	case !(c.Radius > 0):
		return fmt.Errorf("contact.radius: %v m; expected above 0", c.Radius)
	case !(c.Wrap > 0):
		return fmt.Errorf("contact.wrap: %.4g deg; expected above 0", c.Wrap.Degrees())
	case !(width > 0):
		return fmt.Errorf("width: %v m; expected above 0", width)
	}
	return nil
}

// RubbingPath returns the way that a line swinging across a limb rubs over the
// bark in the given time: its point of departure runs to and fro over an arc
// of twice the amplitude, 4 a R a period. It is an upper bound, as a line held
// fast rolls on and off the limb rather than slides. Geometry.
func RubbingPath(radius quantity.Length, amplitude quantity.Angle, period, during quantity.Time) (quantity.Length, error) {
	if !(radius > 0 && amplitude >= 0 && period > 0 && during >= 0) {
		return 0, fmt.Errorf("radius, amplitude, period, during: %v m, %.4g deg, %v s, %v s; expected radius and period above 0, the rest 0 or more",
			radius, amplitude.Degrees(), period, during)
	}
	return 4 * radius * quantity.Length(amplitude) * quantity.Length(during/period), nil
}
