package swing

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"boughline/engine/numeric"
	"boughline/quantity"
)

func swayFor(t interface{ Fatal(...any) }, length quantity.Length, amplitude quantity.Angle, mode, damping float64, direction PullDirection) float64 {
	factor, err := SwayFactor(length, amplitude, quantity.Frequency(mode), quantity.Proportion(damping), direction)
	if err != nil {
		t.Fatal(err)
	}
	return float64(factor)
}

func drawDirection(t *rapid.T) PullDirection {
	return rapid.SampledFrom([]PullDirection{HorizontalPull, VerticalPull}).Draw(t, "direction")
}

// Greatest response over a period to a weight of 1, after the start has died
// out, from SciPy DOP853 (rtol 1e-12) on pendulum and oscillator together.
func TestSwayResponseAgainstSciPy(t *testing.T) {
	for _, row := range []struct {
		length        quantity.Length
		amplitude     quantity.Angle
		mode, damping float64
		direction     PullDirection
		want          float64
	}{
		{5, 80, 0.42, 0.03, HorizontalPull, 1.86264362},
		{5, 80, 0.8, 0.05, VerticalPull, 5.67259677},
		{4, 60, 0.7, 0.05, HorizontalPull, 4.68295556},
		{6, 80, 1.1, 0.02, HorizontalPull, 1.68915540},
		{4.2, 45, 1.0, 0.04, VerticalPull, 1.97453496},
		{3, 80, 0.3, 0.05, HorizontalPull, 2.90428073},
	} {
		got := oscillator{row.mode, row.damping}.response(row.length, row.amplitude*quantity.Degree, row.direction)
		within(t, "response", got, row.want, 1e-7)
	}
}

// A stiff mode follows the pull, and adds nothing.
func TestSwayOfStiffMode(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		length, amplitude := quantity.Length(rapid.Float64Range(2, 12).Draw(t, "length")), drawAngle(t, "amplitude", 5, 85)
		if factor := swayFor(t, length, amplitude, 200, 0.02, drawDirection(t)); factor > 1.001 {
			t.Errorf("factor %v", factor)
		}
	})
}

// On resonance with one harmonic the response is that harmonic over twice the
// damping ratio, the closed form for a single force.
func TestSwayOnResonance(t *testing.T) {
	const amplitude, length, damping = 80 * quantity.Degree, 5, 0.002
	h := harmonicsFor(t, 1, length, amplitude)
	for _, c := range []struct {
		n         int
		part      quantity.Force
		direction PullDirection
	}{{1, h.Horizontal[1], HorizontalPull}, {2, h.Vertical[2], VerticalPull}, {3, h.Horizontal[3], HorizontalPull}} {
		mode := oscillator{float64(c.n) * float64(h.Frequency), damping}
		want := math.Abs(overWeight(c.part, 1)) / (2 * damping)
		within(t, "resonance", mode.response(length, amplitude, c.direction)/want, 1, 0.04)
	}
	first := swayFor(t, length, amplitude, float64(h.Frequency), damping, HorizontalPull)
	part, _ := GreatestHorizontal(1, amplitude)
	within(t, "factor", first, float64(h.Horizontal[1]/part)/(2*damping), 0.02*first)
}

// No amplitude up to the one asked for gives a greater response, and none can
// be greater than the harmonics all at once.
func TestSwayIsGreatestOverAmplitudes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		length, amplitude := quantity.Length(rapid.Float64Range(2, 12).Draw(t, "length")), drawAngle(t, "amplitude", 10, 85)
		mode := oscillator{rapid.Float64Range(0.15, 3).Draw(t, "mode"), rapid.Float64Range(0.01, 0.1).Draw(t, "damping")}
		direction := drawDirection(t)
		greatest := swayFor(t, length, amplitude, mode.frequency, mode.damping, direction) * greatestPart(amplitude, direction)
		smaller := amplitude * quantity.Angle(rapid.Float64Range(0.05, 1).Draw(t, "share"))
		got := mode.response(length, smaller, direction)
		if got > greatest*(1+1e-3) {
			t.Errorf("at %v deg %v, up to %v deg %v", smaller.Degrees(), got, amplitude.Degrees(), greatest)
		}
		h := harmonicsFor(t, 1, length, smaller)
		parts := h.Horizontal
		if direction == VerticalPull {
			parts = h.Vertical
		}
		bound := 0.0
		for n, part := range parts {
			bound += math.Abs(overWeight(part, 1)) * math.Hypot(mode.answer(float64(n)*float64(h.Frequency)))
		}
		if got > bound*(1+1e-12) {
			t.Errorf("response %v, all harmonics at once %v", got, bound)
		}
	})
}

