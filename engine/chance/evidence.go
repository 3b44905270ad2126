package chance

import "math"

// sums are two integrals over strength and own weight: that the limb carries
// its own weight, with the evidence of the test, and that it does so and then
// breaks under the ride.
type sums struct{ holds, fails float64 }

// sums integrates over the deviate of the own moment.
func (m limbModel) sums(tested bool) sums {
	fails := func(z float64) float64 { return m.fails(m.self.At(z), tested) }
	holds := func(z float64) float64 { return m.holds(m.self.At(z), tested) }
	if m.self.Sigma == 0 {
		return sums{holds(0), fails(0)}
	}
	return sums{holds: expectationAbout(0, holds), fails: expectationAbout(m.likeliest(), fails)}
}

// expectationAbout returns the mean of f over a standard normal variable by the
// trapezoidal rule, which converges faster than any power of the step on such
// integrands (Goodwin, 1949, from memory). Terms are added outwards from the
// centre, where f times the density is about greatest, until they no longer count.
func expectationAbout(centre float64, f func(z float64) float64) float64 {
	const step, negligible, farthest = 0.5, 1e-8, 9
	sum := phi(centre) * f(centre)
	for _, direction := range []float64{step, -step} {
		before := 0.0
		for i := 1.0; i*step < farthest; i++ {
			z := centre + i*direction
			term := phi(z) * f(z)
			sum += term
			if term < before && term < negligible*sum {
				break
			}
			before = term
		}
	}
	return sum * step
}

// likeliest is the deviate of the own moment at which the limb most likely
// fails, by the linear approximation of its limit state.
func (m limbModel) likeliest() float64 {
	self, ride := math.Exp(m.self.Mu), math.Exp(m.ride.Mu)
	own := self / (self + ride) * m.self.Sigma
	rest := ride / (self + ride) * m.ride.Sigma
	spread := math.Hypot(m.resistance.Sigma, math.Hypot(own, rest))
	beta := (m.resistance.Mu - math.Log(self+ride)) / spread
	return math.Max(0, beta) * own / spread
}

// holds returns P(X > s, X K > s + T), without a test P(X > s).
func (m limbModel) holds(s float64, tested bool) float64 {
	x := m.resistance
	low := (math.Log(s) - x.Mu) / x.Sigma
	if !tested {
		return cdf(-low)
	}
	xk := Product(x, m.lasting)
	passes := cdf((xk.Mu - math.Log(s+m.test)) / xk.Sigma)
	below := func(y float64) float64 { return phi(y) * m.passes(y, s) }
	return passes - tailRule.over(below, low-2.5, low) - tailRule.over(below, low-8, low-2.5)
}

// fails returns P(s < X < s + Q, X K > s + T), without a test P(s < X < s + Q),
// by Gauss-Legendre over the deviate of X. The chance that the ride is heavy
// enough falls from 1 to 0 about its median; the pieces end where it does.
func (m limbModel) fails(s float64, tested bool) float64 {
	x := m.resistance
	density := func(y float64) float64 {
		d := phi(y) * m.exceeds(x.At(y)-s)
		if tested && d > 0 {
			d *= m.passes(y, s)
		}
		return d
	}
	deviate := func(value float64) float64 { return (math.Log(value) - x.Mu) / x.Sigma }
	from := deviate(s)
	sum := 0.0
	for _, rides := range [...]float64{-3, 0, 3, heaviest} {
		to := deviate(s + m.ride.At(rides))
		for width := to - from; width > widest; width = to - from { // a light limb: X runs far
			sum += tailRule.over(density, from, from+widest)
			from += widest
		}
		sum += tailRule.over(density, from, to)
		from = to
	}
	return sum
}

// heaviest is the deviate of the ride beyond which nothing is left.
const heaviest = 7

// widest is the widest piece of an integral over the deviate of strength, and
// tailRule the rule on each.
const widest = 2.5

var tailRule = newRule(9)

// passes returns P(K > (s + T)/X) for the strength at the deviate y.
func (m limbModel) passes(y, s float64) float64 {
	return cdf((m.resistance.Mu + m.resistance.Sigma*y + m.lasting.Mu - math.Log(s+m.test)) / m.lasting.Sigma)
}

// exceeds returns P(Q > what is left).
func (m limbModel) exceeds(left float64) float64 {
	if left <= 0 {
		return 1
	}
	if m.ride.Sigma == 0 {
		if math.Exp(m.ride.Mu) > left {
			return 1
		}
		return 0
	}
	return cdf((m.ride.Mu - math.Log(left)) / m.ride.Sigma)
}
