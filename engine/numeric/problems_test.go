package numeric

import "math"

// problem is a system with an exact answer.
type problem struct {
	name  string
	rates func(t float64, y, rates []float64)
	exact func(t float64) []float64
	end   float64
	// Steps over the whole and width of one step from which on the order shows.
	steps int
	width float64
}

// Rates implements System.
func (p problem) Rates(t float64, y, rates []float64) { p.rates(t, y, rates) }

// problems are closed forms from any text on differential equations; the
// ellipse is the orbit of Kepler's problem, whose answer is the root of
// Kepler's equation.
var problems = []problem{
	{"oscillator", func(_ float64, y, r []float64) { r[0], r[1] = y[1], -y[0] },
		func(t float64) []float64 { return []float64{math.Cos(t), -math.Sin(t)} }, 6, 8, 0.4},
	{"riccati", func(_ float64, y, r []float64) { r[0] = -y[0] * y[0] },
		func(t float64) []float64 { return []float64{1 / (1 + t)} }, 3, 16, 0.1},
	{"driven", func(t float64, y, r []float64) { r[0] = y[0] * math.Cos(t) },
		func(t float64) []float64 { return []float64{math.Exp(math.Sin(t))} }, 5, 8, 0.4},
	{"ellipse", ellipseRates, ellipse, 6, 64, 0.2},
}

const eccentricity = 0.3

func ellipseRates(_ float64, y, r []float64) {
	d := math.Pow(y[0]*y[0]+y[1]*y[1], -1.5)
	r[0], r[1], r[2], r[3] = y[2], y[3], -y[0]*d, -y[1]*d
}

func ellipse(t float64) []float64 {
	anomaly := Root(func(e float64) float64 { return e - eccentricity*math.Sin(e) - t }, t-1, t+1)
	sin, cos := math.Sincos(anomaly)
	b := math.Sqrt(1 - eccentricity*eccentricity)
	d := 1 - eccentricity*cos
	return []float64{cos - eccentricity, b * sin, -sin / d, b * cos / d}
}

func distance(a, b []float64) float64 {
	sum := 0.0
	for i := range a {
		sum += (a[i] - b[i]) * (a[i] - b[i])
	}
	return math.Sqrt(sum)
}
