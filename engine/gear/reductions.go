package gear

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// reductions lists everything that takes strength from a link as used.
func (l Link) reductions(f Factors) ([]Reduction, error) {
	var list []Reduction
	if worst, ok := worstKnot(l.Knots, f.UntestedKnot); ok {
		list = append(list, worst)
	}
	hitch, err := l.hitchReductions(f)
	if err != nil {
		return nil, err
	}
	list = append(list, hitch...)
	if l.BendOver != 0 {
		share, err := BendShare(l.BendOver, l.Thickness)
		if err != nil {
			return nil, err
		}
		list = append(list, Reduction{"bend", share})
	}
	list = append(list, l.Wear...)
	for _, r := range list {
		if !(r.Share > 0 && r.Share <= 1) {
			return nil, fmt.Errorf("share of %s: %v; expected above 0 and at most 1", r.Cause, r.Share)
		}
	}
	return list, nil
}

// worstKnot returns the knot that keeps least. A rope breaks at its worst
// knot, so several of them don't multiply.
func worstKnot(knots []Knot, ceiling quantity.Proportion) (Reduction, bool) {
	worst, found := Reduction{}, false
	for _, k := range knots {
		share := k.Share
		if !k.Tested {
			share = min(share, ceiling)
		}
		if !found || share < worst.Share {
			worst, found = Reduction{k.Name, share}, true
		}
	}
	return worst, found
}

func (l Link) hitchReductions(f Factors) ([]Reduction, error) {
	switch l.Hitch {
	case Choker:
		byAngle, err := ChokeShare(l.ChokeAngle, f.ChokeAngles)
		return []Reduction{{"choker", f.Choker}, {"choke angle", byAngle}}, err
	case Girth:
		return []Reduction{{"girth hitch", f.Girth}}, nil
	}
	return nil, nil
}

// ChokeShare returns the share of the choker rating kept at a choke angle of
// 0 to 180 degrees: that of the first row, in falling order, whose angle is
// not above it. A free load settles at about 135 degrees. The usual table is
// that of web slings after ASME B30.9 (two makers' sheets read).
func ChokeShare(angle quantity.Angle, table []ChokeStep) (quantity.Proportion, error) {
	if !(angle >= 0 && angle <= 180*quantity.Degree) {
		return 0, fmt.Errorf("choke_angle: %.4g deg; expected 0 to 180 deg", angle.Degrees())
	}
	for _, row := range table {
		// Degrees that went through radians may fall short of a row by a digit.
		if angle >= row.From-1e-12 {
			return row.Share, nil
		}
	}
	return 0, fmt.Errorf("choke_angle: %.4g deg lies below every row of the table; expected rows down to 0", angle.Degrees())
}

// BendShare returns the share of strength kept where a line of the given
// thickness bends over a diameter, 1 - 0.5/sqrt(D/d): a rule of wire rope
// handbooks (from memory); fibre ropes are commonly asked for D/d of 8 and
// more, webbing for 3 (from memory). It was made for D/d from 1 upwards; at 1/4
// it reaches 0. A limb is seldom the sharp bend, a connector often is.
func BendShare(bendOver, thickness quantity.Length) (quantity.Proportion, error) {
	if !(bendOver > 0 && thickness > 0) {
		return 0, fmt.Errorf("bend_over, thickness: %v m over %v m; expected both above 0", bendOver, thickness)
	}
	return quantity.Proportion(math.Max(0, 1-0.5/math.Sqrt(float64(bendOver/thickness)))), nil
}

// LegPull returns the pull in each of a number of equal legs for each unit of
// load, 1/(n sin(angle)) with the angle of the legs above the horizontal, above
// 0 to 90 degrees. Two legs at 30 degrees each take the whole load: makers bar
// flatter ones. More than two legs seldom share evenly: count two.
// Statics; for two legs the tables of OSHA 1910.184 and ASME B30.9 (read).
func LegPull(legs int, fromHorizontal quantity.Angle) (float64, error) {
	if legs < 1 {
		return 0, fmt.Errorf("legs: %d; expected 1 or more", legs)
	}
	if !(fromHorizontal > 0 && fromHorizontal <= 90*quantity.Degree) {
		return 0, fmt.Errorf("leg_angle: %.4g deg; expected above 0 to 90 deg from the horizontal", fromHorizontal.Degrees())
	}
	return 1 / (float64(legs) * fromHorizontal.Sin()), nil
}
