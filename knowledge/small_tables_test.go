package knowledge

import (
	"math"
	"testing"

	"boughline/quantity"
	"boughline/source"
)

func TestEveryZoneAndMeasurementTakesTime(t *testing.T) {
	b := base(t)
	for _, what := range []string{LimbDiameterEffort, LimbGirthsEffort, StemDiameterEffort, ParentDiameterEffort, ArmEffort, LimbBarkEffort, RidersEffort,
		LookEffort + "crown", LookEffort + "limb", LookEffort + "union", LookEffort + "stem", LookEffort + "base", LookEffort + "root_plate", LookEffort + "ground", LookEffort + "surroundings"} {
		if e, ok := b.Effort(what); !ok || !(e.Minutes.Value > 0) || e.Minutes.Unit != "min" {
			t.Errorf("%s: %+v, %v", what, e, ok)
		}
	}
	if _, ok := b.Effort("luck"); ok {
		t.Error("luck takes time")
	}
}

// CDC growth charts 2000 (Kuczmarski et al. 2002), body mass in kg.
func TestMassByAge(t *testing.T) {
	b := base(t)
	for _, c := range []struct {
		age          int
		sex          Sex
		p5, p50, p95 float64
		ok           bool
	}{
		{3, Male, 12.0, 14.3, 17.4, true},
		{10, Male, 24.8, 31.9, 45.9, true},
		{10, Female, 24.8, 32.9, 47.9, true},
		{14, Male, 38.3, 51.0, 72.4, true},
		{19, Female, 46.3, 58.2, 83.0, true}, // between two rows: the older
		{20, Male, 55.7, 70.6, 95.7, true},
		{2, Male, 0, 0, 0, false},
		{21, Male, 0, 0, 0, false},
		{10, Sex("?"), 0, 0, 0, false},
	} {
		p5, p50, p95, ok := b.MassByAge(c.age, c.sex)
		if ok != c.ok {
			t.Errorf("%d %s: ok is %v", c.age, c.sex, ok)
		}
		if ok && (p5.Value != c.p5 || p50.Value != c.p50 || p95.Value != c.p95) {
			t.Errorf("%d %s: %g %g %g, want %g %g %g", c.age, c.sex, p5.Value, p50.Value, p95.Value, c.p5, c.p50, c.p95)
		}
	}
	if p50, p95, ok := b.StatureByAge(12, Female); !ok || math.Abs(p50.Value-1.512) > 1e-9 || math.Abs(p95.Value-1.632) > 1e-9 {
		t.Errorf("stature at 12: %g, %g, %v", p50.Value, p95.Value, ok)
	}
}

func TestOlderChildrenAreHeavier(t *testing.T) {
	b := base(t)
	for _, sex := range []Sex{Male, Female} {
		for age := 3; age < 20; age++ {
			_, _, young, _ := b.MassByAge(age, sex)
			_, _, old, _ := b.MassByAge(age+1, sex)
			if old.Value < young.Value {
				t.Errorf("%s: %d years %g kg, a year later %g kg", sex, age, young.Value, old.Value)
			}
		}
	}
	if a, ok := b.Adult(Male); !ok || a.P95.Value != 130 || a.P95.Ref.Source.Kind != "memory" {
		t.Errorf("men: %+v %v", a, ok)
	}
}

// EN 1991-1-4, 4.3.2: terrain factors 0.156, 0.170, 0.190, 0.215, 0.234.
func TestTerrainFactors(t *testing.T) {
	b := base(t)
	k, n, z := b.Parameter(TerrainFactorCoefficient).Value, b.Parameter(TerrainFactorExponent).Value, b.Parameter(TerrainReferenceRoughness).Value
	for category, want := range map[string]float64{"0": 0.15604, "I": 0.16976, "II": 0.19, "III": 0.21539, "IV": 0.23433} {
		g, ok := b.Terrain(category)
		if got := k * math.Pow(g.Roughness.Value/z, n); !ok || math.Abs(got-want) > 1e-5 {
			t.Errorf("category %s: %.5f, want %.5f", category, got, want)
		}
	}
	if _, ok := b.Terrain("V"); ok || len(b.Terrains()) != 5 {
		t.Error("there are five categories")
	}
}

