package swing

import (
	"math"

	"gonum.org/v1/gonum/mathext"

	"boughline/quantity"
)

// HarmonicCount is how many harmonics of a pull are taken. Each is about a
// fifth of the one before at 90 deg and less at smaller amplitudes; what is
// left out is below 1e-9 of the weight.
const HarmonicCount = 24

// PullHarmonics are the parts of the Pull of a swing that goes on and on, by
// number n. At the time t after a passage through the bottom the horizontal
// part of the pull is the sum of Horizontal[n] sin(2 pi n f t) and the vertical
// part that of Vertical[n] cos(2 pi n f t), n from 0 to HarmonicCount. The
// horizontal has odd ones only, the vertical even ones; Vertical[0] is the
// weight.
type PullHarmonics struct {
	Frequency            quantity.Frequency // f, of the swing there and back
	Horizontal, Vertical [HarmonicCount + 1]quantity.Force
}

// HarmonicsOf returns the harmonics of the pull of a rider on a rigid line,
// drag left out. It fails on lengths and amplitudes that Period refuses.
// Source: Fourier coefficients of Pull on the exact motion, sin(q/2) =
// sin(a/2) sin u at the time sqrt(L/g) F(u, sin^2(a/2)), F being the elliptic
// integral of the first kind (Landau & Lifshitz, Mechanics, §11, from memory).
func HarmonicsOf(mass quantity.Mass, length quantity.Length, amplitude quantity.Angle) (PullHarmonics, error) {
	if err := requirePositive(field{"mass", float64(mass), "kg"}); err != nil {
		return PullHarmonics{}, err
	}
	period, err := Period(length, amplitude)
	if err != nil {
		return PullHarmonics{}, err
	}
	h := PullHarmonics{Frequency: quantity.Frequency(1 / period)}
	horizontal, vertical := harmonicsOverWeight(amplitude)
	for n := range h.Vertical {
		h.Horizontal[n] = mass.Weight() * quantity.Force(horizontal[n])
		h.Vertical[n] = mass.Weight() * quantity.Force(vertical[n])
	}
	return h, nil
}

type harmonics [HarmonicCount + 1]float64

// harmonicsOverWeight returns the coefficients for a weight of 1 by the
// midpoint rule over a quarter of u; as all is periodic and even about the
// ends of the quarter, its error falls exponentially with the points.
func harmonicsOverWeight(amplitude quantity.Angle) (horizontal, vertical harmonics) {
	const points = 24
	k := (amplitude / 2).Sin()
	whole := mathext.CompleteK(k * k)
	for i := range points {
		u := (float64(i) + 0.5) * math.Pi / 2 / points
		s := k * math.Sin(u)
		root := math.Sqrt(1 - s*s)
		sin, cos := 2*s*root, 1-2*s*s
		pull := 3*cos - 2*amplitude.Cos()
		phase := math.Pi / 2 * mathext.EllipticF(u, k*k) / whole // 2 pi t / period
		weight := math.Pi / (whole * root * points)              // 4/pi of its step
		vertical[0] += weight / 2 * pull * cos
		once, twice := complexUnit(phase), complexUnit(2*phase)
		turned := once // e^(i n phase)
		for n := 1; n < len(vertical); n += 2 {
			horizontal[n] += weight * pull * sin * imag(turned)
			vertical[n+1] += weight * pull * cos * real(turned*once)
			turned *= twice
		}
	}
	return horizontal, vertical
}

// complexUnit returns e^(i phase).
func complexUnit(phase float64) complex128 {
	sin, cos := math.Sincos(phase)
	return complex(cos, sin)
}
