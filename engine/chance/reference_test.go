package chance

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/integrate/quad"
)

// belowAbove returns the probability that one of two standard normal variables
// with the given correlation is below h while the other is above k. Relative
// accuracy is about 1e-13, in the tails too; correlations of -1 and 1 are exact.
// Source: the conditional form, integral of phi(z) Phi((h - rho z)/sqrt(1 - rho^2))
// over z > k, as in Owen, 1956, Annals of Mathematical Statistics 27:1075 (from memory).
func belowAbove(h, k, rho float64) float64 {
	if rho >= 1 {
		return between(k, h)
	}
	if rho <= -1 {
		return cdf(math.Min(h, -k))
	}
	c := math.Sqrt((1 - rho) * (1 + rho))
	// The integrand has one peak. Where Phi is in its own tail it is about
	// phi(h) phi((z - rho h)/c), elsewhere phi(z); this is where the greater lies
	// beyond k.
	peak := 0.0
	if h < 0 {
		peak = rho * h
	}
	peak = math.Max(peak, k)
	// Its logarithm curves down by at least 1, so ten units away nothing is left.
	const away = 10
	low, high := math.Max(k, peak-away), peak+away
	step, width := h/rho, c/math.Abs(rho) // where Phi steps, and how widely
	breaks := breaksBetween(low, high, 2.5,
		peak, peak-6*c, peak-c, peak+c/4, peak+c, peak+6*c, step-6*width, step, step+6*width)
	return integrate(func(z float64) float64 { return phi(z) * cdf((h-rho*z)/c) }, breaks)
}

// integrate returns the integral of f by twenty Gauss-Legendre points on each
// piece between neighbouring breaks.
func integrate(f func(float64) float64, breaks []float64) float64 {
	sum := 0.0
	for i, high := range breaks[1:] {
		middle, half := (breaks[i]+high)/2, (high-breaks[i])/2
		for j, x := range twenty.x {
			sum += half * twenty.weight[j] * f(middle+half*x)
		}
	}
	return sum
}

var twenty = func() (r struct{ x, weight [20]float64 }) {
	quad.Legendre{}.FixedLocations(r.x[:], r.weight[:], -1, 1)
	return r
}()

// breaksBetween returns low, the marks inside low to high, and high, with more
// breaks so that no piece is wider than widest.
func breaksBetween(low, high, widest float64, marks ...float64) []float64 {
	marks = slices.DeleteFunc(marks, func(m float64) bool { return !(m > low && m < high) })
	marks = append(marks, high)
	slices.Sort(marks)
	breaks := []float64{low}
	for _, m := range marks {
		last := breaks[len(breaks)-1]
		pieces := int(math.Ceil((m - last) / widest))
		for i := 1; i <= pieces; i++ {
			breaks = append(breaks, last+(m-last)*float64(i)/float64(pieces))
		}
	}
	return breaks
}

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
