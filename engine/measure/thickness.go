package measure

import (
	"fmt"
	"math"

	hd "gonum.org/v1/gonum/num/hyperdual"

	"boughline/quantity"
)

// thicknesses are the ways to the diameter of a limb or stem.
func thicknesses() []Kind { return []Kind{byAngularWidth(), byGirth()} }

func byAngularWidth() Kind {
	return Kind{
		Name: "thickness-by-angular-width", Does: "thickness of a limb out of reach from the angle that it fills",
		Fields: []Field{
			lengthField("distance", "distance from your eye straight to the near face of the limb", quantity.Laser, 0.01, mostDistance),
			angleField("width", "angle between its two edges, across the limb", quantity.AngularWidth, 1e-6, 90*degree),
		},
		Gives: []Output{{"thickness", "diameter over bark, as seen from here", Length}}, How: quantity.AngularWidth,
		Source:  "D = 2 d sin(A/2) / (1 - sin(A/2)), the two tangents of a circle; plain geometry",
		Caution: "a limb that is not round has another thickness from another side",
		formula: func(x []hd.Number) []hd.Number {
			half := hd.Sin(hd.Scale(0.5, x[1]))
			return []hd.Number{div(hd.Scale(2, hd.Mul(x[0], half)), hd.Sub(num(1), half))}
		},
	}
}

func byGirth() Kind {
	return Kind{
		Name: "girth", Does: "diameter, wood under bark and its section modulus from the girth",
		Fields: []Field{
			lengthField("girth", "girth over bark", quantity.Taped, 1e-3, 60),
			lengthField("bark", "thickness of the bark on one side", quantity.ByEye, 0, 0.5),
		},
		Gives: []Output{
			{"over-bark", "diameter over bark", Length},
			{"under-bark", "diameter of the wood", Length},
			{"modulus", "section modulus of the wood, round and sound", Modulus},
		},
		How:     quantity.Taped,
		Source:  "D = C/pi - 2 b, W = pi D^3/32; plain geometry and beam theory",
		Caution: "a tape reads large on a limb that is not round, and over moss",
		check: func(x []float64) error {
			if x[0]/math.Pi > 2*x[1] {
				return nil
			}
			return fmt.Errorf("bark: %.4g m on each side of a diameter of %.4g m leaves no wood; expected less than half of it", x[1], x[0]/math.Pi)
		},
		formula: func(x []hd.Number) []hd.Number {
			over := hd.Scale(1/math.Pi, x[0])
			under := hd.Sub(over, hd.Scale(2, x[1]))
			return []hd.Number{over, under, hd.Scale(math.Pi/32, hd.Mul(under, square(under)))}
		},
	}
}
