package measure

import (
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"
)

func finite(t *rapid.T, results []Result) {
	for _, r := range results {
		for _, x := range []float64{r.Value, r.Sd, r.MeanShift} {
			if math.IsNaN(x) || math.IsInf(x, 0) {
				t.Fatalf("%s: %v ±%v, shift %v", r.Label, r.Value, r.Sd, r.MeanShift)
			}
		}
		for name, g := range r.Gradient {
			if math.IsNaN(g+r.Share[name]) || math.IsInf(g, 0) {
				t.Fatalf("%s by %s: %v, share %v", r.Label, name, g, r.Share[name])
			}
		}
	}
}

// Whatever lies within the ranges of the fields, their ends above all, is refused or gives
// finite numbers.
func TestEveryKindIsFiniteOrRefuses(t *testing.T) {
	for _, k := range Kinds() {
		t.Run(k.Name, rapid.MakeCheck(func(t *rapid.T) {
			readings := map[string][]Reading{}
			for _, f := range k.Fields {
				value := rapid.OneOf(rapid.SampledFrom([]float64{f.Least, f.Most, math.Max(0, f.Least)}), rapid.Float64Range(f.Least, f.Most)).Draw(t, f.Name)
				readings[f.Name] = []Reading{{Value: value, Sd: rapid.Float64Range(0, f.Most-f.Least).Draw(t, f.Name+" sd")}}
			}
			if out, err := k.Work(readings); err == nil {
				finite(t, out.Results)
			}
		}))
	}
}

// Any marks at all within a picture are refused or give finite numbers.
func TestEveryPictureIsFiniteOrRefuses(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mark := func(name string) *Mark {
			return &Mark{float64(rapid.IntRange(0, 400).Draw(t, name)), float64(rapid.IntRange(0, 300).Draw(t, name))}
		}
		angle := func(name string, most int) Value {
			return Value(fmt.Sprintf("%d deg ±1 deg", rapid.IntRange(-most, most).Draw(t, name)))
		}
		p := Picture{
			Width: 400, Height: 300, Tilt: angle("tilt", 70), Roll: angle("roll", 60), Turned: angle("turned", 60),
			References: []Reference{{From: mark("from"), To: mark("to"), Length: "1 m"}},
			Lengths:    []Span{{"x", mark("x"), mark("x")}},
			Angles:     []Corner{{"y", mark("y"), mark("y"), mark("y")}},
		}
		for range rapid.IntRange(0, 3).Draw(t, "stations") {
			p.Limb = append(p.Limb, Station{Edges: []Mark{*mark("one"), *mark("other")}})
		}
		if out, err := p.Work(percent); err == nil {
			finite(t, out.Results)
		}
	})
}
