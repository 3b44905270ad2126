package chance

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"boughline/quantity"
)

// oakLimb is an invented limb of oak 0.23 m thick inside the bark under two riders.
func oakLimb() LimbCase {
	return LimbCase{
		Strength:       Variable[quantity.Stress]{Mean: 37.4e6, CoV: 0.337},
		SectionModulus: Variable[quantity.Volume]{Mean: 1.25e-3, CoV: 0.05},
		SelfMoment:     Variable[quantity.Moment]{Mean: 8000, CoV: 0.2},
		RideMoment:     Variable[quantity.Moment]{Mean: 4500, CoV: 0.15},
		TestMoment:     7000,
		LastingCoV:     0.10,
	}
}

// unscattered returns the case of a fixed own moment and ride on a section
// modulus of 1 m3.
func unscattered(strength Variable[quantity.Stress], self, ride quantity.Moment) LimbCase {
	return LimbCase{
		Strength:       strength,
		SectionModulus: Variable[quantity.Volume]{Mean: 1},
		SelfMoment:     Variable[quantity.Moment]{Mean: self},
		RideMoment:     Variable[quantity.Moment]{Mean: ride},
	}
}

func mustChance(t rapid.TB, c LimbCase) Chance {
	t.Helper()
	got, err := c.Chance()
	if err != nil {
		t.Fatal(err)
	}
	return got
}

// Strength known to exceed a load is the lognormal law cut off below it. Values by
// SciPy 1.10 (normal distribution function, checked there by quadrature): mean
// 42 MPa, variation 0.28, load 30 MPa.
func TestOwnWeightCutsTheLawOfStrength(t *testing.T) {
	for _, row := range []struct{ r, prior, posterior float64 }{
		{32e6, 0.1969842423974973, 0.06795166665797311},
		{36e6, 0.3358831586883999, 0.22916955336354528},
		{42e6, 0.5546295317065965, 0.48306518425992706},
		{55e6, 0.8684113592294216, 0.847267040334131},
	} {
		c := unscattered(Variable[quantity.Stress]{Mean: 42e6, CoV: 0.28}, 30e6, quantity.Moment(row.r-30e6))
		got := mustChance(t, c)
		near(t, "prior", got.Prior.Probability, row.prior, 1e-10)
		near(t, "given own weight", got.GivenOwnWeight.Probability, row.posterior, 1e-10)
		if got.GivenLoadTest != nil {
			t.Error("there is a figure for a load test, though there was none")
		}
	}
}

// With a fixed own moment of nearly nothing, the test leaves a bivariate normal
// probability: P(X < q, X K > t) / P(X K > t).
func TestLoadTestOfFixedMomentsIsBivariateNormal(t *testing.T) {
	c := unscattered(Variable[quantity.Stress]{Mean: 42e6, CoV: 0.28}, 1, 19e6)
	c.TestMoment, c.LastingCoV = 21e6, 0.1
	x, _ := LognormalOf(42e6, 0.28)
	lasting, _ := LognormalOf(1, 0.1)
	xk := Product(x, lasting)
	h, k := (math.Log(19e6)-x.Mu)/x.Sigma, (math.Log(21e6)-xk.Mu)/xk.Sigma
	want := belowAbove(h, k, x.Sigma/xk.Sigma) / cdf(-k)
	near(t, "given test", mustChance(t, c).GivenLoadTest.Probability, want, 1e-5)
}

// Two proof loads known with error reweight the density of strength by the
// chance of having passed them; here with one of them and normal errors replaced by a lognormal
// factor, the ratio of failure after to before must lie below 1 and fall with the load.
func TestEvidenceNeverRaisesTheChance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		got := mustChance(t, drawLimb(t))
		if got.GivenOwnWeight.Probability > got.Prior.Probability*slack {
			t.Fatalf("own weight carried: %v, before %v", got.GivenOwnWeight, got.Prior)
		}
		if got.GivenLoadTest.Probability > got.GivenOwnWeight.Probability*slack {
			t.Fatalf("load test passed: %v, before %v", *got.GivenLoadTest, got.GivenOwnWeight)
		}
	})
}

