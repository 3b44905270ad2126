package fungi

import (
	"regexp"
	"strconv"
	"strings"
)

// A size is a number with a unit beside a word that says how it was measured;
// "4 m up the trunk" is none.
var (
	sizeNumber = regexp.MustCompile(`(\d{1,4}(?:[.,]\d{1,3})?)\s*(mm|cm|m|in|inch|inches|ft|foot|feet|centimetres?|centimeters?|metres?|meters?|millimetres?|millimeters?)\b`)
	sizeWord   = regexp.MustCompile(`\b(across|wide|broad|diameter|size|big|large|thick|long|over)\b`)
)

var centimetres = map[string]float64{"mm": 0.1, "mi": 0.1, "cm": 1, "ce": 1, "m": 100, "me": 100, "in": 2.54, "ft": 30.48, "fo": 30.48, "fe": 30.48}

// measured returns the size in cm that a clause states, the greatest of
// several.
func measured(clause string, told bool) (cm float64, ok bool) {
	text := plain(clause)
	if !told && !sizeWord.MatchString(text) {
		return 0, false
	}
	for _, m := range sizeNumber.FindAllStringSubmatch(text, -1) {
		n, err := strconv.ParseFloat(strings.Replace(m[1], ",", ".", 1), 64)
		if size := n * centimetres[m[2][:min(2, len(m[2]))]]; err == nil && size > cm {
			cm, ok = size, true
		}
	}
	return cm, ok
}