// driven is a pendulum and the mode that its pull drives, by a weight of 1.
type driven struct {
	rigid
	mode      oscillator
	amplitude quantity.Angle
	direction PullDirection
}

func (d driven) Rates(at float64, y, rates []float64) {
	d.rigid.Rates(at, y, rates)
	horizontal, vertical := PullParts(1, d.amplitude, quantity.Angle(y[0]))
	part := horizontal
	if d.direction == VerticalPull {
		part = vertical
	}
	omega := 2 * math.Pi * d.mode.frequency
	rates[2], rates[3] = y[3], omega*(omega*(overWeight(part, 1)-y[2])-2*d.mode.damping*y[3])
}

// A swing let go at the full amplitude, the tree at rest under the pull of that
// moment: the overshoot stays within the bounds given for it.
func TestSwayFromRelease(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		length, amplitude := quantity.Length(rapid.Float64Range(2, 12).Draw(t, "length")), drawAngle(t, "amplitude", 10, 85)
		d := driven{rigid{float64(length)}, oscillator{rapid.Float64Range(0.15, 3).Draw(t, "mode"), rapid.Float64Range(0.01, 0.1).Draw(t, "damping")},
			amplitude, drawDirection(t)}
		y := []float64{float64(amplitude), 0, 0, 0}
		var rates [4]float64
		d.Rates(0, y, rates[:])
		omega := 2 * math.Pi * d.mode.frequency
		y[2] = rates[3] / (omega * omega)
		in, err := numeric.NewIntegrator(d, 0, y, numeric.Tolerance{Relative: 1e-7, Absolute: 1e-8})
		if err != nil {
			t.Fatal(err)
		}
		most := 0.0
		for i := range 800 {
			if _, err := in.Run(float64(SmallPeriod(length)) * float64(i+1) / 80); err != nil {
				t.Fatal(err)
			}
			most = math.Max(most, math.Abs(in.State()[2]))
		}
		factor := swayFor(t, length, amplitude, d.mode.frequency, d.mode.damping, d.direction)
		bound := 3.0
		if d.mode.frequency > 1/float64(SmallPeriod(length)) {
			bound = 2
		}
		if most > bound*factor*greatestPart(amplitude, d.direction) {
			t.Errorf("greatest %v, factor %v times %v", most, factor, greatestPart(amplitude, d.direction))
		}
	})
}

func TestSwayRefuses(t *testing.T) {
	for _, c := range []struct {
		length        quantity.Length
		amplitude     quantity.Angle
		mode, damping float64
	}{{0, 1, 1, 0.05}, {5, 0, 1, 0.05}, {5, math.Pi / 2, 1, 0.05}, {5, 1, 0, 0.05}, {5, 1, 1, 0}} {
		if factor, err := SwayFactor(c.length, c.amplitude, quantity.Frequency(c.mode), quantity.Proportion(c.damping), HorizontalPull); err == nil {
			t.Errorf("%+v: factor %v; want an error", c, factor)
		}
	}
}

func BenchmarkSwayFactor(b *testing.B) {
	for b.Loop() {
		if _, err := SwayFactor(5, 80*quantity.Degree, 0.5, 0.05, HorizontalPull); err != nil {
			b.Fatal(err)
		}
	}
}
