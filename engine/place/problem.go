package place

import (
	"fmt"

	"boughline/quantity"
)

// Slack is how far a margin may lie below 0 and still count as met, and how
// near two values must come to count as equal: pairs of a grid often meet a
// limit exactly, and rounding must not decide them.
const Slack = 1e-9

// Constraint is a limit on hangs. Its margin is 0 on the limit and counts as
// a share of it, so that margins of different constraints compare.
type Constraint struct {
	Name   string
	Margin Field
}

// Aim is what makes a hang better than another: the greatest Value, or, where
// Value is nil, the greatest least margin.
type Aim struct {
	Name     string
	Value    *Field
	LineFrom quantity.Length // shorter lines are left out
}

// LongestLine is the aim of the longest line.
func LongestLine() Aim {
	return Aim{Name: "longest line", Value: &Field{Line: func(line quantity.Length) float64 { return float64(line) }}}
}

// MostInHand is the aim of the greatest least margin.
func MostInHand() Aim { return Aim{Name: "most in hand"} }

// Problem is one search. Of hangs whose values lie within Slack of the best,
// the largest margin of the first constraint wins (again within Slack), then
// the longer line, then the hang point nearer to the start of the limb.
type Problem struct {
	Grid        Grid
	Constraints []Constraint // 1 to 30
	Aims        []Aim
	Bands       []quantity.Length // lines of the grid whose bands are asked for
	Counts      bool              // asks for Result.Passed
}

// greatestConstraints lets two limits for each constraint and a few more fit
// into a set.
const greatestConstraints = 30

func (p Problem) validate() error {
	if err := p.Grid.validate(); err != nil {
		return err
	}
	if n := len(p.Constraints); n == 0 || n > greatestConstraints {
		return fmt.Errorf("constraints: there are %d; expected 1 to %d", n, greatestConstraints)
	}
	for _, line := range p.Bands {
		if _, ok := p.Grid.Line.index(line); !ok {
			return fmt.Errorf("bands: a line of %v m; expected one of the grid, %v to %v m in steps of %v m",
				line, p.Grid.Line.From, p.Grid.Line.To, p.Grid.Line.Step)
		}
	}
	return nil
}
