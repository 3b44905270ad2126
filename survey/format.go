package survey

import (
	"errors"
	"fmt"

	"boughline/quantity"
)

// format is a form of text that a JSON Schema cannot describe in full.
type format struct {
	code    string
	example string
	check   func(text string) error
}

// formats are the forms of text in schema.json, by their names there.
var formats = map[string]format{
	"measured-length": {CodeBadQuantity, "72 cm", measured[quantity.Length]},
	"measured-angle":  {CodeBadQuantity, "35 deg", measured[quantity.Angle]},
	"measured-mass":   {CodeBadQuantity, "32 kg", measured[quantity.Mass]},
	"measured-speed":  {CodeBadQuantity, "18 m/s", measured[quantity.Speed]},
	"chosen-length":   {CodeBadQuantity, "4.2 m", chosen[quantity.Length]},
	"chosen-angle":    {CodeBadQuantity, "60 deg", chosen[quantity.Angle]},
	"chosen-force":    {CodeBadQuantity, "22 kN", chosen[quantity.Force]},
	"date":            {CodeBadDate, "2026-05-16", day},
}

func measured[Q quantity.Kind](text string) error {
	_, err := quantity.Parse[Q](text)
	return err
}

func chosen[Q quantity.Kind](text string) error {
	_, err := quantity.ParseChosen[Q](text)
	return err
}

func day(text string) error {
	if _, err := ParseDate(text); err != nil {
		return &quantity.TextError{Reason: "it is no day of the calendar", Expected: "a day in the form 2026-05-16"}
	}
	return nil
}

// expected says in words what the form of text is.
func (f format) expected() string {
	var t *quantity.TextError
	if errors.As(f.check(""), &t) {
		return "text: " + t.Expected
	}
	return "text"
}

func (f format) do() string { return fmt.Sprintf("write it as in %q", f.example) }
