package chance

import "math"

// exponentials replaces every stride-th y by exp(mu + sigma y): a power of two, a
// 256th of one from a table, and a short series for the rest. Relative error is about that of
// rounding the exponent, 1e-16 of its size. It is several times faster than math.Exp
// because neighbours are worked out at the same time.
// Source: elementary; argument reduction as in Tang, 1989, ACM Transactions on Mathematical
// Software 15:144 (from memory).
func exponentials(y []float64, stride int, mu, sigma float64) {
	const toInteger = 3 << 51 // adding it leaves the rounded number in the low bits
	for k := 0; k < len(y); k += stride {
		e := mu + sigma*y[k]
		if !(math.Abs(e) < 700) {
			y[k] = math.Exp(e)
			continue
		}
		shifted := e*(parts/math.Ln2) + toInteger
		r := e - (shifted-toInteger)*(math.Ln2/parts)
		n := math.Float64bits(shifted) // the number of parts
		series := 1 + r*(1+r*(1./2+r*(1./6+r*(1./24))))
		y[k] = series * math.Float64frombits(powers[n%parts]+n/parts<<52)
	}
}

const parts = 256

// powers holds the bits of 2^(i/256).
var powers = func() (bits [parts]uint64) {
	for i := range bits {
		bits[i] = math.Float64bits(math.Exp2(float64(i) / parts))
	}
	return bits
}()
