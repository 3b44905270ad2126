package chance

import "math"

// reference works the three probabilities out slowly, without a centre, a cut or
// a choice of piece that could miss something: Gauss-Legendre in many small
// pieces over the deviate of own moment and, within, that of resistance.
func reference(c LimbCase) (prior, ownWeight, loadTest float64) {
	m, _ := c.model()
	var falls, fails, carries, failsTested, passes float64
	x := m.resistance
	deviate := func(value float64) float64 { return (math.Log(value) - x.Mu) / x.Sigma }
	at := func(zs float64) (n, f, h, ft, ht float64) {
		s := m.self.At(zs)
		marks := make([]float64, 0, 20)
		for v := -8.0; v <= 9; v++ {
			marks = append(marks, deviate(s+m.ride.At(v)))
		}
		rides := func(y float64) float64 {
			left := x.At(y) - s
			switch {
			case left <= 0:
				return 1
			case m.ride.Sigma == 0:
				return indicator(m.ride.At(0) > left)
			}
			return cdf((m.ride.Mu - math.Log(left)) / m.ride.Sigma)
		}
		held := func(y float64) float64 {
			return cdf((x.Mu + x.Sigma*y + m.lasting.Mu - math.Log(s+m.test)) / m.lasting.Sigma)
		}
		from := deviate(s)
		if from < 10 {
			breaks := breaksBetween(math.Max(from, -14), 10, 0.5, marks...)
			f = integrate(func(y float64) float64 { return phi(y) * rides(y) }, breaks)
			ft = integrate(func(y float64) float64 { return phi(y) * rides(y) * held(y) }, breaks)
			ht = integrate(func(y float64) float64 { return phi(y) * held(y) }, breaks)
		}
		return cdf(from), f, cdf(-from), ft, ht
	}
	if m.self.Sigma == 0 {
		falls, fails, carries, failsTested, passes = at(0)
	} else {
		const step = 0.1 // of the trapezoidal rule, as fine as that of any other on a normal density
		for z := -9.0; z <= 10; z += step {
			n, f, h, ft, ht := at(z)
			w := phi(z) * step
			falls, fails, carries = falls+w*n, fails+w*f, carries+w*h
			failsTested, passes = failsTested+w*ft, passes+w*ht
		}
	}
	return falls + fails, fails / carries, failsTested / passes
}
