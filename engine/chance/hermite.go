package chance

import "math"

// gaussHermite fills in the points and weights of the Gauss-Hermite rule for the
// weight exp(-x^2) over the whole line (Abramowitz and Stegun 1964, 25.4.46, from memory).
// The zeros of a degree lie between those of the degree below, where they are
// found by halving. It stands here because a general library carries tables for
// every degree, which a phone would have to fetch for the nine points used.
func gaussHermite(x, weight []float64) {
	zeros := []float64{}
	for n := 1; n <= len(x); n++ {
		far := math.Sqrt(2*float64(n) + 1) // beyond the greatest zero
		bounds := append(append([]float64{-far}, zeros...), far)
		zeros = make([]float64, n)
		for i := range zeros {
			zeros[i] = zeroBetween(n, bounds[i], bounds[i+1])
		}
	}
	for i, z := range zeros {
		_, below := hermite(len(x), z)
		x[i], weight[i] = z, 1/(float64(len(x))*below*below)
	}
}

// hermite is the orthonormal Hermite polynomial of degree n, and that of n - 1.
func hermite(n int, x float64) (p, below float64) {
	p = math.Pow(math.Pi, -0.25)
	for k := range n {
		m := float64(k + 1)
		p, below = x*math.Sqrt(2/m)*p-math.Sqrt((m-1)/m)*below, p
	}
	return p, below
}

func zeroBetween(n int, low, high float64) float64 {
	rising, _ := hermite(n, high)
	for {
		middle := low + (high-low)/2
		if middle <= low || middle >= high {
			return middle
		}
		if p, _ := hermite(n, middle); p > 0 == (rising > 0) {
			high = middle
		} else {
			low = middle
		}
	}
}
