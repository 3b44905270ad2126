package sheet

import (
	"fmt"
	"time"

	"boughline/assess/wording"
	"boughline/outing"
	day "boughline/outing/wording"
	"boughline/sheet/words"
)

var outingKind = Kind{Name: "outing", Says: words.OutingSays, Takes: TakesOuting, build: outingRecord}

// outingRecord is what happened on the day of a card, to be kept.
func outingRecord(u *subject) (*Sheet, error) {
	o := u.Outing
	c := o.Card
	s := &Sheet{Title: fmt.Sprintf(words.OutingTitle, c.Hang), Subtitle: fmt.Sprintf(words.OutingOf, day.Where(c), c.Issue.At.Format("15:04 on 2 January 2006"), c.Signed)}
	s.carried(o)
	s.events(o)
	s.eventsOf(o, words.OutingStops, outing.Stopped, outing.Why)
	s.eventsOf(o, words.OutingWind, outing.Wind, outing.Thunder)
	s.eventsOf(o, words.OutingHurt, outing.Incident)
	s.takenDown(o)
	s.add(&Cautions{wording.Cautions()})
	s.sign(words.WhoInCharge, words.WhoSite)
	return s, nil
}

// last is when the newest event of an outing happened, or its card was issued.
func last(o *outing.Outing) time.Time {
	if n := len(o.State.Events); n > 0 {
		return o.State.Events[n-1].At
	}
	return o.Issue.At
}

// carried says where the day stands, and counts turns and swings up to the last
// event.
func (s *Sheet) carried(o *outing.Outing) {
	s.heading(1, words.OutingCarried)
	s.add(&Paragraph{Words: fmt.Sprintf(words.OutingStands, day.Stage(o.Stage)), Strong: true})
	s.say(capital(day.Summary(&o.State, last(o))) + ".")
	if o.Over != "" {
		s.say(fmt.Sprintf(words.OutingOver, day.Reason(o.Over)))
	}
	t := &Table{Caption: words.OutingTurns, Columns: []Column{{Title: words.UpTo, Wide: 3}, {Title: words.Turns, Wide: 1, Number: true}, {Title: words.Riders, Wide: 1, Number: true}}}
	for _, turns := range o.Turns {
		t.Rows = append(t.Rows, []string{wording.AtMost(float64(turns.AtMost), "kg"), fmt.Sprint(turns.Turns), fmt.Sprint(turns.Riders)})
	}
	if len(t.Rows) > 0 {
		s.add(t)
	}
}

// events lists everything in its order.
func (s *Sheet) events(o *outing.Outing) {
	s.heading(1, words.OutingEvents)
	if len(o.State.Events) == 0 {
		s.say(words.OutingNone)
		return
	}
	t := &Table{Caption: words.OutingShown, Columns: []Column{{Title: words.Number, Wide: 1}, {Title: words.Happened, Wide: 14}}}
	for n, e := range o.State.Events {
		t.Rows = append(t.Rows, []string{fmt.Sprint(n + 1), day.Event(e, o.Issue)})
	}
	s.add(t)
}

// eventsOf lists the events of some kinds by their numbers, or says that there
// is none.
func (s *Sheet) eventsOf(o *outing.Outing, title string, kinds ...outing.Kind) {
	var list []string
	for n, e := range o.State.Events {
		for _, k := range kinds {
			if e.Kind != k {
				continue
			}
			text := fmt.Sprintf("%d: %s", n+1, day.Event(e, o.Issue))
			if k == outing.Stopped && o.Unsaid && e.At.Equal(o.Stop.At) {
				text += "; " + words.NoReason
			}
			list = append(list, text)
		}
	}
	s.heading(1, title)
	if len(list) == 0 {
		list = []string{words.NoneWritten}
	}
	s.add(&List{Items: list})
}

// takenDown says when it came down, and how the bark looked.
func (s *Sheet) takenDown(o *outing.Outing) {
	s.heading(1, words.OutingDown)
	if o.Down == nil {
		s.add(&Paragraph{Words: words.OutingNotDown, Strong: true})
		return
	}
	s.say(capital(day.Event(*o.Down, o.Issue)) + ".")
	if o.Down.At.After(o.Card.Until) {
		s.say(fmt.Sprintf(words.OutingLate, o.Card.Until.Format("15:04"), o.Down.At.In(o.Issue.At.Location()).Format("15:04")))
	}
}
