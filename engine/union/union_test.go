package union

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"boughline/quantity"
)

// sound is full strength up to an aspect of 0.5, then a fall to the 0.74 of sound
// forks (Slater & Ennos, 2013, hazel), level from 0.83 (Dahle et al., 2022, red
// maple).
var sound = FormCurve{{Aspect: 0.50, Factor: 1}, {Aspect: 0.83, Factor: 0.74}}

func near(t interface{ Errorf(string, ...any) }, what string, got, want, tolerance float64) {
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: got %v, want %v within %v", what, got, want, tolerance)
	}
}

func TestFormFactorAtPublishedPoints(t *testing.T) {
	for _, row := range []struct{ aspect, want float64 }{
		{0.2, 1}, {0.5, 1}, {0.665, 0.87}, {0.83, 0.74}, {0.95, 0.74}, {1.1, 0.74},
	} {
		got, err := sound.Factor(row.aspect)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "factor", got, row.want, 1e-12)
	}
}

// A fork of equal stems with included bark: 24 % below the sound one (Slater &
// Ennos, 2015, 241 hazel forks).
func TestIncludedBarkTakesAQuarter(t *testing.T) {
	u := Union{SectionModulus: 1e-3, Strength: 17e6, Aspect: 1, Form: sound, IncludedFactor: 0.76}
	clean, err := u.Capacity()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "sound", float64(clean.Moment), 0.74*17000, 1e-6)
	u.BarkIncluded = true
	included, err := u.Capacity()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "ratio", float64(included.Moment/clean.Moment), 0.76, 1e-12)
	near(t, "bark factor", included.BarkFactor, 0.76, 0)
}

// Kane, 2007, Bradford pear: branches broke at 50.1 MPa on the ellipse inside the
// bark, 0.72 of the 69.9 MPa of clear wood. A union of low aspect gives W x 50.1 MPa.
func TestSlenderLimbHasTheStrengthOfItsWood(t *testing.T) {
	u := Union{SectionModulus: 2e-4, Strength: 0.717 * 69.9e6, Aspect: 0.3, Form: sound}
	got, err := u.Capacity()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "capacity", float64(got.Moment), 2e-4*50.1e6, 5)
	near(t, "form factor", got.FormFactor, 1, 0)
}

func TestCapacityFallsWithAspect(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		low := rapid.Float64Range(0.05, 1.2).Draw(t, "aspect")
		u := Union{SectionModulus: 1e-3, Strength: 17e6, Aspect: low, Form: sound}
		before, err := u.Capacity()
		if err != nil {
			t.Fatal(err)
		}
		u.Aspect += rapid.Float64Range(0, 0.5).Draw(t, "more")
		after, err := u.Capacity()
		if err != nil {
			t.Fatal(err)
		}
		if after.Moment > before.Moment {
			t.Errorf("capacity %v at %v, %v at %v", before, low, after, u.Aspect)
		}
	})
}

func TestAspectIsARatio(t *testing.T) {
	got, err := Aspect(0.12, 0.30)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "aspect", got, 0.4, 1e-12)
	for _, c := range [][2]quantity.Length{{0, 0.3}, {0.1, 0}, {0.1, -1}, {quantity.Length(math.NaN()), 1}} {
		if _, err := Aspect(c[0], c[1]); err == nil {
			t.Errorf("diameters %v: no error", c)
		}
	}
}

func TestUnionRefuses(t *testing.T) {
	for name, spoil := range map[string]func(*Union){
		"no modulus":         func(u *Union) { u.SectionModulus = 0 },
		"no strength":        func(u *Union) { u.Strength = 0 },
		"no aspect":          func(u *Union) { u.Aspect = 0 },
		"no bark factor":     func(u *Union) { u.BarkIncluded = true },
		"no form":            func(u *Union) { u.Form = nil },
		"points in disorder": func(u *Union) { u.Form = FormCurve{{0.8, 0.7}, {0.5, 0.6}} },
		"a rising factor":    func(u *Union) { u.Form = FormCurve{{0.5, 0.7}, {0.8, 0.9}} },
		"a factor above 1":   func(u *Union) { u.Form = FormCurve{{0.5, 1.2}} },
	} {
		u := Union{SectionModulus: 1e-3, Strength: 17e6, Aspect: 0.4, Form: sound}
		spoil(&u)
		if _, err := u.Capacity(); err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}