// bruteForce works the three probabilities out by plain sums over own moment,
// lasting factor and strength (Simpson's rule), with the ride in closed form:
// another order of integration than that of Chance.
func bruteForce(c LimbCase) (prior, ownWeight, loadTest float64) {
	m, _ := c.model()
	const reach, step, strips = 9.0, 0.15, 500
	rides := func(margin float64) float64 { // P(Q > margin)
		if margin <= 0 {
			return 1
		}
		return cdf((m.ride.Mu - math.Log(margin)) / m.ride.Sigma)
	}
	var fails, failsCarrying, carries, failsTested, passes float64
	over := func(from float64, visit func(x, weight float64)) {
		width := (reach - from) / strips
		for i := range strips + 1 {
			z, share := from+float64(i)*width, float64(2+2*(i%2))/3
			if i == 0 || i == strips {
				share = 1.0 / 3
			}
			visit(m.resistance.At(z), share*phi(z)*width)
		}
	}
	deviate := func(x float64) float64 { return (math.Log(x) - m.resistance.Mu) / m.resistance.Sigma }
	for zs := -reach; zs <= reach; zs += step {
		s, ws := m.self.At(zs), phi(zs)*step
		over(-reach, func(x, w float64) { fails += ws * w * rides(x-s) })
		over(deviate(s), func(x, w float64) { failsCarrying += ws * w * rides(x-s); carries += ws * w })
		for zk := -7.0; zk <= 7; zk += 0.25 {
			k, wk := m.lasting.At(zk), phi(zk)*0.25
			over(deviate(math.Max(s, (s+m.test)/k)), func(x, w float64) {
				passes += ws * wk * w
				failsTested += ws * wk * w * rides(x-s)
			})
		}
	}
	return fails, failsCarrying / carries, failsTested / passes
}

func TestChanceMatchesBruteForceIntegration(t *testing.T) {
	strong := oakLimb() // beta about 4.3
	strong.SectionModulus.Mean = 1.7e-3
	far := oakLimb() // probability about 1e-10
	far.SectionModulus.Mean = 3.2e-3
	heavy := oakLimb() // own mass from the base diameter alone
	heavy.SelfMoment = Variable[quantity.Moment]{Mean: 6000, CoV: 0.63}
	for name, c := range map[string]LimbCase{"oak": oakLimb(), "strong": strong, "far": far, "heavy": heavy} {
		got := mustChance(t, c)
		prior, ownWeight, loadTest := bruteForce(c)
		t.Logf("%s: %.3e beta %.2f, %.3e beta %.2f, %.3e beta %.2f", name, got.Prior.Probability, got.Prior.Beta,
			got.GivenOwnWeight.Probability, got.GivenOwnWeight.Beta, got.GivenLoadTest.Probability, got.GivenLoadTest.Beta)
		const both = 1e-5 // relative error of either way
		near(t, name+" prior", got.Prior.Probability, prior, both)
		near(t, name+" given own weight", got.GivenOwnWeight.Probability, ownWeight, both)
		near(t, name+" given load test", got.GivenLoadTest.Probability, loadTest, both)
	}
}

// A weak limb, so that plain sampling meets failures; four standard errors.
func TestChanceMatchesSampling(t *testing.T) {
	c := oakLimb()
	c.SectionModulus.Mean, c.TestMoment = 0.6e-3, 4000
	m, _ := c.model()
	random := rand.New(rand.NewPCG(1, 2))
	draw := func(l Lognormal) float64 { return l.At(random.NormFloat64()) }
	var all, carry, pass, fail, failCarrying, failTested float64
	for range 400_000 {
		x, s, q, k := draw(m.resistance), draw(m.self), draw(m.ride), draw(m.lasting)
		all++
		fail += indicator(x < s+q)
		carry += indicator(x > s)
		failCarrying += indicator(x > s && x < s+q)
		pass += indicator(x > s && x*k > s+m.test)
		failTested += indicator(x > s && x*k > s+m.test && x < s+q)
	}
	got := mustChance(t, c)
	for _, row := range []struct {
		name          string
		got           Figure
		failed, among float64
	}{
		{"prior", got.Prior, fail, all},
		{"given own weight", got.GivenOwnWeight, failCarrying, carry},
		{"given load test", *got.GivenLoadTest, failTested, pass},
	} {
		share := row.failed / row.among
		if math.Abs(share-row.got.Probability) > 4*math.Sqrt(share*(1-share)/row.among) {
			t.Errorf("%s: got %v, sampled %v of %v", row.name, row.got.Probability, share, row.among)
		}
	}
}

func indicator(b bool) float64 {
	if b {
		return 1
	}
	return 0
}

