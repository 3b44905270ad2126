package place

import "boughline/quantity"

// Field is a number for every hang point and line length:
//
//	Along(s) + Line(L) + s PerAlong(L) + Both(s, L)
//
// Parts left nil are 0. Along, Line and PerAlong are worked out once for each
// value of the grid and are bounded from those values, whatever their form.
// Both is worked out for each pair asked for; Shape says what Refine may take
// for granted of it. All must be pure and give finite numbers over the grid.
type Field struct {
	Along    func(along quantity.Length) float64
	Line     func(line quantity.Length) float64
	PerAlong func(line quantity.Length) float64 // per m along the limb
	Both     func(along, line quantity.Length) float64
	Shape    *Shape
}

// Shape promises that Both, at every fixed line length, is monotone along the
// limb between neighbouring AlongTurns, and, at every fixed hang point,
// monotone in the line length between neighbouring LineTurns; in which
// direction does not matter and may change. The empty Shape is monotone
// throughout; a function with one peak turns there, where the peak stays put.
// Without a Shape nothing is taken for granted.
type Shape struct{ AlongTurns, LineTurns []quantity.Length }

// At works the number out at one hang.
func (f Field) At(along, line quantity.Length) float64 {
	v := 0.0
	if f.Along != nil {
		v += f.Along(along)
	}
	if f.Line != nil {
		v += f.Line(line)
	}
	if f.PerAlong != nil {
		v += float64(float64(along) * f.PerAlong(line))
	}
	if f.Both != nil {
		v += f.Both(along, line)
	}
	return v
}
