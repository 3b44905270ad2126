package rigging

import (
	"math"
	"testing"

	"boughline/engine/throw"
	"boughline/quantity"
	"boughline/survey"

	"pgregory.net/rapid"
)

// On level ground the weight comes down where the closed form of package throw
// says, which is checked by hand there.
func TestLandsAsTheClosedFormSays(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x, y, hand := rapid.Float64Range(1, 9).Draw(t, "ahead"), rapid.Float64Range(1, 9).Draw(t, "up"), rapid.Float64Range(0.5, 3).Draw(t, "hand")
		l, err := throw.Over(quantity.Length(x), quantity.Length(y))
		if err != nil {
			t.Fatal(err)
		}
		level := func(quantity.Length) quantity.Length { return 0 }
		got := landsBeyond(l, quantity.Length(x), quantity.Length(hand), level)
		if want := l.Lands(quantity.Length(hand)) - quantity.Length(x); math.Abs(float64(got-want)) > 2e-3 {
			t.Fatalf("lands %v m beyond the limb, closed form %v m", got, want)
		}
	})
}

// By hand for the oak: up = 4.5 m + 1.645 x 1 % of it + the limb + 0.5 m - the hand,
// and the law of Over from 4 m away.
func TestThrowOverTheOak(t *testing.T) {
	got := rigged(t, "oak-swing", Options{}, nil).Throw
	hand := got.Terms[2].Value
	near(t, "up", float64(got.Up), float64(got.Top)+0.5-hand, 1e-12)
	y := float64(got.Up)
	near(t, "speed", float64(got.Speed), math.Sqrt(2*9.80665*y+9.80665*16/(2*y)), 1e-9)
	near(t, "energy", got.Energy, 0.35*float64(got.Speed*got.Speed)/2, 1e-9)
	if !(got.LandsNear < got.Lands && got.Lands < got.LandsFar) || got.People == nil || got.MeetsRoom <= 0 {
		t.Errorf("%+v", got)
	}
}

// The weight comes down on the side that is farther from where people wait: they
// wait on 200 degrees, so it is thrown from their side.
func TestItIsThrownAwayFromPeople(t *testing.T) {
	got := rigged(t, "oak-swing", Options{}, nil).Throw
	if off := math.Cos(float64(got.From) - 200*math.Pi/180); off < 0 {
		t.Errorf("thrown from %.0f degrees towards people at 200", got.From.Degrees())
	}
	turned := rigged(t, "oak-swing", Options{}, func(s *survey.Survey) {
		h := &s.Trees[0].Hangs[0]
		h.Waiting[0].Azimuth.Value = 20 * quantity.Degree
		h.WayIn = nil
	}).Throw
	if math.Cos(float64(turned.From-got.From)) > -0.99 {
		t.Errorf("people on the other side: from %.0f, before from %.0f degrees", turned.From.Degrees(), got.From.Degrees())
	}
}

// A low limb needs no throw; a place far off needs one that few people manage.
func TestByHandAndFarOff(t *testing.T) {
	low := rigged(t, "oak-swing", Options{}, func(s *survey.Survey) {
		s.Trees[0].Hangs[0].Height.Value, s.Trees[0].Hangs[0].Line.Value = 1.2, 0.6
	}).Throw
	if !low.ByHand {
		t.Errorf("%+v", low)
	}
	far := quantity.Length(30)
	if got := rigged(t, "oak-swing", Options{Stand: &far}, nil).Throw; got.Comes() {
		t.Errorf("%v m/s is thrown by hand", got.Speed)
	}
}

// Two pieces that cross 3 apart, two that pass end to end, and a point: by hand.
func TestApart(t *testing.T) {
	v := func(x, y, z float64) quantity.Vec3 { return quantity.Vec3{X: x, Y: y, Z: z} }
	for _, row := range []struct {
		a, b [2]quantity.Vec3
		want float64
	}{
		{[2]quantity.Vec3{v(-1, 0, 0), v(1, 0, 0)}, [2]quantity.Vec3{v(0, -1, 3), v(0, 1, 3)}, 3},
		{[2]quantity.Vec3{v(0, 0, 0), v(1, 0, 0)}, [2]quantity.Vec3{v(4, 4, 0), v(8, 4, 0)}, 5},
		{[2]quantity.Vec3{v(0, 0, 0), v(2, 0, 0)}, [2]quantity.Vec3{v(1, 1, 1), v(1, 1, 1)}, math.Sqrt2},
		{[2]quantity.Vec3{v(0, 0, 0), v(2, 0, 0)}, [2]quantity.Vec3{v(-1, 2, 0), v(5, 2, 0)}, 2},
	} {
		near(t, "apart", float64(apart(row.a, row.b)), row.want, 1e-12)
		near(t, "the other way", float64(apart(row.b, row.a)), row.want, 1e-12)
	}
}

// No pair of places on two pieces is nearer than what is found.
func TestApartIsTheLeast(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		point := func(name string) quantity.Vec3 {
			draw := func(axis string) float64 { return rapid.Float64Range(-3, 3).Draw(t, name+axis) }
			return quantity.Vec3{X: draw("x"), Y: draw("y"), Z: draw("z")}
		}
		a, b := [2]quantity.Vec3{point("a0"), point("a1")}, [2]quantity.Vec3{point("b0"), point("b1")}
		got, least := float64(apart(a, b)), math.Inf(1)
		const steps = 60
		for i := range steps + 1 {
			p := a[0].Add(a[1].Sub(a[0]).Scale(float64(i) / steps))
			least = math.Min(least, toPiece(p, b))
		}
		if got > least+1e-9 || got < least-a[1].Sub(a[0]).Norm()/steps-1e-9 {
			t.Fatalf("apart %v, least of places tried %v", got, least)
		}
	})
}
