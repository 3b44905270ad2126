package survey

import "github.com/agnivade/levenshtein"

// nearest is the name that differs least from a mistaken one, or none where
// half of it or more would have to change. It is a help for people, so very
// long names and lists are left alone.
func nearest(mistaken string, names []string) string {
	const longest, most = 40, 500 // bounds of the work
	if len(mistaken) > longest || len(names) > most {
		return ""
	}
	best, least := "", (len(mistaken)+1)/2
	for _, name := range names {
		if d := levenshtein.ComputeDistance(mistaken, name); d < least {
			best, least = name, d
		}
	}
	return best
}
