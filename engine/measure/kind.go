package measure

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"boughline/quantity"
)

// Kind is one kind of measuring.
type Kind struct {
	Name    string       `json:"kind"`
	Does    string       `json:"does"`    // in one line, for people
	Fields  []Field      `json:"fields"`  // what it needs
	Gives   []Output     `json:"gives"`   // what comes out
	How     quantity.How `json:"how"`     // how a survey names the way; "" if as its fields were read
	Source  string       `json:"source"`  // of the formula
	Caution string       `json:"caution"` // what the error cannot tell
	formula formula
	check   func(x []float64) error // what no field alone can refuse; may be nil
}

// Output is one result of a kind.
type Output struct {
	Name      string    `json:"name"`
	Label     string    `json:"label"`
	Dimension Dimension `json:"dimension"`
}

// Kinds lists every kind of measuring with typed fields, in the order in which
// a survey asks for them. A picture has marks instead of fields: see Picture.
func Kinds() []Kind {
	return slices.Concat(heights(), thicknesses(), leans(), crowns(), slopes(), distances(), repeats())
}

// ByName finds a kind.
func ByName(name string) (Kind, bool) {
	all := Kinds()
	i := slices.IndexFunc(all, func(k Kind) bool { return k.Name == name })
	if i < 0 {
		return Kind{}, false
	}
	return all[i], true
}

// Field finds a field of the kind.
func (k Kind) Field(name string) (Field, bool) {
	i := slices.IndexFunc(k.Fields, func(f Field) bool { return f.Name == name })
	if i < 0 {
		return Field{}, false
	}
	return k.Fields[i], true
}

// Work gives the results from the readings by field name. A field read several
// times is combined first, weighted and checked (Combine); one left out takes
// its default. Errors name the field, its value and what was expected.
func (k Kind) Work(readings map[string][]Reading) (Outcome, error) {
	out := Outcome{Kind: k.Name, Caution: k.Caution}
	for name := range readings {
		if _, ok := k.Field(name); !ok {
			return out, fmt.Errorf("%q is no field of %s; expected %s", name, k.Name, strings.Join(k.fieldNames(), ", "))
		}
	}
	single := make([]Reading, len(k.Fields))
	used := make([]bool, len(k.Fields))
	for i, f := range k.Fields {
		r, repeated, err := f.one(readings[f.Name])
		if err != nil {
			return out, err
		}
		if repeated != nil {
			out.Repeated = append(out.Repeated, *repeated)
		}
		single[i], used[i] = r, len(readings[f.Name]) > 0 || r.Sd > 0
	}
	if err := k.refuse(single); err != nil {
		return out, err
	}
	results := k.results(single, used, k.how(readings))
	for _, r := range results {
		if !r.finite() {
			return out, fmt.Errorf("the readings do not give the %s: two of them nearly coincide, or one is at the end of its range", r.Name)
		}
	}
	out.Results = results
	return out, nil
}

// how names the way in which the results were got. A guess stays a guess: one
// where an instrument was meant makes the result one. Ways that differ count as
// the one that quantity.Hows names last.
func (k Kind) how(readings map[string][]Reading) quantity.How {
	how := k.How
	for _, f := range k.Fields {
		if f.Default != "" {
			continue // what may be left out may be guessed, as what is always guessed
		}
		for _, r := range readings[f.Name] {
			if k.How == quantity.NotStated || weak(r.How) && !weak(f.How) {
				how = lesser(how, r.How)
			}
		}
	}
	return how
}

func lesser(a, b quantity.How) quantity.How {
	if slices.Index(quantity.Hows(), a) > slices.Index(quantity.Hows(), b) {
		return a
	}
	return b
}

// weak reports whether a value was not measured.
func weak(how quantity.How) bool {
	return slices.Contains([]quantity.How{quantity.ByEye, quantity.Assumed, quantity.FromTable}, how)
}

func (k Kind) fieldNames() []string {
	var names []string
	for _, f := range k.Fields {
		names = append(names, f.Name)
	}
	return names
}

// refuse asks the kind about all its values together.
func (k Kind) refuse(readings []Reading) error {
	if k.check == nil {
		return nil
	}
	x := make([]float64, len(readings))
	for i, r := range readings {
		x[i] = r.Value
	}
	return k.check(x)
}

// one gives the one reading that stands for all of a field.
func (f Field) one(readings []Reading) (Reading, *Repeated, error) {
	for _, r := range readings {
		if err := f.check(r); err != nil {
			return Reading{}, nil, err
		}
	}
	switch {
	case len(readings) == 1:
		return readings[0], nil, nil
	case len(readings) > 1:
		c, err := Combine(readings)
		if err != nil {
			return Reading{}, nil, fmt.Errorf("%s: %w", f.Name, err)
		}
		return Reading{Value: c.Mean, Sd: c.SdWidened}, &Repeated{f.Name, f.Dimension, c}, nil
	case f.Default != "":
		r, err := f.Parse(f.Default, nil)
		return r, nil, err
	}
	return Reading{}, nil, fmt.Errorf("%s is missing: %s", f.Name, f.Label)
}

// results carries the readings through the formula.
func (k Kind) results(readings []Reading, used []bool, how quantity.How) []Result {
	var all []Result
	for i, c := range carry(k.formula, readings) {
		sd, share := c.sd(readings)
		r := Result{
			Output: k.Gives[i], Value: c.value, Sd: sd, MeanShift: c.meanShift(readings), How: how,
			Gradient: map[string]float64{}, Share: map[string]float64{},
		}
		for j, f := range k.Fields {
			if used[j] {
				r.Gradient[f.Name], r.Share[f.Name] = c.gradient[j], share[j]
			}
		}
		all = append(all, r)
	}
	return all
}

const (
	degree = math.Pi / 180
	upTo   = 89 * degree // steepest angle that a tangent is taken of
)
