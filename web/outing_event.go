package web

import (
	"errors"
	"math"
	"net/http"
	"strconv"
	"strings"

	"boughline/notebook"
	"boughline/outing"
	"boughline/outing/wording"
	"boughline/quantity"
	"boughline/web/words"
)

// addEvent takes one event and shows what comes next. One that does not fit is
// told with the page as it stands, and what was typed stays in its fields.
func (a *app) addEvent(w http.ResponseWriter, r *http.Request) error {
	return a.withOuting(w, r, func(e *entry, s *notebook.Site, o *outing.Outing) error {
		event, err := readEvent(e)
		if err == nil {
			event.By = a.Notebook.Settings(r.Context()).Name
			_, err = a.Notebook.AddEvent(r.Context(), s.ID, o.ID, a.eventEdit(e, s, o), event)
		}
		return a.eventTaken(w, r, e, s, o, err)
	})
}

func (a *app) eventEdit(e *entry, s *notebook.Site, o *outing.Outing) notebook.Edit {
	return notebook.Edit{Form: e.text("form"), To: a.outingLink(s, o), What: words.DidEvent + o.Issue.Hang}
}

func (a *app) eventTaken(w http.ResponseWriter, r *http.Request, e *entry, s *notebook.Site, o *outing.Outing, err error) error {
	var again *notebook.Again
	var refused *outing.Refused
	var up *notebook.HangsAlready
	var typed *wrongNumber
	switch {
	case err == nil, errors.As(err, &again):
		return a.moveOn(w, r, a.outingLink(s, o))
	case errors.As(err, &refused):
		return a.outingPage(w, r, http.StatusConflict, e, s, o, wording.Refusal(refused))
	case errors.As(err, &up), errors.As(err, &typed):
		return a.outingPage(w, r, http.StatusUnprocessableEntity, e, s, o, err.Error())
	}
	return err
}

// wrongNumber is a field that holds no number.
type wrongNumber struct{ name, text string }

// Error implements error.
func (n *wrongNumber) Error() string {
	return n.text + ": " + words.DayWantNumber + " (" + n.name + ")"
}

// readEvent reads an event as its form or the button of a page sends it.
func readEvent(e *entry) (outing.Event, error) {
	event := outing.Event{
		Kind: outing.Kind(e.text("kind")), Check: outing.Check(e.text("check")), Reason: outing.Reason(e.text("reason")), Text: e.text("text"),
		Bark: outing.Bark(e.text("bark")), GearBack: e.text("gear_back") == "yes", Wet: e.text("wet") == "yes", NearMiss: e.text("near_miss") == "yes",
	}
	var err error
	number := func(name string) *float64 {
		text := strings.TrimSpace(typed(e.text(name), ""))
		if text == "" || err != nil {
			return nil
		}
		x, wrong := strconv.ParseFloat(text, 64)
		if wrong != nil || math.IsNaN(x) || math.IsInf(x, 0) {
			err = &wrongNumber{name, e.text(name)}
			return nil
		}
		return &x
	}
	whole := func(name string) int {
		if x := number(name); x != nil {
			if *x != math.Trunc(*x) || math.Abs(*x) > 1e6 {
				err = &wrongNumber{name, e.text(name)}
				return 0
			}
			return int(*x)
		}
		return 0
	}
	event.Riders, event.Corrects = whole("riders"), whole("corrects")
	if x := number("mass"); x != nil {
		event.AtMost = quantity.Mass(*x)
	}
	if e.text("beaufort") != "" {
		force := whole("beaufort")
		event.Beaufort = &force
	}
	if x := number("gust_m_s"); x != nil {
		gust := quantity.Speed(*x)
		event.Gust = &gust
	}
	if x := number("seconds"); x != nil {
		seconds := quantity.Time(*x)
		event.Count = &seconds
	}
	return event, err
}
