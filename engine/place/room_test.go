package place

import (
	"testing"

	"boughline/engine/space"
	"boughline/quantity"
)

// Geometry on level ground: feet lowest at rest, the seat highest at the ends,
// L/2 + seat height at 60 degrees (EN 1176-2:2008, 4.10.1, read second-hand).
func TestRoomOverLevelGround(t *testing.T) {
	room := level().room
	for _, line := range []quantity.Length{1, 2.75, 4.2} {
		near(t, "feet", float64(room.FootClearance(1, line)), float64(5-line-0.45), 1e-12)
		near(t, "fall", float64(room.FallHeight(1, line)), float64(space.StandardFallHeight(line, 5-line)), 1e-12)
	}
}

// Ground that rises along the limb takes the same from both.
func TestRiseAlongLowersClearanceAndFall(t *testing.T) {
	room := level().room
	room.RiseAlong = 0.05
	near(t, "feet", float64(room.FootClearance(2, 3)), 5-3-0.45-0.1, 1e-12)
	near(t, "fall", float64(room.FallHeight(2, 3)), 5-1.5-0.1, 1e-12)
	foot := must(room.FootConstraint(0.5))(t)
	near(t, "foot margin", foot.Margin.At(2, 3), (1.45-0.5)/0.5, 1e-12)
	fall := must(room.FallConstraint(4))(t)
	near(t, "fall margin", fall.Margin.At(2, 3), 1-3.4/4, 1e-12)
}

// EN 1176-2 (read second-hand): 0.2 L + 0.2 m between seat and frame.
func TestStemConstraint(t *testing.T) {
	stem := must(StemConstraint(space.SeatToFrame))(t)
	near(t, "on the limit", stem.Margin.At(1.04, 4.2), 0, 1e-12)
	near(t, "twice the room", stem.Margin.At(2, 4), 1, 1e-12)
}
