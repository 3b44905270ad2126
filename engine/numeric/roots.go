package numeric

import "math"

// Root finds where f crosses zero between a and b, as closely as the numbers
// allow: inverse quadratic steps where they may be trusted, halving where not.
// f takes opposite signs at the two ends; where rounding has taken that away,
// the end with the smaller value is returned.
// Source: Chandrupatla, Advances in Engineering Software 28 (1997) 145-149
// (from memory).
func Root(f func(float64) float64, a, b float64) float64 {
	fa, fb := f(a), f(b)
	if fa*fb >= 0 {
		return nearest(a, b, fa, fb)
	}
	share := 0.5
	for {
		x := a + share*(b-a)
		fx := f(x)
		c, fc := b, fb
		if math.Signbit(fx) == math.Signbit(fa) {
			c, fc = a, fa
		} else {
			b, fb = a, fa
		}
		a, fa = x, fx
		best := nearest(a, b, fa, fb)
		smallest := 2 * epsilon * math.Abs(best) / math.Abs(b-a)
		if fx == 0 || smallest >= 0.5 || b == a || math.Nextafter(a, b) == b {
			return best
		}
		share = 0.5
		xi, phi := (a-b)/(c-b), (fa-fb)/(fc-fb)
		if phi*phi < xi && (1-phi)*(1-phi) < 1-xi {
			share = fa/(fb-fa)*fc/(fb-fc) + (c-a)/(b-a)*fa/(fc-fa)*fb/(fc-fb)
		}
		share = math.Min(math.Max(share, smallest), 1-smallest)
	}
}

func nearest(a, b, fa, fb float64) float64 {
	if math.Abs(fa) < math.Abs(fb) {
		return a
	}
	return b
}
