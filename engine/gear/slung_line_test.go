package gear

import (
	"math"
	"testing"

	"boughline/quantity"
	"pgregory.net/rapid"
)

func closeTo(t interface {
	Helper()
	Fatalf(string, ...any)
}, what string, got, want, share float64) {
	t.Helper()
	if !(math.Abs(got-want) <= share*math.Max(math.Abs(want), 1e-9)) {
		t.Fatalf("%s: got %.12g, want %.12g", what, got, want)
	}
}

var rigid = quantity.Force(math.Inf(1))

// y = a cosh(x/a): half a span x carries a length of a sinh(x/a), hangs
// a (cosh(x/a) - 1) deep, and pulls with w a cosh(x/a) at its support (any
// textbook of statics, such as Meriam & Kraige, from memory).
func TestEmptyLineIsACatenary(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, half := rapid.Float64Range(2, 200).Draw(t, "a"), rapid.Float64Range(2, 15).Draw(t, "half span")
		if half/a > 3 {
			t.Skip("hangs deeper than anybody would rig it") // cosh of it leaves no digits for the comparison to 1e-6
		}
		const w = 1.3
		got, err := SlungLine{Right: Spot{X: quantity.Length(2 * half)}, Length: quantity.Length(2 * a * math.Sinh(half/a)), Axial: rigid, Weight: w}.Under(0, 0.5)
		if err != nil {
			t.Fatal(err)
		}
		closeTo(t, "horizontal pull", float64(got.Horizontal), w*a, 1e-6)
		closeTo(t, "pull at the support", float64(got.Left.Pull), w*a*math.Cosh(half/a), 1e-6)
		closeTo(t, "sag", float64(got.Below), a*(math.Cosh(half/a)-1), 1e-6)
		closeTo(t, "length", float64(got.Stretched), 2*a*math.Sinh(half/a), 1e-9)
	})
}

// Two catenaries that meet below the load: the line that was found for a load
// at a place is put up again by its length alone.
func TestLoadedLineAgreesWithTwoCatenaries(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		span := rapid.Float64Range(4, 30).Draw(t, "span")
		rise := rapid.Float64Range(-0.15, 0.15).Draw(t, "rise") * span
		x := rapid.Float64Range(0.15, 0.85).Draw(t, "x") * span
		drop := rapid.Float64Range(0.02, 0.3).Draw(t, "drop") * span
		w, load := quantity.Force(rapid.Float64Range(0.5, 10).Draw(t, "weight")), quantity.Force(rapid.Float64Range(50, 2000).Draw(t, "load"))
		right := Spot{quantity.Length(span), quantity.Length(rise)}
		want, err := TraverseLine{Right: right, Load: Spot{quantity.Length(x), quantity.Length(rise*x/span - drop)}, Weight: w, Point: load}.Solve()
		if err != nil {
			t.Fatal(err)
		}
		length := want.LengthLeft + want.LengthRight
		got, err := SlungLine{right, length, rigid, w}.Under(load, quantity.Proportion(want.LengthLeft/length))
		if err != nil {
			t.Fatal(err)
		}
		closeTo(t, "horizontal pull", float64(got.Horizontal), float64(want.Horizontal), 1e-6)
		closeTo(t, "left pull", float64(got.Left.Pull), float64(want.Left.Pull), 1e-6)
		closeTo(t, "right pull", float64(got.Right.Pull), float64(want.Right.Pull), 1e-6)
		closeTo(t, "drop", float64(got.Below), drop, 1e-6)
	})
}

