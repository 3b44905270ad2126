package wording

import (
	"time"

	"boughline/outing"
)

// alarmBefore is how long before take-down a calendar rings (house).
const alarmBefore = 30 * time.Minute

// Calendar is the entry for taking the swing down.
func Calendar(o *outing.Outing) []byte {
	c := o.Card
	entry := outing.Entry{
		UID: o.ID + "@boughline", Written: c.Issue.At, Begin: c.Until, Length: alarmBefore, Alarm: alarmBefore,
		Title: "Take it down: " + c.Hang, Place: Where(c), Text: Lapses(c),
	}
	if c.Place != nil {
		entry.Position = &[2]float64{c.Place.Latitude, c.Place.Longitude}
	}
	return outing.Calendar(entry)
}
