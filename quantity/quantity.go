package quantity

import "math"

// SI quantities. The unit of each is named beside it.
type (
	Length     float64 // m
	Area       float64 // m2
	Volume     float64 // m3
	Mass       float64 // kg
	Density    float64 // kg/m3
	Force      float64 // N
	Moment     float64 // N m
	Stress     float64 // Pa
	Stiffness  float64 // N/m
	Angle      float64 // rad
	Speed      float64 // m/s
	Time       float64 // s
	Frequency  float64 // Hz
	Proportion float64 // 1
)

// StandardGravity is the standard acceleration of free fall, m/s2
// (3rd CGPM 1901, exact by definition).
const StandardGravity = 9.80665

// Degree is one degree of arc; 90*Degree is a right angle.
const Degree Angle = math.Pi / 180

// Degrees returns the angle in degrees.
func (a Angle) Degrees() float64 { return float64(a) * 180 / math.Pi }

// Sin returns the sine of the angle.
func (a Angle) Sin() float64 { return math.Sin(float64(a)) }

// Cos returns the cosine of the angle.
func (a Angle) Cos() float64 { return math.Cos(float64(a)) }

// Weight returns the weight of the mass in standard gravity.
func (m Mass) Weight() Force { return Force(float64(m) * StandardGravity) }
