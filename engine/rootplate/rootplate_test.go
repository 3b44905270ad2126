package rootplate

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"boughline/quantity"
)

func near(t interface{ Errorf(string, ...any) }, what string, got, want, tolerance float64) {
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: got %v, want %v within %v", what, got, want, tolerance)
	}
}

// BS 5837:2012, annex D, as quoted by several pages: 41, 113 and 452 m2 for stems of
// 30, 50 and 100 cm; at most 707 m2.
func TestProtectionRadiusMatchesTheStandardsAreas(t *testing.T) {
	for _, row := range []struct {
		stem quantity.Length
		area float64
	}{{0.30, 41}, {0.50, 113}, {1.00, 452}, {1.25, 707}, {2.0, 707}} {
		r, err := ProtectionRadius(row.stem)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "area", math.Pi*float64(r)*float64(r), row.area, 0.5)
	}
	near(t, "twin stems of 0.3 and 0.4 m", float64(CombinedDiameter([]quantity.Length{0.3, 0.4})), 0.5, 1e-12)
	if _, err := ProtectionRadius(0); err == nil {
		t.Error("no stem: no error")
	}
}

// Geometry by hand: stem 0.5 m, circle of 6 m; a trench that takes a quarter of the round
// from 3 m on: 1/4 x (1 - 1/4).
func TestSeveredRootsByHand(t *testing.T) {
	quarter := 90 * quantity.Degree
	for _, row := range []struct {
		name  string
		cuts  []Cut
		share float64
		near  bool
	}{
		{"none", nil, 0, false},
		{"a quarter from 3 m", []Cut{{3, quarter}}, 0.1875, false},
		{"beyond the circle", []Cut{{6.5, quarter}}, 0, false},
		{"up to the stem", []Cut{{0, quarter}}, 0.25, true},
		{"one root at 1.4 m", []Cut{{1.4, 0}}, 0, true},
		{"more than all", []Cut{{0, 270 * quantity.Degree}, {0, 180 * quantity.Degree}}, 1, true},
	} {
		got, err := SeveredRoots(0.5, row.cuts)
		if err != nil {
			t.Fatal(err)
		}
		near(t, row.name, got.Share, row.share, 1e-12)
		if got.NearStem != row.near {
			t.Errorf("%s: near the stem %v", row.name, got.NearStem)
		}
	}
	for _, cut := range []Cut{{-1, 1}, {1, -1}, {1, 7}, {quantity.Length(math.NaN()), 1}} {
		if _, err := SeveredRoots(0.5, []Cut{cut}); err == nil {
			t.Errorf("cut %+v: no error", cut)
		}
	}
}

// A nearer or wider cut never takes less.
func TestSeveredShareRises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		cut := Cut{
			Distance: quantity.Length(rapid.Float64Range(0, 20).Draw(t, "distance")),
			Angle:    quantity.Angle(rapid.Float64Range(0, math.Pi).Draw(t, "angle")),
		}
		worse := Cut{
			Distance: cut.Distance * quantity.Length(rapid.Float64Range(0, 1).Draw(t, "nearer")),
			Angle:    cut.Angle * quantity.Angle(rapid.Float64Range(1, 2).Draw(t, "wider")),
		}
		before, err := SeveredRoots(0.8, []Cut{cut})
		if err != nil {
			t.Fatal(err)
		}
		after, err := SeveredRoots(0.8, []Cut{worse})
		if err != nil {
			t.Fatal(err)
		}
		if after.Share < before.Share || before.NearStem && !after.NearStem {
			t.Errorf("%+v takes %+v, %+v takes %+v", cut, before, worse, after)
		}
	})
}

// Western hemlock, 77.4 N m for each kg of stem (Byrne, 2005); scatter 0.33 of the
// logarithm (Forests 14:533, 2023): the low value is 0.581 of the mean, exp(-0.543).
func TestResistanceFromStemMass(t *testing.T) {
	low, err := MassResistance{StemMass: 1000, PerMassNewtonMetrePerKg: 77.4, Scatter: 0.33}.Low()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "low", float64(low), 77400*0.5811, 5)
	for _, r := range []MassResistance{{0, 77, 0.3}, {1000, 0, 0.3}, {1000, 77, -0.3}, {1000, 77, math.NaN()}} {
		if _, err := r.Low(); err == nil {
			t.Errorf("%+v: no error", r)
		}
	}
}

func TestVoidEvidenceProvesNothing(t *testing.T) {
	if got := (StoodGust{Moment: 5e4}).Resistance(); got != 5e4 {
		t.Errorf("got %v", got)
	}
	if got := (StoodGust{Moment: 5e4, Void: true}).Resistance(); got != 0 {
		t.Errorf("void evidence: got %v", got)
	}
}

// A crown whose moment goes as U^1.3: the inverse in closed form.
func TestEquivalentGustInvertsThePower(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		exponent := rapid.Float64Range(0.8, 2).Draw(t, "exponent")
		gust := rapid.Float64Range(0.5, 39).Draw(t, "gust")
		moment := func(u quantity.Speed) (quantity.Moment, error) {
			return quantity.Moment(300 * math.Pow(float64(u), exponent)), nil
		}
		m, _ := moment(quantity.Speed(gust))
		got, err := EquivalentGust(m, moment, 40)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "gust", float64(got), gust, gustPrecision*40)
	})
}

func TestEquivalentGustRefuses(t *testing.T) {
	linear := func(u quantity.Speed) (quantity.Moment, error) { return quantity.Moment(u), nil }
	broken := errors.New("broken")
	failing := func(quantity.Speed) (quantity.Moment, error) { return 0, broken }
	if _, err := EquivalentGust(50, linear, 40); err == nil {
		t.Error("a moment beyond the greatest gust: no error")
	}
	if _, err := EquivalentGust(-1, linear, 40); err == nil {
		t.Error("a negative moment: no error")
	}
	if _, err := EquivalentGust(1, failing, 40); !errors.Is(err, broken) {
		t.Errorf("got %v; want the error of the moment", err)
	}
}
