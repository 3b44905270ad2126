package measure

import (
	"fmt"
	"math"

	hd "gonum.org/v1/gonum/num/hyperdual"

	"boughline/quantity"
)

// distances are the ways to a distance that no straight tape was laid along.
func distances() []Kind {
	return []Kind{levelDistance(), distanceByStaff(), distanceBySaggingTape(), betweenPoints()}
}

func levelDistance() Kind {
	return Kind{
		Name: "distance-on-slope", Does: "level distance and rise from a tape or laser on a slope",
		Fields: []Field{
			lengthField("along", "distance along the slope", quantity.Taped, 0.01, mostDistance),
			angleField("slope", "angle of that line above the horizontal (below: minus)", quantity.Clinometer, -upTo, upTo),
		},
		Gives:  []Output{{"distance", "level distance", Length}, {"rise", "rise to the far end", Length}},
		Source: "d = s cos(slope), z = s sin(slope); plain trigonometry", Caution: "the line must be straight",
		formula: func(x []hd.Number) []hd.Number {
			return []hd.Number{hd.Mul(x[0], hd.Cos(x[1])), hd.Mul(x[0], hd.Sin(x[1]))}
		},
	}
}

func distanceByStaff() Kind {
	return Kind{
		Name: "distance-by-staff", Does: "level distance from two angles to an upright staff of known length",
		Fields: []Field{
			lengthField("staff", "length between the two marks on the staff", quantity.Taped, 0.01, 100),
			elevation("upper", "angle to the upper mark"),
			elevation("lower", "angle to the lower mark, minus if below your eye"),
		},
		Gives: []Output{{"distance", "level distance to the staff", Length}}, How: quantity.Clinometer,
		Source: "d = L / (tan(upper) - tan(lower)); plain trigonometry", Caution: "a short staff far away carries its angle error many times over",
		check: func(x []float64) error { return above("upper", x[1], "lower", x[2]) },
		formula: func(x []hd.Number) []hd.Number {
			return []hd.Number{div(x[0], hd.Sub(hd.Tan(x[1]), hd.Tan(x[2])))}
		},
	}
}

func distanceBySaggingTape() Kind {
	return Kind{
		Name: "distance-by-sagging-tape", Does: "straight distance from a tape that sags between two points",
		Fields: []Field{
			lengthField("tape", "what the tape reads", quantity.Taped, 0.01, mostDistance),
			lengthField("sag", "how far it hangs below the straight line at its middle", quantity.ByEye, 0, mostDistance),
		},
		Gives: []Output{{"distance", "straight distance between the ends", Length}}, How: quantity.Taped,
		Source:  "d = L - 8 s^2 / (3 L), first term of the arc of a parabola; surveying texts, from memory",
		Caution: "for a sag of up to a tenth of the tape",
		check: func(x []float64) error {
			if x[1] <= x[0]/10 {
				return nil
			}
			return fmt.Errorf("sag: %.4g m; expected at most a tenth of the tape (%.4g m): pull it tighter", x[1], x[0])
		},
		formula: func(x []hd.Number) []hd.Number {
			return []hd.Number{hd.Sub(x[0], hd.Scale(8.0/3, div(square(x[1]), x[0])))}
		},
	}
}

func betweenPoints() Kind {
	return Kind{
		Name: "distance-between-points", Does: "distance between two points out of reach, as along a limb, from one stand",
		Fields: []Field{
			lengthField("to-one", "distance from your eye straight to the first point", quantity.Laser, 0.01, mostDistance),
			elevation("one", "angle up to it"),
			lengthField("to-other", "distance from your eye straight to the other point", quantity.Laser, 0.01, mostDistance),
			elevation("other", "angle up to it"),
			angleField("between", "angle between the two directions on the compass", quantity.Compass, -math.Pi, math.Pi),
		},
		Gives: []Output{
			{"distance", "straight distance between the points", Length},
			{"level-distance", "level distance between them", Length},
			{"rise", "how much higher the other one is", Length},
			{"slope", "angle of the line above the horizontal, from the first to the other", Angle},
		},
		How:     quantity.Laser,
		Source:  "law of cosines in plan, rise from the sines; plain geometry",
		Caution: "a limb that bends between the points is longer",
		check: func(x []float64) error {
			if math.Abs(x[4]) < 1e-9 && math.Abs(x[0]*math.Cos(x[1])-x[2]*math.Cos(x[3])) < 1e-9 {
				return fmt.Errorf("between: %.4g deg; the two points stand one above the other: their distance is the difference of two heights", x[4]/degree)
			}
			return nil
		},
		formula: func(x []hd.Number) []hd.Number {
			near, far := hd.Mul(x[0], hd.Cos(x[1])), hd.Mul(x[2], hd.Cos(x[3]))
			level := hypot(hd.Sub(hd.Mul(far, hd.Cos(x[4])), near), hd.Mul(far, hd.Sin(x[4])))
			rise := hd.Sub(hd.Mul(x[2], hd.Sin(x[3])), hd.Mul(x[0], hd.Sin(x[1])))
			return []hd.Number{hypot(level, rise), level, rise, atan2(rise, level)}
		},
	}
}
