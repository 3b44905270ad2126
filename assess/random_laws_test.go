package assess

import (
	"math"
	"testing"

	"boughline/engine/chance"

	"pgregory.net/rapid"
)

// Probability integral transform: every law of every exposure gives back the
// deviate it was asked at, and rises with it.
func TestEveryLawOfAHangIsATransform(t *testing.T) {
	k := base(t)
	r, err := rigNamed(oak(t), k, "oak-swing")
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range r.exposures() {
		h, err := r.newRandomHang(r.asked, e, r.testPull(r.asked))
		if err != nil {
			t.Fatal(err)
		}
		for i, law := range h.inputs.laws {
			if h.inputs.list[i].Law == "fixed" {
				continue
			}
			before := math.Inf(-1)
			for z := -3.0; z <= 5; z += 0.25 {
				x := law.At(z)
				if back := law.Deviate(x); math.Abs(back-z) > 1e-4 || x <= before {
					t.Errorf("%s, %s: at %v the value %v, back %v", e.Code, h.inputs.list[i].Symbol, z, x, back)
				}
				before = x
			}
		}
	}
}

// mean and deviation of a law by the midpoint rule over its deviates.
func momentsOf(law chance.Law) (mean, sd float64) {
	const step = 0.01
	var sum, squares float64
	for z := -8.0; z < 8; z += step {
		w := math.Exp(-(z+step/2)*(z+step/2)/2) / math.Sqrt(2*math.Pi) * step
		x := law.At(z + step/2)
		sum, squares = sum+w*x, squares+w*x*x
	}
	return sum, math.Sqrt(squares - sum*sum)
}

// Moments by elementary formulas: the beta law has the mean and deviation asked for, the
// exponential law both equal to its mean, the Gumbel law its variation and its chance.
func TestLawsHaveTheirMoments(t *testing.T) {
	const deg = math.Pi / 180
	for _, want := range []float64{20, 40, 60, 75} {
		mean, sd := momentsOf(betaOn(want*deg, 10*deg))
		if math.Abs(mean/deg-want) > 0.01 || math.Abs(sd/deg-10) > 0.01 {
			t.Errorf("amplitude of %v deg: mean %.3f, deviation %.3f", want, mean/deg, sd/deg)
		}
	}
	if mean, sd := momentsOf(exponential{0.05}); math.Abs(mean-0.05) > 1e-5 || math.Abs(sd-0.05) > 1e-4 {
		t.Errorf("exponential: mean %v, deviation %v", mean, sd)
	}
	g := gumbelBeyond(16, 0.05, 0.15)
	if mean, sd := momentsOf(g); math.Abs(sd/mean-0.15) > 1e-3 {
		t.Errorf("Gumbel: variation %v", sd/mean)
	}
	if beyond := chance.Probability(g.Deviate(16)); math.Abs(beyond-0.05) > 1e-12 {
		t.Errorf("Gumbel: 16 is passed with chance %v", beyond)
	}
}

// An amplitude beyond where such a beta law exists is moved to the nearest one that does.
func TestAmplitudesNearTheEndsStillHaveALaw(t *testing.T) {
	for _, mean := range []float64{0, 0.05, 1.5, 3} {
		law := betaOn(mean, 10*math.Pi/180)
		if x := law.At(0); !(x > 0 && x < math.Pi/2) {
			t.Errorf("mean %v: median %v", mean, x)
		}
	}
}

// The lower 5 % fractile of the law with that mean is the fractile again.
func TestMeanOfAFractile(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		fractile := rapid.Float64Range(0.1, 10).Draw(t, "fractile")
		cov := rapid.Float64Range(0.05, 0.6).Draw(t, "cov")
		law, err := chance.LognormalOf(meanOfFractile(fractile, cov), cov)
		if err != nil {
			t.Fatal(err)
		}
		if got := law.At(-1.645); math.Abs(got/fractile-1) > 1e-9 {
			t.Errorf("fractile %v, want %v", got, fractile)
		}
	})
}
