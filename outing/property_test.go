package outing_test

import (
	"encoding/json"
	"reflect"
	"slices"
	"testing"
	"time"

	"boughline/assess"
	"boughline/outing"
	"boughline/quantity"
	"boughline/survey"

	"pgregory.net/rapid"
)

// plain is a judge without mechanics: a test up to 200 kg with its set read is
// passed, one with a sign failed.
func plain(tests []survey.LoadTest) (outing.Card, outing.Verdict, error) {
	c := outing.Card{
		Issue: oak(), StopBeaufort: 5, Leave: 30, Return: 1800,
		Limits: assess.Limits{Use: assess.Use{Riders: 2, Line: 3.4, Gust: 18}, MassEach: 40},
	}
	if len(tests) == 0 {
		return c, outing.NoTest, nil
	}
	last := tests[len(tests)-1]
	switch {
	case len(last.Signs) > 0:
		return outing.Card{}, outing.Failed, &outing.NoCard{Cause: outing.NotRideable, Outcome: assess.Leave}
	case last.Set == nil:
		return outing.Card{}, outing.NotRead, &outing.NoCard{Cause: outing.NotRideable, Outcome: assess.Unfinished}
	}
	return c, outing.Passed, nil
}

func someTest(d *rapid.T) *survey.LoadTest {
	test := &survey.LoadTest{Steps: []survey.LoadStep{{Mass: &survey.MeasuredMass{Value: 200, How: quantity.Weighed}}}}
	if rapid.IntRange(0, 9).Draw(d, "set read") > 0 {
		test.Set = &survey.MeasuredLength{}
	}
	if rapid.IntRange(0, 40).Draw(d, "failed") == 0 {
		test.Signs = []string{survey.TestSound}
	}
	return test
}

// someEvent is any event, now and then with nonsense in it. likely is the one
// that goes on, so that random days come as far as riding.
func someEvent(d *rapid.T, s *outing.State, now time.Time) outing.Event {
	e := outing.Event{At: now, Kind: rapid.SampledFrom(append(outing.Kinds(), "nonsense")).Draw(d, "kind")}
	if rapid.IntRange(0, 2).Draw(d, "likely") > 0 {
		e.Kind = likely(s)
	}
	e.Check = rapid.SampledFrom(append(outing.PutUp(), "", "x")).Draw(d, "check")
	if e.Kind == likely(s) && s.Confirmed < len(outing.PutUp()) {
		e.Check = outing.PutUp()[s.Confirmed]
	}
	if e.Kind == outing.LoadTest {
		e.Test = someTest(d)
	}
	e.Riders, e.AtMost = rapid.IntRange(-1, 3).Draw(d, "riders"), quantity.Mass(rapid.Float64Range(-1, 60).Draw(d, "mass"))
	e.Reason = rapid.SampledFrom(append(outing.Reasons(), "", "", "x")).Draw(d, "reason")
	if rapid.Bool().Draw(d, "by signs") {
		e.Beaufort = new(int)
		*e.Beaufort = rapid.IntRange(0, 7).Draw(d, "beaufort")
	} else {
		e.Gust = new(quantity.Speed)
		*e.Gust = quantity.Speed(rapid.Float64Range(0, 30).Draw(d, "gust"))
	}
	if rapid.Bool().Draw(d, "counted") {
		e.Count = new(quantity.Time)
		*e.Count = quantity.Time(rapid.Float64Range(0, 90).Draw(d, "seconds"))
	}
	e.Text = rapid.SampledFrom([]string{"", "what was done"}).Draw(d, "text")
	e.Bark = rapid.SampledFrom(append(outing.Barks(), "")).Draw(d, "bark")
	e.GearBack = rapid.Bool().Draw(d, "gear")
	e.Corrects = rapid.IntRange(-1, len(s.Events)+1).Draw(d, "corrects")
	return e
}

func likely(s *outing.State) outing.Kind {
	switch s.Stage {
	case outing.Issued:
		return outing.Checked
	case outing.Up:
		return outing.LoadTest
	case outing.Ready:
		return outing.Started
	case outing.InUse:
		return outing.Rode
	}
	return outing.LookedOver
}

