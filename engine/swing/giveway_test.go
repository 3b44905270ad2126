package swing

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/mat"
	"pgregory.net/rapid"

	"boughline/quantity"
)

// limbAlong is a limb with one stiffness across and one up, the same in all
// headings.
func limbAlong(mass quantity.Mass, horizontal, vertical float64, ratio quantity.Proportion) LimbAtHang {
	return LimbAtHang{[3][3]float64{{horizontal, 0, 0}, {0, horizontal, 0}, {0, 0, vertical}}, mass, ratio}
}

func drawLimbAtHang(t *rapid.T) LimbAtHang {
	mass := quantity.Mass(rapid.Float64Range(20, 400).Draw(t, "limb"))
	stiffness := func(name string) float64 {
		return float64(SupportOf(mass, quantity.Frequency(rapid.Float64Range(1, 30).Draw(t, name)), 0).Stiffness)
	}
	return limbAlong(mass, stiffness("horizontal"), stiffness("vertical"), quantity.Proportion(rapid.Float64Range(0.005, 0.1).Draw(t, "damping")))
}

func drawHang(t *rapid.T) (mass quantity.Mass, length quantity.Length, amplitude, heading quantity.Angle) {
	return quantity.Mass(rapid.Float64Range(20, 120).Draw(t, "mass")), quantity.Length(rapid.Float64Range(2, 10).Draw(t, "length")),
		drawAngle(t, "amplitude", 20, 85), drawAngle(t, "heading", 0, 360)
}

// Greatest force on the limb in the plane of swing over the rigid peak, and
// sag, computed with SciPy DOP853 (rtol 1e-11) on rider and hang point in plane
// coordinates with the pull as a multiplier, scanned at 4e5 moments.
func TestGiveWayAgainstSciPy(t *testing.T) {
	for _, row := range []struct {
		length                        quantity.Length
		mass, limb                    quantity.Mass
		horizontal, vertical, damping float64
		amplitude                     quantity.Angle
		factor, sag                   float64
	}{
		{6, 70, 120, 18014.0019528683, 10659.172753176506, 0.08, 50, 1.0624540, 0.117211},
		{5, 80, 80, 85399.71296174599, 50532.37453357751, 0.02, 70, 1.0154386, 0.036510},
		{5, 80, 400, 1.5 * 10106, 10106, 0.03, 80, 1.8364938, 0.373358},
		{4.2, 74.6, 150, 30000, 22000, 0.05, 80, 1.0804467, 0.095228},
		{3, 40, 40, 8000, 6000, 0.03, 60, 1.0673620, 0.139536},
	} {
		limb := limbAlong(row.limb, row.horizontal, row.vertical, quantity.Proportion(row.damping))
		given, err := GiveWay(limb, row.mass, row.length, row.amplitude*quantity.Degree, 1)
		if err != nil {
			t.Fatal(err)
		}
		within(t, "factor", float64(given.Factor), row.factor, 1e-6)
		within(t, "sag", float64(given.Sag), row.sag, 1e-6)
	}
}

// A limb that gives up and down only, against peak forces on the limb over the
// rigid peak from SciPy DOP853 on the Lagrange equations, checked there by
// LSODA on the constrained ones.
func TestVerticalPeak(t *testing.T) {
	for _, row := range []struct {
		length     quantity.Length
		mass, limb quantity.Mass
		frequency  quantity.Frequency
		damping    quantity.Proportion
		amplitude  quantity.Angle
		ratio, sag float64
	}{
		{5, 80, 60, 2, 0.05, 45, 1.0723787769813493, 0.14078840027685702},
		{5, 80, 100, 1.2, 0.05, 60, 1.1832961572925702, 0.3264240524343968},
		{7, 80, 60, 4, 0.02, 60, 1.0134802215196326, 0.041958781992474575},
		{3, 40, 40, 3, 0.03, 45, 1.0439363324903776, 0.045689906518850916},
	} {
		s := YieldingSwing{Length: row.length, Mass: row.mass, LimbMass: row.limb, Vertical: SupportOf(row.limb, row.frequency, row.damping)}
		angle := row.amplitude * quantity.Degree
		peak, err := s.peak(angle, giveWayPrecision)
		if err != nil {
			t.Fatal(err)
		}
		within(t, "ratio", float64(peak.force/PeakPull(row.mass, angle)), row.ratio, 1e-6)
		within(t, "sag", float64(peak.sag), row.sag, 1e-6)
	}
}

