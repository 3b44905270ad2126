package calendar_test

import (
	"bytes"
	"strings"
	"testing"
	"time"

	"boughline/exchange"
	"boughline/exchange/calendar"
	"boughline/knowledge"
	"boughline/survey"
	"boughline/survey/surveytest"

	ical "github.com/emersion/go-ical"
	"pgregory.net/rapid"
)

var noon = time.Date(2026, 5, 16, 12, 0, 0, 0, time.UTC)

func day(t testing.TB, text string) survey.Date {
	t.Helper()
	d, err := survey.ParseDate(text)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// events reads a calendar with another library than the one that wrote it.
func events(t interface{ Fatal(...any) }, data []byte) []ical.Event {
	cal, err := ical.NewDecoder(bytes.NewReader(data)).Decode()
	if err != nil {
		t.Fatal(err)
	}
	return cal.Events()
}

func tables(t testing.TB) *knowledge.Base {
	t.Helper()
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	return k
}

func TestTheDaysOfATree(t *testing.T) {
	s := &survey.Survey{Site: "Orchard; \"bank\", upper\nhalf", Day: day(t, "2026-05-16"), Trees: []survey.Tree{{
		ID: "T1", Name: "old oak",
		Looks: []survey.Look{
			{Zone: "stem", State: survey.LookDone, On: day(t, "2026-04-30")}, {Zone: "crown", State: survey.LookDone, On: day(t, "2026-04-30")},
			{Zone: "crown", State: survey.LookDone, On: day(t, "2025-07-01")}, {Zone: "root_plate", State: survey.LookNotDone, On: day(t, "2026-05-01")},
			{Zone: "base", State: survey.LookDone},
		},
		Findings:  []survey.Finding{{ID: "F1", Sign: "crown-06", Closer: &survey.CloserLook{On: day(t, "2026-05-02"), Result: survey.CloserClear}}},
		LoadTests: []survey.LoadTest{{Hang: "H1", On: day(t, "2026-05-16")}},
	}}}
	months := int(tables(t).Parameter(knowledge.DatedLookMonths).Value)
	var b bytes.Buffer
	if err := calendar.Write(&b, "orchard", s.Site, exchange.Dates(s, tables(t)), noon); err != nil {
		t.Fatal(err)
	}
	want := map[string]string{
		"2026-05-16 Examination: Orchard; \"bank\", upper half":                 "The site is judged for this day.",
		"2026-04-30 Looked at: old oak":                                         "Zones: crown, stem.",
		"2025-07-01 Looked at: old oak":                                         "Zones: crown.",
		"2026-05-02 Closer look: old oak":                                       "Finding F1 (crown-06): clear.",
		"2026-05-16 Load test: old oak":                                         "Hangs: H1.",
		day(t, "2026-04-30").AddMonths(months).String() + " Look anew: old oak": "Zones: crown, stem.",
	}
	list := events(t, b.Bytes())
	if len(list) != len(want) {
		t.Errorf("%d events of %d:\n%s", len(list), len(want), b.String())
	}
	for _, e := range list {
		start, err := e.DateTimeStart(time.UTC)
		if err != nil {
			t.Fatal(err)
		}
		end, err := e.DateTimeEnd(time.UTC)
		if err != nil || end.Sub(start) != 24*time.Hour {
			t.Errorf("from %s to %s, %v", start, end, err)
		}
		title, _ := e.Props.Text(ical.PropSummary)
		text, _ := e.Props.Text(ical.PropDescription)
		key := start.Format(time.DateOnly) + " " + title
		if said, ok := want[key]; !ok || !strings.HasSuffix(text, said) {
			t.Errorf("%q: %q; expected %q", key, text, said)
		}
	}
}

// TestEveryLineIsShort holds the file to section 3.1 of RFC 5545: lines end in
// CR LF and have 75 octets at most; a UID stands once.
func TestEveryLineIsShort(t *testing.T) {
	k := tables(t)
	rapid.Check(t, func(rt *rapid.T) {
		s := surveytest.Site().Draw(rt, "site")
		dates := exchange.Dates(s, k)
		var b bytes.Buffer
		if err := calendar.Write(&b, "x", s.Site, dates, noon); err != nil {
			rt.Fatal(err)
		}
		for _, line := range strings.SplitAfter(b.String(), "\r\n") {
			if len(line) > 77 || strings.Contains(strings.TrimSuffix(line, "\r\n"), "\n") {
				rt.Fatalf("line %q", line)
			}
		}
		seen := map[string]bool{}
		list := events(rt, b.Bytes())
		for _, e := range list {
			id, _ := e.Props.Text(ical.PropUID)
			if seen[id] {
				rt.Fatalf("%s stands twice", id)
			}
			seen[id] = true
		}
		if len(list) != len(dates) {
			rt.Fatalf("%d events of %d", len(list), len(dates))
		}
	})
}
