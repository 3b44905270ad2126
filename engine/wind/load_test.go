package wind

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"boughline/quantity"
)

func broadleaf() Crown {
	return Crown{
		CentreHeight: 9, HalfWidth: 3.5, HalfHeight: 5, Drag: 0.6,
		Reconfiguring: Reconfiguration{Vogel: -0.7, Reference: 15},
	}
}

func mustCrown(t rapid.TB, c Crown, p Profile, a Averaging) Load {
	t.Helper()
	load, err := CrownLoad(c, p, a)
	if err != nil {
		t.Fatal(err)
	}
	return load
}

// Below z_min the pressure is the same at every height: force = pressure x
// drag x pi a b, acting at the ellipse's centre.
func TestCrownInLevelWindIsPressureTimesArea(t *testing.T) {
	c := broadleaf()
	c.CentreHeight, c.HalfHeight, c.Reconfiguring.Vogel = 5, 4.9, 0
	p := level("IV", 25)
	load := mustCrown(t, c, p, Gust)
	want := float64(p.PeakPressure(5)) * 0.6 * math.Pi * 3.5 * 4.9
	near(t, "force", float64(load.Force), want, 1e-11*want)
	near(t, "height", float64(load.Height()), 5, 1e-11)
}

// Thin strips, summed: another way through the same integral, kinks and all.
func TestCrownLoadMatchesThinStrips(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := broadleaf()
		c.CentreHeight = quantity.Length(rapid.Float64Range(5, 20).Draw(t, "centre"))
		c.Reconfiguring = Reconfiguration{
			Vogel:     rapid.Float64Range(-1.2, 0).Draw(t, "Vogel"),
			Reference: quantity.Speed(rapid.Float64Range(5, 40).Draw(t, "reference")),
			AtCentre:  rapid.Bool().Draw(t, "at centre"),
			Threshold: rapid.Bool().Draw(t, "threshold"),
		}
		p := level(rapid.SampledFrom([]string{"0", "I", "II", "III", "IV"}).Draw(t, "terrain"), 24)
		a := rapid.SampledFrom([]Averaging{Mean, Gust}).Draw(t, "averaging")
		load := mustCrown(t, c, p, a)
		const strips = 20000
		var force, moment float64
		height := 2 * float64(c.HalfHeight) / strips
		for i := range strips {
			z := float64(c.Base()) + (float64(i)+0.5)*height
			x := (z - float64(c.CentreHeight)) / float64(c.HalfHeight)
			u := float64(p.Speed(quantity.Length(z), a))
			at := u
			if c.Reconfiguring.AtCentre {
				at = float64(p.Speed(c.CentreHeight, a))
			}
			r := 1.0
			if !c.Reconfiguring.Threshold || at > float64(c.Reconfiguring.Reference) {
				r = math.Pow(at/float64(c.Reconfiguring.Reference), c.Reconfiguring.Vogel)
			}
			strip := 0.625 * u * u * c.Drag * r * 2 * float64(c.HalfWidth) * math.Sqrt(1-x*x) * height
			force += strip
			moment += strip * z
		}
		near(t, "force", float64(load.Force), force, 1e-6*force)
		near(t, "moment", float64(load.Moment), moment, 1e-6*moment)
	})
}

// Without a threshold force goes as U^(2 + Vogel) (de Langre, 2008, from memory).
func TestCrownLoadFollowsVogelsPower(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := broadleaf()
		c.Reconfiguring.Vogel = rapid.Float64Range(-1.2, 0).Draw(t, "Vogel")
		ratio := rapid.Float64Range(1, 3).Draw(t, "ratio")
		slow := mustCrown(t, c, level("II", 12), Gust)
		fast := mustCrown(t, c, level("II", quantity.Speed(12*ratio)), Gust)
		near(t, "force", float64(fast.Force/slow.Force), math.Pow(ratio, 2+c.Reconfiguring.Vogel), 1e-10)
	})
}

func drawTree(t *rapid.T) Tree {
	c := broadleaf()
	c.Reconfiguring.Vogel = rapid.Float64Range(-1.5, 0).Draw(t, "Vogel")
	c.Reconfiguring.Threshold = rapid.Bool().Draw(t, "threshold")
	c.Reconfiguring.AtCentre = rapid.Bool().Draw(t, "at centre")
	return Tree{
		Crown: c,
		Stem:  Stem{BaseDiameter: 0.55, TopDiameter: 0.35, Top: 4, Drag: 1.2},
		Site:  level(rapid.SampledFrom([]string{"I", "II", "III", "IV"}).Draw(t, "terrain"), 0),
		Open:  terrains["II"],
	}
}

