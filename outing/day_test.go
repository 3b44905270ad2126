package outing_test

import (
	"bytes"
	"errors"
	"strings"
	"testing"
	"time"

	"boughline/outing"
	"boughline/quantity"
	"boughline/survey"
)

// diary writes one day down.
type diary struct {
	t *testing.T
	s outing.State
}

func begin(t *testing.T) *diary {
	t.Helper()
	s, err := outing.Begin(plain)
	if err != nil {
		t.Fatal(err)
	}
	return &diary{t, s}
}

func (d *diary) add(e outing.Event) error {
	after, err := d.s.Apply(e, plain)
	d.s = after
	return err
}

func (d *diary) must(events ...outing.Event) *diary {
	d.t.Helper()
	for _, e := range events {
		if err := d.add(e); err != nil {
			d.t.Fatal(err)
		}
	}
	return d
}

func (d *diary) refuses(e outing.Event, want string) *diary {
	d.t.Helper()
	var r *outing.Refused
	if err := d.add(e); !errors.As(err, &r) || !strings.Contains(err.Error(), want) || r.Do == "" {
		d.t.Errorf("%s: %v, want %q", e.Kind, err, want)
	}
	return d
}

func ev(kind outing.Kind, hour, minute int) outing.Event {
	return outing.Event{Kind: kind, At: at(hour, minute)}
}

func stop(why outing.Reason, hour, minute int) outing.Event {
	e := ev(outing.Stopped, hour, minute)
	e.Reason = why
	return e
}

func passed(hour, minute int) outing.Event {
	e := ev(outing.LoadTest, hour, minute)
	e.Test = &survey.LoadTest{Set: &survey.MeasuredLength{}, Steps: []survey.LoadStep{{Mass: &survey.MeasuredMass{Value: 200, How: quantity.Weighed}}}}
	return e
}

func turn(riders int, kg quantity.Mass, hour, minute int) outing.Event {
	e := ev(outing.Rode, hour, minute)
	e.Riders, e.AtMost = riders, kg
	return e
}

func (d *diary) up() *diary {
	d.t.Helper()
	for _, c := range outing.PutUp() {
		e := ev(outing.Checked, 10, 10)
		e.Check = c
		d.must(e)
	}
	return d
}

func (d *diary) riding() *diary {
	d.t.Helper()
	return d.up().must(passed(10, 20), ev(outing.LookedOver, 10, 30), ev(outing.Started, 10, 40))
}

func down(hour, minute int) outing.Event {
	e := ev(outing.TakenDown, hour, minute)
	e.Bark, e.GearBack = outing.BarkAsBefore, true
	return e
}

func TestADay(t *testing.T) {
	d := begin(t).riding().must(turn(1, 20, 10, 41), turn(2, 40, 10, 42), turn(1, 20, 10, 43), stop(outing.Break, 11, 10))
	turns, riders := d.s.Riders()
	if turns != 3 || riders != 4 || d.s.InUseFor(at(12, 0)) != 30*time.Minute {
		t.Errorf("%d turns, %d riders, %v", turns, riders, d.s.InUseFor(at(12, 0)))
	}
	// 2 pi sqrt(3.4 / 9.80665) = 3.6997 s; 1800 s hold 486.5 periods.
	if n := d.s.Swings(at(12, 0)); n != 487 {
		t.Errorf("%d swings", n)
	}
	d.refuses(ev(outing.Started, 11, 15), "look it over first").must(ev(outing.LookedOver, 11, 15), ev(outing.Started, 11, 16))
	if d.s.Late(at(16, 59)) || !d.s.Late(at(17, 0)) {
		t.Error("late at the wrong time")
	}
	d.refuses(turn(1, 20, 17, 0), "the card lapsed at 17:00").must(stop(outing.End, 17, 1)).refuses(outing.Event{Kind: outing.TakenDown, At: at(17, 5), Bark: outing.BarkRubbed}, "gear is back")
	if d.must(down(17, 10)); d.s.IsUp() || d.s.Late(at(23, 0)) {
		t.Error("still up")
	}
	d.refuses(ev(outing.LookedOver, 17, 11), "the outing is over")
}

func TestEventsOutOfOrderAreRefused(t *testing.T) {
	begin(t).refuses(ev(outing.Started, 10, 1), "look it over first").refuses(ev(outing.LookedOver, 10, 1), "load test of today is not passed").
		refuses(passed(10, 1), "once the swing is up").refuses(turn(1, 20, 10, 1), "nobody rides").refuses(stop(outing.Rain, 10, 1), "nothing is up").
		refuses(outing.Event{Kind: outing.Checked, At: at(10, 1), Check: "ground"}, `confirm "people" first`).
		refuses(ev(outing.Note, 9, 59), "before 10:00").refuses(ev("party", 10, 1), "no kind of event").refuses(outing.Event{Kind: outing.Correction, At: at(10, 1), Corrects: 1}, "corrects is 1")
	begin(t).up().refuses(ev(outing.LookedOver, 10, 20), "load test of today is not passed").must(passed(10, 30)).refuses(ev(outing.Started, 10, 31), "look it over")
	begin(t).riding().refuses(turn(3, 20, 10, 50), "allows 1 to 2").refuses(turn(1, 40.1, 10, 50), "up to 40.0 kg").refuses(ev(outing.LookedOver, 10, 50), "stop first").refuses(passed(10, 50), "stop first")
}