// drawLimb draws a limb within the range of real ones.
func drawLimb(t *rapid.T) LimbCase {
	cov := func(name string, high float64) float64 { return rapid.Float64Range(0, high).Draw(t, name) }
	c := LimbCase{
		Strength:       Variable[quantity.Stress]{Mean: 37e6, CoV: rapid.Float64Range(0.15, 0.5).Draw(t, "strength")},
		SectionModulus: Variable[quantity.Volume]{Mean: 1e-3, CoV: cov("modulus", 0.3)},
		SelfMoment:     Variable[quantity.Moment]{CoV: cov("self", 0.65)},
		RideMoment:     Variable[quantity.Moment]{CoV: cov("ride", 0.4)},
		LastingCoV:     rapid.Float64Range(0.08, 0.2).Draw(t, "lasting"),
	}
	c.SelfMoment.Mean = quantity.Moment(rapid.Float64Range(500, 20000).Draw(t, "own moment"))
	c.RideMoment.Mean = quantity.Moment(rapid.Float64Range(500, 15000).Draw(t, "ride moment"))
	c.TestMoment = c.RideMoment.Mean * quantity.Moment(rapid.Float64Range(0.1, 2).Draw(t, "test / ride"))
	return c
}

// slack is the error of the quadrature that may hide in a comparison.
const slack = 1 + 1e-5

func TestHeavierRideNeverLowersTheChance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := drawLimb(t)
		light := mustChance(t, c)
		c.RideMoment.Mean *= quantity.Moment(rapid.Float64Range(1, 2).Draw(t, "heavier"))
		heavy := mustChance(t, c)
		if heavy.Prior.Probability*slack < light.Prior.Probability ||
			heavy.GivenOwnWeight.Probability*slack < light.GivenOwnWeight.Probability ||
			heavy.GivenLoadTest.Probability*slack < light.GivenLoadTest.Probability {
			t.Errorf("%+v then %+v, with test %+v then %+v", light, heavy, light.GivenLoadTest, heavy.GivenLoadTest)
		}
	})
}

func TestStrongerTestNeverRaisesTheChance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := drawLimb(t)
		weak := mustChance(t, c).GivenLoadTest.Probability
		c.TestMoment *= quantity.Moment(rapid.Float64Range(1, 2).Draw(t, "stronger"))
		strong := mustChance(t, c).GivenLoadTest.Probability
		if strong > weak*slack {
			t.Errorf("chance rose from %v to %v", weak, strong)
		}
		if !(strong > 0) {
			t.Errorf("chance %v after a test; the lasting factor keeps it above 0", strong)
		}
	})
}

// Carrying its own weight is news about the limb that can only be good.
func TestOwnWeightNeverRaisesTheChance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		got := mustChance(t, drawLimb(t))
		if got.GivenOwnWeight.Probability > got.Prior.Probability*slack {
			t.Errorf("chance rose from %v to %v", got.Prior.Probability, got.GivenOwnWeight.Probability)
		}
	})
}

// Twice the strength and twice every moment are the same limb in another unit.
func TestChanceDoesNotDependOnTheUnit(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := drawLimb(t)
		before := mustChance(t, c)
		c.Strength.Mean *= 2
		c.SelfMoment.Mean *= 2
		c.RideMoment.Mean *= 2
		c.TestMoment *= 2
		after := mustChance(t, c)
		near(t, "own weight", after.GivenOwnWeight.Probability, before.GivenOwnWeight.Probability, 1e-9)
		near(t, "load test", after.GivenLoadTest.Probability, before.GivenLoadTest.Probability, 1e-9)
	})
}

func TestLimbCaseRefusesWhatItCannotCompute(t *testing.T) {
	for word, spoil := range map[string]func(*LimbCase){
		"strength":           func(c *LimbCase) { c.Strength.CoV = 0 },
		"section modulus":    func(c *LimbCase) { c.SectionModulus.Mean = 0 },
		"own moment":         func(c *LimbCase) { c.SelfMoment.Mean = quantity.Moment(math.NaN()) },
		"moment of the ride": func(c *LimbCase) { c.RideMoment.CoV = -0.1 },
		"moment of the test": func(c *LimbCase) { c.TestMoment = -1 },
		"lasting factor":     func(c *LimbCase) { c.LastingCoV = 0 },
		"cannot carry":       func(c *LimbCase) { c.SelfMoment.Mean = 1e9 },
		"cannot pass a test": func(c *LimbCase) { c.TestMoment = 1e9 },
	} {
		c := oakLimb()
		spoil(&c)
		if _, err := c.Chance(); err == nil || !strings.Contains(err.Error(), word) {
			t.Errorf("error %v; expected one that names %q", err, word)
		}
	}
}
