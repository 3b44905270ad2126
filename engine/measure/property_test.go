package measure

import (
	"maps"
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"gonum.org/v1/gonum/diff/fd"
	"gonum.org/v1/gonum/num/hyperdual"
	"pgregory.net/rapid"
)

// fieldRange is where a field lies in the woods, so that every kind accepts any
// draw of its fields.
func fieldRange(f Field) (low, high float64) {
	ranges := map[string][2]float64{
		"base": {-30, -5}, "lower": {-30, -5}, "staff-top": {2, 20}, "upper": {2, 20}, "slope": {-30, 30},
		"first": {2, 20}, "second": {-20, -2}, "between": {5, 60}, "facing": {20, 200}, "width": {0.5, 10},
	}
	lengths := map[string][2]float64{
		"girth": {0.3, 3}, "bark": {0, 0.02}, "sag": {0.01, 0.1}, "rise": {-0.9, 0.9}, "lowest": {0.5, 3}, "top": {8, 30},
		"nearer": {-0.5, 0.5}, "eye": {1, 2}, "staff": {1, 4}, "off": {0.1, 1},
		"to-one": {2, 5}, "to-other": {12, 30}, // apart, so that differences can follow the derivatives
	}
	r, known := lengths[f.Name]
	if f.Dimension == Angle {
		if r, known = ranges[f.Name]; !known {
			r = [2]float64{30, 60}
		}
		return r[0] * degree, r[1] * degree
	}
	if !known {
		r = [2]float64{2, 30}
	}
	return r[0], r[1]
}

// drawReadings draws one reading for every field.
func drawReadings(t *rapid.T, k Kind) map[string][]Reading {
	all := map[string][]Reading{}
	for _, f := range k.Fields {
		low, high := fieldRange(f)
		all[f.Name] = []Reading{{
			Value: rapid.Float64Range(low, high).Draw(t, f.Name),
			Sd:    rapid.Float64Range(1e-4, 0.02).Draw(t, f.Name+" sd"),
		}}
	}
	return all
}

func results(t *rapid.T, k Kind, readings map[string][]Reading) []Result {
	out, err := k.Work(readings)
	if err != nil {
		t.Fatalf("%s: %v", k.Name, err)
	}
	return out.Results
}

func forEveryKind(t *testing.T, check func(t *rapid.T, k Kind, readings map[string][]Reading)) {
	for _, k := range Kinds() {
		t.Run(k.Name, func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) { check(t, k, drawReadings(t, k)) })
		})
	}
}

// The derivatives agree with finite differences (gonum diff/fd).
func TestDerivativesAgreeWithDifferences(t *testing.T) {
	forEveryKind(t, func(t *rapid.T, k Kind, readings map[string][]Reading) {
		var x []float64
		for _, f := range k.Fields {
			x = append(x, readings[f.Name][0].Value)
		}
		for i, r := range results(t, k, readings) {
			value := func(at []float64) float64 {
				numbers := make([]hyperdual.Number, len(at))
				for j, v := range at {
					numbers[j] = num(v)
				}
				return k.formula(numbers)[i].Real
			}
			slopes := fd.Gradient(nil, value, x, &fd.Settings{Formula: fd.Central})
			for j, f := range k.Fields {
				if got := r.Gradient[f.Name]; math.Abs(got-slopes[j]) > 1e-5*(1+math.Abs(got)) {
					t.Fatalf("%s by %s: %v, by differences %v", r.Name, f.Name, got, slopes[j])
				}
			}
			if want := shiftByDifferences(k, readings, value, x); math.Abs(r.MeanShift-want) > 1e-4*r.Sd {
				t.Fatalf("mean shift of %s: %v, by differences %v", r.Name, r.MeanShift, want)
			}
		}
	})
}

func shiftByDifferences(k Kind, readings map[string][]Reading, value func([]float64) float64, x []float64) (shift float64) {
	for j, f := range k.Fields {
		one := func(v float64) float64 {
			at := slices.Clone(x)
			at[j] = v
			return value(at)
		}
		sd := readings[f.Name][0].Sd
		shift += fd.Derivative(one, x[j], &fd.Settings{Formula: fd.Central2nd, Step: 1e-3}) * sd * sd / 2
	}
	return shift
}

func TestErrorNeverShrinksWhenAReadingIsLessSure(t *testing.T) {
	forEveryKind(t, func(t *rapid.T, k Kind, readings map[string][]Reading) {
		before := results(t, k, readings)
		f := rapid.SampledFrom(k.Fields).Draw(t, "field")
		worse := maps.Clone(readings)
		worse[f.Name] = []Reading{{Value: readings[f.Name][0].Value, Sd: readings[f.Name][0].Sd * rapid.Float64Range(1, 10).Draw(t, "times")}}
		for i, r := range results(t, k, worse) {
			if r.Sd < before[i].Sd*(1-1e-12) || r.Value != before[i].Value {
				t.Fatalf("%s of %s: %v ±%v became %v ±%v", r.Name, f.Name, before[i].Value, before[i].Sd, r.Value, r.Sd)
			}
		}
	})
}

