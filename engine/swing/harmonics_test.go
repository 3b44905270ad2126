package swing

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"
	"pgregory.net/rapid"

	"boughline/engine/numeric"
	"boughline/quantity"
)

// rigid is the plain pendulum: the angle and its rate.
type rigid struct{ length float64 }

func (r rigid) Rates(_ float64, y, rates []float64) {
	rates[0], rates[1] = y[1], -quantity.StandardGravity/r.length*math.Sin(y[0])
}

// angleAt is the angle at a time after the bottom, from the equation of motion.
func angleAt(t interface{ Fatal(...any) }, length quantity.Length, amplitude quantity.Angle, at float64) quantity.Angle {
	in, err := numeric.NewIntegrator(rigid{float64(length)}, 0, []float64{0, float64(BottomSpeed(length, amplitude) / quantity.Speed(length))}, precision)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := in.Run(at); err != nil {
		t.Fatal(err)
	}
	return quantity.Angle(in.State()[0])
}

func harmonicsFor(t interface{ Fatal(...any) }, mass quantity.Mass, length quantity.Length, amplitude quantity.Angle) PullHarmonics {
	h, err := HarmonicsOf(mass, length, amplitude)
	if err != nil {
		t.Fatal(err)
	}
	return h
}

// The sum of the harmonics is the pull at any time of the motion, followed by
// the integrator.
func TestHarmonicsAddUpToPull(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		length, amplitude := quantity.Length(rapid.Float64Range(2, 12).Draw(t, "length")), drawAngle(t, "amplitude", 1, 89)
		h := harmonicsFor(t, 60, length, amplitude)
		at := rapid.Float64Range(0, 2).Draw(t, "periods") / float64(h.Frequency)
		horizontal, vertical := PullParts(60, amplitude, angleAt(t, length, amplitude, at))
		gotHorizontal, gotVertical := 0.0, 0.0
		for n := range h.Vertical {
			phase := 2 * math.Pi * float64(n) * float64(h.Frequency) * at
			gotHorizontal += float64(h.Horizontal[n]) * math.Sin(phase)
			gotVertical += float64(h.Vertical[n]) * math.Cos(phase)
		}
		weight := float64(quantity.Mass(60).Weight())
		if off := math.Hypot(gotHorizontal-float64(horizontal), gotVertical-float64(vertical)); off > 1e-8*weight {
			t.Errorf("%v N and %v N, want %v N and %v N", gotHorizontal, gotVertical, horizontal, vertical)
		}
	})
}

// Parseval: the mean square over a swing is half the sum of the squares, and
// the square of the mean. The mean is taken over the angle, by gonum's Gauss
// points, with q = a sin s to take out the turning point.
func TestHarmonicsParseval(t *testing.T) {
	for _, degrees := range []float64{10, 45, 80, 89} {
		amplitude := quantity.Angle(degrees) * quantity.Degree
		h := harmonicsFor(t, 60, 5, amplitude)
		mean := func(square func(q quantity.Angle) float64) float64 {
			return 4 * float64(h.Frequency) * quad.Fixed(func(s float64) float64 {
				q := quantity.Angle(float64(amplitude) * math.Sin(s))
				return square(q) * float64(amplitude) * math.Cos(s) / float64(SpeedAt(5, amplitude, q)) * 5
			}, 0, math.Pi/2, 60, nil, 0)
		}
		horizontal, vertical := 0.0, float64(h.Vertical[0]*h.Vertical[0])
		for n := 1; n <= HarmonicCount; n++ {
			horizontal += float64(h.Horizontal[n]*h.Horizontal[n]) / 2
			vertical += float64(h.Vertical[n]*h.Vertical[n]) / 2
		}
		wantHorizontal := mean(func(q quantity.Angle) float64 { f, _ := PullParts(60, amplitude, q); return float64(f * f) })
		wantVertical := mean(func(q quantity.Angle) float64 { _, f := PullParts(60, amplitude, q); return float64(f * f) })
		within(t, "horizontal", horizontal/wantHorizontal, 1, 1e-9)
		within(t, "vertical", vertical/wantVertical, 1, 1e-9)
	}
}

// Newton's second law over a whole swing: the mean vertical pull is the weight
// and there is no mean horizontal one.
func TestMeanPullIsWeight(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		h := harmonicsFor(t, 60, 5, drawAngle(t, "amplitude", 0.1, 89))
		weight := float64(quantity.Mass(60).Weight())
		if math.Abs(float64(h.Vertical[0])-weight) > 1e-9*weight || h.Horizontal[0] != 0 {
			t.Errorf("means %v N and %v N", h.Horizontal[0], h.Vertical[0])
		}
	})
}

// Small swings: with q = a sin p the pull is m g a sin p sideways and
// m g (1 + a^2 cos 2p) upright, the expansion of Pull to the second order.
func TestHarmonicsOfSmallSwing(t *testing.T) {
	const a = 0.01
	h := harmonicsFor(t, 1, 5, a)
	within(t, "horizontal", overWeight(h.Horizontal[1], 1)/a, 1, a*a)
	within(t, "vertical", overWeight(h.Vertical[2], 1)/(a*a), 1, a*a)
	within(t, "third", overWeight(h.Horizontal[3], 1), 0, 2*a*a*a)
}

// The last harmonics are nothing, however far the swing goes.
func TestHarmonicsDieOut(t *testing.T) {
	h := harmonicsFor(t, 1, 5, 89.9*quantity.Degree)
	within(t, "horizontal", overWeight(h.Horizontal[HarmonicCount-1], 1), 0, 1e-8)
	within(t, "vertical", overWeight(h.Vertical[HarmonicCount], 1), 0, 1e-8)
}

func TestHarmonicsRefuse(t *testing.T) {
	for _, c := range []struct {
		mass      quantity.Mass
		length    quantity.Length
		amplitude quantity.Angle
	}{{0, 5, 1}, {60, 0, 1}, {60, 5, math.Pi / 2}, {60, 5, 0}} {
		if _, err := HarmonicsOf(c.mass, c.length, c.amplitude); err == nil {
			t.Errorf("%+v: want an error", c)
		}
	}
}

func BenchmarkHarmonics(b *testing.B) {
	for b.Loop() {
		if _, err := HarmonicsOf(60, 5, 80*quantity.Degree); err != nil {
			b.Fatal(err)
		}
	}
}
