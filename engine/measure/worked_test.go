package measure

import (
	"math"
	"testing"

	"boughline/quantity"
)

// sure is a reading without error; a in deg.
func sure(x float64) []Reading   { return []Reading{{Value: x, How: quantity.Taped}} }
func turn(deg float64) []Reading { return sure(deg * degree) }

func work(t *testing.T, kind string, readings map[string][]Reading) map[string]Result {
	t.Helper()
	k, ok := ByName(kind)
	if !ok {
		t.Fatalf("no kind %s", kind)
	}
	out, err := k.Work(readings)
	if err != nil {
		t.Fatalf("%s: %v", kind, err)
	}
	all := map[string]Result{}
	for _, r := range out.Results {
		all[r.Name] = r
	}
	return all
}

func near(t *testing.T, what string, got, want, within float64) {
	t.Helper()
	if !(math.Abs(got-want) <= within) {
		t.Errorf("%s: got %v, want %v within %v", what, got, want, within)
	}
}

const foot = 0.3048 // m, exact

// Leverett 2006 (Eastern Native Tree Society) works an example: 105 ft at 47 deg
// by laser are 76.8 ft.
func TestLeverettsExample(t *testing.T) {
	got := work(t, "height-by-one-sine", map[string][]Reading{"to-top": sure(105 * foot), "top": turn(47)})
	near(t, "height, ft", got["height"].Value/foot, 76.8, 0.05)
}

// Heights by tangents worked by hand from h = d (tan top - tan base), in the last
// row with the base above the eye.
func TestTangentRows(t *testing.T) {
	for _, row := range []struct{ distance, top, base, height float64 }{
		{20, 40, -5, 18.5318},
		{15, 45, -6, 16.5766},
		{30, 30, -3, 18.8927},
		{25, 35, 2, 16.6322},
	} {
		got := work(t, "height-by-tangents", map[string][]Reading{
			"distance": sure(row.distance), "top": turn(row.top), "base": turn(row.base),
		})
		near(t, "height", got["height"].Value, row.height, 5e-5)
	}
}

// Error of a height for an error of 1 deg, for each metre of distance: tangent
// .0198 at 20 deg, .0233 at 30, .0349 at 45, .0698 at 60; sine .0164 at 20, .0123
// at 45, .0087 at 60 (derivatives by hand).
func TestErrorGrowsWithTheAngle(t *testing.T) {
	one := func(deg float64) []Reading { return []Reading{{Value: deg * degree, Sd: degree}} }
	for deg, want := range map[float64]float64{20: .0198, 30: .0233, 45: .0349, 60: .0698} {
		got := work(t, "height-by-tangents", map[string][]Reading{
			"distance": sure(1), "top": one(deg), "base": turn(0), "nearer": sure(0),
		})
		near(t, "tangent", got["height"].Sd, want, 6e-5)
	}
	for deg, want := range map[float64]float64{20: .0164, 45: .0123, 60: .0087} {
		got := work(t, "height-by-one-sine", map[string][]Reading{"to-top": sure(1), "top": one(deg)})
		near(t, "sine", got["height"].Sd, want, 6e-5)
	}
}

// A point 4 m off the taped spot throws the tangent way out by 4 m tan(47 deg) =
// 4.29 m (Frank 2006 found 13 ft of offset on average; product by hand).
func TestOffsetOfThePointSighted(t *testing.T) {
	at := func(nearer float64) float64 {
		return work(t, "height-by-tangents", map[string][]Reading{
			"distance": sure(20), "top": turn(47), "base": turn(-4), "nearer": sure(nearer),
		})["height"].Value
	}
	near(t, "offset", at(0)-at(4), 4.29, 0.005)
}

// 2 deg at 8 m are .2842 m, and 0.1 deg of it 5 % (two tangents of a circle, by hand).
func TestAngularWidth(t *testing.T) {
	got := work(t, "thickness-by-angular-width", map[string][]Reading{
		"distance": sure(8), "width": {{Value: 2 * degree, Sd: 0.1 * degree}},
	})["thickness"]
	near(t, "thickness", got.Value, 0.2842, 5e-5)
	near(t, "relative error", got.Sd/got.Value, 0.05, 0.002)
}

// A circle of diameter D seen from d before its near face fills 2 asin(r/(d + r)).
func TestAngularWidthIsThatOfACircle(t *testing.T) {
	for _, d := range []float64{0.02, 0.3, 2} {
		width := 2 * math.Asin(d/2/(5+d/2))
		got := work(t, "thickness-by-angular-width", map[string][]Reading{"distance": sure(5), "width": sure(width)})
		near(t, "thickness", got["thickness"].Value, d, 1e-12)
	}
}

