package measure

import (
	"errors"
	"math"
	"strings"
	"testing"

	"boughline/quantity"
)

// percent stands for the table of methods: 1 % of any value.
func percent(_ quantity.How, _ Dimension, value float64) float64 { return math.Abs(value) / 100 }

func TestEveryKindIsWhole(t *testing.T) {
	seen := map[string]bool{}
	for _, k := range Kinds() {
		if seen[k.Name] || k.Does == "" || k.Source == "" || k.Caution == "" || len(k.Fields) == 0 || len(k.Gives) == 0 {
			t.Errorf("kind %+v is not whole or comes twice", k)
		}
		seen[k.Name] = true
		for _, f := range k.Fields {
			if f.Name == "" || f.Label == "" || f.How == quantity.NotStated || !(f.Least < f.Most) {
				t.Errorf("%s: field %+v is not whole", k.Name, f)
			}
			if f.Default != "" {
				if _, err := f.Parse(f.Default, nil); err != nil {
					t.Errorf("%s: default of %s: %v", k.Name, f.Name, err)
				}
			}
		}
	}
}

func TestParseTakesWhatTheReadingLeavesOpen(t *testing.T) {
	k, _ := ByName("height-by-tangents")
	distance, _ := k.Field("distance")
	top, _ := k.Field("top")
	for _, test := range []struct {
		field Field
		text  string
		want  Reading
	}{
		{distance, "20 m", Reading{20, 0.2, quantity.Taped}},
		{distance, "20 m laser", Reading{20, 0.2, quantity.Laser}},
		{distance, "20 m ±5 cm", Reading{20, 0.05, quantity.Taped}},
		{top, "1 rad ±0 rad by eye", Reading{1, 0, quantity.ByEye}},
	} {
		got, err := test.field.Parse(test.text, percent)
		if err != nil || math.Abs(got.Sd-test.want.Sd) > 1e-15 || got.Value != test.want.Value || got.How != test.want.How {
			t.Errorf("%q: got %+v, %v; want %+v", test.text, got, err, test.want)
		}
	}
	_, err := top.Parse("3 m", percent)
	var text *quantity.TextError
	if !errors.As(err, &text) || !strings.HasPrefix(err.Error(), "top: ") {
		t.Errorf("a length for an angle: %v", err)
	}
}

func TestWorkRefuses(t *testing.T) {
	full := func(change map[string][]Reading) map[string][]Reading {
		all := map[string][]Reading{"distance": sure(20), "top": turn(40), "base": turn(-5)}
		for name, r := range change {
			all[name] = r
		}
		return all
	}
	for _, test := range []struct {
		kind     string
		readings map[string][]Reading
		says     string
	}{
		{"height-by-tangents", full(map[string][]Reading{"top": nil}), "top is missing: angle up to the point"},
		{"height-by-tangents", full(map[string][]Reading{"summit": turn(3)}), `"summit" is no field of height-by-tangents; expected distance, top, base, nearer`},
		{"height-by-tangents", full(map[string][]Reading{"top": turn(90)}), "top: 90 deg; expected -89 deg to 89 deg"},
		{"height-by-tangents", full(map[string][]Reading{"distance": sure(-1)}), "distance: -1 m; expected 0.01 m to 1000 m"},
		{"height-by-tangents", full(map[string][]Reading{"distance": sure(math.NaN())}), "distance: NaN m"},
		{"height-by-tangents", full(map[string][]Reading{"distance": {{Value: 1, Sd: -1}}}), "distance: an error of ±-1 m"},
		{"height-by-tangents", full(map[string][]Reading{"distance": {{Value: 1, Sd: 1}, {Value: 1}}}), "distance: reading 2"},
		{"girth", map[string][]Reading{"girth": sure(0.3), "bark": sure(0.1)}, "bark: 0.1 m on each side"},
		{"height-by-staff", map[string][]Reading{"staff": sure(2), "top": turn(40), "staff-top": turn(-5), "base": turn(-5)}, "staff-top: -5 deg; expected more than base"},
		{"lean-from-two-sides", map[string][]Reading{"first": turn(0), "second": turn(0)}, "there is no lean to combine"},
		{"crown-size", map[string][]Reading{"longest": sure(9), "across": sure(9), "top": sure(4), "lowest": sure(5)}, "top: 4 m; expected more than lowest (5 m)"},
		{"slope-by-length", map[string][]Reading{"rise": sure(3), "along": sure(2)}, "rise: 3 m; expected less than the length along it"},
		{"distance-by-sagging-tape", map[string][]Reading{"tape": sure(3), "sag": sure(2)}, "pull it tighter"},
		{"distance-between-points", map[string][]Reading{"to-one": sure(3), "one": turn(5), "to-other": sure(3), "other": turn(5), "between": turn(0)}, "one above the other"},
	} {
		k, _ := ByName(test.kind)
		out, err := k.Work(test.readings)
		if err == nil || !strings.Contains(err.Error(), test.says) || out.Results != nil {
			t.Errorf("%s: %v; want %q", test.kind, err, test.says)
		}
	}
}

