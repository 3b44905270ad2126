package assess

import (
	"context"
	"errors"
	"math"
	"math/rand/v2"
	"reflect"
	"runtime"
	"testing"

	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

func base(t testing.TB) *knowledge.Base {
	t.Helper()
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	return k
}

// randomOak is the oak of the demo with a limb, an arm and riders drawn so that
// it fails often enough to be sampled plainly.
func randomOak(t testing.TB, seed uint64) *survey.Survey {
	t.Helper()
	random := rand.New(rand.NewPCG(seed, 1))
	between := func(low, high float64) float64 { return low + (high-low)*random.Float64() }
	s := oak(t)
	h := &s.Trees[0].Hangs[0]
	h.At.Value = quantity.Length(between(2, 3.5))
	h.Amplitude.Value = quantity.Angle(between(20, 75)) * quantity.Degree
	each := quantity.Measured[quantity.Mass]{Value: quantity.Mass(between(60, 110)), How: quantity.Weighed}
	s.Riders = append(s.Riders, survey.Riders{ID: "drawn", Count: 1, Each: &each})
	h.Riders = "drawn"
	for i := range s.Trees[0].Members {
		if s.Trees[0].Members[i].ID == h.Member {
			scaleStations(&s.Trees[0].Members[i], quantity.Length(between(0.75, 0.9)))
		}
	}
	return s
}

// scaleStations makes a member thicker or thinner all along.
func scaleStations(m *survey.Member, factor quantity.Length) {
	m.Stations = append([]survey.Station{}, m.Stations...)
	for i := range m.Stations {
		for _, d := range []**survey.MeasuredLength{&m.Stations[i].Girth, &m.Stations[i].Diameter, &m.Stations[i].Upright, &m.Stations[i].Across} {
			if *d != nil {
				scaled := **d
				scaled.Value *= factor
				*d = &scaled
			}
		}
	}
	if m.Tip != nil {
		tip := *m.Tip
		tip.Value *= factor
		m.Tip = &tip
	}
}

// First order with its bound, samples about the design points and plain samples agree:
// three ways to one figure. The widths are those of a test that makes twenty comparisons.
func TestFirstOrderAndSamplesAgreeOnTenTrees(t *testing.T) {
	k := base(t)
	for seed := range uint64(10) {
		e := seasonOf(t, randomOak(t, seed), k, ChanceOptions{Samples: 40000, Seed: seed})
		if len(e.Lost) > 0 {
			t.Errorf("tree %d: no design point for %v", seed, e.Lost)
		}
		low, high := wider(e.Sampled)
		plainLow, plainHigh := wider(e.Plain)
		if low > plainHigh || plainLow > high {
			t.Errorf("tree %d: about the design points %.3g to %.3g, plain %.3g to %.3g", seed, low, high, plainLow, plainHigh)
		}
		if e.FirstOrder.Probability > high*firstOrderRoom || e.Bound.Probability < low/firstOrderRoom {
			t.Errorf("tree %d: first order %.3g, bound %.3g, sampled %.3g to %.3g", seed, e.FirstOrder.Probability, e.Bound.Probability, low, high)
		}
	}
}

func seasonOf(t testing.TB, s *survey.Survey, k *knowledge.Base, o ChanceOptions) ExposureChance {
	t.Helper()
	r, err := rigNamed(s, k, "oak-swing")
	if err != nil {
		t.Fatal(err)
	}
	e, err := r.exposureChance(r.asked, r.exposures()[2], o, func(int) error { return nil })
	if err != nil {
		t.Fatal(err)
	}
	return e
}

// firstOrderRoom is by how much curved limit states may put first order off, in
// probability; 0.1 in the index at 3.
const firstOrderRoom = 1.4

func wider(s *SampledChance) (low, high float64) {
	const times = 4 / 1.96
	return s.Probability - times*(s.Probability-s.Low), s.Probability + times*(s.High-s.Probability)
}

// Margins are sums of unit cases. A limb measured thicker or thinner by as much as a draw
// says, and hung from where a draw says, is solved anew: the margin at its middle values must
// be that of the draw. A share of 0.5 % is left to the swing angle, which a draw holds at its share.
func TestDrawsMatchTreesSolvedAnew(t *testing.T) {
	k := base(t)
	for _, c := range []struct{ deviation, arm float64 }{{0, 0}, {0.02, 0}, {-0.03, 0}, {0, 0.05}, {0.02, -0.04}} {
		before, after := oak(t), oak(t)
		limb := &after.Trees[0].Members[memberIndex(after, "L1")]
		scaleStations(limb, quantity.Length(1+c.deviation))
		after.Trees[0].Hangs[0].At.Value += quantity.Length(c.arm)
		drawn, anew := hangOf(t, before, k), hangOf(t, after, k)

		x := medians(t, drawn)
		for _, at := range drawn.places.girth[drawn.rig.on] {
			if at != none {
				x[at] = c.deviation
			}
		}
		x[drawn.places.arm] += c.arm
		x[drawn.places.ownMass] *= (1 + c.deviation) * (1 + c.deviation) // weight goes with the square
		got, want := drawn.caseOf(x), anew.caseOf(medians(t, anew))
		for i := range min(len(drawn.cuts), len(anew.cuts)) {
			a, b := drawn.cuts[i].solidIn(&got), anew.cuts[i].solidIn(&want)
			ratio := drawn.cuts[i].bendingRatio(&got, &a) / anew.cuts[i].bendingRatio(&want, &b)
			if math.Abs(ratio-1) > 0.005 {
				t.Errorf("deviation %v, arm %+v m, section %d: ratio of margins %.5f", c.deviation, c.arm, i, ratio)
			}
		}
	}
}

func memberIndex(s *survey.Survey, id string) int {
	for i := range s.Trees[0].Members {
		if s.Trees[0].Members[i].ID == id {
			return i
		}
	}
	return -1
}

func hangOf(t *testing.T, s *survey.Survey, k *knowledge.Base) *randomHang {
	t.Helper()
	r, err := rigNamed(s, k, "oak-swing")
	if err != nil {
		t.Fatal(err)
	}
	h, err := r.newRandomHang(r.asked, r.exposures()[0], r.testPull(r.asked))
	if err != nil {
		t.Fatal(err)
	}
	return h
}

func medians(t *testing.T, h *randomHang) []float64 {
	t.Helper()
	x := make([]float64, len(h.inputs.laws))
	for i, law := range h.inputs.laws {
		x[i] = law.At(0)
	}
	return x
}

// The angle of a swing at which a section is worst is held at its share of the
// amplitude; against a full search over the swing the stress is low by 1.5 % at most.
func TestTheWorstAngleHoldsInOtherDraws(t *testing.T) {
	h := hangOf(t, oak(t), base(t))
	random := rand.New(rand.NewPCG(4, 2))
	for range 200 {
		x := make([]float64, len(h.inputs.laws))
		for i, law := range h.inputs.laws {
			x[i] = law.At(random.NormFloat64())
		}
		k := h.caseOf(x)
		for i := range h.cuts {
			c := &h.cuts[i]
			s := c.solidIn(&k)
			held := c.bendingRatio(&k, &s)
			least := held
			for share := -1.0; share <= 1; share += 0.02 {
				for _, wind := range []float64{-1, 1} {
					forces := c.underRiders(&k, worstMoment{share, wind})
					least = math.Min(least, c.bears(&k)/s.stress(&forces))
				}
			}
			if held > least*1.015 {
				t.Fatalf("section %d: margin %.4f, full search %.4f", i, held, least)
			}
		}
	}
}

func TestSameSeedSameChancesOnOneAndTwoCores(t *testing.T) {
	k, s := base(t), randomOak(t, 3)
	var got [2]HangChances
	for i := range got {
		before := runtime.GOMAXPROCS(i + 1)
		c, err := ChanceOf(context.Background(), s, k, "oak-swing", ChanceOptions{Samples: 20000, Seed: 7})
		runtime.GOMAXPROCS(before)
		if err != nil {
			t.Fatal(err)
		}
		got[i] = c
	}
	if !reflect.DeepEqual(got[0], got[1]) {
		t.Errorf("one core %+v\ntwo cores %+v", got[0], got[1])
	}
}

func TestChancesEndWithTheContext(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	told := 0
	_, err := ChanceOf(ctx, oak(t), base(t), "oak-swing", ChanceOptions{Samples: 200000, Progress: func(done, total int) {
		told++
		if done > total {
			t.Errorf("%d of %d", done, total)
		}
		cancel()
	}})
	if !errors.Is(err, context.Canceled) || told != 1 {
		t.Errorf("error %v after %d calls", err, told)
	}
}

// A longer exposure holds larger loads on the same strength: never less likely
// to fail, and far less likely than so many independent rides.
func TestLongerExposuresAreNoLessLikely(t *testing.T) {
	c, err := ChanceOf(context.Background(), randomOak(t, 5), base(t), "oak-swing", ChanceOptions{})
	if err != nil {
		t.Fatal(err)
	}
	for i := range 2 {
		shorter, longer := c.Exposures[i], c.Exposures[i+1]
		if longer.FirstOrder.Probability < shorter.FirstOrder.Probability {
			t.Errorf("%s %.3g, %s %.3g", shorter.Code, shorter.FirstOrder.Probability, longer.Code, longer.FirstOrder.Probability)
		}
		rides := float64(longer.Rides) / float64(shorter.Rides)
		if longer.FirstOrder.Probability > rides*shorter.FirstOrder.Probability {
			t.Errorf("%s is above %v times %s", longer.Code, rides, shorter.Code)
		}
	}
	if len(c.LeftOut) == 0 {
		t.Error("nothing says what is left out")
	}
}

// A limb that its own laws say cannot pass the planned test has no chance to be told.
func TestALimbThatCannotPassItsTestIsRefused(t *testing.T) {
	s := oak(t)
	limb := &s.Trees[0].Members[memberIndex(s, "L1")]
	scaleStations(limb, 0.15)
	if _, err := ChanceOf(context.Background(), s, base(t), "oak-swing", ChanceOptions{}); err == nil {
		t.Error("a chance was given")
	}
}

func TestAnUnknownHangIsNamed(t *testing.T) {
	var unknown UnknownHang
	_, err := ChanceOf(context.Background(), oak(t), base(t), "no-swing", ChanceOptions{})
	if !errors.As(err, &unknown) || len(unknown.Known) != 1 {
		t.Errorf("got %v", err)
	}
}
