package bark

import (
	"math"
	"strings"
	"testing"

	"boughline/quantity"
	"pgregory.net/rapid"
)

func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: got %.9g, want %.9g within %.2g", what, got, want, tolerance)
	}
}

// A basket of two plumb legs that carry W: W/(w D), worked by hand in MPa.
func TestPressureUnderABasket(t *testing.T) {
	for _, row := range []struct{ total, width, diameter, pressure float64 }{
		{2000, 0.050, 0.200, 0.2000},
		{2000, 0.012, 0.200, 0.8333},
		{4000, 0.050, 0.300, 0.2667},
		{4000, 0.100, 0.300, 0.1333},
	} {
		c := Contact{Leg: quantity.Force(row.total / 2), Radius: quantity.Length(row.diameter / 2), Wrap: math.Pi}
		got, err := c.Pressure(quantity.Length(row.width))
		if err != nil {
			t.Fatal(err)
		}
		near(t, "pressure", float64(got)/1e6, row.pressure, 5e-5)
	}
}

// The pressure over the half circle, summed up in the direction of the load,
// carries the load: equilibrium.
func TestPressureCarriesTheLoad(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := Contact{
			Leg:    quantity.Force(rapid.Float64Range(1, 5000).Draw(t, "leg")),
			Radius: quantity.Length(rapid.Float64Range(0.03, 0.5).Draw(t, "radius")),
			Wrap:   math.Pi,
		}
		width := rapid.Float64Range(0.005, 0.3).Draw(t, "width")
		p, err := c.Pressure(quantity.Length(width))
		if err != nil {
			t.Fatal(err)
		}
		sum, steps := 0.0, 2000
		for i := range steps {
			angle := math.Pi * (float64(i) + 0.5) / float64(steps)
			sum += float64(p) * math.Sin(angle) * width * float64(c.Radius) * math.Pi / float64(steps)
		}
		if math.Abs(sum-2*float64(c.Leg)) > 1e-5*sum {
			t.Fatalf("the bark carries %v N of %v N", sum, 2*c.Leg)
		}
	})
}

// 500 N along a limb of 200 mm under a strap of 50 mm on the upper half:
// 500/(0.05 x 0.1 pi) Pa, by hand. Against 0.26 MPa, the bond of growing
// spruce (Vilkovsky et al. 2022, Forests 13:637, abstract).
func TestShearAgainstTheBond(t *testing.T) {
	c := Contact{Leg: 1000, Along: -500, Radius: 0.1, Wrap: math.Pi}
	got, err := Compare(c, []Cover{{"strap", 0.05, false}}, 0.26e6, 0)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "shear", float64(got[0].Shear), 31830.99, 0.01)
	near(t, "share of the bond", got[0].BondShare, 0.122427, 1e-6)
}

// 60 degrees, limb of 200 mm, 4.5 s: 4 (pi/3) 0.1 m a swing, 800 swings an hour.
func TestRubbingPath(t *testing.T) {
	got, err := RubbingPath(0.1, 60*quantity.Degree, 4.5, 3600)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "way", float64(got), 335.1032, 1e-4)
}

func TestCompareOrdersFromGentleToRough(t *testing.T) {
	c := Contact{Leg: 1000, Along: 100, Radius: 0.1, Wrap: math.Pi}
	covers := []Cover{{"bare line", 0.012, true}, {"sleeve", 0.025, false}, {"wide bare strap", 0.08, true}, {"strap with ring", 0.05, false}, {"pad", 0.25, false}}
	got, err := Compare(c, covers, 0.39e6, 300)
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, a := range got {
		names = append(names, a.Cover.Name)
		if (a.Rubbing > 0) != a.Cover.Rubs {
			t.Errorf("%s rubs %v m", a.Cover.Name, a.Rubbing)
		}
	}
	if order := strings.Join(names, ", "); order != "pad, strap with ring, sleeve, wide bare strap, bare line" {
		t.Errorf("order: %s", order)
	}
}

func TestErrorsNameTheField(t *testing.T) {
	for field, c := range map[string]Contact{
		"contact.leg":    {Leg: -1, Radius: 0.1, Wrap: 1},
		"contact.radius": {Leg: 1, Wrap: 1},
		"contact.wrap":   {Leg: 1, Radius: 0.1},
	} {
		if _, err := c.Pressure(0.05); err == nil || !strings.HasPrefix(err.Error(), field+":") {
			t.Errorf("%s: got error %v", field, err)
		}
	}
	good := Contact{Leg: 1, Radius: 0.1, Wrap: 1}
	if _, err := good.Pressure(0); err == nil || !strings.HasPrefix(err.Error(), "width:") {
		t.Errorf("width: got error %v", err)
	}
	if _, err := Compare(good, nil, 0, 0); err == nil || !strings.HasPrefix(err.Error(), "bond:") {
		t.Errorf("bond: got error %v", err)
	}
	if _, err := RubbingPath(0.1, 1, 0, 1); err == nil {
		t.Error("a period of 0 has no rubbing path")
	}
}
