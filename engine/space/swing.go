package space

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// Swing is the moving part of a hang.
type Swing struct {
	// HangHeight is the height of the hang point above the ground at the plumb
	// line, above 0.
	HangHeight quantity.Length
	// Line is the length from the hang point to the seat, above 0.
	Line quantity.Length
	// SeatDrop is how far the seat lies below the rider's centre of mass,
	// measured along the line; less than Line. It makes the pendulum shorter
	// than the line and the seat faster.
	SeatDrop quantity.Length
	// FootReach is how far the feet hang beyond the seat, along the line.
	FootReach quantity.Length
	// FootOffset is how far the feet lie ahead of the line, square to it;
	// positive towards positive Along. A rider may face either way: check both
	// signs.
	FootOffset quantity.Length
	// Amplitude is the greatest angle of the line from the vertical on either
	// side, 0 to 90 degrees.
	Amplitude quantity.Angle
}

// Lowered returns the swing with the limb sagged and the line stretched: the
// hang point comes down by sag, the line grows by stretch. The clearance is
// least with both at their greatest; the height of fall is greatest with both
// 0.
func (s Swing) Lowered(sag, stretch quantity.Length) Swing {
	s.HangHeight -= sag
	s.Line += stretch
	return s
}

// SeatSpeed returns the speed of the seat where the line stands at the angle
// at: an undamped pendulum of the length line - drop released at rest at the
// amplitude, v = L sqrt(2 g (cos at - cos a) / (L - c)), from the balance of
// energy. Beyond the amplitude it is 0. Air drag is left out, which errs on
// the fast side.
func (s Swing) SeatSpeed(at quantity.Angle) quantity.Speed {
	drop := at.Cos() - s.Amplitude.Cos()
	if drop <= 0 {
		return 0
	}
	line := float64(s.Line)
	return quantity.Speed(line * math.Sqrt(2*quantity.StandardGravity*drop/(line-float64(s.SeatDrop))))
}

func (s Swing) validate() error {
	switch {
	case !finite(s.HangHeight) || s.HangHeight <= 0:
		return fmt.Errorf("swing.hang_height: %v m; expected a height above 0", s.HangHeight)
	case !finite(s.Line) || s.Line <= 0:
		return fmt.Errorf("swing.line: %v m; expected a length above 0", s.Line)
	case !finite(s.SeatDrop) || s.SeatDrop >= s.Line:
		return fmt.Errorf("swing.seat_drop: %v m; expected less than the line of %v m", s.SeatDrop, s.Line)
	case !finite(s.FootReach) || s.Line+s.FootReach <= 0:
		return fmt.Errorf("swing.foot_reach: %v m; expected feet below the hang point", s.FootReach)
	case !finite(s.FootOffset):
		return fmt.Errorf("swing.foot_offset: %v m; expected a finite length", s.FootOffset)
	case !(s.Amplitude >= 0 && s.Amplitude <= 90*quantity.Degree):
		return fmt.Errorf("swing.amplitude: %.4g deg; expected 0 to 90 deg, beyond which the line goes slack", s.Amplitude.Degrees())
	}
	return nil
}

// plumbHeight is the height of the hang point in the datum of the ground.
func (s Swing) plumbHeight(g Ground) float64 { return float64(g.At(0) + s.HangHeight) }
