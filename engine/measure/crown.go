package measure

import (
	"math"

	hd "gonum.org/v1/gonum/num/hyperdual"

	"boughline/quantity"
)

// crowns is the size of a crown, an ellipse on the ground and in elevation.
func crowns() []Kind {
	return []Kind{{
		Name: "crown-size", Does: "width, depth and areas of a crown from two widths and two heights",
		Fields: []Field{
			lengthField("longest", "longest width on the ground, plumb below the edges", quantity.Taped, 0.01, 200),
			lengthField("across", "width square to it", quantity.Taped, 0.01, 200),
			lengthField("top", "height of the tree", quantity.Clinometer, 0.01, 200),
			lengthField("lowest", "height of the lowest leaves or live limbs", quantity.Clinometer, 0, 200),
		},
		Gives: []Output{
			{"width", "mean width", Length},
			{"depth", "depth from the lowest leaves to the top", Length},
			{"ground-area", "area that the crown covers", Area},
			{"side-area", "area of the crown seen from the side, as the wind sees it", Area},
		},
		Source:  "means and ellipses; plain geometry",
		Caution: "a crown with gaps catches less wind than its outline",
		check:   func(x []float64) error { return aboveLength("top", x[2], "lowest", x[3]) },
		formula: func(x []hd.Number) []hd.Number {
			width := hd.Scale(0.5, hd.Add(x[0], x[1]))
			depth := hd.Sub(x[2], x[3])
			return []hd.Number{width, depth,
				hd.Scale(math.Pi/4, hd.Mul(x[0], x[1])),
				hd.Scale(math.Pi/4, hd.Mul(width, depth))}
		},
	}}
}
