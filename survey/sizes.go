package survey

import (
	"fmt"
	"reflect"

	"boughline/quantity"
)

// checkSizes compares every quantity and day of the survey with its range.
func (c *checker) checkSizes() {
	walk(reflect.ValueOf(*c.survey), "", func(at path, field fieldOf, value reflect.Value) bool {
		if c.isLost(at) {
			return false
		}
		switch q := value.Interface().(type) {
		case MeasuredLength:
			checkMeasured(c, at, q, lengths[field.key])
		case MeasuredAngle:
			checkMeasured(c, at, q, angles[field.key])
		case MeasuredMass:
			checkMeasured(c, at, q, masses[field.key])
		case MeasuredSpeed:
			checkMeasured(c, at, q, speeds[field.key])
		case ChosenLength:
			checkRange(c, at, q.Value, lengths[field.key])
		case ChosenAngle:
			checkRange(c, at, q.Value, angles[field.key])
		case ChosenForce:
			checkRange(c, at, q.Value, forces[field.key])
		case Date:
			c.checkDay(at, q)
		default:
			return true
		}
		return false
	})
}

// checkMeasured refuses a value out of its range, and one less certain than it
// is large, which is no measurement. Places and directions may be near 0.
func checkMeasured[Q quantity.Kind](c *checker, at path, m quantity.Measured[Q], s span[Q]) {
	if !checkRange(c, at, m.Value, s) {
		return
	}
	if s.low > 0 && m.Sd > m.Value {
		c.report(Problem{
			Code: CodeUncertain, Path: string(at),
			Fault:    "the standard deviation is larger than the value",
			Expected: "a standard deviation below " + quantity.Format(m.Value),
			Do:       "correct it, or leave the field out if nothing was measured",
		})
	}
}

// checkRange reports whether q lies in its range. What does not is lost to the
// rules that come after.
func checkRange[Q quantity.Kind](c *checker, at path, q Q, s span[Q]) bool {
	if s.contains(q) {
		return true
	}
	fault := "it is too large to be meant"
	switch {
	case q < 0 && s.low >= 0:
		fault = "it is negative"
	case q < s.low:
		fault = "it is too small to be meant"
	}
	c.lost[at] = true
	c.report(Problem{
		Code: CodeOutOfRange, Path: string(at), Fault: fault,
		Expected: fmt.Sprintf("%s to %s", quantity.Format(s.low), quantity.Format(s.high)),
		Do:       "check the number and its unit" + otherUnit(q, s),
	})
	return false
}

// otherUnit looks for a unit in which the same number would be in range.
func otherUnit[Q quantity.Kind](q Q, s span[Q]) string {
	units := q.Units()
	number := float64(q) / units[0].Factor
	for _, u := range units[1:] {
		if s.contains(Q(number * u.Factor)) {
			return fmt.Sprintf("; perhaps %.6g %s is meant", number, u.Symbol)
		}
	}
	return ""
}