func TestALoadTestThatFails(t *testing.T) {
	failed := passed(10, 20)
	failed.Test.Signs = []string{survey.TestCrack}
	d := begin(t).up().must(failed).refuses(passed(10, 30), "riding is over for today").refuses(ev(outing.LookedOver, 10, 30), "riding is over")
	if d.s.Over != outing.Failing || !d.s.IsUp() {
		t.Errorf("%+v", d.s)
	}
	unread := passed(10, 20)
	unread.Test.Set = nil
	begin(t).up().must(unread).refuses(ev(outing.LookedOver, 10, 30), "not passed").must(passed(10, 31), ev(outing.LookedOver, 10, 32))
}

func TestSoundAndMovementEndTheDay(t *testing.T) {
	for _, why := range []outing.Reason{outing.Sound, outing.Movement, outing.End} {
		d := begin(t).riding().must(stop(why, 11, 0)).refuses(ev(outing.LookedOver, 11, 5), "riding is over for today")
		correction := outing.Event{Kind: outing.Correction, At: at(11, 6), Corrects: len(d.s.Events), Text: "a mistake"}
		d.must(correction).refuses(ev(outing.LookedOver, 11, 7), "riding is over").must(down(11, 8))
	}
}

func TestAStopWithoutAReasonWaitsForIt(t *testing.T) {
	d := begin(t).riding().must(stop("", 11, 0)).refuses(ev(outing.LookedOver, 11, 1), "say why first")
	why := ev(outing.Why, 11, 2)
	why.Reason = outing.Hurt
	d.must(why, ev(outing.LookedOver, 11, 3)).refuses(ev(outing.Started, 11, 4), "write down what happened")
	told := ev(outing.Incident, 11, 5)
	told.Text = "grazed knee; washed and covered"
	d.must(told).refuses(ev(outing.Started, 11, 6), "look it over").must(ev(outing.LookedOver, 11, 7), ev(outing.Started, 11, 8))
}

func TestAGustStopsAndOnlyTheTreesLiftIt(t *testing.T) {
	force, reading, little := 5, quantity.Speed(18.1), quantity.Speed(3)
	for _, w := range []outing.Event{{Beaufort: &force}, {Gust: &reading}} {
		w.Kind, w.At = outing.Wind, at(11, 0)
		d := begin(t).riding().must(w)
		if d.s.Stage != outing.AtRest {
			t.Fatalf("stage %s", d.s.Stage)
		}
		calm := 4
		d.must(ev(outing.LookedOver, 11, 10)).refuses(ev(outing.Started, 11, 11), "above what the card allows").
			must(outing.Event{Kind: outing.Wind, At: at(11, 12), Gust: &little}).refuses(ev(outing.Started, 11, 13), "above what the card allows").
			must(outing.Event{Kind: outing.Wind, At: at(11, 14), Beaufort: &calm}, ev(outing.Started, 11, 15))
	}
}

// The 30-30 rule as the US National Weather Service gave it (from memory):
// leave at 30 s from flash to bang, come back 30 minutes after the last thunder.
func TestTheRuleOfThirty(t *testing.T) {
	bang := func(seconds quantity.Time, hour, minute int) outing.Event {
		return outing.Event{Kind: outing.Thunder, At: at(hour, minute), Count: &seconds}
	}
	d := begin(t).riding().must(bang(31, 11, 0))
	if d.s.Stage != outing.InUse {
		t.Error("stopped at 31 s")
	}
	d.must(bang(30, 11, 5)).refuses(ev(outing.LookedOver, 11, 34), "until 11:35").must(bang(60, 11, 30)).refuses(ev(outing.LookedOver, 11, 59), "until 12:00").
		must(ev(outing.LookedOver, 12, 0), ev(outing.Started, 12, 1), outing.Event{Kind: outing.Thunder, At: at(12, 2)})
	if d.s.Stage != outing.AtRest || !d.s.Waits(at(12, 3)).Equal(at(12, 32)) {
		t.Errorf("thunder that nobody counted: %s, waits %v", d.s.Stage, d.s.Waits(at(12, 3)))
	}
}

