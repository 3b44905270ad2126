package measure

import (
	"math"

	hd "gonum.org/v1/gonum/num/hyperdual"
)

// num is a plain number in a formula.
func num(x float64) hd.Number { return hd.Number{Real: x} }

// div returns x/y.
func div(x, y hd.Number) hd.Number { return hd.Mul(x, hd.Inv(y)) }

// square returns x times x.
func square(x hd.Number) hd.Number { return hd.Mul(x, x) }

// hypot returns the root of the sum of squares; its derivatives do not exist
// where all are 0.
func hypot(x ...hd.Number) hd.Number {
	sum := num(0)
	for _, v := range x {
		sum = hd.Add(sum, square(v))
	}
	return hd.Sqrt(sum)
}

// atan2 returns the angle of the point (x, y) from the x axis, by that of the
// two quotients which stays small.
func atan2(y, x hd.Number) hd.Number {
	var angle hd.Number
	if math.Abs(y.Real) <= math.Abs(x.Real) {
		angle = hd.Atan(div(y, x))
	} else {
		angle = hd.Scale(-1, hd.Atan(div(x, y)))
	}
	angle.Real = math.Atan2(y.Real, x.Real)
	return angle
}
