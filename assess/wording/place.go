package wording

import "boughline/assess"

// aims says what makes a hang the best.
var aims = map[string]string{
	"longest-line": "the one with the longest line",
	"lowest-fall":  "the one with the lowest fall",
	"most-in-hand": "the one with the most in hand",
}

// Aim words an aim of the search for hangs.
func Aim(aim string) string { return aims[aim] }

// CheckTitle names a check that is not at hand as a whole, with the part that
// it is about.
func CheckTitle(code assess.Code, part string) string {
	return Check(assess.Check{Code: code, Where: assess.Where{Part: part}})
}
