package wording

import (
	"strings"

	"boughline/assess"
)

// departures says what a stated departure departs from.
var departures = map[string]string{
	string(assess.SurfaceRating): "the fall is above what the surface is rated for",
	string(assess.GearDespite):   "gear is used although something stands against it",
}

// Departures words stated departures in one line.
func Departures(codes []string) string {
	var words []string
	for _, code := range codes {
		words = append(words, departures[code])
	}
	return strings.Join(words, "; ")
}
