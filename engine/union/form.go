package union

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// Aspect returns the diameter of the limb just beyond its collar as a share of
// that of the parent just above the union. It may exceed 1 where the limb has
// overtaken the parent.
// Errors: a diameter that is not positive.
// Source: usual definition of the aspect ratio, as in Gilman (2003), Journal of
// Arboriculture 29:291.
func Aspect(limb, parent quantity.Length) (float64, error) {
	for _, d := range []quantity.Length{limb, parent} {
		if !(d > 0) || math.IsInf(float64(d), 1) {
			return 0, fmt.Errorf("aspect ratio: diameters %v m and %v m; expected both more than 0", float64(limb), float64(parent))
		}
	}
	return float64(limb / parent), nil
}

// FormPoint is one corner of a FormCurve.
type FormPoint struct{ Aspect, Factor float64 }

// FormCurve gives the factor on the strength of a sound union by its aspect
// ratio: straight between its points, level before the first and beyond the
// last. Points stand in order of rising aspect and never of rising factor.
type FormCurve []FormPoint

// Factor returns the factor at the aspect ratio.
// Errors: no points, points out of order, factors outside 0 to 1, a negative
// aspect ratio.
// Source of the usual points: sound forks of near-equal stems had 74 % of the
// bending strength of the smaller branch (Slater & Ennos, 2013, hazel); level
// from 0.83 on (Dahle et al., 2022, red maple). Very small stems fell further
// (Gilman, 2003).
func (c FormCurve) Factor(aspect float64) (float64, error) {
	if err := c.check(); err != nil {
		return 0, fmt.Errorf("form of union: %w", err)
	}
	if !(aspect > 0) {
		return 0, fmt.Errorf("form of union: aspect ratio %v; expected more than 0", aspect)
	}
	if aspect <= c[0].Aspect {
		return c[0].Factor, nil
	}
	for i, right := range c[1:] {
		if aspect <= right.Aspect {
			left := c[i]
			share := (aspect - left.Aspect) / (right.Aspect - left.Aspect)
			return left.Factor + share*(right.Factor-left.Factor), nil
		}
	}
	return c[len(c)-1].Factor, nil
}

func (c FormCurve) check() error {
	if len(c) == 0 {
		return fmt.Errorf("no points; expected at least one")
	}
	for i, p := range c {
		if !(p.Factor > 0 && p.Factor <= 1) || !(p.Aspect >= 0) {
			return fmt.Errorf("point %d is %+v; expected an aspect of 0 or more and a factor above 0, at most 1", i, p)
		}
		if i > 0 && !(p.Aspect > c[i-1].Aspect && p.Factor <= c[i-1].Factor) {
			return fmt.Errorf("point %d is %+v after %+v; expected a greater aspect and no greater factor", i, p, c[i-1])
		}
	}
	return nil
}
