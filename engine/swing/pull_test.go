package swing

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"boughline/quantity"
)

func within(t *testing.T, name string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: got %.9g, want %.9g within %g", name, got, want, tolerance)
	}
}

func overWeight(f quantity.Force, m quantity.Mass) float64 { return float64(f / m.Weight()) }

func drawAngle(t *rapid.T, name string, from, to float64) quantity.Angle {
	return quantity.Angle(rapid.Float64Range(from, to).Draw(t, name)) * quantity.Degree
}

// EN 1176-1 Annex B, table B.1 (remembered to three decimals; the fourth is
// computed): coefficients along the line, horizontal and vertical for swings
// up to 80 degrees.
func TestPullOfPlaygroundStandard(t *testing.T) {
	const mass = 69.5
	for _, row := range [][4]float64{
		{80, 0.1736, 0.1710, 0.0302}, {70, 0.6788, 0.6378, 0.2322}, {60, 1.1527, 0.9983, 0.5764},
		{50, 1.5811, 1.2112, 1.0163}, {42.6, 1.8610, 1.2597, 1.3699}, {40, 1.9508, 1.2540, 1.4944},
		{30, 2.2508, 1.1254, 1.9492}, {20, 2.4718, 0.8454, 2.3227}, {10, 2.6071, 0.4527, 2.5675}, {0, 2.6527, 0, 2.6527},
	} {
		at := quantity.Angle(row[0]) * quantity.Degree
		horizontal, vertical := PullParts(mass, 80*quantity.Degree, at)
		within(t, "C_r", overWeight(Pull(mass, 80*quantity.Degree, at), mass), row[1], 0.6e-4)
		within(t, "C_h", overWeight(horizontal, mass), row[2], 0.6e-4)
		within(t, "C_v", overWeight(vertical, mass), row[3], 0.6e-4)
	}
}

// Greatest horizontal by amplitude: angle and size over the weight, found
// elsewhere with a bounded minimiser of SciPy 1.10 on the same law.
func TestGreatestHorizontal(t *testing.T) {
	for _, row := range [][3]float64{
		{30, 30, 0.433013}, {45, 33.4142, 0.600206}, {60, 37.3132, 0.840155},
		{70, 39.9679, 1.03752}, {80, 42.5540, 1.259665}, {90, 45, 1.5},
	} {
		force, at := GreatestHorizontal(50, quantity.Angle(row[0])*quantity.Degree)
		within(t, "angle", at.Degrees(), row[1], 6e-5)
		within(t, "force", overWeight(force, 50), row[2], 6e-7)
	}
}

// Bottom 3 - 2 cos a and end cos a: plain mechanics, as in the teaching papers
// on playground swings (Pendrill & Williams, Phys. Educ. 40 (2005) 527; law
// known from them, no table of peaks read).
func TestPullAtBottomAndEnd(t *testing.T) {
	for _, row := range [][3]float64{
		{10, 1.030384, 0.984808}, {20, 1.120615, 0.939693}, {30, 1.267949, 0.866025}, {45, 1.585786, 0.707107},
		{60, 2, 0.5}, {75, 2.482362, 0.258819}, {80, 2.652704, 0.173648}, {90, 3, 0},
	} {
		a := quantity.Angle(row[0]) * quantity.Degree
		within(t, "bottom", overWeight(PeakPull(40, a), 40), row[1], 6e-7)
		within(t, "end", overWeight(Pull(40, a, a), 40), row[2], 6e-7)
	}
}

func TestGreatestHorizontalIsGreatest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		amplitude := drawAngle(t, "amplitude", 1, 90)
		at := drawAngle(t, "share", 0, 1) / quantity.Degree * amplitude
		greatest, _ := GreatestHorizontal(60, amplitude)
		horizontal, vertical := PullParts(60, amplitude, at)
		if horizontal > greatest*(1+1e-12) {
			t.Errorf("%v N at %v deg, above the greatest %v N", horizontal, at.Degrees(), greatest)
		}
		pull := Pull(60, amplitude, at)
		if sum := math.Hypot(float64(horizontal), float64(vertical)); math.Abs(sum-float64(pull)) > 1e-9 {
			t.Errorf("parts join to %v N, want the pull %v N", sum, pull)
		}
	})
}

func TestPullGrowsWithMassAndAmplitude(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mass := quantity.Mass(rapid.Float64Range(10, 150).Draw(t, "mass"))
		amplitude := drawAngle(t, "amplitude", 1, 85)
		if PeakPull(mass+1, amplitude) <= PeakPull(mass, amplitude) || PeakPull(mass, amplitude+quantity.Degree) <= PeakPull(mass, amplitude) {
			t.Errorf("peak pull does not grow at %v kg, %v deg", mass, amplitude.Degrees())
		}
		more, _ := GreatestHorizontal(mass, amplitude+quantity.Degree)
		if less, _ := GreatestHorizontal(mass, amplitude); more <= less {
			t.Errorf("greatest horizontal does not grow at %v deg", amplitude.Degrees())
		}
	})
}
