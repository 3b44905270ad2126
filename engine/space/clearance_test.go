package space

import (
	"math"
	"strings"
	"testing"

	"boughline/quantity"
	"pgregory.net/rapid"
)

// slope returns ground that falls by the angle towards positive x.
func slope(angle quantity.Angle) Ground {
	drop := quantity.Length(50 * math.Tan(float64(angle)))
	return Ground{Stations: []Point{{-50, drop}, {50, -drop}}}
}

// On an even slope the clearance is least at the angle of the slope, uphill,
// and the loss against level ground is L (1/cos s - 1): plane geometry.
// 0.077133 m for 5 m on 10 degrees, 0.176381 m on 15 degrees.
func TestClearanceLostOnASlope(t *testing.T) {
	for _, row := range []struct{ slope, loss float64 }{{10, 0.077133}, {15, 0.176381}} {
		angle := quantity.Angle(row.slope) * quantity.Degree
		swing := Swing{HangHeight: 6, Line: 5, Amplitude: 60 * quantity.Degree}
		got, err := Clearances(slope(angle), swing)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "clearance", float64(got.Seat.Clearance), 1-row.loss, 1e-6)
		near(t, "angle", float64(got.Seat.Angle), -float64(angle), 1e-9)
	}
}

// Drop of the seat to the ground below it at the downhill end of the swing,
// without the height of the seat: L (1 - cos a) + L sin a tan s.
func TestFallOnASlope(t *testing.T) {
	for _, row := range []struct{ amplitude, slope, drop float64 }{
		{60, 10, 3.2635}, {45, 15, 2.4118}, {30, 15, 1.3397},
	} {
		swing := Swing{HangHeight: 5.5, Line: 5, Amplitude: quantity.Angle(row.amplitude) * quantity.Degree}
		got, err := Fall(slope(quantity.Angle(row.slope)*quantity.Degree), swing)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "fall", float64(got.Height), row.drop+0.5, 6e-5)
		near(t, "angle", got.Angle.Degrees(), row.amplitude, 1e-9)
	}
}

// Speeds at the plumb line by the balance of energy in g = 9.81 m/s2, turned
// into standard gravity.
func TestSeatSpeedAtThePlumbLine(t *testing.T) {
	for _, row := range []struct{ line, amplitude, speed float64 }{
		{3, 60, 5.424942}, {4, 45, 4.794399}, {5, 30, 3.625315}, {5, 60, 7.003571}, {6, 75, 9.340868}, {8, 90, 12.528368},
	} {
		swing := Swing{HangHeight: 10, Line: quantity.Length(row.line), Amplitude: quantity.Angle(row.amplitude) * quantity.Degree}
		near(t, "speed", float64(swing.SeatSpeed(0))*math.Sqrt(9.81/quantity.StandardGravity), row.speed, 1e-6)
	}
}

// No point of a dense scan is nearer to the ground, or higher above it.
func TestExtremesCoverTheWholePath(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g, s := randomGround(t), randomSwing(t)
		room, err := Clearances(g, s)
		if err != nil {
			t.Fatal(err)
		}
		fall, err := Fall(g, s)
		if err != nil {
			t.Fatal(err)
		}
		for i := range 2001 {
			q := float64(s.Amplitude) * (float64(i)/1000 - 1)
			// Written out in the vectors of the line, not as one circle.
			sin, cos := math.Sincos(q)
			line, reach, offset := float64(s.Line), float64(s.Line+s.FootReach), float64(s.FootOffset)
			top := float64(g.At(0) + s.HangHeight)
			seat := top - line*cos - float64(g.At(quantity.Length(line*sin)))
			footX, footY := reach*sin+offset*cos, top-reach*cos+offset*sin
			foot := footY - float64(g.At(quantity.Length(footX)))
			if seat < float64(room.Seat.Clearance)-1e-9 || foot < float64(room.Foot.Clearance)-1e-9 || seat > float64(fall.Height)+1e-9 {
				t.Fatalf("at %v rad: seat %v, foot %v; found least %+v, greatest %v", q, seat, foot, room, fall.Height)
			}
		}
	})
}

