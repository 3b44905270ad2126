package section

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"boughline/quantity"
)

func must(t testing.TB, outline Ring, cavities ...Ring) Section {
	t.Helper()
	s, err := Cut(outline, cavities...)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func near(t testing.TB, what string, got, want, within float64) {
	t.Helper()
	if !(math.Abs(got-want) <= within) {
		t.Errorf("%s: got %.10g, want %.10g within %.2g", what, got, want, within)
	}
}

func rectangle(b, h quantity.Length) Ring {
	return Ring{{-b / 2, -h / 2}, {b / 2, -h / 2}, {b / 2, h / 2}, {-b / 2, h / 2}}
}

// b h, b h^3/12, h b^3/12, b h^2/6, h b^2/6; least modulus under a load along
// the diagonal b, h: b^2 h^2/(6 sqrt(b^2 + h^2)) (handbook).
func TestRectangle(t *testing.T) {
	const b, h = 0.2, 0.3
	s := must(t, rectangle(b, h))
	near(t, "area", float64(s.Area), b*h, 1e-15)
	near(t, "Ixx", s.IxxM4, b*h*h*h/12, 1e-15)
	near(t, "Iyy", s.IyyM4, h*b*b*b/12, 1e-15)
	near(t, "major", s.MajorM4, b*h*h*h/12, 1e-15)
	near(t, "major axis", s.MajorAxis.Degrees(), 0, 1e-9)
	near(t, "across", s.Modulus(90*quantity.Degree).GoverningM3, b*h*h/6, 1e-15)
	near(t, "along", s.Modulus(0).GoverningM3, h*b*b/6, 1e-15)
	least, _ := s.Least()
	near(t, "least", least, b*b*h*h/(6*math.Hypot(b, h)), 1e-15)
}

// b h^3/36 of a triangle about its centroid and its product of inertia
// b^2 h^2/72, negative for a right angle at the origin (handbook); moduli on
// both sides at h/3 and 2 h/3.
func TestTriangle(t *testing.T) {
	const b, h = 0.3, 0.24
	s := must(t, Ring{{0, 0}, {b, 0}, {0, h}})
	near(t, "Ixx", s.IxxM4, b*h*h*h/36, 1e-15)
	near(t, "Ixy", s.IxyM4, -b*b*h*h/72, 1e-15)
	near(t, "centroid", float64(s.Centroid.X), b/3, 1e-15)
	near(t, "simple", s.Modulus(90*quantity.Degree).SimpleM3, b*h*h/24, 1e-15)
}

// pi a b, pi a b^3/4 and the principal axes of a turned ellipse (handbook).
func TestEllipse(t *testing.T) {
	const a, b = 0.18, 0.13
	s := must(t, Ellipse(Point{0.4, -0.2}, a, b, 35*quantity.Degree))
	near(t, "area", float64(s.Area)/(math.Pi*a*b), 1, 1e-12)
	near(t, "major", s.MajorM4/(math.Pi/4*b*a*a*a), 1, 1e-8)
	near(t, "minor", s.MinorM4/(math.Pi/4*a*b*b*b), 1, 1e-8)
	near(t, "axis", s.MajorAxis.Degrees(), 35-90, 1e-6)
	near(t, "centroid", float64(s.Centroid.X), 0.4, 1e-12)
	least, load := s.Least()
	near(t, "least", least/(math.Pi/4*a*b*b), 1, 2e-5)
	near(t, "its direction", load.Degrees(), 125, 0.5)
}

// Concentric hollow: loss of modulus and second moment (d/D)^4, of area
// (d/D)^2; the shares in percent are those of a table worked from it for walls
// of 0.5 to 0.1 of the radius.
func TestConcentricHollow(t *testing.T) {
	sound := must(t, Circle(Point{}, 0.3))
	for _, c := range []struct{ wall, modulus, area float64 }{
		{0.50, 6.25, 25}, {0.40, 12.96, 36}, {0.35, 17.85, 42.25}, {0.33, 20.15, 44.9},
		{0.30, 24.01, 49}, {0.25, 31.64, 56.25}, {0.20, 40.96, 64}, {0.10, 65.61, 81},
	} {
		s := must(t, Circle(Point{}, 0.3), Circle(Point{}, quantity.Length(0.3*(1-c.wall))))
		ratio, _ := s.LeastRatio(sound)
		near(t, "modulus", 100*(1-ratio), c.modulus, 0.006)
		near(t, "second moment", 100*(1-s.IxxM4/sound.IxxM4), c.modulus, 0.006)
		near(t, "area", 100*(1-float64(s.Area/sound.Area)), c.area, 0.011)
	}
}

// Off-centre hollow in a circle of radius 0.5: parallel axes (handbook), and
// the ratios to the sound section of a table worked from them. The second
// moment alone understates the loss.
func TestOffCentreHollow(t *testing.T) {
	sound := must(t, Circle(Point{}, 0.5))
	for _, c := range []struct{ radius, offset, inertia, modulus float64 }{
		{0.30, 0, 0.870, 0.870}, {0.30, 0.05, 0.848, 0.803}, {0.30, 0.10, 0.780, 0.702}, {0.30, 0.15, 0.668, 0.572},
		{0.35, 0, 0.760, 0.760}, {0.35, 0.05, 0.722, 0.658}, {0.35, 0.10, 0.606, 0.509}, {0.35, 0.14, 0.459, 0.361},
	} {
		s := must(t, Circle(Point{}, 0.5), Circle(Point{quantity.Length(c.offset), 0}, quantity.Length(c.radius)))
		near(t, "table of second moments", s.IyyM4/sound.IyyM4, c.inertia, 6e-4)
		least, _ := s.Least()
		near(t, "table of moduli", least/sound.Modulus(0).GoverningM3, c.modulus, 6e-4)
		big, small := math.Pi*0.25, math.Pi*c.radius*c.radius
		centre := -small * c.offset / (big - small)
		inertia := big*(0.0625+centre*centre) - small*(c.radius*c.radius/4+(c.offset-centre)*(c.offset-centre))
		near(t, "parallel axes", s.IyyM4/inertia, 1, 1e-7)
		near(t, "modulus", least/(inertia/(0.5-centre)), 1, 2e-5)
	}
}

// Open annulus: sector integrals (handbook), and the ratios of a table worked
// numerically to about 1 % for openings of 60, 90 and 120 degrees.
func TestOpenAnnulus(t *testing.T) {
	sound := must(t, Circle(Point{}, 0.5))
	for _, c := range []struct{ share, opening, towards, across float64 }{
		{0.5, 60, 0.588, 0.910}, {0.5, 90, 0.459, 0.852}, {0.5, 120, 0.352, 0.754},
		{0.7, 60, 0.469, 0.738}, {0.7, 90, 0.360, 0.691}, {0.7, 120, 0.269, 0.611},
	} {
		half := quantity.Angle(c.opening/2) * quantity.Degree
		outer, inner := 0.5, 0.5*c.share
		s := must(t, Circle(Point{}, 0.5), Circle(Point{}, quantity.Length(inner)), Opening(Point{}, 0, half, 0.5))
		near(t, "towards the opening", s.Modulus(0).GoverningM3/sound.Modulus(0).GoverningM3, c.towards, 0.01)
		near(t, "across", s.Modulus(90*quantity.Degree).SimpleM3/sound.Modulus(0).GoverningM3, c.across, 0.01)
		a := float64(half)
		area := (math.Pi - a) * (outer*outer - inner*inner)
		near(t, "area", float64(s.Area)/area, 1, 1e-6)
		near(t, "centroid", float64(s.Centroid.X), -2.0/3*(math.Pow(outer, 3)-math.Pow(inner, 3))*math.Sin(a)/area, 1e-6)
		ring := (math.Pow(outer, 4) - math.Pow(inner, 4)) / 4
		near(t, "Ixx", s.IxxM4/(ring*(math.Pi-a+math.Sin(2*a)/2)), 1, 1e-5)
	}
}

// Area of the lens that two circles share: 2 r^2 acos(d/2r) - d/2 sqrt(4 r^2 -
// d^2) for equal radii (handbook).
func lens(radius, distance float64) float64 {
	return 2*radius*radius*math.Acos(distance/2/radius) - distance/2*math.Sqrt(4*radius*radius-distance*distance)
}

// Cavities that overlap are cut once, and only where there is wood.
func TestOverlappingCavities(t *testing.T) {
	outline := Circle(Point{}, 0.3)
	sound := float64(must(t, outline).Area)
	one := math.Pi * 0.01
	pair := must(t, outline, Circle(Point{-0.05, 0}, 0.1), Circle(Point{0.05, 0}, 0.1))
	near(t, "pair", sound-float64(pair.Area), 2*one-lens(0.1, 0.1), 1e-6)
	twice := must(t, outline, Circle(Point{}, 0.1), Circle(Point{}, 0.1))
	near(t, "twice the same", sound-float64(twice.Area), one, 1e-9)
	outside := must(t, outline, Circle(Point{0.5, 0}, 0.1))
	near(t, "outside", float64(outside.Area), sound, 1e-12)
	bite := must(t, outline, Circle(Point{0.3, 0}, 0.3))
	near(t, "bite", sound-float64(bite.Area), lens(0.3, 0.3), 1e-6)
	touching := must(t, rectangle(0.2, 0.2), Ring{{0, -0.1}, {0.1, -0.1}, {0.1, 0.1}, {0, 0.1}})
	near(t, "half cut along the outline", touching.IxxM4, 0.1*0.008/12, 1e-12)
	near(t, "its modulus", touching.Modulus(0).GoverningM3, 0.2*0.01/6, 1e-12)
}

// hollowed is an outline and a cavity in it or on its edge.
type hollowed struct{ outline, cavity Ring }

// drawRings draws a polygon and a round cavity that leaves its wood in one piece:
// a hole beside a corner may cut that off, which Cut refuses.
func drawRings(t *rapid.T) (Ring, Ring) {
	drawn := rapid.Custom(anyRings).Filter(func(r hollowed) bool {
		_, err := Cut(r.outline, r.cavity)
		return err == nil || !strings.Contains(err.Error(), "pieces of wood apart")
	}).Draw(t, "rings")
	return drawn.outline, drawn.cavity
}

func anyRings(t *rapid.T) hollowed {
	var soundings []Sounding
	for k := range 12 {
		soundings = append(soundings, Sounding{
			quantity.Angle(k) * 30 * quantity.Degree,
			quantity.Length(rapid.Float64Range(0.15, 0.25).Draw(t, "radius")),
		})
	}
	at := Point{
		quantity.Length(rapid.Float64Range(-0.1, 0.1).Draw(t, "x")),
		quantity.Length(rapid.Float64Range(-0.1, 0.1).Draw(t, "y")),
	}
	return hollowed{Soundings(Point{}, soundings), Circle(at, quantity.Length(rapid.Float64Range(0.02, 0.1).Draw(t, "hollow")))}
}

func turned(r Ring, by quantity.Angle) Ring {
	out := make(Ring, len(r))
	c, s := quantity.Length(by.Cos()), quantity.Length(by.Sin())
	for i, p := range r {
		out[i] = Point{c*p.X - s*p.Y, s*p.X + c*p.Y}
	}
	return out
}

func TestTurnedSection(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		outline, cavity := drawRings(t)
		by := quantity.Angle(rapid.Float64Range(0, 6).Draw(t, "turn"))
		s, err1 := Cut(outline, cavity)
		r, err2 := Cut(turned(outline, by), turned(cavity, by))
		if err1 != nil || err2 != nil {
			t.Fatal(err1, err2)
		}
		for k := range 8 {
			load := quantity.Angle(k) * 45 * quantity.Degree
			a, b := s.Modulus(load), r.Modulus(load+by)
			for _, pair := range [][2]float64{
				{a.TensionM3, b.TensionM3}, {a.CompressionM3, b.CompressionM3},
				{a.GoverningM3, b.GoverningM3}, {a.SimpleM3, b.SimpleM3},
			} {
				if math.Abs(pair[0]/pair[1]-1) > 1e-9 {
					t.Fatalf("load %v: %+v, turned %+v", load, a, b)
				}
			}
			back := s.Modulus(load + math.Pi)
			if math.Abs(back.TensionM3/a.CompressionM3-1) > 1e-9 {
				t.Fatalf("reversed %+v, want the sides of %+v swapped", back, a)
			}
		}
	})
}

