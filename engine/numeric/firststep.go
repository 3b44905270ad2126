package numeric

import "math"

// firstStep guesses the first step from the size of state, rates and their
// change (Hairer et al., II.4, "Starting step size").
func (in *Integrator) firstStep(span float64) float64 {
	state, rate := in.size(in.y), in.size(in.k[0])
	h := 1e-6
	if state > 1e-5 && rate > 1e-5 {
		h = 0.01 * state / rate
	}
	h = math.Min(h, span)
	for i, y := range in.y {
		in.probe[i] = y + h*in.k[0][i]
	}
	in.rates(in.t+h, in.probe, in.k[1])
	for i := range in.k[1] {
		in.k[1][i] = (in.k[1][i] - in.k[0][i]) / h
	}
	bend := math.Max(rate, in.size(in.k[1]))
	second := math.Max(1e-6, h*1e-3)
	if bend > 1e-15 {
		second = math.Pow(0.01/bend, 1.0/8)
	}
	return math.Min(math.Min(100*h, second), span)
}

// size is the root mean square of v in units of the tolerance at the state.
func (in *Integrator) size(v []float64) float64 {
	sum := 0.0
	for i, x := range v {
		x /= in.tolerance.Absolute + in.tolerance.Relative*math.Abs(in.y[i])
		sum += x * x
	}
	return math.Sqrt(sum / float64(len(v)))
}
