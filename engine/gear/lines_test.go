package gear

import (
	"math"
	"testing"

	"boughline/quantity"
	"pgregory.net/rapid"
)

// Two equal legs at 60 degrees from the horizontal: W/(2 sin 60) each (OSHA
// 1910.184 and ASME B30.9 tables).
func TestHangBetweenEqualLegs(t *testing.T) {
	got, err := HangBetween(Spot{}, Spot{X: 1}, 1, 1, 1000)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "left", float64(got.PullLeft), 577.4, 0.05)
	near(t, "right", float64(got.PullRight), 577.4, 0.05)
	near(t, "left angle", got.Left.Degrees(), 30, 1e-9)
}

// meetBetween reports whether legs meet below, well between the anchors: by the
// law of cosines at the left anchor.
func meetBetween(x, y, a, b float64) bool {
	apart := math.Hypot(x, y)
	if a+b < apart*(1+1e-9) || math.Abs(a-b) > apart*(1-1e-9) {
		return false
	}
	node := a * math.Cos(math.Atan2(y, x)-math.Acos((a*a+apart*apart-b*b)/(2*a*apart)))
	return node > 1e-9 && node < x-1e-9
}

// Equilibrium of the node, and legs of the given length.
func TestHangBetweenIsInBalance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x, y := rapid.Float64Range(0.5, 5).Draw(t, "x"), rapid.Float64Range(-1, 1).Draw(t, "y")
		a, b := rapid.Float64Range(0.5, 6).Draw(t, "left leg"), rapid.Float64Range(0.5, 6).Draw(t, "right leg")
		right := Spot{quantity.Length(x), quantity.Length(y)}
		got, err := HangBetween(Spot{}, right, quantity.Length(a), quantity.Length(b), 1000)
		if err != nil {
			if meetBetween(x, y, a, b) {
				t.Fatalf("refused legs of %v and %v m between anchors %v m apart and %v m up: %v", a, b, x, y, err)
			}
			t.Skip("legs that don't meet between the anchors") // refused rightly; nothing hangs
		}
		nx, ny := float64(got.Node.X), float64(got.Node.Y)
		near := func(what string, got, want float64) {
			if math.Abs(got-want) > 1e-7*(1+math.Abs(want)) {
				t.Fatalf("%s: %v, want %v", what, got, want)
			}
		}
		near("left leg", math.Hypot(nx, ny), a)
		near("right leg", math.Hypot(x-nx, y-ny), b)
		l, r := float64(got.PullLeft), float64(got.PullRight)
		near("horizontal", l*nx/a, r*(x-nx)/b)
		near("vertical", -l*ny/a+r*(y-ny)/b, 1000)
		if below := ny <= nx*y/x; !below {
			t.Fatalf("node %v above the line between the anchors", got.Node)
		}
	})
}

// Equilibrium of the whole line, and the shape: each part follows y” =
// (w/H) sqrt(1 + y'^2), integrated here by small steps from the left support.
func TestTraverseIsInBalance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		span := rapid.Float64Range(4, 40).Draw(t, "span")
		rise := rapid.Float64Range(-0.2, 0.2).Draw(t, "rise") * span
		x := rapid.Float64Range(0.1, 0.9).Draw(t, "x") * span
		drop := rapid.Float64Range(0.01, 0.5).Draw(t, "drop") * span
		w, load := rapid.Float64Range(0.1, 20).Draw(t, "weight"), rapid.Float64Range(0, 3000).Draw(t, "load")
		y := rise*x/span - drop
		got, err := TraverseLine{
			Right: Spot{quantity.Length(span), quantity.Length(rise)}, Load: Spot{quantity.Length(x), quantity.Length(y)},
			Weight: quantity.Force(w), Point: quantity.Force(load),
		}.Solve()
		if err != nil {
			t.Fatal(err)
		}
		all := load + w*float64(got.LengthLeft+got.LengthRight)
		if v := float64(got.Left.Vertical + got.Right.Vertical); math.Abs(v-all) > 1e-8*all {
			t.Fatalf("the supports carry %v N of %v N", v, all)
		}
		if got.WeightlessHorizontal > got.Horizontal {
			t.Fatalf("weight lowers the pull from %v to %v N", got.WeightlessHorizontal, got.Horizontal)
		}
		h := float64(got.Horizontal)
		if end := integrate(-float64(got.Left.Vertical)/h, x, w/h); math.Abs(end-y) > 1e-6*span {
			t.Fatalf("the line passes the load at %v m, want %v m", end, y)
		}
		if got.Empty.Horizontal > got.Horizontal*(1+1e-9) { // equal without a load
			t.Fatal("the line is tighter without its load")
		}
	})
}

