package draw

import (
	"math"
	"testing"
)

func TestRoundBelow(t *testing.T) {
	for x, want := range map[float64]float64{1: 1, 1.9: 1, 2: 2, 4.99: 2, 5: 5, 9.9: 5, 10: 10, 0.034: 0.02, 730: 500} {
		if got := RoundBelow(x); math.Abs(got-want) > 1e-12*want {
			t.Errorf("RoundBelow(%v) = %v, want %v", x, got, want)
		}
	}
}

func TestScaleBarIsAsLongAsItSays(t *testing.T) {
	const perMetre = 7.3
	bar, box := ScaleBar(Point{3, 50}, perMetre, 114)
	g := bar.(*Group)
	first, second := g.Items[0].(*Polygon), g.Items[1].(*Polygon)
	long := second.Points[1].X - first.Points[0].X
	if g.Items[2].(*Text).Words != "5 m" || math.Abs(long-5*perMetre) > 1e-9 || long > 114.0/3 {
		t.Errorf("a bar of %.2f mm says %q", long, g.Items[2].(*Text).Words)
	}
	if !box.Holds(g.Items[2].(*Text).Box()) {
		t.Error("its words are outside its box")
	}
}
