package wording

import (
	"math"
	"strconv"
)

// Exact writes a value for a calculation by hand: six significant digits, in
// the unit given, an angle in degrees.
func Exact(value float64, unit string) string {
	if unit == "rad" {
		value, unit = value*180/math.Pi, "deg"
	}
	text := sixDigits(value)
	if unit == "1" || unit == "" {
		return text
	}
	return text + " " + unit
}

func sixDigits(value float64) string {
	rounded, err := strconv.ParseFloat(strconv.FormatFloat(value, 'e', 5, 64), 64)
	if err != nil { // what was formatted can be parsed
		return strconv.FormatFloat(value, 'g', -1, 64)
	}
	if a := math.Abs(rounded); a != 0 && (a < 1e-4 || a >= 1e12) {
		return strconv.FormatFloat(rounded, 'e', -1, 64)
	}
	return strconv.FormatFloat(rounded, 'f', -1, 64)
}
