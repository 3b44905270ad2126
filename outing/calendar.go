package outing

import (
	"fmt"
	"strings"
	"time"
	"unicode/utf8"
)

// Entry is a calendar entry for taking a swing down.
type Entry struct {
	UID      string
	Written  time.Time
	Begin    time.Time
	Length   time.Duration
	Alarm    time.Duration // before Begin
	Title    string
	Place    string
	Text     string
	Position *[2]float64 // latitude and longitude
}

// Calendar writes one entry with an alarm as an iCalendar object (RFC 5545:
// VEVENT 3.6.1, VALARM 3.6.6, folding 3.1, text 3.3.11), times in UTC.
func Calendar(e Entry) []byte {
	var b strings.Builder
	for _, line := range []string{
		"BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//boughline//outing//EN", "BEGIN:VEVENT",
		"UID:" + escaped(e.UID), "DTSTAMP:" + utc(e.Written), "DTSTART:" + utc(e.Begin), "DTEND:" + utc(e.Begin.Add(e.Length)),
		"SUMMARY:" + escaped(e.Title), "LOCATION:" + escaped(e.Place), "DESCRIPTION:" + escaped(e.Text), geo(e.Position),
		"BEGIN:VALARM", "ACTION:DISPLAY", "TRIGGER:-" + duration(e.Alarm), "DESCRIPTION:" + escaped(e.Title), "END:VALARM",
		"END:VEVENT", "END:VCALENDAR",
	} {
		if line != "" {
			b.WriteString(folded(line))
		}
	}
	return []byte(b.String())
}

func utc(t time.Time) string { return t.UTC().Format("20060102T150405Z") }

// duration writes whole minutes (RFC 5545, 3.3.6).
func duration(d time.Duration) string { return fmt.Sprintf("PT%dM", int(d.Minutes())) }

// geo is the position (RFC 5545, 3.8.1.6), nothing where none is known.
func geo(at *[2]float64) string {
	if at == nil {
		return ""
	}
	return fmt.Sprintf("GEO:%.6f;%.6f", at[0], at[1])
}

// escaped is text as a property holds it.
func escaped(text string) string {
	return strings.NewReplacer(`\`, `\\`, ";", `\;`, ",", `\,`, "\r\n", `\n`, "\n", `\n`, "\r", `\n`).Replace(text)
}

// folded breaks a line into parts of at most 75 octets, and none within a
// character.
func folded(line string) string {
	const most = 75
	var b strings.Builder
	left := most
	for _, c := range strings.ToValidUTF8(line, "?") {
		if size := utf8.RuneLen(c); size > left {
			b.WriteString("\r\n ")
			left = most - 1
		}
		left -= utf8.RuneLen(c)
		b.WriteRune(c)
	}
	b.WriteString("\r\n")
	return b.String()
}
