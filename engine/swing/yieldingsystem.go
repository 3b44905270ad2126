package swing

import "math"

// yielding is the system: X and Y of the hang point and the angle, then their
// rates.
type yielding struct {
	length, mass, limb, gravity float64
	x, y                        spring
	bothWays                    bool // the hang point moves along X too
}

type spring struct{ stiffness, damping float64 }

func (s spring) force(offset, rate float64) float64 { return s.stiffness*offset + s.damping*rate }

// pull is the force along the line. The rider's acceleration along the line,
// seen from the hang point, is L q'^2; the hang point's own follows from the
// pull and the forces of the limb. share is how much of the pull moves the hang
// point back along the line.
func (s *yielding) pull(y []float64) float64 {
	drive, share := s.balance(y)
	return s.mass * drive / (1 + s.mass*share/s.limb)
}

func (s *yielding) balance(y []float64) (drive, share float64) {
	sin, cos := math.Sincos(y[2])
	drive = s.gravity*cos + s.length*y[5]*y[5] - s.y.force(y[1], y[4])*cos/s.limb
	if !s.bothWays {
		return drive, cos * cos
	}
	return drive + s.x.force(y[0], y[3])*sin/s.limb, 1
}

// Rates implements numeric.System.
func (s *yielding) Rates(_ float64, y, rates []float64) {
	sin, cos := math.Sincos(y[2])
	pull := s.pull(y)
	ax := 0.0
	if s.bothWays {
		ax = (pull*sin - s.x.force(y[0], y[3])) / s.limb
	}
	ay := (-pull*cos - s.y.force(y[1], y[4])) / s.limb
	rates[0], rates[1], rates[2] = y[3], y[4], y[5]
	rates[3], rates[4] = ax, ay
	rates[5] = -(s.gravity*sin + ax*cos + ay*sin) / s.length
}

// pullRate is the rate of the pull, term by term.
func (s *yielding) pullRate(y []float64) float64 {
	var d [6]float64
	s.Rates(0, y, d[:])
	sin, cos := math.Sincos(y[2])
	turn := y[5]
	forceY, forceYRate := s.y.force(y[1], y[4]), s.y.force(d[1], d[4])
	driveRate := -s.gravity*sin*turn + 2*s.length*turn*d[5] - (forceYRate*cos-forceY*sin*turn)/s.limb
	shareRate := -2 * sin * cos * turn
	if s.bothWays {
		forceX, forceXRate := s.x.force(y[0], y[3]), s.x.force(d[0], d[3])
		driveRate += (forceXRate*sin + forceX*cos*turn) / s.limb
		shareRate = 0
	}
	drive, share := s.balance(y)
	whole := 1 + s.mass*share/s.limb
	return s.mass * (driveRate*whole - drive*s.mass*shareRate/s.limb) / (whole * whole)
}

// vertical is the force on the limb, downward.
func (s *yielding) vertical(y []float64) float64 { return -s.y.force(y[1], y[4]) }

func (s *yielding) verticalRate(y []float64) float64 {
	var d [6]float64
	s.Rates(0, y, d[:])
	return -s.y.force(d[1], d[4])
}

// horizontal is the force on the limb along the swing.
func (s *yielding) horizontal(y []float64) float64 { return s.x.force(y[0], y[3]) }

func (s *yielding) horizontalRate(y []float64) float64 {
	var d [6]float64
	s.Rates(0, y, d[:])
	return s.x.force(d[0], d[3])
}
