package rigging

import (
	"math"
	"testing"

	"boughline/quantity"
	"boughline/survey"
)

// The oak's limb rises 4 degrees: tan 4 = 0.0699 at rest, and the swing square to
// it leans at worst as a launch 10 degrees off does at 40: by hand, the heading lies sin 10 cos 4
// along the limb. Friction 0.2 holds up to 11.31 degrees.
func TestCreepByHand(t *testing.T) {
	c := rigged(t, "oak-swing", Options{}, nil).Creep
	rad := math.Pi / 180
	near(t, "rest", c.Rest, math.Tan(4*rad), 1e-9)
	lean := math.Sin(40*rad)*math.Sin(10*rad)*math.Cos(4*rad) + math.Cos(40*rad)*math.Sin(4*rad)
	near(t, "swing", c.Swing, math.Tan(math.Asin(lean)), 1e-9)
	near(t, "most", c.Most.Degrees(), 11.31, 5e-3)
	if c.SlidesAtRest() || c.SlidesInSwing() || !c.Grips {
		t.Errorf("%+v", c)
	}
	along := rigged(t, "oak-swing", Options{}, func(s *survey.Survey) {
		s.Trees[0].Hangs[0].SwingAzimuth = &survey.ChosenAngle{Value: 110 * quantity.Degree} // the limb's own
	}).Creep
	if !along.SlidesInSwing() || along.Swing < math.Tan(40*rad) {
		t.Errorf("swung along its limb it needs %v only", along.Swing)
	}
}

// p = T/(w R) and 4 a R for each swing, by hand; the growing season has the
// weaker bond, Vilkovsky et al. 2022: 0.39 MPa oak growing, 0.48 MPa beech dormant.
func TestBarkByHand(t *testing.T) {
	hours := 2.0
	b := rigged(t, "oak-swing", Options{Hours: &hours}, nil).Bark
	pull, radius, period := b.Terms[0].Value, b.Terms[1].Value, b.Terms[5].Value
	for _, c := range b.Covers {
		near(t, c.Name, float64(c.Pressure), pull/(float64(c.Width)*radius), 1e-6)
		want := 0.0
		if c.Name == "bare line" {
			want = 2 * 3600 / period * 4 * 40 * math.Pi / 180 * radius
		}
		near(t, c.Name+" rubs", float64(c.Rubbing), want, 1e-6*(1+want))
		if c.InUse != (c.Name == "line in a hose") || c.Stated != (c.Name == "strap with ring") {
			t.Errorf("%+v", c)
		}
	}
	near(t, "growing", float64(b.Bond), 0.39e6, 1)
	winter := rigged(t, "oak-swing", Options{}, func(s *survey.Survey) {
		s.Day = s.Day.AddMonths(7)
	}).Bark
	near(t, "dormant", float64(winter.Bond), 0.48e6, 1)
	if winter.Growing || !winter.Season || winter.Hours != 4 {
		t.Errorf("%+v", winter)
	}
}
