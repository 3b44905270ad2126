package wording

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"boughline/assess"
)

// scale is a larger or smaller unit for a value in an SI unit.
type scale struct {
	from   float64 // for values from this on
	factor float64
	unit   string
}

var scales = map[string][]scale{
	"Pa":  {{1e9, 1e-9, "GPa"}, {1e4, 1e-6, "MPa"}},
	"N":   {{1e3, 1e-3, "kN"}},
	"N m": {{1e3, 1e-3, "kN m"}},
	"N/m": {{1e3, 1e-3, "kN/m"}},
	"rad": {{0, 180 / math.Pi, "deg"}},
}

// Quantity writes a value in an SI unit for people: three significant digits,
// all before the decimal point, in the unit that reads best.
func Quantity(value float64, unit string) string {
	for _, s := range scales[unit] {
		if math.Abs(value) >= s.from {
			value, unit = value*s.factor, s.unit
			break
		}
	}
	text := digits(value)
	if unit == "1" || unit == "" {
		return text
	}
	return text + " " + unit
}

func digits(value float64) string {
	a := math.Abs(value)
	if a != 0 && a < 1e-3 {
		return strconv.FormatFloat(value, 'e', 1, 64)
	}
	places := 0
	if a != 0 {
		places = max(0, 2-int(math.Floor(math.Log10(a))))
	}
	text := strconv.FormatFloat(value, 'f', places, 64)
	if strings.Contains(text, ".") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	return text
}

// Margin writes a margin with two decimals, cut and never rounded up, so that
// no failing margin reads as 1.00.
func Margin(m float64) string {
	if m >= 100 {
		return "over 100"
	}
	return fmt.Sprintf("%.2f", math.Floor(m*100+1e-7)/100)
}

// Term writes one number of a reason with how it was got.
func Term(t assess.Term) string {
	text := fmt.Sprintf("%s = %s", t.Symbol, Quantity(t.Value, t.Unit))
	if t.Sd > 0 {
		text += " (sd " + Quantity(t.Sd, t.Unit) + ")"
	}
	text += "  " + t.Name
	if t.How != "" {
		text += ", " + string(t.How)
	}
	return text
}

// AtMost writes a limit, cut and never rounded up.
func AtMost(value float64, unit string) string {
	for _, s := range scales[unit] {
		if math.Abs(value) >= s.from {
			value, unit = value*s.factor, s.unit
			break
		}
	}
	return strconv.FormatFloat(math.Floor(value*10+1e-6)/10, 'f', -1, 64) + " " + unit
}
