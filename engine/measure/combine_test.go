package measure

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"boughline/quantity"
)

// Two readings of 10 and 12, one twice as sure: weights 4 to 1, mean 10.4,
// chi2 = 4/5 of the squared difference over the smaller variance; by hand.
func TestCombineByHand(t *testing.T) {
	c, err := Combine([]Reading{{Value: 10, Sd: 1}, {Value: 12, Sd: 2}})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "mean", c.Mean, 10.4, 1e-12)
	near(t, "sd", c.SdInternal, 2/math.Sqrt(5), 1e-12)
	near(t, "chi2", c.Chi2, 0.8, 1e-12)
	near(t, "spread", c.Spread, 2, 1e-12)
	near(t, "sd of one", c.SdOfOne, math.Sqrt2, 1e-12)
	near(t, "probability", c.P, math.Erfc(math.Sqrt(0.4)), 1e-9)
	near(t, "difference", Difference(Reading{Value: 10, Sd: 1}, Reading{Value: 12, Sd: 2}), -2/math.Sqrt(5), 1e-12)
	if !c.Agree() || c.SdWidened != c.SdInternal {
		t.Errorf("readings that agree were widened: %+v", c)
	}
}

// Equal errors: widened, the error of the mean is that of their spread over the
// root of their number (elementary statistics).
func TestWideningOfEqualErrorsIsTheSpread(t *testing.T) {
	c, err := Combine([]Reading{{Value: 9, Sd: 0.1}, {Value: 10, Sd: 0.1}, {Value: 12, Sd: 0.1}})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "widened", c.SdWidened, c.SdOfOne/math.Sqrt(3), 1e-12)
	if c.Agree() {
		t.Errorf("readings ten errors apart agree: %+v", c)
	}
}

// Upper tails of chi2 from tables: 3.841 with one degree of freedom, 5.991 with
// two and 7.815 with three leave 5 %.
func TestChi2Tables(t *testing.T) {
	for n, chi2 := range map[int]float64{2: 3.841, 3: 5.991, 4: 7.815} {
		readings := make([]Reading, n) // all 0 but for the last
		for i := range readings {
			readings[i].Sd = 1
		}
		readings[n-1].Value = math.Sqrt(chi2 * float64(n) / float64(n-1))
		c, err := Combine(readings)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "chi2", c.Chi2, chi2, 1e-9)
		near(t, "probability", c.P, 0.05, 2e-5)
	}
}

func drawList(t *rapid.T) []Reading {
	return rapid.SliceOfN(rapid.Custom(func(t *rapid.T) Reading {
		return Reading{Value: rapid.Float64Range(-50, 50).Draw(t, "value"), Sd: rapid.Float64Range(0.01, 5).Draw(t, "sd")}
	}), 2, 8).Draw(t, "readings")
}

func combine(t *rapid.T, readings []Reading) Combined {
	c, err := Combine(readings)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func TestOrderOfReadingsDoesNotMatter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		readings := drawList(t)
		a := combine(t, readings)
		b := combine(t, rapid.Permutation(readings).Draw(t, "order"))
		for _, pair := range [][2]float64{{a.Mean, b.Mean}, {a.SdInternal, b.SdInternal}, {a.SdWidened, b.SdWidened}, {a.Chi2, b.Chi2}, {a.P, b.P}} {
			if math.Abs(pair[0]-pair[1]) > 1e-9*(1+math.Abs(pair[0])) {
				t.Fatalf("%+v in another order is %+v", a, b)
			}
		}
	})
}

func TestCombinedLiesBetweenAndIsSurer(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		readings := drawList(t)
		c := combine(t, readings)
		least := slices.MinFunc(readings, func(a, b Reading) int { return int(math.Copysign(1, a.Value-b.Value)) })
		most := slices.MaxFunc(readings, func(a, b Reading) int { return int(math.Copysign(1, a.Value-b.Value)) })
		if c.Mean < least.Value-1e-9 || c.Mean > most.Value+1e-9 {
			t.Fatalf("mean %v lies outside %v to %v", c.Mean, least.Value, most.Value)
		}
		for _, r := range readings {
			if c.SdInternal > r.Sd || c.SdWidened < c.SdInternal {
				t.Fatalf("%+v of readings %+v", c, readings)
			}
		}
	})
}

func TestInternalErrorNeverShrinksWhenAReadingIsLessSure(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		readings := drawList(t)
		before := combine(t, readings)
		readings[0].Sd *= rapid.Float64Range(1, 10).Draw(t, "times")
		if after := combine(t, readings); after.SdInternal < before.SdInternal*(1-1e-12) {
			t.Fatalf("%v shrank to %v", before.SdInternal, after.SdInternal)
		}
	})
}

// Three readings with the errors that they state: the combined interval holds
// the truth 95 times in 100, the widened one no less often.
func TestCombinedIntervalHoldsTheTruth(t *testing.T) {
	random := rand.New(rand.NewPCG(5, 6))
	const trials = 10000
	var inside, widened, disagreed float64
	for range trials {
		var readings []Reading
		for _, sd := range []float64{0.1, 0.2, 0.3} {
			readings = append(readings, Reading{Value: 7 + sd*random.NormFloat64(), Sd: sd})
		}
		c, err := Combine(readings)
		if err != nil {
			t.Fatal(err)
		}
		for count, sd := range map[*float64]float64{&inside: c.SdInternal, &widened: c.SdWidened} {
			if math.Abs(c.Mean-7) <= coverage95*sd {
				*count++
			}
		}
		if !c.Agree() {
			disagreed++
		}
	}
	// Four standard deviations of the count of a binomial law.
	const within = 4 * 0.00218
	near(t, "held", inside/trials, 0.95, within)
	near(t, "called in disagreement", disagreed/trials, 0.05, within)
	if widened < inside {
		t.Errorf("widened holds %v, less than %v", widened, inside)
	}
}

func TestCombineRefuses(t *testing.T) {
	for _, readings := range [][]Reading{
		nil, {{Value: 1, Sd: 1}}, {{Value: 1, Sd: 1}, {Value: 1}}, {{Value: 1, Sd: 1}, {Value: math.NaN(), Sd: 1}},
		{{Value: 1, Sd: 1}, {Value: 1, Sd: -1}}, {{Value: 1, Sd: 1}, {Value: 1, Sd: math.Inf(1)}},
	} {
		if c, err := Combine(readings); err == nil {
			t.Errorf("%v gave %+v", readings, c)
		}
	}
}

// A field read twice stands for its weighted mean in the formula.
func TestAFieldReadTwice(t *testing.T) {
	k, _ := ByName("height-by-one-sine")
	twice := []Reading{{Value: 20, Sd: 0.1, How: quantity.Laser}, {Value: 20.2, Sd: 0.1, How: quantity.Laser}}
	out, err := k.Work(map[string][]Reading{"to-top": twice, "top": turn(30)})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "height", out.Results[0].Value, 10.05, 1e-12)
	near(t, "sd", out.Results[0].Sd, 0.05, 1e-12) // both errors are 0.1/sqrt 2 here, times sin 30 deg
	if len(out.Repeated) != 1 || out.Repeated[0].Field != "to-top" {
		t.Errorf("repeated: %+v", out.Repeated)
	}
}
