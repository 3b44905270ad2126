package numeric

// extend works out the continuous extension of the step just tried, of order 7
// (Hairer et al., II.6 and their program): three more stages, then the terms of
// a polynomial that takes the states and rates at both ends.
func (in *Integrator) extend(h float64) {
	for stage := extraStage; stage < allStages; stage++ {
		in.sum(in.probe, h, inner[stage])
		in.rates(in.t+nodes[stage]*h, in.probe, in.k[stage])
	}
	for i, y := range in.y {
		rise := in.next[i] - y
		bend := h*in.k[0][i] - rise
		in.dense[0][i] = y
		in.dense[1][i] = rise
		in.dense[2][i] = bend
		in.dense[3][i] = rise - h*in.k[endStage][i] - bend
	}
	for term, weights := range extension {
		in.combine(in.dense[4+term], h, weights)
	}
}

// at writes the state at time t within the last step into y.
func (in *Integrator) at(t float64, y []float64) {
	s := (t - in.from) / in.width
	r := 1 - s
	d := &in.dense
	for i := range y {
		y[i] = d[0][i] + s*(d[1][i]+r*(d[2][i]+s*(d[3][i]+r*(d[4][i]+s*(d[5][i]+r*(d[6][i]+s*d[7][i]))))))
	}
}
