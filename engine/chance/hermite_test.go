package chance

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/integrate/quad"
)

// Against the tables of gonum's quad.Hermite.
func TestGaussHermite(t *testing.T) {
	for n := 1; n <= 30; n++ {
		x, w, wantX, wantW := make([]float64, n), make([]float64, n), make([]float64, n), make([]float64, n)
		gaussHermite(x, w)
		quad.Hermite{}.FixedLocations(wantX, wantW, math.Inf(-1), math.Inf(1))
		for i := range x {
			if math.Abs(x[i]-wantX[i]) > 1e-13*(1+math.Abs(wantX[i])) || math.Abs(w[i]-wantW[i]) > 1e-12*wantW[i]+1e-20 { // they add up to sqrt(pi)
				t.Errorf("%d points, %d: %v %v, want %v %v", n, i, x[i], w[i], wantX[i], wantW[i])
			}
		}
	}
}
