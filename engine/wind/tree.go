package wind

import (
	"fmt"

	"boughline/quantity"
)

// Tree is crown and stem at a site, with the open country in which the speeds
// of forecasts and stop rules are told.
type Tree struct {
	Crown Crown
	Stem  Stem
	Site  Profile // its basic speed is not used
	Open  Terrain
}

// GustLoad returns the load of crown and bare stem while the gust blows at 10 m
// over open country. It rises with the gust, so that the gust of a given moment
// can be searched for.
// Errors: those of CrownLoad and StemLoad, a negative gust.
func (t Tree) GustLoad(gust quantity.Speed) (Load, error) {
	site, err := t.Site.WithOpenGust(gust, t.Open)
	if err != nil {
		return Load{}, err
	}
	crown, err := CrownLoad(t.Crown, site, Gust)
	if err != nil {
		return Load{}, err
	}
	stem, err := StemLoad(t.Stem, site, Gust)
	if err != nil {
		return Load{}, err
	}
	return crown.Add(stem), nil
}

// LimbLoad returns the wind load on one limb that carries the share of the
// crown's frontal area, its centre at the height: the crown's drag per area there
// times the area.
// Errors: a share outside 0 to 1, a height outside the crown's, a negative gust.
// Source: as CrownLoad, on one strip.
func (t Tree) LimbLoad(gust quantity.Speed, share float64, height quantity.Length) (Load, error) {
	if !(share >= 0 && share <= 1) {
		return Load{}, fmt.Errorf("wind on limb: share of the crown's area %v; expected 0 to 1", share)
	}
	if !(height >= t.Crown.Base() && height <= t.Crown.Top()) {
		return Load{}, fmt.Errorf("wind on limb: height %v m; expected it between those of the crown, %v and %v m",
			float64(height), float64(t.Crown.Base()), float64(t.Crown.Top()))
	}
	site, err := t.Site.WithOpenGust(gust, t.Open)
	if err != nil {
		return Load{}, err
	}
	if err := t.Crown.check(); err != nil {
		return Load{}, fmt.Errorf("wind on limb: %w", err)
	}
	force := t.Crown.pressure(height, site, Gust) * share * float64(t.Crown.Area())
	return Load{quantity.Force(force), quantity.Moment(force * float64(height))}, nil
}
