package measure

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// Dimension is the quantity of a field or a result.
type Dimension string

// The dimensions. Their SI units are m, rad, m2 and m3.
const (
	Length  Dimension = "length"
	Angle   Dimension = "angle"
	Area    Dimension = "area"
	Modulus Dimension = "section modulus"
)

// Unit returns the SI unit of the dimension.
func (d Dimension) Unit() string {
	return map[Dimension]string{Length: "m", Angle: "rad", Area: "m2", Modulus: "m3"}[d]
}

// Reading is one value that was read, in the SI unit of its field, with its
// standard deviation and the way it was read.
type Reading struct {
	Value float64      `json:"value"`
	Sd    float64      `json:"sd"`
	How   quantity.How `json:"how,omitempty"`
}

// Spread returns the standard deviation of a value of a dimension that was
// read this way, where none was stated.
type Spread func(how quantity.How, d Dimension, value float64) float64

// Field is one thing to be read.
type Field struct {
	Name      string       `json:"name"`
	Label     string       `json:"label"` // what to read, for people
	Dimension Dimension    `json:"dimension"`
	How       quantity.How `json:"how"`               // taken where the reading states none
	Default   string       `json:"default,omitempty"` // stands in for a field left out; "" if it must be read
	// Least and Most bound the values that the formula is meant for, in SI units.
	Least float64 `json:"least"`
	Most  float64 `json:"most"`
}

// Parse reads a value text such as "38.5 deg ±0.3 deg clinometer". A reading
// without ± takes its standard deviation from spread, by its way of reading or,
// where none is stated, by that of the field.
func (f Field) Parse(text string, spread Spread) (Reading, error) {
	if f.Dimension == Angle {
		return parse[quantity.Angle](f, text, spread)
	}
	return parse[quantity.Length](f, text, spread)
}

func parse[Q quantity.Kind](f Field, text string, spread Spread) (Reading, error) {
	m, err := quantity.Parse[Q](text)
	if err != nil {
		return Reading{}, fmt.Errorf("%s: %w", f.Name, err)
	}
	r := Reading{Value: float64(m.Value), Sd: float64(m.Sd), How: m.How}
	if r.How == quantity.NotStated {
		r.How = f.How
	}
	if !m.SdStated {
		r.Sd = spread(r.How, f.Dimension, r.Value)
	}
	return r, nil
}

// text writes a value of the field in the units that people read.
func (f Field) text(value float64) string {
	if f.Dimension == Angle {
		return fmt.Sprintf("%.4g deg", quantity.Angle(value).Degrees())
	}
	return fmt.Sprintf("%.4g m", value)
}

// check refuses what the formula is not meant for.
func (f Field) check(r Reading) error {
	switch {
	case math.IsNaN(r.Value) || math.IsInf(r.Value, 0) || r.Value < f.Least || r.Value > f.Most:
		return fmt.Errorf("%s: %s; expected %s to %s (%s)", f.Name, f.text(r.Value), f.text(f.Least), f.text(f.Most), f.Label)
	case !(r.Sd >= 0 && r.Sd <= f.Most-f.Least):
		return fmt.Errorf("%s: an error of ±%s; expected 0 or more, at most ±%s", f.Name, f.text(r.Sd), f.text(f.Most-f.Least))
	}
	return nil
}