// A chain of many straight elastic links, each under the pull of its middle,
// walked from the left support: it must end at the right one.
func TestElasticLineAgreesWithManyLinks(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := SlungLine{Right: Spot{quantity.Length(rapid.Float64Range(4, 25).Draw(t, "span")), quantity.Length(rapid.Float64Range(-2, 2).Draw(t, "rise"))},
			Axial: quantity.Force(rapid.Float64Range(1e4, 3e5).Draw(t, "axial")), Weight: quantity.Force(rapid.Float64Range(0.5, 10).Draw(t, "weight"))}
		l.Length = quantity.Length(l.apart() * rapid.Float64Range(0.97, 1.2).Draw(t, "length"))
		load, share := rapid.Float64Range(0, 2000).Draw(t, "load"), rapid.Float64Range(0.1, 0.9).Draw(t, "share")
		got, err := l.Under(quantity.Force(load), quantity.Proportion(share))
		if err != nil {
			t.Fatal(err)
		}
		const links = 2000
		x, y, long, v, h := 0.0, 0.0, 0.0, float64(got.Left.Vertical), float64(got.Horizontal)
		for i, part := range []float64{share, 1 - share} {
			s := part * float64(l.Length) / links
			for range links {
				middle := v - float64(l.Weight)*s/2
				pull := math.Hypot(h, middle)
				stretched := s * (1 + pull/float64(l.Axial))
				x, y, long = x+stretched*h/pull, y-stretched*middle/pull, long+stretched
				v -= float64(l.Weight) * s
			}
			if i == 0 {
				closeTo(t, "x of the load", float64(got.Load.X), x, 1e-6)
			}
			v -= load
		}
		v += load // taken off once too often
		closeTo(t, "x of the end", x, float64(l.Right.X), 1e-6)
		if math.Abs(y-float64(l.Right.Y)) > 1e-6*x {
			t.Fatalf("the line ends at a height of %v m, want %v m", y, l.Right.Y)
		}
		closeTo(t, "length under pull", float64(got.Stretched), long, 1e-6)
		closeTo(t, "weight on both supports", float64(got.Left.Vertical+got.Right.Vertical), load+float64(l.Weight*quantity.Force(l.Length)), 1e-7)
	})
}

// Without weight of its own the line is a triangle of forces: H = P l/(4 f)
// with the load in the middle, and half the load at each end.
func TestWeightlessLineIsATriangleOfForces(t *testing.T) {
	l, err := SlungToSag(SlungLine{Right: Spot{X: 10}, Axial: rigid, Weight: 1e-6}, 800, 0.5, 0.5)
	if err != nil {
		t.Fatal(err)
	}
	got, err := l.Under(800, 0.5)
	if err != nil {
		t.Fatal(err)
	}
	closeTo(t, "horizontal pull", float64(got.Horizontal), 800*10/(4*0.5), 1e-6)
	closeTo(t, "vertical pull", float64(got.Left.Vertical), 400, 1e-6)
	closeTo(t, "length", float64(l.Length), 2*math.Hypot(5, 0.5), 1e-9)
}

// The same seen from the other side.
func TestSlungLineIsSymmetric(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rise, share := rapid.Float64Range(-1, 1).Draw(t, "rise"), quantity.Proportion(rapid.Float64Range(0.1, 0.9).Draw(t, "share"))
		l := SlungLine{Spot{9, quantity.Length(rise)}, 9.4, 3e4, 1}
		there, err := l.Under(700, share)
		if err != nil {
			t.Fatal(err)
		}
		l.Right.Y = -l.Right.Y
		back, err := l.Under(700, 1-share)
		if err != nil {
			t.Fatal(err)
		}
		closeTo(t, "pull", float64(there.Left.Pull), float64(back.Right.Pull), 1e-7)
		closeTo(t, "drop", float64(there.Below), float64(back.Below), 1e-6)
	})
}