// US National Weather Service: number 5 is 17 to 21 knots; the mean by
// 0.836 B^1.5 m/s (WMO, from memory).
func TestBeaufort(t *testing.T) {
	f, ok := base(t).Beaufort(5)
	if !ok || math.Abs(f.Mean.Low-8.746) > 0.001 || math.Abs(f.Mean.High-10.803) > 0.001 || math.Abs(f.Mean.Value-9.347) > 0.005 {
		t.Errorf("number 5: %+v", f.Mean)
	}
	if _, ok := base(t).Beaufort(2); ok {
		t.Error("number 2 is not in the table")
	}
}

func TestGearKnotsAndSurfaces(t *testing.T) {
	b := base(t)
	if g, ok := b.Gear("en 1891 a"); !ok || g.Least.Value != 22000 || g.Material != Textile {
		t.Errorf("EN 1891 A: %+v", g)
	}
	if g, ok := b.Gear("EN 12275 B"); !ok || g.Least.Value != 20000 || g.Material != Metal {
		t.Errorf("EN 12275 B: %+v", g)
	}
	if k, ok := b.Knot("Bowline"); !ok || k.Share.Value != 0.60 {
		t.Errorf("bowline: %+v", k)
	}
	if h, ok := b.Hitch("choker"); !ok || h.Share.Value != 0.75 {
		t.Errorf("choker: %+v", h)
	}
	if s, ok := b.Surface("turf"); !ok || s.RatedFall.Value != 1.0 {
		t.Errorf("turf: %+v", s)
	}
	for _, s := range b.Surfaces() {
		if s.RatedFall.Value > b.Parameter(GreatestFall).Value {
			t.Errorf("%s is rated above the greatest fall", s.Name)
		}
	}
	for _, missing := range []bool{found(b.Gear("EN 0")), found(b.Knot("tangle")), found(b.Hitch("none")), found(b.Surface("water"))} {
		if missing {
			t.Error("something that is not in its table was found")
		}
	}
	if len(b.GearList()) != 15 || len(b.Knots()) != 17 || len(b.Hitches()) != 4 || len(b.Sources()) != 239 {
		t.Error("a list is not whole")
	}
}

// Shares of knots: Jacobson, Knots for the Outdoors, p. 24; ranges of HSE CRR 364/2001 from
// memory. Least strengths: EN 12275 and EN 566 as read, EN 362, 354 and 795 from memory; ANSI Z133 5400
// lbf and 5000 lbf, from memory. Hitches: web sling tables, from memory.
func TestPublishedSharesAndStrengths(t *testing.T) {
	b := base(t)
	for name, want := range map[string]float64{
		"bowline": .60, "two half hitches": .75, "clove hitch": .75, "timber hitch": .70, "anchor bend": .70, "figure-eight end knot": .48,
		"overhand knot": .45, "reef knot": .45, "sheepshank": .45, "short splice": .90, "eye splice": .95, "double overhand": .6182,
		"figure-nine": .68, "double figure-eight": .61, "barrel knot": .67, "alpine butterfly": .61,
	} {
		if k, ok := b.Knot(name); !ok || k.Share.Low != want {
			t.Errorf("%s: %+v, want %v", name, k.Share, want)
		}
	}
	for standard, kilonewtons := range map[string]float64{
		"EN 1891 A": 22, "EN 1891 B": 18, "EN 12275 B": 20, "EN 12275 H": 20, "EN 12275 K": 25, "EN 12275 Q": 25, "EN 12275 X": 18,
		"EN 362": 20, "EN 566": 22, "EN 354": 22, "EN 565": 5, "EN 795 metal": 12, "EN 795 textile": 18, "ANSI Z133 rope": 24, "ANSI Z133 connector": 22,
	} {
		if g, ok := b.Gear(standard); !ok || g.Least.Value != 1000*kilonewtons {
			t.Errorf("%s: %+v, want %v kN", standard, g.Least, kilonewtons)
		}
	}
	for hitch, want := range map[string][2]float64{"vertical": {1, 1}, "choker": {.75, .80}, "basket": {2, 2}, "girth hitch": {.5, .8}} {
		if h, ok := b.Hitch(hitch); !ok || h.Share.Low != want[0] || h.Share.High != want[1] {
			t.Errorf("%s: %+v, want %v", hitch, h.Share, want)
		}
	}
	if share := b.Parameter(KnotShare).Value; share != 0.6 {
		t.Errorf("an untested knot keeps %v; Saez et al. 2024 found a mean of 0.6182 for the best of five", share)
	}
}