func TestCorrections(t *testing.T) {
	d := begin(t).riding().must(turn(2, 40, 10, 41), turn(1, 20, 10, 42))
	n := len(d.s.Events)
	fix := outing.Event{Kind: outing.Correction, At: at(10, 43), Corrects: n - 1, Riders: 1, Text: "one only"}
	if d.must(fix); d.s.Turns[0].Riders != 1 || d.s.Turns[0].Turns != 1 || d.s.Stage != outing.InUse {
		t.Errorf("%+v", d.s.Turns)
	}
	d.refuses(fix, "corrected already")
	look := outing.Event{Kind: outing.Correction, At: at(10, 44), Corrects: 9, Text: "the seat was not looked at"}
	if d.must(look); d.s.Stage != outing.AtRest {
		t.Errorf("stage %s after the look-over was taken back", d.s.Stage)
	}
	check := outing.Event{Kind: outing.Correction, At: at(10, 45), Corrects: 3, Text: "no sleeve"}
	if d.must(check); d.s.Stage != outing.Issued || d.s.Confirmed != 2 || !d.s.IsUp() {
		t.Errorf("stage %s, %d checks", d.s.Stage, d.s.Confirmed)
	}
	d.must(down(10, 50))
	if d.must(outing.Event{Kind: outing.Correction, At: at(10, 51), Corrects: len(d.s.Events), Text: "it still hangs"}); !d.s.IsUp() {
		t.Error("a take-down that did not happen stands")
	}
}

// What a file says of its card is not looked at.
func TestAFileCannotRaiseALimit(t *testing.T) {
	k := base(t)
	o, err := outing.New("o1", site(t), k, oak())
	if err != nil {
		t.Fatal(err)
	}
	o, err = o.Append(outing.Event{Kind: outing.Checked, At: at(10, 5), Check: "people"})
	if err != nil {
		t.Fatal(err)
	}
	var file bytes.Buffer
	if err := outing.Write(&file, o); err != nil {
		t.Fatal(err)
	}
	same, altered, err := outing.Read(file.Bytes(), k)
	if err != nil || altered || same.Confirmed != 1 {
		t.Fatalf("%v, altered %v", err, altered)
	}
	i := strings.Index(file.String(), `"card"`)
	text := file.String()[:i] + strings.NewReplacer(`"each_kg": `, `"each_kg": 9`, `"hang-within-limits"`, `"hang"`, `"stop_beaufort": `, `"stop_beaufort": 1`).Replace(file.String()[i:])
	raised, altered, err := outing.Read([]byte(text), k)
	if err != nil || !altered || raised.Card.Limits.MassEach != o.Card.Limits.MassEach || raised.Card.StopBeaufort != o.Card.StopBeaufort {
		t.Errorf("%v, altered %v, %+v", err, altered, raised)
	}
	for name, c := range map[string][2]string{
		"an event out of order": {`"kind": "check"`, `"kind": "started"`},
		"a later program":       {`"boughline_outing": 1`, `"boughline_outing": 2`},
		"a longer day":          {`"until": "2026-05-16`, `"until": "2026-05-17`},
		"nobody signs":          {`"signed": "Ann Rigger"`, `"signed": ""`},
	} {
		changed := strings.Replace(file.String(), c[0], c[1], 1)
		if changed == file.String() {
			t.Fatalf("%s: the file does not hold %s", name, c[0])
		}
		if _, _, err := outing.Read([]byte(changed), k); err == nil {
			t.Errorf("%s is taken", name)
		}
	}
}

// The real load test of the day: less mass than planned lowers the card.
func TestALighterLoadTestLowersTheCard(t *testing.T) {
	k := base(t)
	o, err := outing.New("o1", site(t), k, oak())
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range outing.PutUp() {
		if o, err = o.Append(outing.Event{Kind: outing.Checked, At: at(10, 5), Check: c}); err != nil {
			t.Fatal(err)
		}
	}
	before := o.Card.Limits.MassEach
	test := &survey.LoadTest{Set: &survey.MeasuredLength{How: quantity.Taped}, Steps: []survey.LoadStep{{Mass: &survey.MeasuredMass{Value: 150, How: quantity.Weighed}, Sag: &survey.MeasuredLength{Value: 0.003, How: quantity.Taped}}}}
	lower, err := o.Append(outing.Event{Kind: outing.LoadTest, At: at(10, 20), Test: test})
	if err != nil || lower.Stage != outing.Tested || !(lower.Card.Limits.MassEach < before) {
		t.Fatalf("%v: %s, %v kg before, %v kg after", err, lower.Stage, before, lower.Card.Limits.MassEach)
	}
	test.Signs = []string{survey.TestSound}
	barred, err := o.Append(outing.Event{Kind: outing.LoadTest, At: at(10, 20), Test: test})
	if err != nil || barred.Over != outing.Failing {
		t.Errorf("%v: %s", err, barred.Over)
	}
}