// Less sag, more pull; a heavier load, more pull; a stiffer line of the same
// unstretched length, more pull and less drop.
func TestTighterSlungLinePullsHarder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := SlungLine{Right: Spot{8, 0.2}, Axial: quantity.Force(rapid.Float64Range(1e4, 1e5).Draw(t, "axial")), Weight: 1}
		sag, load := quantity.Length(rapid.Float64Range(0.1, 1).Draw(t, "sag")), quantity.Force(rapid.Float64Range(100, 1500).Draw(t, "load"))
		tuned := func(sag quantity.Length) (SlungLine, Slung) {
			line, err := SlungToSag(l, load, 0.5, sag)
			if err != nil {
				t.Fatal(err)
			}
			s, err := line.Under(load, 0.5)
			if err != nil {
				t.Fatal(err)
			}
			closeTo(t, "sag", float64(s.Below), float64(sag), 1e-7)
			return line, s
		}
		line, slack := tuned(sag * 1.1)
		if _, tight := tuned(sag); tight.Left.Pull <= slack.Left.Pull {
			t.Fatalf("a sag of %v m pulls with %v N, one of %v m with %v N", sag, tight.Left.Pull, sag*1.1, slack.Left.Pull)
		}
		if heavier, err := line.Under(load*1.1, 0.5); err != nil || heavier.Left.Pull <= slack.Left.Pull {
			t.Fatalf("a heavier load pulls with %v N, a lighter one with %v N (%v)", heavier.Left.Pull, slack.Left.Pull, err)
		}
		line.Axial *= 1.2
		stiffer, err := line.Under(load, 0.5)
		if err != nil || stiffer.Left.Pull < slack.Left.Pull || stiffer.Below > slack.Below {
			t.Fatalf("a stiffer line: %+v, a softer one: %+v (%v)", stiffer, slack, err)
		}
	})
}

// The pull of the empty line is the one asked for: for a tight line the
// unstretched length is l/(1 + T/EA) but for its sag.
func TestSlungToPull(t *testing.T) {
	l, err := SlungToPull(SlungLine{Right: Spot{X: 10}, Axial: 4e4, Weight: 0.01}, 2000)
	if err != nil {
		t.Fatal(err)
	}
	got, err := l.Under(0, 0.5)
	if err != nil {
		t.Fatal(err)
	}
	closeTo(t, "pull", float64(got.Left.Pull), 2000, 1e-7)
	closeTo(t, "length", float64(l.Length), 10/(1+2000.0/4e4), 1e-6)
}

// A strained line springs in proportion: twice the load (elementary). One that
// is just not slack pulls back with the third power of its drop, k d^3: what is
// stored is k d^4/4, and the greatest force four times the load.
func TestSuddenLoad(t *testing.T) {
	strained, err := SlungToPull(SlungLine{Right: Spot{X: 10}, Axial: 1e6, Weight: 0.01}, 1e5)
	if err != nil {
		t.Fatal(err)
	}
	got, err := strained.Sudden(50, 0.5)
	if err != nil {
		t.Fatal(err)
	}
	closeTo(t, "strained", float64(got), 100, 1e-3)
	just := SlungLine{Right: Spot{X: 10}, Length: 10, Axial: 1e6, Weight: 1e-6}
	if got, err = just.Sudden(50, 0.5); err != nil {
		t.Fatal(err)
	}
	closeTo(t, "just not slack", float64(got), 200, 2e-2)
}

// Twice the pull for legs side by side, the pull itself at 120 degrees, none
// for a line that runs straight through.
func TestRedirectPull(t *testing.T) {
	for degrees, want := range map[quantity.Angle]float64{0: 2000, 60: 1732.0508, 90: 1414.2136, 120: 1000, 180: 0} {
		got, err := RedirectPull(1000, degrees*quantity.Degree)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "pull", float64(got), want, 1e-4)
	}
	if _, err := RedirectPull(1000, 190*quantity.Degree); err == nil {
		t.Error("an angle beyond 180 degrees is no angle between legs")
	}
}

func TestSlungLineRefuses(t *testing.T) {
	good := SlungLine{Spot{X: 8}, 8.2, 3e4, 1}
	for name, l := range map[string]SlungLine{
		"no span": {Spot{}, 8, 3e4, 1}, "no weight": {Spot{X: 8}, 8, 3e4, 0}, "too short": {Spot{X: 8}, 7.9, rigid, 1},
	} {
		if _, err := l.Under(100, 0.5); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
	if _, err := good.Under(-1, 0.5); err == nil {
		t.Error("a load upwards: no error")
	}
	if _, err := good.Under(1, 1); err == nil {
		t.Error("a load on the support: no error")
	}
	if _, err := SlungToSag(good, 100, 0.5, 9); err == nil {
		t.Error("a sag deeper than the span: no error")
	}
}