// integrate returns the height after x of a line that starts with the slope,
// by the midpoint rule of second order.
func integrate(slope, x, perH float64) float64 {
	const steps = 4000
	y, dx := 0.0, x/steps
	for range steps {
		middle := slope + perH*math.Hypot(1, slope)*dx/2
		y += middle * dx
		slope += perH * math.Hypot(1, middle) * dx
	}
	return y
}

// A light, tight line is a parabola: H = w L^2/(8 f), handbook of statics.
func TestTightEmptyLineIsAParabola(t *testing.T) {
	got, err := TraverseLine{Right: Spot{X: 20}, Load: Spot{10, -0.1}, Weight: 1, Point: 0}.Solve()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "horizontal pull", float64(got.Horizontal), 20*20/(8*0.1), 0.05)
	near(t, "the same without a load", float64(got.Empty.Horizontal), float64(got.Horizontal), 1e-5)
	near(t, "drop", float64(got.Empty.DropBelowChord), 0.1, 1e-8)
}

// Equilibrium at both ends of the body, and members of the given length.
func TestHammockIsInBalance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string, lo, hi float64) quantity.Length {
			return quantity.Length(rapid.Float64Range(lo, hi).Draw(t, name))
		}
		q := Hammock{
			RightAnchor: Spot{draw("span", 3, 6), draw("rise", -0.5, 0.5)},
			LeftStrap:   draw("left strap", 0.3, 3), Body: draw("body", 1.8, 2.8), RightStrap: draw("right strap", 0.3, 3),
			LoadLeft: quantity.Force(draw("left load", 50, 900)), LoadRight: quantity.Force(draw("right load", 50, 900)),
		}
		got, err := q.Solve()
		if err != nil {
			// No body drawn is as long as a span, so that none can be too long.
			apart := math.Hypot(float64(q.RightAnchor.X), float64(q.RightAnchor.Y))
			if float64(q.LeftStrap+q.Body+q.RightStrap) > apart*(1+1e-6) {
				t.Fatalf("refused %+v: %v", q, err)
			}
			t.Skip("too short for the span") // refused rightly; nothing hangs
		}
		near := func(what string, got, want float64) {
			if math.Abs(got-want) > 1e-6*(1+math.Abs(want)) {
				t.Fatalf("%s: %v, want %v", what, got, want)
			}
		}
		l, r := got.LeftOfBody, got.RightOfBody
		near("left strap", math.Hypot(float64(l.X), float64(l.Y)), float64(q.LeftStrap))
		near("body", math.Hypot(float64(r.X-l.X), float64(r.Y-l.Y)), float64(q.Body))
		near("right strap", math.Hypot(float64(q.RightAnchor.X-r.X), float64(q.RightAnchor.Y-r.Y)), float64(q.RightStrap))
		near("vertical", float64(got.Left.Vertical+got.Right.Vertical), float64(q.LoadLeft+q.LoadRight))
		near("left end of the body", float64(got.Left.Vertical)+float64(got.Horizontal)*math.Tan(float64(got.BodyRise)), float64(q.LoadLeft))
	})
}

// A shorter strap pulls harder.
func TestTighterHammockPullsHarder(t *testing.T) {
	last := math.Inf(1)
	for _, strap := range []quantity.Length{0.72, 0.75, 0.8, 0.9, 1.2} {
		got, err := Hammock{RightAnchor: Spot{X: 4}, LeftStrap: strap, Body: 2.6, RightStrap: strap, LoadLeft: 400, LoadRight: 400}.Solve()
		if err != nil {
			t.Fatal(err)
		}
		if h := float64(got.Horizontal); h >= last {
			t.Errorf("straps of %v m pull with %v N, shorter ones with %v N", strap, h, last)
		} else {
			last = h
		}
	}
	if _, err := (Hammock{RightAnchor: Spot{X: 4}, LeftStrap: 0.6, Body: 2.6, RightStrap: 0.75, LoadLeft: 400, LoadRight: 400}).Solve(); err == nil {
		t.Error("members shorter than the span are in balance")
	}
}
