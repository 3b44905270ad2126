package sheet

import (
	"slices"

	"boughline/register"
	"boughline/sheet/figure"
)

// monthsOf counts the outings and rides of a register month by month. Uses
// without an outing count as one for each day.
func monthsOf(r *register.Register) []figure.Month {
	rides, outings := map[string]int{}, map[string]map[string]bool{}
	var names []string
	for _, u := range r.Uses {
		day := u.Date.String()
		month := day[:len("2026-03")]
		if outings[month] == nil {
			outings[month] = map[string]bool{}
			names = append(names, month)
		}
		rides[month] += u.Cycles
		outings[month][day+" "+u.Outing] = true
	}
	slices.Sort(names)
	var list []figure.Month
	for _, month := range names {
		list = append(list, figure.Month{Words: month, Outings: len(outings[month]), Rides: rides[month]})
	}
	return list
}
