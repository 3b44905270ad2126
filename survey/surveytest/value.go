package surveytest

import (
	"fmt"

	"boughline/quantity"
	"boughline/survey"

	"pgregory.net/rapid"
)

// maybe draws a value, or nil for what was not observed.
func maybe[T any](t *rapid.T, label string, draw func(*rapid.T) T) *T {
	if !rapid.Bool().Draw(t, label+" is known") {
		return nil
	}
	value := draw(t)
	return &value
}

func yesOrNo(t *rapid.T) bool { return rapid.Bool().Draw(t, "yes") }

func text() *rapid.Generator[string] {
	return rapid.StringMatching(`[A-Za-zäöü"\\<&][a-zé '/-]{0,11}`)
}

func note(t *rapid.T, label string) string {
	if !yesOrNo(t) {
		return ""
	}
	return text().Draw(t, label)
}

func days() *rapid.Generator[survey.Date] {
	return rapid.Custom(func(t *rapid.T) survey.Date {
		year, month, day := rapid.IntRange(1990, 2060), rapid.IntRange(1, 12), rapid.IntRange(1, 28)
		d, err := survey.ParseDate(fmt.Sprintf("%04d-%02d-%02d", year.Draw(t, "year"), month.Draw(t, "month"), day.Draw(t, "day")))
		if err != nil {
			t.Fatal(err)
		}
		return d
	})
}

// measured draws a value between two bounds in the base unit; a stated
// standard deviation is at most a fifth of it.
func measured[Q quantity.Kind](low, high float64) func(*rapid.T) quantity.Measured[Q] {
	return func(t *rapid.T) quantity.Measured[Q] {
		m := quantity.Measured[Q]{Value: Q(rapid.Float64Range(low, high).Draw(t, "value"))}
		m.How = rapid.SampledFrom(append(quantity.Hows(), quantity.NotStated)).Draw(t, "how")
		if m.SdStated = yesOrNo(t); m.SdStated {
			m.Sd = max(m.Value, -m.Value) * Q(rapid.Float64Range(0, 0.2).Draw(t, "relative sd"))
		}
		return m
	}
}

func length(low, high float64) func(*rapid.T) survey.MeasuredLength {
	return measured[quantity.Length](low, high)
}

func mass(low, high float64) func(*rapid.T) survey.MeasuredMass {
	return measured[quantity.Mass](low, high)
}

func speed(t *rapid.T) survey.MeasuredSpeed { return measured[quantity.Speed](5, 45)(t) }

// angle takes its bounds in degrees.
func angle(low, high float64) func(*rapid.T) survey.MeasuredAngle {
	d := float64(quantity.Degree)
	return measured[quantity.Angle](low*d, high*d)
}

func chosen(m float64) survey.ChosenLength {
	return survey.ChosenLength{Value: quantity.Length(m)}
}

func chosenAngle(low, high float64) func(*rapid.T) survey.ChosenAngle {
	return func(t *rapid.T) survey.ChosenAngle {
		d := float64(quantity.Degree)
		return survey.ChosenAngle{Value: quantity.Angle(rapid.Float64Range(low*d, high*d).Draw(t, "angle"))}
	}
}