// Right triangles 3-4-5 and 5-12-13, by hand.
func TestTriangles(t *testing.T) {
	lean := work(t, "lean-by-plumb-line", map[string][]Reading{"off": sure(3), "drop": sure(4)})
	near(t, "lean", lean["lean"].Value, math.Asin(0.6), 1e-15)
	slope := work(t, "slope-by-level-distance", map[string][]Reading{"rise": sure(-5), "run": sure(12)})
	near(t, "slope down", slope["slope"].Value, -math.Asin(5.0/13), 1e-15)
	along := work(t, "slope-by-length", map[string][]Reading{"rise": sure(5), "along": sure(13)})
	near(t, "slope by length", along["slope"].Value, math.Atan(5.0/12), 1e-15)
	level := work(t, "distance-on-slope", map[string][]Reading{"along": sure(13), "slope": sure(math.Atan(5.0 / 12))})
	near(t, "level distance", level["distance"].Value, 12, 1e-12)
	near(t, "rise", level["rise"].Value, 5, 1e-12)
}

// Known points: (3, 0, 4) and (0, 3, 4) seen from the origin are 3 sqrt 2 apart, level.
func TestBetweenKnownPoints(t *testing.T) {
	got := work(t, "distance-between-points", map[string][]Reading{
		"to-one": sure(5), "one": sure(math.Atan2(4, 3)), "to-other": sure(5), "other": sure(math.Atan2(4, 3)), "between": turn(90),
	})
	near(t, "distance", got["distance"].Value, 3*math.Sqrt2, 1e-12)
	near(t, "rise", got["rise"].Value, 0, 1e-12)
	near(t, "slope", got["slope"].Value, 0, 1e-12)
}

// A stem that leans by 10 deg to azimuth 120, looked at towards north and, after a
// quarter of the way round, towards west: the tangents of what is seen are its
// parts to the east and to the north.
func TestLeanFromTwoSides(t *testing.T) {
	tan := math.Tan(10 * degree)
	got := work(t, "lean-from-two-sides", map[string][]Reading{
		"first":  sure(math.Atan(tan * math.Sin(120*degree))),
		"second": sure(math.Atan(tan * math.Cos(120*degree))), "facing": turn(0),
	})
	near(t, "lean", got["lean"].Value, 10*degree, 1e-12)
	near(t, "azimuth", got["azimuth"].Value, 120*degree, 1e-12)
}

// The same tree by five ways: 12 m high 15 m off on ground that falls by 3 m to it, the eye
// 1.6 m up.
func TestFiveWaysToOneHeight(t *testing.T) {
	const run, drop, eye, high = 15.0, 3.0, 1.6, 12.0
	top, base := math.Atan2(high-drop-eye, run), math.Atan2(-drop-eye, run)
	staff := math.Atan2(2-drop-eye, run)
	for kind, readings := range map[string]map[string][]Reading{
		"height-by-tangents":          {"distance": sure(run), "top": sure(top), "base": sure(base)},
		"height-by-sines":             {"to-top": sure(math.Hypot(run, high-drop-eye)), "top": sure(top), "to-base": sure(math.Hypot(run, drop+eye)), "base": sure(base)},
		"height-by-one-sine":          {"to-top": sure(math.Hypot(run, high-drop-eye)), "top": sure(top), "eye": sure(drop + eye)},
		"height-by-tangents-on-slope": {"along": sure(math.Hypot(run, drop)), "slope": sure(math.Atan2(drop, run)), "top": sure(top), "base": sure(base)},
		"height-by-staff":             {"staff": sure(2), "top": sure(top), "staff-top": sure(staff), "base": sure(base)},
	} {
		near(t, kind, work(t, kind, readings)["height"].Value, high, 1e-12)
	}
	got := work(t, "distance-by-staff", map[string][]Reading{"staff": sure(2), "upper": sure(staff), "lower": sure(base)})
	near(t, "distance by staff", got["distance"].Value, run, 1e-12)
}

// The arc of a parabola over 20 m that sags by 0.5 m, by its exact length
// L = sqrt(a^2 + 16 s^2)/2 + a^2/(8 s) asinh(4 s/a) (handbooks, from memory).
func TestSaggingTape(t *testing.T) {
	const chord, sag = 20.0, 0.5
	arc := math.Sqrt(chord*chord+16*sag*sag)/2 + chord*chord/(8*sag)*math.Asinh(4*sag/chord)
	got := work(t, "distance-by-sagging-tape", map[string][]Reading{"tape": sure(arc), "sag": sure(sag)})
	near(t, "distance", got["distance"].Value, chord, 2e-4)
}

func TestCrown(t *testing.T) {
	got := work(t, "crown-size", map[string][]Reading{"longest": sure(12), "across": sure(8), "top": sure(20), "lowest": sure(4)})
	near(t, "width", got["width"].Value, 10, 1e-12)
	near(t, "depth", got["depth"].Value, 16, 1e-12)
	near(t, "ground", got["ground-area"].Value, math.Pi*24, 1e-12)
	near(t, "side", got["side-area"].Value, math.Pi*40, 1e-12)
}
