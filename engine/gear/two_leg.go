package gear

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// Spot is a place in the vertical plane of a line: X to the right, Y up.
type Spot struct{ X, Y quantity.Length }

// TwoLeg is a load below two straight legs.
type TwoLeg struct {
	Node                Spot           // where the load hangs
	PullLeft, PullRight quantity.Force // in the legs
	Left, Right         quantity.Angle // of the legs from the vertical, outwards
	Horizontal          quantity.Force // the same in both legs
}

// HangBetween returns where a load hangs on two weightless legs of fixed length
// from two anchors, left before right, and the pull in each leg. Errors: legs
// that don't meet, and a load outside both anchors, which leaves one leg
// slack. Statics of a point.
func HangBetween(left, right Spot, legLeft, legRight quantity.Length, load quantity.Force) (TwoLeg, error) {
	apartX, apartY := float64(right.X-left.X), float64(right.Y-left.Y)
	apart := math.Hypot(apartX, apartY)
	a, b := float64(legLeft), float64(legRight)
	if !(apartX > 0 && a > 0 && b > 0 && apart < a+b && apart > math.Abs(a-b)) {
		return TwoLeg{}, fmt.Errorf("legs: %v m and %v m between anchors %.4g m apart; expected legs that meet below, the right anchor to the right", legLeft, legRight, apart)
	}
	along := (apart*apart + a*a - b*b) / (2 * apart)
	below := math.Sqrt(a*a - along*along)
	t := TwoLeg{Node: Spot{
		left.X + quantity.Length((along*apartX+below*apartY)/apart),
		left.Y + quantity.Length((along*apartY-below*apartX)/apart),
	}}
	t.Left = fromVertical(t.Node.X-left.X, left.Y-t.Node.Y)
	t.Right = fromVertical(right.X-t.Node.X, right.Y-t.Node.Y)
	if !(t.Left+t.Right > 0 && t.Left >= 0 && t.Right >= 0) {
		return TwoLeg{}, fmt.Errorf("legs: %v m and %v m hang the load outside both anchors; expected it between them", legLeft, legRight)
	}
	both := quantity.Force((t.Left + t.Right).Sin())
	t.PullLeft = load * quantity.Force(t.Right.Sin()) / both
	t.PullRight = load * quantity.Force(t.Left.Sin()) / both
	t.Horizontal = t.PullLeft * quantity.Force(t.Left.Sin())
	return t, nil
}

func fromVertical(outwards, up quantity.Length) quantity.Angle {
	return quantity.Angle(math.Atan2(float64(outwards), float64(up)))
}
