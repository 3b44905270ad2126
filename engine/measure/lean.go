package measure

import (
	"errors"
	"math"

	hd "gonum.org/v1/gonum/num/hyperdual"

	"boughline/quantity"
)

// leans are the ways to the lean of a stem from the vertical.
func leans() []Kind { return []Kind{byPlumbLine(), fromTwoSides()} }

func byPlumbLine() Kind {
	return Kind{
		Name: "lean-by-plumb-line", Does: "lean of a stem from a plumb line held against it",
		Fields: []Field{
			lengthField("off", "level distance from the line to the stem at its foot", quantity.Taped, 0, mostDistance),
			lengthField("drop", "length of the line from where it touches", quantity.Taped, 0.01, mostDistance),
		},
		Gives: []Output{{"lean", "lean from the vertical", Angle}}, How: quantity.Taped,
		Source:  "tan(lean) = off / drop; plain trigonometry",
		Caution: "it is the lean of the part beside the line; a sweep above it is not seen",
		formula: func(x []hd.Number) []hd.Number { return []hd.Number{atan2(x[0], x[1])} },
	}
}

func fromTwoSides() Kind {
	facing := standing(angleField("facing", "compass direction looked along at the first stand", quantity.Compass, -2*math.Pi, 2*math.Pi), "0 deg ±0 deg")
	return Kind{
		Name: "lean-from-two-sides", Does: "lean and its direction from two views a quarter circle apart",
		Fields: []Field{
			angleField("first", "lean to the right (left: minus) seen from the first stand", quantity.Clinometer, -80*degree, 80*degree),
			angleField("second", "lean to the right seen after a quarter of the way round, walked to your right", quantity.Clinometer, -80*degree, 80*degree),
			facing,
		},
		Gives: []Output{
			{"lean", "lean from the vertical", Angle},
			{"azimuth", "compass direction it leans to (from the first line of sight, if no facing is given)", Angle},
		},
		How:     quantity.Clinometer,
		Source:  "tan^2(lean) = tan^2(first) + tan^2(second); plain geometry",
		Caution: "of a stem near upright the direction means little",
		check: func(x []float64) error {
			if x[0] == 0 && x[1] == 0 {
				return errors.New("first and second: both are 0 deg, there is no lean to combine; state 0 deg with the error of one reading")
			}
			return nil
		},
		formula: func(x []hd.Number) []hd.Number {
			// The second stand looks from the right of the first, so that its right is
			// away from the first stand.
			right, away := hd.Tan(x[0]), hd.Tan(x[1])
			azimuth := hd.Add(x[2], atan2(right, away))
			azimuth.Real = math.Mod(azimuth.Real+4*math.Pi, 2*math.Pi)
			return []hd.Number{hd.Atan(hypot(right, away)), azimuth}
		},
	}
}