// Least modulus and least ratio bound what a scan of directions finds.
func TestExtremesByScan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		outline, cavity := drawRings(t)
		s, err1 := Cut(outline, cavity)
		sound, err2 := Cut(outline)
		if err1 != nil || err2 != nil {
			t.Fatal(err1, err2)
		}
		least, leastLoad := s.Least()
		ratio, ratioLoad := s.LeastRatio(sound)
		for k := range 720 {
			load := quantity.Angle(k) * quantity.Degree / 2
			w := s.Modulus(load).GoverningM3
			r := w / sound.Modulus(load).GoverningM3
			if w < least*(1-1e-9) || r < ratio*(1-1e-9) {
				t.Fatalf("load %v deg: %v, ratio %v; bounds %v and %v", load.Degrees(), w, r, least, ratio)
			}
		}
		reached := s.Modulus(ratioLoad).GoverningM3 / sound.Modulus(ratioLoad).GoverningM3
		for _, pair := range [][2]float64{
			{s.Modulus(leastLoad).GoverningM3, least}, {reached, ratio},
		} {
			if math.Abs(pair[0]/pair[1]-1) > 2e-6 {
				t.Fatalf("a bound of %v is reached as %v", pair[1], pair[0])
			}
		}
	})
}

func TestCutErrors(t *testing.T) {
	circle := Circle(Point{}, 0.1)
	for _, c := range []struct {
		want     string
		outline  Ring
		cavities []Ring
	}{
		{"outline", Ring{{0, 0}, {1, 0}}, nil},
		{"outline", Ring{{0, 0}, {1, 1}, {1, 0}, {0, 1}}, nil},
		{"outline", Ring{{0, 0}, {quantity.Length(math.NaN()), 1}, {1, 0}}, nil},
		{"cavity 0", circle, []Ring{{{0, 0}}}},
		{"no wood", circle, []Ring{Circle(Point{}, 0.2)}},
		{"2 pieces", circle, []Ring{rectangle(0.05, 1)}},
	} {
		if _, err := Cut(c.outline, c.cavities...); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("got %v, want an error that names %q", err, c.want)
		}
	}
}

