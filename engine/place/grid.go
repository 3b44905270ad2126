package place

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// Grid is all pairs of a hang point, counted along the limb, and a line length.
type Grid struct{ Along, Line Axis }

// Axis is evenly spaced lengths from From to To, both included, 0 < From,
// Step > 0. Decimal steps give the nearest number to each decimal: 4.1 and
// not 4.1000000000000005.
type Axis struct{ From, To, Step quantity.Length }

// greatestCount bounds an axis: 1 km in millimetres.
const greatestCount = 1_000_000

// whole is how near a count of steps must come to a whole number.
const whole = 1e-6

// Count returns how many lengths the axis has.
func (a Axis) Count() int { return int(math.Floor(float64((a.To-a.From)/a.Step)+whole)) + 1 }

// Values lists the lengths, rising.
func (a Axis) Values() []quantity.Length {
	values := make([]quantity.Length, a.Count())
	for i := range values {
		values[i] = a.at(i)
	}
	return values
}

func (a Axis) at(i int) quantity.Length {
	for n := quantity.Length(1); n <= 1e6; n *= 10 {
		from, okFrom := wholeNumber(a.From * n)
		step, okStep := wholeNumber(a.Step * n)
		if okFrom && okStep {
			return (from + quantity.Length(i)*step) / n
		}
	}
	return a.From + quantity.Length(i)*a.Step
}

func wholeNumber(x quantity.Length) (quantity.Length, bool) {
	n := quantity.Length(math.Round(float64(x)))
	return n, math.Abs(float64(x-n)) < whole
}

// index returns the place of a length on the axis.
func (a Axis) index(x quantity.Length) (int, bool) {
	steps, ok := wholeNumber((x - a.From) / a.Step)
	return int(steps), ok && steps >= 0 && int(steps) < a.Count()
}

func (g Grid) validate() error {
	if err := g.Along.validate("grid.along"); err != nil {
		return err
	}
	return g.Line.validate("grid.line")
}

func (a Axis) validate(name string) error {
	steps := (a.To - a.From) / a.Step
	switch {
	case !(a.From > 0 && a.To >= a.From) || math.IsInf(float64(a.To), 0):
		return fmt.Errorf("%s: %v to %v m; expected lengths above 0, the greater one last", name, a.From, a.To)
	case !(a.Step > 0) || math.IsInf(float64(a.Step), 0):
		return fmt.Errorf("%s.step: %v m; expected a length above 0", name, a.Step)
	case !(steps < greatestCount):
		return fmt.Errorf("%s.step: %v m from %v to %v m; expected fewer than %d steps", name, a.Step, a.From, a.To, greatestCount)
	}
	return nil
}
