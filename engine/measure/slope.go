package measure

import (
	"fmt"

	hd "gonum.org/v1/gonum/num/hyperdual"

	"boughline/quantity"
)

// above refuses an angle that is not greater than another.
func above(name string, x float64, other string, y float64) error {
	if x > y {
		return nil
	}
	return fmt.Errorf("%s: %.4g deg; expected more than %s (%.4g deg)", name, x/degree, other, y/degree)
}

// aboveLength refuses a length that is not greater than another.
func aboveLength(name string, x float64, other string, y float64) error {
	if x > y {
		return nil
	}
	return fmt.Errorf("%s: %.4g m; expected more than %s (%.4g m)", name, x, other, y)
}

// slopes are the ways to an angle from the horizontal, of ground or limb.
func slopes() []Kind {
	rise := lengthField("rise", "how much higher the far end is (lower: minus)", quantity.Taped, -mostDistance, mostDistance)
	slope := []Output{{"slope", "angle above the horizontal", Angle}}
	return []Kind{
		{
			Name: "slope-by-level-distance", Does: "slope of ground or limb from rise and level distance",
			Fields: []Field{rise, lengthField("run", "level distance between the ends", quantity.Taped, 0.01, mostDistance)},
			Gives:  slope,
			Source: "tan(slope) = rise / run; plain trigonometry", Caution: "between the ends it may be steeper",
			formula: func(x []hd.Number) []hd.Number { return []hd.Number{atan2(x[0], x[1])} },
		},
		{
			Name: "slope-by-length", Does: "slope of ground or limb from rise and length along it",
			Fields: []Field{rise, lengthField("along", "length along it between the ends", quantity.Taped, 0.01, mostDistance)},
			Gives:  slope,
			Source: "sin(slope) = rise / along; plain trigonometry", Caution: "between the ends it may be steeper",
			check: func(x []float64) error {
				if -x[1] < x[0] && x[0] < x[1] {
					return nil
				}
				return fmt.Errorf("rise: %.4g m; expected less than the length along it (%.4g m)", x[0], x[1])
			},
			formula: func(x []hd.Number) []hd.Number { return []hd.Number{hd.Asin(div(x[0], x[1]))} },
		},
	}
}