func TestReadingsWithoutErrorGiveNone(t *testing.T) {
	forEveryKind(t, func(t *rapid.T, k Kind, readings map[string][]Reading) {
		for name, r := range readings {
			readings[name] = []Reading{{Value: r[0].Value}}
		}
		for _, r := range results(t, k, readings) {
			if r.Sd != 0 || r.MeanShift != 0 {
				t.Fatalf("%s: ±%v, shift %v", r.Name, r.Sd, r.MeanShift)
			}
		}
	})
}

// Shares add up to the whole.
func TestSharesAddUp(t *testing.T) {
	forEveryKind(t, func(t *rapid.T, k Kind, readings map[string][]Reading) {
		for _, r := range results(t, k, readings) {
			sum := 0.0
			for _, share := range r.Share {
				sum += share
			}
			if math.Abs(sum-1) > 1e-9 {
				t.Fatalf("%s: shares add up to %v", r.Name, sum)
			}
		}
	})
}

// Everything twice as long: lengths twice, areas four times, moduli eight times,
// angles the same, and their errors as well.
func TestScale(t *testing.T) {
	forEveryKind(t, func(t *rapid.T, k Kind, readings map[string][]Reading) {
		before := results(t, k, readings)
		for _, f := range k.Fields {
			if f.Dimension == Length {
				readings[f.Name] = []Reading{{Value: 2 * readings[f.Name][0].Value, Sd: 2 * readings[f.Name][0].Sd}}
			}
		}
		for i, r := range results(t, k, readings) {
			factor := map[Dimension]float64{Length: 2, Angle: 1, Area: 4, Modulus: 8}[r.Dimension]
			if math.Abs(r.Value-factor*before[i].Value) > 1e-9*math.Abs(r.Value) || math.Abs(r.Sd-factor*before[i].Sd) > 1e-9*r.Sd {
				t.Fatalf("%s: %v ±%v became %v ±%v", r.Name, before[i].Value, before[i].Sd, r.Value, r.Sd)
			}
		}
	})
}

// On any ground the two ways agree on a point straight above the taped spot.
func TestSinesAgreeWithTangents(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		run := rapid.Float64Range(3, 40).Draw(t, "run")
		up := rapid.Float64Range(0.5, 30).Draw(t, "above the eye")
		down := rapid.Float64Range(-3, 5).Draw(t, "below the eye")
		top, base := math.Atan2(up, run), math.Atan2(-down, run)
		tangents, _ := ByName("height-by-tangents")
		sines, _ := ByName("height-by-sines")
		a := results(t, tangents, map[string][]Reading{"distance": sure(run), "top": sure(top), "base": sure(base)})[0]
		b := results(t, sines, map[string][]Reading{
			"to-top": sure(math.Hypot(run, up)), "top": sure(top), "to-base": sure(math.Hypot(run, down)), "base": sure(base),
		})[0]
		if math.Abs(a.Value-b.Value) > 1e-9 || math.Abs(a.Value-up-down) > 1e-9 {
			t.Fatalf("tangents %v, sines %v, true %v", a.Value, b.Value, up+down)
		}
	})
}

// The stated intervals hold the truth 95 times in 100 for every kind, when each
// field is read with a normal error as stated.
func TestIntervalsOfEveryKind(t *testing.T) {
	random := rand.New(rand.NewPCG(3, 4))
	const trials = 4000
	for _, k := range Kinds() {
		truth := map[string][]Reading{}
		for _, f := range k.Fields {
			low, high := fieldRange(f)
			truth[f.Name] = []Reading{{Value: (low + high) / 2, Sd: (high - low) / 400}}
		}
		want, err := k.Work(truth)
		if err != nil {
			t.Fatalf("%s: %v", k.Name, err)
		}
		inside := make([]int, len(want.Results))
		for range trials {
			readings := map[string][]Reading{}
			for name, r := range truth {
				readings[name] = []Reading{{Value: r[0].Value + r[0].Sd*random.NormFloat64(), Sd: r[0].Sd}}
			}
			got, err := k.Work(readings)
			if err != nil {
				t.Fatalf("%s: %v", k.Name, err)
			}
			for i, r := range got.Results {
				if low, high := r.Interval(); low <= want.Results[i].Value && want.Results[i].Value <= high {
					inside[i]++
				}
			}
		}
		for i, n := range inside {
			// Four standard deviations of the count of a binomial law.
			if held := float64(n) / trials; math.Abs(held-0.95) > 4*math.Sqrt(0.95*0.05/trials) {
				t.Errorf("%s of %s: held in %.1f %%", want.Results[i].Name, k.Name, 100*held)
			}
		}
	}
}