func TestLevelGroundIsSymmetric(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := randomSwing(t)
		fall, err := Fall(level, s)
		if err != nil {
			t.Fatal(err)
		}
		if len(fall.Angles) != 2 || fall.Angles[0] != -fall.Angles[1] || fall.Angle != s.Amplitude {
			t.Fatalf("highest at %v, want both ends", fall.Angles)
		}
		room, err := Clearances(level, s)
		if err != nil {
			t.Fatal(err)
		}
		if math.Abs(float64(room.Seat.Clearance-(s.HangHeight-s.Line))) > 1e-12 || room.Seat.Along != 0 {
			t.Fatalf("seat %+v, want it nearest at the plumb line", room.Seat)
		}
	})
}

// Sides are swapped by a mirror, feet with the sign of their offset.
func TestClearancesMirror(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g, s := randomGround(t), randomSwing(t)
		turned := s
		turned.FootOffset = -s.FootOffset
		here, err := Clearances(g, s)
		if err != nil {
			t.Fatal(err)
		}
		there, err := Clearances(g.Mirrored(), turned)
		if err != nil {
			t.Fatal(err)
		}
		for _, d := range []quantity.Length{here.Seat.Clearance - there.Seat.Clearance, here.Foot.Clearance - there.Foot.Clearance} {
			if math.Abs(float64(d)) > 1e-9 {
				t.Fatalf("%+v, mirrored %+v", here, there)
			}
		}
	})
}

func TestFallGrowsWithAmplitudeAndSlope(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g, s := randomGround(t), randomSwing(t)
		wider := s
		wider.Amplitude += quantity.Angle(rapid.Float64Range(0, 1).Draw(t, "share")) * (90*quantity.Degree - s.Amplitude)
		tilt := rapid.Float64Range(0, 0.5).Draw(t, "tilt")
		steeper := rapid.Float64Range(0, 0.5).Draw(t, "more tilt")
		if heightOfFall(t, g, wider) < heightOfFall(t, g, s)-1e-9 {
			t.Fatal("a wider swing falls less far")
		}
		gentle, steep := slope(quantity.Angle(tilt)), slope(quantity.Angle(tilt+steeper))
		if heightOfFall(t, steep, s) < heightOfFall(t, gentle, s)-1e-9 {
			t.Fatal("a fall on a steeper slope is less high")
		}
	})
}

func heightOfFall(t *rapid.T, g Ground, s Swing) quantity.Length {
	got, err := Fall(g, s)
	if err != nil {
		t.Fatal(err)
	}
	return got.Height
}

// Sag and stretch bring the seat down by their sum on level ground.
func TestLoweredTakesRoomAway(t *testing.T) {
	swing := Swing{HangHeight: 5.5, Line: 5, FootReach: 0.2, Amplitude: 60 * quantity.Degree}
	got, err := Clearances(level, swing.Lowered(0.05, 0.1))
	if err != nil {
		t.Fatal(err)
	}
	near(t, "foot", float64(got.Foot.Clearance), 0.15, 1e-12)
	if got.FootMeetsGround() {
		t.Error("feet 0.15 m above the ground are said to meet it")
	}
}

func TestErrorsNameTheField(t *testing.T) {
	good := Swing{HangHeight: 5.5, Line: 5, Amplitude: 1}
	for field, in := range map[string]struct {
		g Ground
		s Swing
	}{
		"ground.stations":          {Ground{}, good},
		"ground.stations[1].along": {Ground{[]Point{{1, 0}, {1, 2}}}, good},
		"swing.hang_height":        {level, Swing{Line: 5, Amplitude: 1}},
		"swing.line":               {level, Swing{HangHeight: 5, Amplitude: 1}},
		"swing.amplitude":          {level, Swing{HangHeight: 5, Line: 4, Amplitude: 100 * quantity.Degree}},
		"swing.seat_drop":          {level, Swing{HangHeight: 5, Line: 4, SeatDrop: 4, Amplitude: 1}},
	} {
		for _, err := range []error{
			func() error { _, err := Clearances(in.g, in.s); return err }(),
			func() error { _, err := LetGo(in.g, in.s); return err }(),
		} {
			if err == nil || !strings.HasPrefix(err.Error(), field+":") {
				t.Errorf("%s: got error %v", field, err)
			}
		}
	}
}

func BenchmarkClearancesAndFall(b *testing.B) {
	g := Ground{Stations: []Point{{-20, 0}, {20, 0}}}
	s := Swing{HangHeight: 5, Line: 4, FootReach: 0.45, Amplitude: 60 * quantity.Degree}
	for b.Loop() {
		if _, err := Clearances(g, s); err != nil {
			b.Fatal(err)
		}
		if _, err := Fall(g, s); err != nil {
			b.Fatal(err)
		}
	}
}
