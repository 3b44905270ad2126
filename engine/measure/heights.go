package measure

import (
	hd "gonum.org/v1/gonum/num/hyperdual"

	"boughline/quantity"
)

const mostDistance = 1000.0 // m; beyond it nobody measures a tree

func angleField(name, label string, how quantity.How, least, most float64) Field {
	return Field{Name: name, Label: label, Dimension: Angle, How: how, Least: least, Most: most}
}

func lengthField(name, label string, how quantity.How, least, most float64) Field {
	return Field{Name: name, Label: label, Dimension: Length, How: how, Least: least, Most: most}
}

// standing gives a field what stands in for it.
func standing(f Field, text string) Field {
	f.Default = text
	return f
}

// elevation is an angle above (+) or below (-) the level of the eye.
func elevation(name, label string) Field {
	return angleField(name, label, quantity.Clinometer, -upTo, upTo)
}

func height() []Output { return []Output{{"height", "height of the point above the foot", Length}} }

// nearer is how far the plumb point under what is sighted lies from the spot
// that the distance goes to.
func nearer() Field {
	return standing(lengthField("nearer", "how much nearer to you than the taped spot the sighted point stands (farther: minus)",
		quantity.ByEye, -mostDistance, mostDistance), "0 m ±0.2 m by eye")
}

// heights are the ways to a height above the ground. Formulas: forest
// mensuration, plain trigonometry; errors of the tangent way after Bragg 2008.
func heights() []Kind {
	return []Kind{byTangents(), bySines(), bySineFromEye(), byTangentsOnSlope(), byStaffAtFoot()}
}

func byTangents() Kind {
	return Kind{
		Name: "height-by-tangents", Does: "height from a level distance and two angles",
		Fields: []Field{
			lengthField("distance", "level distance from your eye to below the point", quantity.Taped, 0.01, mostDistance),
			elevation("top", "angle up to the point"),
			elevation("base", "angle to the ground below it, minus if below your eye"),
			nearer(),
		},
		Gives: height(), How: quantity.Clinometer,
		Source:  "h = (d - n) tan(top) - d tan(base); plain trigonometry",
		Caution: "tape to the spot below the point, not to the stem: a point nearer or farther than the tape says is the great error of this way",
		formula: func(x []hd.Number) []hd.Number {
			distance, top, base, nearer := x[0], x[1], x[2], x[3]
			up := hd.Mul(hd.Sub(distance, nearer), hd.Tan(top))
			return []hd.Number{hd.Sub(up, hd.Mul(distance, hd.Tan(base)))}
		},
	}
}

func bySines() Kind {
	return Kind{
		Name: "height-by-sines", Does: "height from two laser distances and two angles",
		Fields: []Field{
			lengthField("to-top", "distance from your eye straight to the point", quantity.Laser, 0.01, mostDistance),
			elevation("top", "angle up to the point"),
			lengthField("to-base", "distance from your eye straight to the ground below it", quantity.Laser, 0.01, mostDistance),
			elevation("base", "angle to the ground below it, minus if below your eye"),
		},
		Gives: height(), How: quantity.Laser,
		Source:  "h = s sin(top) - t sin(base); Leverett 2006, Bragg 2008",
		Caution: "the laser must return from the point itself, not from a twig before it",
		formula: func(x []hd.Number) []hd.Number {
			return []hd.Number{hd.Sub(hd.Mul(x[0], hd.Sin(x[1])), hd.Mul(x[2], hd.Sin(x[3])))}
		},
	}
}

func bySineFromEye() Kind {
	eye := standing(lengthField("eye", "height of your eye above the ground below the point", quantity.Taped, -mostDistance, mostDistance), "0 m ±0 m")
	return Kind{
		Name: "height-by-one-sine", Does: "height from one laser distance, its angle and the height of your eye",
		Fields: []Field{
			lengthField("to-top", "distance from your eye straight to the point", quantity.Laser, 0.01, mostDistance),
			elevation("top", "angle up to the point"), eye,
		},
		Gives: height(), How: quantity.Laser,
		Source:  "h = s sin(top) + eye; Leverett 2006",
		Caution: "without the height of your eye it is the height above your eye",
		formula: func(x []hd.Number) []hd.Number {
			return []hd.Number{hd.Add(hd.Mul(x[0], hd.Sin(x[1])), x[2])}
		},
	}
}

func byTangentsOnSlope() Kind {
	return Kind{
		Name: "height-by-tangents-on-slope", Does: "height from a distance taped along sloping ground and angles",
		Fields: []Field{
			lengthField("along", "distance along the slope to below the point", quantity.Taped, 0.01, mostDistance),
			angleField("slope", "slope of the ground along the tape, up or down", quantity.Clinometer, -60*degree, 60*degree),
			elevation("top", "angle up to the point"),
			elevation("base", "angle to the ground below it, minus if below your eye"),
			nearer(),
		},
		Gives: height(), How: quantity.Clinometer,
		Source:  "h = (d - n) tan(top) - d tan(base), d = s cos(slope); plain trigonometry",
		Caution: "tape to the spot below the point, not to the stem; the slope is that of the tape, even and straight",
		formula: func(x []hd.Number) []hd.Number {
			level := hd.Mul(x[0], hd.Cos(x[1]))
			up := hd.Mul(hd.Sub(level, x[4]), hd.Tan(x[2]))
			return []hd.Number{hd.Sub(up, hd.Mul(level, hd.Tan(x[3])))}
		},
	}
}

func byStaffAtFoot() Kind {
	return Kind{
		Name: "height-by-staff", Does: "height from three angles and a staff upright below the point; no distance",
		Fields: []Field{
			lengthField("staff", "length of the staff, from the ground up", quantity.Taped, 0.01, 100),
			elevation("top", "angle up to the point"),
			elevation("staff-top", "angle to the top of the staff"),
			elevation("base", "angle to the foot of the staff, minus if below your eye"),
		},
		Gives: height(), How: quantity.Clinometer,
		Source:  "h = L (tan(top) - tan(base)) / (tan(staff-top) - tan(base)); plain trigonometry",
		Caution: "a short staff far away carries its angle error many times over",
		check: func(x []float64) error {
			return above("staff-top", x[2], "base", x[3])
		},
		formula: func(x []hd.Number) []hd.Number {
			foot := hd.Tan(x[3])
			whole, staff := hd.Sub(hd.Tan(x[1]), foot), hd.Sub(hd.Tan(x[2]), foot)
			return []hd.Number{hd.Mul(x[0], div(whole, staff))}
		},
	}
}
