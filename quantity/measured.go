package quantity

import "math"

// How says how a value was got.
type How string

// The ways of getting a value. NotStated is judged like ByEye.
const (
	NotStated    How = ""
	Taped        How = "taped"
	Calliper     How = "calliper"
	Weighed      How = "weighed"
	Clinometer   How = "clinometer"
	Compass      How = "compass"
	Laser        How = "laser"
	AngularWidth How = "angular width"
	Photo        How = "photo"
	ByEye        How = "by eye"
	FromTable    How = "from a table"
	Assumed      How = "assumed"
)

// Hows lists every way in which a value can be got, NotStated left out.
func Hows() []How {
	return []How{Taped, Calliper, Weighed, Clinometer, Compass, Laser, AngularWidth, Photo, ByEye, FromTable, Assumed}
}

// Tail is the standard normal deviate of the one-sided 5 % fractile. Checks
// take the unfavourable 5 % value of every measurement.
const Tail = 1.645

// Measured is a value with its standard deviation and the way it was got.
// SdStated tells a stated Sd (0 included) from one left to the defaults of
// the method.
type Measured[Q Kind] struct {
	Value    Q
	Sd       Q
	SdStated bool
	How      How
}

// Low returns the value exceeded with 95 % probability. It does not change the
// sign: of a value of 0 or more it is not below 0.
func (m Measured[Q]) Low() Q {
	low := m.Value - Q(Tail*float64(m.Sd))
	if m.Value >= 0 {
		return max(0, low)
	}
	return low
}

// High returns the value exceeded with 5 % probability.
func (m Measured[Q]) High() Q { return m.Value + Q(Tail*float64(m.Sd)) }

// RelativeSd returns the standard deviation as a share of the value, 0 for a
// value of 0.
func (m Measured[Q]) RelativeSd() float64 {
	if m.Value == 0 {
		return 0
	}
	return math.Abs(float64(m.Sd) / float64(m.Value))
}