func TestGustLoadRisesWithTheGust(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		tree := drawTree(t)
		gust := rapid.Float64Range(0.01, 40).Draw(t, "gust")
		slow, err := tree.GustLoad(quantity.Speed(gust))
		if err != nil {
			t.Fatal(err)
		}
		fast, err := tree.GustLoad(quantity.Speed(gust + rapid.Float64Range(0.01, 10).Draw(t, "more")))
		if err != nil {
			t.Fatal(err)
		}
		if !(fast.Force > slow.Force && fast.Moment > slow.Moment) {
			t.Errorf("%+v, then %+v", slow, fast)
		}
	})
}

func TestNoWindNoLoad(t *testing.T) {
	tree := Tree{Crown: broadleaf(), Stem: Stem{0.5, 0.3, 4, 1.2}, Site: level("III", 0), Open: terrains["II"]}
	load, err := tree.GustLoad(0)
	if err != nil || load != (Load{}) || load.Height() != 0 {
		t.Errorf("%+v, %v", load, err)
	}
	if load, err = tree.GustLoad(1e-200); err != nil || !(load.Force >= 0 && load.Force < 1e-9) {
		t.Errorf("next to no wind: %+v, %v", load, err)
	}
}

// A cylinder in level wind: pressure x drag x diameter x height, at half height.
func TestStemLoadOfACylinder(t *testing.T) {
	p := level("IV", 25)
	load, err := StemLoad(Stem{0.5, 0.5, 4, 1.2}, p, Gust)
	if err != nil {
		t.Fatal(err)
	}
	want := float64(p.PeakPressure(1)) * 1.2 * 0.5 * 4
	near(t, "force", float64(load.Force), want, 1e-9)
	near(t, "height", float64(load.Height()), 2, 1e-12)
	if none, err := StemLoad(Stem{Drag: 1}, p, Gust); err != nil || none != (Load{}) {
		t.Errorf("no stem: %+v, %v", none, err)
	}
}

// All limbs of a crown in level wind together carry what the crown does.
func TestLimbLoadIsAShareOfTheCrown(t *testing.T) {
	c := broadleaf()
	c.CentreHeight, c.HalfHeight = 5, 4.9
	tree := Tree{Crown: c, Stem: Stem{0.5, 0.3, 1, 1.2}, Site: level("IV", 0), Open: terrains["II"]}
	limb, err := tree.LimbLoad(18, 0.2, 7)
	if err != nil {
		t.Fatal(err)
	}
	site, err := tree.Site.WithOpenGust(18, tree.Open)
	if err != nil {
		t.Fatal(err)
	}
	crown := mustCrown(t, c, site, Gust)
	near(t, "force", float64(limb.Force), 0.2*float64(crown.Force), 1e-9)
	near(t, "height", float64(limb.Height()), 7, 1e-12)
	for _, bad := range []struct {
		share  float64
		height quantity.Length
	}{{1.1, 7}, {-0.1, 7}, {math.NaN(), 7}, {0.2, 11}, {0.2, 0.05}} {
		if _, err := tree.LimbLoad(18, bad.share, bad.height); err == nil {
			t.Errorf("%+v: no error", bad)
		}
	}
}

func TestLoadsRefuse(t *testing.T) {
	for name, spoil := range map[string]func(*Crown){
		"reaches below ground": func(c *Crown) { c.CentreHeight = 4 },
		"no width":             func(c *Crown) { c.HalfWidth = 0 },
		"negative drag":        func(c *Crown) { c.Drag = -0.1 },
		"falling load":         func(c *Crown) { c.Reconfiguring.Vogel = -2 },
		"rising drag":          func(c *Crown) { c.Reconfiguring.Vogel = 0.1 },
		"no reference speed":   func(c *Crown) { c.Reconfiguring.Reference = 0 },
	} {
		c := broadleaf()
		spoil(&c)
		if _, err := CrownLoad(c, level("II", 20), Gust); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
	if _, err := CrownLoad(broadleaf(), level("II", 20), "hour"); err == nil {
		t.Error("unknown averaging: no error")
	}
	if _, err := StemLoad(Stem{BaseDiameter: -1}, level("II", 20), Gust); err == nil {
		t.Error("negative diameter: no error")
	}
}

func BenchmarkGustLoad(b *testing.B) {
	tree := Tree{Crown: broadleaf(), Stem: Stem{0.5, 0.3, 4, 1.2}, Site: level("III", 0), Open: terrains["II"]}
	for b.Loop() {
		if _, err := tree.GustLoad(15); err != nil {
			b.Fatal(err)
		}
	}
}
