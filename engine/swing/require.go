package swing

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// field is an input by the name and unit in which an error speaks of it.
type field struct {
	name  string
	value float64
	unit  string
}

func requirePositive(fields ...field) error {
	for _, f := range fields {
		if !(f.value > 0) || math.IsInf(f.value, 0) {
			return fmt.Errorf("%s is %g %s; expected more than 0", f.name, f.value, f.unit)
		}
	}
	return nil
}

func requireNotNegative(fields ...field) error {
	for _, f := range fields {
		if !(f.value >= 0) || math.IsInf(f.value, 0) {
			return fmt.Errorf("%s is %g %s; expected 0 or more", f.name, f.value, f.unit)
		}
	}
	return nil
}

// requireTaut refuses amplitudes at which a line does not stay tight.
func requireTaut(amplitude quantity.Angle) error {
	if a := amplitude.Degrees(); !(a > 0 && a < 90) {
		return fmt.Errorf("amplitude is %.4g deg; expected more than 0 and less than 90, "+
			"for at 90 deg the pull ends at nothing and beyond it the line goes slack and the rider falls", a)
	}
	return nil
}

// requireRising refuses windows of time that do not follow one another.
func requireRising(windows []quantity.Time) error {
	last := quantity.Time(0)
	for i, w := range windows {
		if !(w > last) || math.IsInf(float64(w), 0) {
			return fmt.Errorf("window %d ends at %g s; expected more than %g s", i, float64(w), float64(last))
		}
		last = w
	}
	return nil
}