// The result does not hang on the tolerance of the integrator.
func TestGiveWayConverged(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		limb := drawLimbAtHang(t)
		mass, length, amplitude, heading := drawHang(t)
		loose, err := limb.giveWay(mass, length, amplitude, heading, giveWayPrecision)
		if err != nil {
			t.Fatal(err)
		}
		tight, err := limb.giveWay(mass, length, amplitude, heading, precision)
		if err != nil {
			t.Fatal(err)
		}
		if math.Abs(float64(loose.Factor-tight.Factor)) > 1e-6*float64(tight.Factor) ||
			math.Abs(float64(loose.Sag-tight.Sag)) > 1e-6*float64(length) {
			t.Errorf("%+v, tight %+v", loose, tight)
		}
	})
}

// A stiff limb followed at the stiffest frequency comes within 1 % of the one
// followed at its own.
func TestGiveWayOfStiffLimb(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mass, length, amplitude, heading := drawHang(t)
		frequency := quantity.Frequency(rapid.Float64Range(6, 20).Draw(t, "frequency"))
		across := rapid.Float64Range(1, 2).Draw(t, "across over up")
		const moving = 150
		up := SupportOf(moving, frequency, 0.03)
		sideways := SupportBy(moving, quantity.Stiffness(across)*up.Stiffness, 0.03)
		limb := limbAlong(moving, float64(sideways.Stiffness), float64(up.Stiffness), 0.03)
		given, err := GiveWay(limb, mass, length, amplitude, heading)
		if err != nil {
			t.Fatal(err)
		}
		s := YieldingSwing{Length: length, Mass: mass, LimbMass: moving, Vertical: up, Horizontal: &sideways}
		peak, err := s.peak(amplitude, giveWayPrecision)
		if err != nil {
			t.Fatal(err)
		}
		want := math.Max(1, float64(peak.force/PeakPull(mass, amplitude)))
		if math.Abs(float64(given.Factor)-want) > 0.01 {
			t.Errorf("factor %v, followed in full %v", given.Factor, want)
		}
		if math.Abs(float64(given.Sag-peak.sag)) > 0.05*float64(peak.sag) {
			t.Errorf("sag %v, followed in full %v", given.Sag, peak.sag)
		}
	})
}

// Without give there is nothing to add.
func TestGiveWayOfRigidLimb(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mass, length, amplitude, heading := drawHang(t)
		given, err := GiveWay(limbAlong(100, 1e15, 1e15, 0.03), mass, length, amplitude, heading)
		if err != nil {
			t.Fatal(err)
		}
		if given.Factor < 1 || given.Factor > 1+1e-8 || given.Sag > 1e-9 || given.Slack {
			t.Errorf("%+v", given)
		}
	})
}

// The factor is never below 1 and a swing is the same there and back.
func TestGiveWayFloorAndMirror(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		limb := drawLimbAtHang(t)
		mass, length, amplitude, heading := drawHang(t)
		there, err := GiveWay(limb, mass, length, amplitude, heading)
		if err != nil {
			t.Fatal(err)
		}
		back, err := GiveWay(limb, mass, length, amplitude, heading+math.Pi)
		if err != nil {
			t.Fatal(err)
		}
		if there.Factor < 1 || math.Abs(float64(there.Factor-back.Factor)) > 1e-6 {
			t.Errorf("there %+v, back %+v", there, back)
		}
	})
}

// The stiffness against a force in one direction is one over the flexibility
// that way, the inverse taken by gonum.
func TestStiffnessAlong(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		root := mat.NewDense(3, 3, nil)
		for i := range 9 {
			root.Set(i/3, i%3, rapid.Float64Range(-300, 300).Draw(t, "root"))
		}
		stiffness := mat.NewDense(3, 3, nil)
		stiffness.Mul(root, root.T())
		limb := LimbAtHang{MovingMass: 100}
		for i := range 9 {
			if i%4 == 0 {
				stiffness.Set(i/3, i/3, stiffness.At(i/3, i/3)+1e4)
			}
			limb.StiffnessNewtonPerMetre[i/3][i%3] = stiffness.At(i/3, i%3)
		}
		var flexibility mat.Dense
		if err := flexibility.Inverse(stiffness); err != nil {
			t.Fatal(err)
		}
		n := quantity.Heading(drawAngle(t, "heading", 0, 360), drawAngle(t, "inclination", -90, 90))
		v := mat.NewVecDense(3, []float64{n.X, n.Y, n.Z})
		got, err := limb.along(n)
		if err != nil {
			t.Fatal(err)
		}
		if want := 1 / mat.Inner(v, &flexibility, v); math.Abs(float64(got)-want) > 1e-9*want {
			t.Errorf("got %v, want %v N/m", got, want)
		}
	})
}

