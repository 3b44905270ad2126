package wording

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"boughline/assess"
)

// Quantity writes a value in an SI unit for people: three significant digits,
// all before the decimal point, in the metric unit that reads best.
func Quantity(value float64, unit string) string { return Metric.Quantity(value, unit) }

// AtMost writes a limit in a metric unit, cut and never rounded up.
func AtMost(value float64, unit string) string { return Metric.AtMost(value, unit) }

// Quantity writes a value in an SI unit in the unit of these that reads best:
// three significant digits, all before the decimal point.
func (u Units) Quantity(value float64, unit string) string {
	value, unit = u.in(value, unit)
	return behind(digits(value, 3), unit)
}

// Fine is Quantity with five significant digits, for those who go on reckoning.
func (u Units) Fine(value float64, unit string) string {
	value, unit = u.in(value, unit)
	return behind(digits(value, 5), unit)
}

// AtMost writes a limit, cut and never rounded up.
func (u Units) AtMost(value float64, unit string) string {
	value, unit = u.in(value, unit)
	return behind(strconv.FormatFloat(math.Floor(value*10+1e-6)/10, 'f', -1, 64), unit)
}

func behind(text, unit string) string {
	if unit == "1" || unit == "" {
		return text
	}
	return text + " " + unit
}

func digits(value float64, count int) string {
	a := math.Abs(value)
	if a != 0 && a < 1e-3 {
		return strconv.FormatFloat(value, 'e', count-2, 64)
	}
	places := 0
	if a != 0 {
		places = max(0, count-1-int(math.Floor(math.Log10(a))))
	}
	text := strconv.FormatFloat(value, 'f', places, 64)
	if strings.Contains(text, ".") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	return text
}

func fixed(value float64, places int) string { return strconv.FormatFloat(value, 'f', places, 64) }

// Margin writes a margin with two decimals, cut and never rounded up, so that
// no failing margin reads as 1.00.
func Margin(m float64) string {
	if m >= 100 {
		return "over 100"
	}
	return fmt.Sprintf("%.2f", math.Floor(m*100+1e-7)/100)
}

// Term writes one number of a reason with how it was got, in metric units.
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
