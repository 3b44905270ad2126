package chance

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func drawLognormal(t *rapid.T, name string) Lognormal {
	mean := rapid.Float64Range(0.1, 1e8).Draw(t, name+" mean")
	l, err := LognormalOf(mean, rapid.Float64Range(1e-4, 1.5).Draw(t, name+" cov"))
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// Values by SciPy 1.10: mean 42 MPa, variation 0.28, and the 5 % fractile.
func TestLognormalOfMatchesSciPy(t *testing.T) {
	l, err := LognormalOf(42e6, 0.28)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "mu", l.Mu, 17.51544094565969, 1e-14)
	near(t, "sigma", l.Sigma, 0.27473343658154453, 1e-14)
	near(t, "5 % fractile", l.At(-Beta(0.05)), 25739688.442903392, 1e-10)
}

func TestLognormalGivesItsMomentsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mean := rapid.Float64Range(1e-3, 1e9).Draw(t, "mean")
		cov := rapid.Float64Range(1e-3, 3).Draw(t, "cov")
		l, err := LognormalOf(mean, cov)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "mean", l.Mean(), mean, 1e-12)
		near(t, "cov", l.CoV(), cov, 1e-9)
	})
}

// Exact for independent factors: means multiply, and so do 1 + CoV^2.
func TestProductMultipliesMeansAndSquares(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := drawLognormal(t, "a"), drawLognormal(t, "b")
		p := Product(a, b)
		near(t, "mean", p.Mean(), a.Mean()*b.Mean(), 1e-12)
		near(t, "1 + CoV^2", 1+p.CoV()*p.CoV(), (1+a.CoV()*a.CoV())*(1+b.CoV()*b.CoV()), 1e-12)
	})
}

func TestPowerAndScaleActOnTheMedian(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := drawLognormal(t, "l")
		near(t, "cube", l.Power(3).At(0), math.Pow(l.At(0), 3), 1e-12)
		near(t, "inverse", l.Power(-1).At(-1), 1/l.At(1), 1e-12)
		near(t, "half", l.Scale(0.5).At(1), l.At(1)/2, 1e-12)
	})
}

// Fenton, 1960: mean and variance of the sum are kept.
func TestSumKeepsMeanAndVariance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := drawLognormal(t, "a"), drawLognormal(t, "b")
		s, err := Sum(a, b)
		if err != nil {
			t.Fatal(err)
		}
		sd := func(l Lognormal) float64 { return l.Mean() * l.CoV() }
		near(t, "mean", s.Mean(), a.Mean()+b.Mean(), 1e-12)
		near(t, "sd", sd(s), math.Hypot(sd(a), sd(b)), 1e-9)
	})
}

func TestLognormalOfRefuses(t *testing.T) {
	for _, c := range [][2]float64{{0, 0.1}, {-1, 0.1}, {math.Inf(1), 0.1}, {math.NaN(), 0.1}, {1, -0.1}, {1, math.NaN()}, {1, 11}} {
		if _, err := LognormalOf(c[0], c[1]); err == nil {
			t.Errorf("mean %v, variation %v: no error", c[0], c[1])
		}
	}
	if _, err := Sum(); err == nil {
		t.Error("the sum of nothing: no error")
	}
}
