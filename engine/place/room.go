package place

import (
	"fmt"
	"math"

	"boughline/engine/space"
	"boughline/quantity"
)

// Room is the space under a level limb: a ground profile along the swing
// line, the same at every hang point but for a steady slope along the limb.
type Room struct {
	Ground space.Ground
	// HangHeight is the height of the limb above the ground at the plumb line,
	// at the start of the limb.
	HangHeight quantity.Length
	// RiseAlong is how far the ground rises for each metre along the limb.
	RiseAlong quantity.Proportion
	Amplitude quantity.Angle
	FootReach quantity.Length // how far the feet hang below the seat
}

// FootClearance returns the least room under the feet over a whole swing.
// It falls with the line, and by RiseAlong for each metre along the limb.
// Exact for the profile (space.FootClearance). NaN for a line not above 0.
func (r Room) FootClearance(along, line quantity.Length) quantity.Length {
	return r.footAtStart(line) - r.rise(along)
}

// FallHeight returns the greatest height of fall over a whole swing, exact for
// the profile (space.FallHeight). NaN for a line not above 0.
func (r Room) FallHeight(along, line quantity.Length) quantity.Length {
	return r.fallAtStart(line) - r.rise(along)
}

// FootConstraint keeps a clearance under the feet: the margin is c/least - 1.
// Errors name what is out of range in the room, or a least not above 0.
func (r Room) FootConstraint(least quantity.Length) (Constraint, error) {
	if err := r.validate("foot clearance", least); err != nil {
		return Constraint{}, err
	}
	return Constraint{"foot", Field{
		Line:  func(line quantity.Length) float64 { return float64((r.footAtStart(line) - least) / least) },
		Along: func(along quantity.Length) float64 { return -float64(r.rise(along) / least) },
	}}, nil
}

// FallConstraint keeps within a greatest height of fall: the margin is
// 1 - F/limit. Errors are those of FootConstraint.
func (r Room) FallConstraint(limit quantity.Length) (Constraint, error) {
	if err := r.validate("fall height", limit); err != nil {
		return Constraint{}, err
	}
	return Constraint{"fall", Field{
		Line:  func(line quantity.Length) float64 { return 1 - float64(r.fallAtStart(line)/limit) },
		Along: func(along quantity.Length) float64 { return float64(r.rise(along) / limit) },
	}}, nil
}

// LowestFall is the aim of the least height of fall among lines of a length or
// more; without one the shortest lines would often win.
func (r Room) LowestFall(lineFrom quantity.Length) Aim {
	return Aim{Name: "lowest fall", LineFrom: lineFrom, Value: &Field{
		Line:  func(line quantity.Length) float64 { return -float64(r.fallAtStart(line)) },
		Along: func(along quantity.Length) float64 { return float64(r.rise(along)) },
	}}
}

// StemConstraint keeps a hang away from the stem by a rule on the line: the
// margin is along/required - 1. Errors name a rule that can give 0 or less.
func StemConstraint(rule space.LinearRule) (Constraint, error) {
	if !(rule.PerLine >= 0 && rule.Constant >= 0 && rule.PerLine+float64(rule.Constant) > 0) {
		return Constraint{}, fmt.Errorf("stem clearance: %v of the line and %v m; expected both 0 or more and one above 0", rule.PerLine, rule.Constant)
	}
	return Constraint{"stem", Field{
		PerAlong: func(line quantity.Length) float64 { return 1 / float64(rule.For(line)) },
		Line:     func(quantity.Length) float64 { return -1 },
	}}, nil
}

func (r Room) rise(along quantity.Length) quantity.Length {
	return quantity.Length(r.RiseAlong) * along
}

func (r Room) swing(line quantity.Length) space.Swing {
	return space.Swing{HangHeight: r.HangHeight, Line: line, FootReach: r.FootReach, Amplitude: r.Amplitude}
}

func (r Room) footAtStart(line quantity.Length) quantity.Length {
	c, err := space.FootClearance(r.Ground, r.swing(line))
	if err != nil {
		return quantity.Length(math.NaN())
	}
	return c.Clearance
}

func (r Room) fallAtStart(line quantity.Length) quantity.Length {
	height, err := space.FallHeight(r.Ground, r.swing(line))
	if err != nil {
		return quantity.Length(math.NaN())
	}
	return height
}

// validate tries the room with some line; the lines of a search are above 0.
func (r Room) validate(name string, limit quantity.Length) error {
	if !(limit > 0) || math.IsInf(float64(limit), 0) {
		return fmt.Errorf("%s: a limit of %v m; expected a length above 0", name, limit)
	}
	if rise := float64(r.RiseAlong); math.IsNaN(rise) || math.IsInf(rise, 0) {
		return fmt.Errorf("%s: rise_along %v; expected a finite slope", name, rise)
	}
	if _, err := space.FallHeight(r.Ground, r.swing(1)); err != nil {
		return fmt.Errorf("%s: %w", name, err)
	}
	return nil
}
