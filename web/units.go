package web

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"boughline/assess/wording"
	"boughline/quantity"
)

// units says in which units a person reads and types.
type units struct{ feet bool }

// unitFeet is the setting of feet, inches and pounds.
const unitFeet = "feet"

// pick returns the metric unit or the other one.
func (u units) pick(metric, other string) string {
	if u.feet {
		return other
	}
	return metric
}

func (u units) long() string  { return u.pick("m", "ft") }
func (u units) thick() string { return u.pick("cm", "in") }
func (u units) mass() string  { return u.pick("kg", "lb") }

// in is how the sentences of the catalogue write quantities.
func (u units) in() wording.Units { return wording.Units{Feet: u.feet} }

const degrees = "deg"

// factor is how many SI units one of a unit is.
func factor[Q quantity.Kind](unit string) float64 {
	var q Q
	for _, u := range q.Units() {
		if u.Symbol == unit {
			return u.Factor
		}
	}
	return 1
}

// number writes a value in a unit, to a ten-thousandth of it at most.
func number[Q quantity.Kind](q Q, unit string) string {
	const fine = 1e4
	x := math.Round(float64(q)/factor[Q](unit)*fine) / fine
	if unit != degrees && math.Abs(x) >= 10 {
		x = math.Round(x*100) / 100
	}
	return strconv.FormatFloat(x+0, 'f', -1, 64)
}

// show writes a measured value as a field holds it: the number alone, or with
// its stated error.
func show[Q quantity.Kind](m *quantity.Measured[Q], unit string) string {
	if m == nil {
		return ""
	}
	if !m.SdStated {
		return number(m.Value, unit)
	}
	return fmt.Sprintf("%s %s ±%s %s", number(m.Value, unit), unit, number(m.Sd, unit), unit)
}

// say writes a measured value for reading.
func say[Q quantity.Kind](m *quantity.Measured[Q], unit string) string {
	if m == nil {
		return ""
	}
	text := number(m.Value, unit) + " " + unit
	if m.How != quantity.NotStated {
		text += " " + string(m.How)
	}
	return text
}

// typed brings what a thumb types to what quantity.Parse reads: the unit of
// the field behind a bare number, a decimal comma as a point, feet and inches
// as inches.
func typed(text, unit string) string {
	text = strings.TrimSpace(text)
	if strings.Count(text, ",") == 1 && !strings.Contains(text, ".") {
		text = strings.Replace(text, ",", ".", 1)
	}
	if inches, ok := feetAndInches(text); ok {
		return inches
	}
	if _, err := strconv.ParseFloat(text, 64); err == nil {
		return text + " " + unit
	}
	return text
}

// feetAndInches reads 6 ft 3 in and 6'3".
func feetAndInches(text string) (string, bool) {
	plain := strings.NewReplacer("'", " ft ", `"`, " in ", "′", " ft ", "″", " in ").Replace(text)
	words := strings.Fields(plain)
	if len(words) == 3 && words[1] == "ft" {
		words = append(words, "in")
	}
	if len(words) != 4 || words[1] != "ft" || words[3] != "in" {
		if len(words) == 2 && (words[1] == "ft" || words[1] == "in") {
			return plain, true
		}
		return "", false
	}
	feet, errFeet := strconv.ParseFloat(words[0], 64)
	inches, errInches := strconv.ParseFloat(words[2], 64)
	if errFeet != nil || errInches != nil {
		return "", false
	}
	return strconv.FormatFloat(feet*12+inches, 'f', -1, 64) + " in", true
}
