// Package calendar writes the days of a site for a calendar (iCalendar, RFC
// 5545).
package calendar

import (
	"crypto/sha256"
	"encoding/hex"
	"io"
	"strings"
	"time"
	"unicode"

	"boughline/exchange"

	ics "github.com/arran4/golang-ical"
)

// Write writes each date as an event of a whole day that takes up no time. site
// tells sites apart in a calendar that takes several; name is shown; at is
// when it is written.
func Write(w io.Writer, site, name string, dates []exchange.Date, at time.Time) error {
	cal := ics.NewCalendar()
	cal.SetProductId("-//boughline//dates of a site//EN")
	cal.SetMethod(ics.MethodPublish)
	cal.SetXWRCalName(clean(name))
	for _, d := range dates {
		e := cal.AddEvent(uid(site, d.ID))
		e.SetDtStampTime(at)
		day, err := time.Parse(time.DateOnly, d.Day.String())
		if err != nil {
			return err
		}
		e.SetAllDayStartAt(day)
		e.SetAllDayEndAt(day.AddDate(0, 0, 1)) // not included (section 3.6.1)
		e.SetSummary(clean(d.Title))
		e.SetDescription(clean(d.Text))
		e.SetProperty(ics.ComponentPropertyCategories, d.Kind)
		e.SetTimeTransparency(ics.TransparencyTransparent)
	}
	return cal.SerializeTo(w, ics.WithNewLineWindows)
}

// uid is the same each time for one date of one site (section 3.8.4.7).
func uid(site, id string) string {
	sum := sha256.Sum256([]byte(site + "\x00" + id))
	return hex.EncodeToString(sum[:16]) + "@boughline.invalid"
}

// clean leaves out control characters, which a text may not hold (section 3.1).
func clean(text string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsControl(r) {
			return ' '
		}
		return r
	}, text)
}
