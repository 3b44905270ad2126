package sheettest

import (
	"bytes"
	"sync"
	"testing"
	"time"

	"boughline/demo"
	"boughline/knowledge"
	"boughline/outing"
	"boughline/quantity"
	"boughline/register"
	"boughline/survey"
)

// Register returns the register of the demo.
func Register(t testing.TB) *register.Register {
	t.Helper()
	r, problems, err := register.Read(bytes.NewReader(demo.Register()))
	if err != nil || len(problems) > 0 {
		t.Fatal(err, problems)
	}
	return r
}

// Outing returns an invented day of the demo's oak swing, with something of
// every kind written down.
func Outing(t testing.TB) *outing.Outing {
	t.Helper()
	o, err := day()
	if err != nil {
		t.Fatal(err)
	}
	return o
}

// loadTest is one that the hang passes.
func loadTest() *survey.LoadTest {
	mass := survey.MeasuredMass{Value: 215, How: quantity.Weighed}
	sag := survey.MeasuredLength{Value: 0.004, How: quantity.Taped}
	none := survey.MeasuredLength{Value: 0, How: quantity.Taped}
	return &survey.LoadTest{By: "Ann Rigger", Steps: []survey.LoadStep{{Mass: &mass, Sag: &sag}}, Set: &none}
}

// day is worked out once: nothing changes it.
var day = sync.OnceValues(func() (*outing.Outing, error) {
	k, err := loaded()
	if err != nil {
		return nil, err
	}
	o, err := issued(k, at(10, 0))
	if err != nil {
		return nil, err
	}
	for _, e := range events() {
		if o, err = o.Append(e); err != nil {
			return nil, err
		}
	}
	return o, nil
})

// issued issues the card of the demo's oak swing.
func issued(k *knowledge.Base, from time.Time) (*outing.Outing, error) {
	s, _, err := survey.Read(bytes.NewReader(demo.Survey()))
	if err != nil {
		return nil, err
	}
	return outing.New("invented-day", s, k, outing.Issue{Tree: "T1", Hang: "oak-swing", At: from, Until: at(17, 0), Signed: "Ann Rigger"})
}

func at(hour, minute int) time.Time {
	return time.Date(2026, time.May, 16, hour, minute, 0, 0, time.FixedZone("", 3600))
}

func events() []outing.Event {
	var list []outing.Event
	for i, c := range outing.PutUp() {
		list = append(list, outing.Event{At: at(10, 5+i), Kind: outing.Checked, Check: c, By: "Ann Rigger"})
	}
	force, gust, count := 4, quantity.Speed(7), quantity.Time(20)
	return append(list,
		outing.Event{At: at(10, 20), Kind: outing.LoadTest, By: "Ann Rigger", Test: loadTest()},
		outing.Event{At: at(10, 25), Kind: outing.LookedOver, By: "Ann Rigger"},
		outing.Event{At: at(10, 30), Kind: outing.Started},
		outing.Event{At: at(10, 32), Kind: outing.Rode, Riders: 1, AtMost: 30},
		outing.Event{At: at(10, 36), Kind: outing.Rode, Riders: 1, AtMost: 45},
		outing.Event{At: at(10, 40), Kind: outing.Wind, Beaufort: &force},
		outing.Event{At: at(10, 45), Kind: outing.Wind, Gust: &gust},
		outing.Event{At: at(10, 50), Kind: outing.Stopped},
		outing.Event{At: at(10, 51), Kind: outing.Why, Reason: outing.Crossed},
		outing.Event{At: at(10, 53), Kind: outing.Incident, NearMiss: true, Text: "a small child ran in from the hedge; the way in was roped off", By: "Ben Marsh"},
		outing.Event{At: at(11, 5), Kind: outing.LookedOver, By: "Ann Rigger"},
		outing.Event{At: at(11, 6), Kind: outing.Started},
		outing.Event{At: at(11, 10), Kind: outing.Rode, Riders: 1, AtMost: 30},
		outing.Event{At: at(11, 20), Kind: outing.Thunder, Count: &count},
		outing.Event{At: at(11, 40), Kind: outing.Note, Text: "everybody waited in the barn"},
		outing.Event{At: at(12, 10), Kind: outing.TakenDown, Bark: outing.BarkRubbed, GearBack: true, Wet: true, By: "Ann Rigger"},
		outing.Event{At: at(12, 15), Kind: outing.Note, Text: "two metres of the sleeve are worn"},
	)
}
