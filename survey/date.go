package survey

import (
	"encoding/json"
	"fmt"
	"time"
)

// Date is a calendar day. The zero value means that no day was written down.
type Date struct{ day time.Time }

// ParseDate reads a day in the form 2026-05-16 (ISO 8601).
func ParseDate(text string) (Date, error) {
	day, err := time.Parse(time.DateOnly, text)
	if err != nil {
		return Date{}, fmt.Errorf("%q is no day; expected the form 2026-05-16", text)
	}
	return Date{day}, nil
}

// IsZero reports whether no day was written down.
func (d Date) IsZero() bool { return d.day.IsZero() }

// String writes the day as 2026-05-16, and nothing for the zero value.
func (d Date) String() string {
	if d.IsZero() {
		return ""
	}
	return d.day.Format(time.DateOnly)
}

// After reports whether d is later than other.
func (d Date) After(other Date) bool { return d.day.After(other.day) }

// AddMonths returns the day the given number of months later, the last of its
// month where that has no such day: a month after 31 January is the end of
// February.
func (d Date) AddMonths(months int) Date {
	later := d.day.AddDate(0, months, 0)
	if later.Day() != d.day.Day() {
		later = later.AddDate(0, 0, -later.Day())
	}
	return Date{later}
}

// Year returns the year of the day.
func (d Date) Year() int { return d.day.Year() }

// Month returns the month of the day, 1 to 12.
func (d Date) Month() int { return int(d.day.Month()) }

// MarshalJSON writes the day as a string.
func (d Date) MarshalJSON() ([]byte, error) { return json.Marshal(d.String()) }

// UnmarshalJSON reads a day; an empty string is no day.
func (d *Date) UnmarshalJSON(data []byte) error {
	var text string
	if err := json.Unmarshal(data, &text); err != nil {
		return fmt.Errorf("expected a day in the form 2026-05-16")
	}
	if text == "" {
		*d = Date{}
		return nil
	}
	parsed, err := ParseDate(text)
	if err != nil {
		return err
	}
	*d = parsed
	return nil
}
