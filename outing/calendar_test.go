package outing_test

import (
	"bytes"
	"strings"
	"testing"
	"time"

	"boughline/outing"

	ical "github.com/arran4/golang-ical"
	"pgregory.net/rapid"
)

// What is written is read back by another program's reader of RFC 5545, with
// text and times as they were.
func TestCalendarsAreReadElsewhere(t *testing.T) {
	rapid.Check(t, func(d *rapid.T) {
		text := rapid.StringOfN(rapid.RuneFrom([]rune("aé木;,\\:\n\"° ")), 0, 200, -1)
		e := outing.Entry{
			UID: "o1@boughline", Written: at(9, 0), Begin: at(17, 0), Length: 30 * time.Minute, Alarm: 15 * time.Minute,
			Title: "Take down " + text.Draw(d, "title"), Place: text.Draw(d, "place"), Text: text.Draw(d, "text"), Position: &[2]float64{52.731, -2.914},
		}
		data := outing.Calendar(e)
		for _, line := range strings.Split(string(data), "\r\n") {
			if len(line) > 75 || strings.ContainsAny(line, "\r\n") {
				d.Fatalf("the line %q is too long or broken", line)
			}
		}
		calendar, err := ical.ParseCalendar(bytes.NewReader(data))
		if err != nil || len(calendar.Events()) != 1 {
			d.Fatalf("%v\n%s", err, data)
		}
		event := calendar.Events()[0]
		for property, want := range map[ical.ComponentProperty]string{ical.ComponentPropertySummary: e.Title, ical.ComponentPropertyLocation: e.Place, ical.ComponentPropertyDescription: e.Text} {
			if got := event.GetProperty(property).Value; got != want {
				d.Errorf("%s: %q, want %q", property, got, want)
			}
		}
		begin, err := event.GetStartAt()
		if err != nil || !begin.Equal(e.Begin) {
			d.Errorf("begins %v, %v", begin, err)
		}
		alarms := event.Alarms()
		if len(alarms) != 1 || alarms[0].GetProperty(ical.ComponentPropertyTrigger).Value != "-PT15M" {
			d.Errorf("alarms %v", alarms)
		}
	})
}