// A guess does not become a measurement on the way through a formula.
func TestAGuessStaysAGuess(t *testing.T) {
	as := func(value float64, how quantity.How) []Reading { return []Reading{{Value: value, Sd: 0.1, How: how}} }
	for _, test := range []struct {
		kind     string
		readings map[string][]Reading
		want     quantity.How
	}{
		{"girth", map[string][]Reading{"girth": as(1, quantity.Taped), "bark": as(0.01, quantity.ByEye)}, quantity.Taped},
		{"girth", map[string][]Reading{"girth": as(1, quantity.Taped), "bark": as(0.01, quantity.FromTable)}, quantity.Taped},
		{"girth", map[string][]Reading{"girth": as(1, quantity.ByEye), "bark": as(0.01, quantity.Taped)}, quantity.ByEye},
		{"height-by-one-sine", map[string][]Reading{"to-top": as(20, quantity.Laser), "top": as(1, quantity.Clinometer)}, quantity.Laser},
		{"height-by-one-sine", map[string][]Reading{"to-top": as(20, quantity.FromTable), "top": as(1, quantity.Clinometer)}, quantity.FromTable},
		{"distance-by-sagging-tape", map[string][]Reading{"tape": as(20, quantity.Taped), "sag": as(0.1, quantity.ByEye)}, quantity.Taped},
		{"repeated-lengths", map[string][]Reading{"reading": {as(20, quantity.Laser)[0], as(20, quantity.Taped)[0]}}, quantity.Laser},
		{"repeated-lengths", map[string][]Reading{"reading": {as(20, quantity.ByEye)[0], as(20, quantity.Taped)[0]}}, quantity.ByEye},
	} {
		k, _ := ByName(test.kind)
		out, err := k.Work(test.readings)
		if err != nil || out.Results[0].How != test.want {
			t.Errorf("%s: %+v, %v; want %s", test.kind, out.Results, err, test.want)
		}
	}
}

func TestText(t *testing.T) {
	length := Output{Dimension: Length}
	for _, test := range []struct {
		r    Result
		want string
	}{
		{Result{Output: length, Value: 0.3123, Sd: 0.0204, How: quantity.AngularWidth}, "0.312 m ±0.020 m angular width"},
		{Result{Output: length, Value: 12.8378, Sd: 0.16008}, "12.84 m ±0.16 m"},
		{Result{Output: length, Value: 1234, Sd: 56}, "1234 m ±56 m"},
		{Result{Output: length, Value: 1234, Sd: 0}, "1234.00 m ±0.00 m"},
		{Result{Output: length, Value: -0.001, Sd: 0.1}, "0.00 m ±0.10 m"},
		{Result{Output: Output{Dimension: Angle}, Value: 5 * degree, Sd: degree, How: quantity.Clinometer}, "5.0 deg ±1.0 deg clinometer"},
		{Result{Output: Output{Dimension: Modulus}, Value: 9.65e-4, Sd: 6.5e-5}, "965 cm3 ±65 cm3"},
		{Result{Output: Output{Dimension: Area}, Value: 75.4, Sd: 2.1}, "75.4 m2 ±2.1 m2"},
	} {
		if got := test.r.Text(); got != test.want {
			t.Errorf("got %q, want %q", got, test.want)
		}
	}
}

// What is printed can be pasted into a survey.
func TestTextReadsBack(t *testing.T) {
	r := Result{Output: Output{Dimension: Length}, Value: 0.2841984, Sd: 0.0147, How: quantity.AngularWidth}
	m, err := quantity.Parse[quantity.Length](r.Text())
	if err != nil || m.How != quantity.AngularWidth || math.Abs(float64(m.Sd)-r.Sd) > 5e-4 || math.Abs(float64(m.Value)-r.Value) > 5e-4 {
		t.Errorf("%q reads back as %+v, %v", r.Text(), m, err)
	}
}

// 2 deg at 8 m with an error of 1 deg bends the formula: the mean lies off.
func TestTooCoarse(t *testing.T) {
	k, _ := ByName("height-by-staff")
	at := func(sd float64) Result {
		one := func(deg float64) []Reading { return []Reading{{Value: deg * degree, Sd: sd * degree}} }
		out, err := k.Work(map[string][]Reading{"staff": sure(1), "top": one(40), "staff-top": one(2), "base": one(-2)})
		if err != nil {
			t.Fatal(err)
		}
		return out.Results[0]
	}
	if at(0.1).TooCoarse() || !at(2).TooCoarse() {
		t.Errorf("shift %v of ±%v, then %v of ±%v", at(0.1).MeanShift, at(0.1).Sd, at(2).MeanShift, at(2).Sd)
	}
}
