package work

import (
	"encoding/json"
	"fmt"
	"slices"
	"strings"

	"boughline/engine/measure"
)

// shorthand is a kind of measuring under the short names of a case: the symbols
// of its readings and of its results.
type shorthand struct {
	kind     string
	fields   map[string]string // symbol of a reading to field
	results  map[string]string // symbol of a result to output; "" puts it at the top
	constant map[string]measure.Reading
}

var shorthands = map[string]shorthand{
	"tangent_height": {
		kind:     "height-by-tangents",
		fields:   map[string]string{"d": "distance", "a_top": "top", "a_base": "base"},
		results:  map[string]string{"": "height"},
		constant: map[string]measure.Reading{"nearer": {}},
	},
	"sine_height": {
		kind:    "height-by-sines",
		fields:  map[string]string{"D_top": "to-top", "a_top": "top", "D_base": "to-base", "a_base": "base"},
		results: map[string]string{"": "height"},
	},
	"angular_width": {
		kind: "thickness-by-angular-width",
		fields: map[string]string{
			"d": "distance", "D": "distance", "s": "distance", "d_near": "distance", "d_face": "distance", "distance": "distance",
			"A": "width", "a": "width", "a_width": "width", "alpha": "width", "theta": "width", "w": "width", "width": "width",
		},
		results: map[string]string{"": "thickness", "D": "thickness"},
	},
	"girth": {
		kind:    "girth",
		fields:  map[string]string{"C": "girth", "b": "bark"},
		results: map[string]string{"D": "under-bark", "W": "modulus"},
	},
}

type measureInputs struct {
	Kind     string                     `json:"kind"`
	Readings map[string]measure.Reading `json:"readings"`
	Pairs    []readingList              `json:"pairs"`
	readingList
}

type readingList struct {
	Values []float64 `json:"values"`
	Sds    []float64 `json:"sds"`
}

// measureFigure works out one kind of measuring: under the short names above,
// as a weighted mean, or any kind of measure.Kinds by its own names.
func measureFigure(raw json.RawMessage) (any, error) {
	in, err := read[measureInputs](raw)
	if err != nil {
		return nil, err
	}
	if in.Kind == "weighted_mean" {
		return in.weightedMeans()
	}
	if s, ok := shorthandOf(in.Kind); ok {
		return s.work(in.Readings)
	}
	kind, ok := measure.ByName(in.Kind)
	if !ok {
		return nil, fmt.Errorf("inputs.kind: %q; expected weighted_mean, %s", in.Kind, strings.Join(measureKinds(), ", "))
	}
	outcome, err := kind.Work(singly(in.Readings))
	if err != nil {
		return nil, fmt.Errorf("inputs.readings: %w", err)
	}
	results := map[string]any{}
	for _, r := range outcome.Results {
		results[r.Name] = errorTerms(r, nil)
	}
	return results, nil
}

// shorthandOf finds the short names of a kind. What is read in an angular width
// goes by several names.
func shorthandOf(kind string) (shorthand, bool) {
	if s, ok := shorthands[kind]; ok {
		return s, true
	}
	_, own := measure.ByName(kind)
	return shorthands["angular_width"], !own && strings.Contains(kind, "angular")
}

func measureKinds() []string {
	var names []string
	for name := range shorthands {
		names = append(names, name)
	}
	slices.Sort(names)
	for _, k := range measure.Kinds() {
		if !slices.Contains(names, k.Name) {
			names = append(names, k.Name)
		}
	}
	return names
}

func singly(readings map[string]measure.Reading) map[string][]measure.Reading {
	all := map[string][]measure.Reading{}
	for name, r := range readings {
		all[name] = []measure.Reading{r}
	}
	return all
}

// work works out the kind and names its readings as the case does.
func (s shorthand) work(readings map[string]measure.Reading) (any, error) {
	kind, _ := measure.ByName(s.kind)
	given, symbols := singly(s.constant), map[string]string{}
	for symbol, r := range readings {
		field, ok := s.fields[symbol]
		if !ok {
			return nil, fmt.Errorf("inputs.readings: %q is no reading of this kind", symbol)
		}
		given[field], symbols[field] = []measure.Reading{r}, symbol
	}
	outcome, err := kind.Work(given)
	if err != nil {
		return nil, fmt.Errorf("inputs.readings: %w", err)
	}
	results := map[string]any{}
	for _, r := range outcome.Results {
		for symbol, name := range s.results {
			switch {
			case name != r.Name:
			case symbol == "":
				for key, value := range errorTerms(r, symbols) {
					results[key] = value
				}
			default:
				results[symbol] = errorTerms(r, symbols)
			}
		}
		if r.Name == "over-bark" {
			results["D_over_bark"] = r.Value
		}
	}
	return results, nil
}

// errorTerms lists one result with its error, the fields under their symbols;
// without symbols, under their own names.
func errorTerms(r measure.Result, symbols map[string]string) map[string]any {
	return map[string]any{
		"value": r.Value, "sd": r.Sd, "second_order_mean_shift": r.MeanShift,
		"gradient": bySymbol(r.Gradient, symbols), "variance_share": bySymbol(r.Share, symbols),
	}
}

func bySymbol(values map[string]float64, symbols map[string]string) map[string]float64 {
	if symbols == nil {
		return values
	}
	named := map[string]float64{}
	for field, symbol := range symbols {
		named[symbol] = values[field]
	}
	return named
}