// Worked values of a published comparison of the formulas (percent, read
// second-hand): section A with d/D 0.60, section B with d/D 0.45 and an opening
// of 0.054 of the circumference.
func TestPublishedLosses(t *testing.T) {
	for _, c := range []struct{ share, opening, coder, wagener, open float64 }{
		{0.60, 0, 13, 22, 22},
		{0.45, 0.054, 4, 9, 14},
	} {
		hollow := quantity.Length(c.share)
		coder, err1 := CoderLoss(hollow, 1)
		wagener, err2 := WagenerLoss(hollow, 1)
		open, err3 := SmileyFraedrichLoss(hollow, 1, quantity.Proportion(c.opening))
		if err1 != nil || err2 != nil || err3 != nil {
			t.Fatal(err1, err2, err3)
		}
		near(t, "Coder", 100*float64(coder), c.coder, 0.5)
		near(t, "Wagener", 100*float64(wagener), c.wagener, 0.5)
		near(t, "Smiley & Fraedrich", 100*float64(open), c.open, 0.5)
	}
	if _, err := WagenerLoss(2, 1); err == nil {
		t.Error("a hollow wider than the stem")
	}
	if _, err := SmileyFraedrichLoss(0.5, 1, 1.5); err == nil {
		t.Error("an opening wider than the stem")
	}
}

func polygon360() Ring {
	ring := make(Ring, 360)
	for i := range ring {
		sin, cos := math.Sincos(float64(i) * math.Pi / 180)
		r := 0.2 + 0.01*math.Sin(5*float64(i)*math.Pi/180)
		ring[i] = Point{quantity.Length(r * cos), quantity.Length(r * sin)}
	}
	return ring
}

// All of it for 360 corners: cut a cavity, measure, 360 directions, extremes.
func BenchmarkCut(b *testing.B) {
	outline, cavity := polygon360(), Circle(Point{0.03, 0}, 0.1)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := Cut(outline, cavity); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkAllDirections(b *testing.B) {
	s := must(b, polygon360(), Circle(Point{0.03, 0}, 0.1))
	b.ReportAllocs()
	for b.Loop() {
		for k := range 360 {
			s.Modulus(quantity.Angle(k) * quantity.Degree)
		}
		s.Least()
	}
}