// A limb with the mass that goes with its stiffness has the frequency again.
func TestMovingMass(t *testing.T) {
	within(t, "mass", float64(MovingMass(SupportOf(60, 2, 0).Stiffness, 2)), 60, 1e-12)
}

// Near the root of a uniform cantilever the effective mass of its lowest mode
// on the whole stiffness is slower than the mode; near the tip they agree.
// Stiffness 3 E I/x^3; mode 1.875104, sigma 0.734096, as in Blevins, Formulas
// for Natural Frequency and Mode Shape (from memory).
func TestEffectiveMassIsForTheTip(t *testing.T) {
	const root, sigma = 1.875104, 0.734096 // length, E I and mass per length 1
	for _, row := range []struct{ x, low, high float64 }{{0.3, 0, 0.85}, {0.8, 0.97, 1}, {1, 0.97, 1}} {
		b := root * row.x
		shape := math.Cosh(b) - math.Cos(b) - sigma*(math.Sinh(b)-math.Sin(b)) // modal mass 1
		effective := 1 / (shape * shape)
		stiffness := 3 / math.Pow(row.x, 3)
		lowest := root * root / (2 * math.Pi)
		ratio := math.Sqrt(float64(MovingMass(quantity.Stiffness(stiffness), quantity.Frequency(lowest))) / effective)
		if !(ratio >= row.low && ratio <= row.high) {
			t.Errorf("at %v: lone frequency %v of the mode's; expected %v to %v", row.x, ratio, row.low, row.high)
		}
	}
}

func TestGiveWayRefuses(t *testing.T) {
	type hang struct {
		limb      LimbAtHang
		mass      quantity.Mass
		length    quantity.Length
		amplitude quantity.Angle
	}
	for name, spoil := range map[string]func(*hang){
		"moving mass": func(h *hang) { h.limb.MovingMass = 0 }, "endless moving mass": func(h *hang) { h.limb.MovingMass = quantity.Mass(math.Inf(1)) },
		"damping": func(h *hang) { h.limb.DampingRatio = -1 }, "mass": func(h *hang) { h.mass = 0 }, "length": func(h *hang) { h.length = 0 },
		"amplitude": func(h *hang) { h.amplitude = math.Pi / 2 }, "no stiffness": func(h *hang) { h.limb.StiffnessNewtonPerMetre[1][1] = 0 },
		"negative stiffness": func(h *hang) { h.limb.StiffnessNewtonPerMetre[2][2] = -1 },
		"not a number":       func(h *hang) { h.limb.StiffnessNewtonPerMetre[2][2] = math.NaN() },
		"endless stiffness":  func(h *hang) { h.limb.StiffnessNewtonPerMetre[2][2] = math.Inf(1) },
	} {
		h := hang{limbAlong(100, 2e4, 2e4, 0.03), 60, 5, 1}
		spoil(&h)
		if given, err := GiveWay(h.limb, h.mass, h.length, h.amplitude, 0); err == nil {
			t.Errorf("%s out of range: %+v; want an error", name, given)
		}
	}
}

// A thin limb whipping at 80 deg lets the line go slack, and says so.
func TestGiveWaySlack(t *testing.T) {
	given, err := GiveWay(limbAlong(40, 8212, 6317, 0.03), 80, 5, 80*quantity.Degree, 0)
	if err != nil || given.Slack {
		t.Errorf("limb of 6.3 kN/m: %+v, %v", given, err)
	}
	given, err = GiveWay(limbAlong(40, 1300, 1011, 0.03), 80, 5, 80*quantity.Degree, 0)
	if err != nil || !given.Slack {
		t.Errorf("limb of 1 kN/m: %+v, %v", given, err)
	}
}

func BenchmarkGiveWay(b *testing.B) {
	limb := limbAlong(150, 30000, 22000, 0.05)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := GiveWay(limb, 74.6, 4.2, 80*quantity.Degree, 1); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkGiveWayStiff is the dearest case: a limb at the stiffest frequency.
func BenchmarkGiveWayStiff(b *testing.B) {
	limb := limbAlong(40, 1e6, 1e6, 0.02)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := GiveWay(limb, 120, 8, 80*quantity.Degree, 1); err != nil {
			b.Fatal(err)
		}
	}
}
