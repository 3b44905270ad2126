package exchange

import (
	"cmp"
	"math"
	"slices"

	"boughline/quantity"
	"boughline/survey"
)

// breastHeight is where the girth of a stem is taped, 1.3 m (forest
// mensuration).
const breastHeight quantity.Length = 1.3

// stemGirth is the girth of the stem nearest to breast height and its height.
// A diameter counts as that of a circle, two as those of one of their mean.
func stemGirth(t *survey.Tree) (girth, at quantity.Length, ok bool) {
	stem := slices.IndexFunc(t.Members, func(m survey.Member) bool { return m.Parent == "" })
	if stem < 0 || len(t.Members[stem].Stations) == 0 {
		return 0, 0, false
	}
	s := slices.MinFunc(t.Members[stem].Stations, func(a, b survey.Station) int {
		return cmp.Compare(math.Abs(float64(a.At.Value-breastHeight)), math.Abs(float64(b.At.Value-breastHeight)))
	})
	switch {
	case s.Girth != nil:
		girth = s.Girth.Value
	case s.Diameter != nil:
		girth = math.Pi * s.Diameter.Value
	case s.Upright != nil && s.Across != nil:
		girth = math.Pi * (s.Upright.Value + s.Across.Value) / 2
	}
	return girth, s.At.Value, girth > 0
}