// mayRide says by the list of events alone, read backwards, whether somebody
// may be riding: the last start was never broken off, a look-over lies between it
// and the last break, a passed test before that, and every check before the test.
// It knows nothing of stages.
func mayRide(events []outing.Event) (bool, string) {
	i := len(events) - 1
	for ; i >= 0 && events[i].Kind != outing.Started; i-- {
		if breaks(events, i) {
			return false, "broken off since the start"
		}
	}
	if i < 0 {
		return false, "never started"
	}
	for i--; i >= 0 && events[i].Kind != outing.LookedOver; i-- {
		if breaks(events, i) || events[i].Kind == outing.LoadTest {
			return false, "not looked over since the last break"
		}
	}
	for i--; i >= 0 && events[i].Kind != outing.LoadTest; i-- {
	}
	if i < 0 || events[i].Test.Set == nil || len(events[i].Test.Signs) > 0 {
		return false, "no passed load test"
	}
	confirmed := 0
	for _, e := range events[:i] {
		switch {
		case e.Kind == outing.Checked && confirmed < len(outing.PutUp()) && e.Check == outing.PutUp()[confirmed]:
			confirmed++
		case e.Kind == outing.Correction && events[e.Corrects-1].Kind == outing.Checked:
			confirmed = min(confirmed, slices.Index(outing.PutUp(), events[e.Corrects-1].Check))
		}
	}
	return confirmed == len(outing.PutUp()), "not put up"
}

func breaks(events []outing.Event, i int) bool {
	switch e := events[i]; e.Kind {
	case outing.Stopped, outing.Incident, outing.TakenDown:
		return true
	case outing.Wind:
		return e.Beaufort != nil && *e.Beaufort >= 5 || e.Gust != nil && *e.Gust > 18
	case outing.Thunder:
		return e.Count == nil || *e.Count <= 30
	case outing.Correction:
		k := events[e.Corrects-1].Kind
		return k == outing.LookedOver || k == outing.Checked
	}
	return false
}

// However a day goes, nobody rides before put-up, a passed load test and a
// look-over since the last break; a refused event changes nothing; replaying the
// list gives the same state.
func TestNobodyRidesTooEarly(t *testing.T) {
	reached := 0
	rapid.Check(t, func(d *rapid.T) {
		s, err := outing.Begin(plain)
		if err != nil {
			d.Fatal(err)
		}
		now := oak().At
		for range 100 {
			now = now.Add(time.Duration(rapid.IntRange(-20, 200).Draw(d, "seconds")) * time.Second)
			before := s
			after, err := s.Apply(someEvent(d, &s, now), plain)
			if err != nil && !reflect.DeepEqual(after, before) {
				d.Fatalf("refused with %v, and yet the state changed", err)
			}
			if err == nil && len(after.Events) != len(before.Events)+1 {
				d.Fatal("an event was lost")
			}
			s = after
			if s.Stage != outing.InUse {
				continue
			}
			reached++
			if ok, why := mayRide(s.Events); !ok || s.Over != "" || s.Unsaid {
				d.Fatalf("in use, but %s; over %q", why, s.Over)
			}
		}
		again, err := outing.Replay(throughJSON(d, s.Events), plain)
		if err != nil {
			d.Fatal(err)
		}
		if a, b := asText(d, again), asText(d, s); a != b {
			d.Fatalf("replayed\n%s\nwas\n%s", a, b)
		}
	})
	if reached == 0 {
		t.Error("no random day came as far as riding")
	}
}

// throughJSON is the list as a file or a store gives it back.
func throughJSON(d *rapid.T, events []outing.Event) (again []outing.Event) {
	data, err := json.Marshal(events)
	if err == nil {
		err = json.Unmarshal(data, &again)
	}
	if err != nil {
		d.Fatal(err)
	}
	return again
}

func asText(d *rapid.T, s outing.State) string {
	data, err := json.Marshal(s)
	if err != nil {
		d.Fatal(err)
	}
	return string(data)
}