// Every knot that has a job has a share, and every anchor and kind of part that a
// survey may name has a row.
func TestRiggingTables(t *testing.T) {
	b := base(t)
	for _, j := range b.KnotJobs() {
		if _, ok := b.Knot(j.Name); !ok {
			t.Errorf("%s has a job and no share", j.Name)
		}
		if got, ok := b.KnotJob(" " + j.Name); !ok || got.Job != j.Job || j.Ref.Source.Kind != source.Practice || j.Eats.Ref.Source.Kind != source.House {
			t.Errorf("%s: %+v", j.Name, got)
		}
	}
	for _, anchor := range []string{"choker", "girth hitch", "basket", "straight", "running bowline"} {
		if f, ok := b.Freeing(anchor); !ok || f.Ref.Source.Kind != source.Practice {
			t.Errorf("%s: %+v", anchor, f)
		}
	}
	for _, kind := range []string{"sling", "rope", "connector", "swivel", "seat", "ring"} {
		if f, ok := b.PartLength(kind); !ok || f.Unit != "m" {
			t.Errorf("%s: %+v", kind, f)
		}
	}
	if len(b.KnotJobs()) != 14 || len(b.FreeingList()) != 5 || len(b.BarkCovers()) != 5 {
		t.Error("a list is not whole")
	}
	if found(b.KnotJob("tangle")) || found(b.Freeing("glue")) || found(b.PartLength("hook")) {
		t.Error("something that is not in its table was found")
	}
}

func found[T any](_ T, ok bool) bool { return ok }

// Choker angles: sling makers' tables after ASME B30.9.
func TestChokeAngle(t *testing.T) {
	b := base(t)
	for degrees, want := range map[quantity.Angle]float64{135: 1, 121: 1, 120: .87, 100: .87, 75: .74, 45: .62, 20: .49, 0: .49, 180: 1} {
		if f, ok := b.ChokeAngle(degrees * quantity.Degree); !ok || f.Value != want {
			t.Errorf("%g degrees: %g %v, want %g", float64(degrees), f.Value, ok, want)
		}
	}
	if _, ok := b.ChokeAngle(181 * quantity.Degree); ok {
		t.Error("181 degrees were taken")
	}
}

// Girth tape 1.5 % and clinometer about 3 %: Luoma et al. 2017. 0.1 degree of
// an angular width of 2 degrees is 5 %. The others are house values.
func TestMethods(t *testing.T) {
	b := base(t)
	for _, c := range []struct {
		how      quantity.How
		quantity string
		sd       float64
		relative bool
	}{
		{quantity.Taped, "length", 0.015, true},
		{quantity.Calliper, "length", 0.015, true},
		{quantity.Clinometer, "length", 0.03, true},
		{quantity.AngularWidth, "length", 0.05, true},
		{quantity.ByEye, "length", 0.15, true},
		{quantity.ByEye, "mass", 0.15, true},
		{quantity.NotStated, "length", 0.15, true},
		{quantity.How("hearsay"), "length", 0.15, true},
		{quantity.Weighed, "mass", 0.03, true},
		{quantity.Laser, "length", 0.01, true},
		{quantity.Photo, "length", 0.05, true},
		{quantity.FromTable, "stress", 0.15, true},
		{quantity.Assumed, "mass", 0.15, true},
		{quantity.Compass, "angle", 5 * math.Pi / 180, false},
		{quantity.NotStated, "angle", 10 * math.Pi / 180, false},
	} {
		sd, relative := b.Method(c.how, c.quantity)
		if math.Abs(sd.Value-c.sd) > 1e-12 || relative != c.relative {
			t.Errorf("%q of %s: %g %v, want %g %v", c.how, c.quantity, sd.Value, relative, c.sd, c.relative)
		}
	}
	for _, how := range quantity.Hows() {
		if _, relative := b.Method(how, quantity.Angle(0).Name()); relative {
			t.Errorf("%s: a share of an angle is no error of a direction", how)
		}
	}
}
