package web

import (
	"fmt"
	"math"
	"net/http"
	"slices"
	"strconv"
	"strings"
	"time"

	assessed "boughline/assess/wording"
	"boughline/notebook"
	"boughline/outing"
	"boughline/outing/wording"
	"boughline/quantity"
	"boughline/web/view"
	"boughline/web/words"
)

// withOuting reads the site, the outing and the form of a request.
func (a *app) withOuting(w http.ResponseWriter, r *http.Request, then func(*entry, *notebook.Site, *outing.Outing) error) error {
	return a.withSite(w, r, func(e *entry, s *notebook.Site) error {
		o, err := a.Notebook.Outing(r.Context(), s.ID, r.PathValue("outing"))
		if err != nil {
			return err
		}
		return then(e, s, o)
	})
}

func (a *app) outingLink(s *notebook.Site, o *outing.Outing, more ...string) string {
	return a.link(append([]string{"site", s.ID, "outing", o.ID}, more...)...)
}

// outingTrail leads back from a page of an outing.
func (a *app) outingTrail(s *notebook.Site, o *outing.Outing) []view.Link {
	trail := a.siteTrail(s)
	if t, err := s.Tree(o.Issue.Tree); err == nil {
		trail = a.treeTrail(s, t)
	}
	return append(trail, view.Link{Text: o.Issue.Hang, To: strings.TrimPrefix(a.outingLink(s, o), a.Base)})
}

func (a *app) showOuting(w http.ResponseWriter, r *http.Request) error {
	return a.withOuting(w, r, func(e *entry, s *notebook.Site, o *outing.Outing) error {
		return a.outingPage(w, r, http.StatusOK, e, s, o, "")
	})
}

func (a *app) outingPage(w http.ResponseWriter, r *http.Request, status int, e *entry, s *notebook.Site, o *outing.Outing, fault string) error {
	now := a.Notebook.Now()
	page := view.Outing{
		Page: a.newPage(r, o.Issue.Hang, a.outingTrail(s, o)[:len(a.outingTrail(s, o))-1]...), Action: a.outingLink(s, o, "event"), Form: a.NewID(),
		Stage: fmt.Sprintf("%s · %s %s", wording.Stage(o.Stage), words.DayUntil, clock(o.Card.Until)), Fault: fault,
		Stop: o.IsUp() && o.Stage != outing.AtRest, Sum: wording.Summary(&o.State, now), Over: o.Stage == outing.Dismounted, Refresh: fault == "",
		Limits: cardRows(wording.Limits(o.Card)), Typed: func(name string) string {
			if status == http.StatusOK {
				return ""
			}
			return e.text(name)
		},
		Links: []view.Link{
			{Text: words.DayShowCard, To: a.outingLink(s, o, "card")}, {Text: words.DayCalendar, To: a.outingLink(s, o, "calendar.ics")},
			{Text: words.DayFile, To: a.outingLink(s, o, "outing.json")},
		},
	}
	page.Log = append(page.Log, fmt.Sprintf(words.DayIssuedLine, clock(o.Issue.At), o.Issue.Signed))
	for _, event := range o.State.Events {
		page.Log = append(page.Log, wording.Event(event, o.Issue))
	}
	page.Barks = append(page.Barks, view.Choice{Text: words.NotChosen})
	for _, b := range outing.Barks() {
		page.Barks = append(page.Barks, view.Choice{Value: string(b), Text: wording.Bark(b)})
	}
	page.Winds = windActs(o)
	a.next(&page, s, o, now)
	return a.send(w, r, status, view.OutingPage(page))
}

// next is the one thing to do now.
func (a *app) next(page *view.Outing, s *notebook.Site, o *outing.Outing, now time.Time) {
	waits := o.Waits(now)
	switch {
	case o.Stage == outing.Dismounted:
		a.whatFollows(page, s, o)
	case o.Unsaid:
		page.Title, page.Columns = words.DayWhyStopped, true
		for _, why := range outing.Reasons() {
			page.Next = append(page.Next, actOf(capital(wording.Reason(why)), "", "kind", "why", "reason", string(why)))
		}
	case !now.Before(o.Card.Until):
		page.Title, page.Down = words.DayTakeDown, true
		page.Alerts = append(page.Alerts, words.DayLapsed)
	case o.Over != "":
		page.Title, page.Down = words.DayTakeDown, true
		page.Alerts = append(page.Alerts, fmt.Sprintf(words.DayOver, wording.Reason(o.Over)))
	case !waits.IsZero():
		page.Title, page.Lines = fmt.Sprintf(words.DayWaitUntil, clock(waits.In(o.Issue.At.Location()))), []string{words.DayWaitHelp}
	default:
		a.nextStage(page, s, o)
	}
}

// nextStage is what leads on where nothing stands in the way.
func (a *app) nextStage(page *view.Outing, s *notebook.Site, o *outing.Outing) {
	switch o.Stage {
	case outing.Issued:
		checks := outing.PutUp()
		check := checks[o.Confirmed]
		page.Title, page.Lines = fmt.Sprintf(words.DayCheckOf, o.Confirmed+1, len(checks)), []string{wording.Check(check)}
		page.Next = []view.Act{actOf(words.DayConfirm, "", "kind", string(outing.Checked), "check", string(check))}
	case outing.Up:
		page.Title = words.DayToTest
		page.Lines = []string{fmt.Sprintf(words.DayTestAbout, assessed.Quantity(float64(o.Card.Limits.TestMass), "kg"))}
		if o.Verdict == outing.NotRead {
			page.Lines = append(page.Lines, words.DayTestUnread)
		}
		page.Link = &view.Link{Text: words.DayWriteTest, To: a.outingLink(s, o, "test")}
	case outing.Tested, outing.AtRest:
		page.Title, page.Lines = words.DayLookOver, wording.LookOver()
		page.Next = []view.Act{actOf(words.DayLookedOver, "", "kind", string(outing.LookedOver))}
	case outing.Ready:
		nextToStart(page, o)
	case outing.InUse:
		page.Title, page.Next, page.Columns = words.DayCounting, countActs(o), true
	}
}

func nextToStart(page *view.Outing, o *outing.Outing) {
	switch {
	case !o.Told:
		page.Title, page.Incident = words.DayHurtFirst, true
	case o.Windy:
		page.Title, page.Lines, page.Next = words.DayWindNow, []string{words.DayWindHelp}, windActs(o)
	default:
		page.Title, page.Next = words.DayToStart, []view.Act{actOf(words.DayStart, "", "kind", string(outing.Started))}
	}
}

func actOf(text, side string, pairs ...string) view.Act {
	act := view.Act{Text: text, Side: side}
	for i := 0; i+1 < len(pairs); i += 2 {
		act.Hidden = append(act.Hidden, view.Choice{Value: pairs[i], Text: pairs[i+1]})
	}
	return act
}

// mostTogether is for how many riders at once there are buttons.
const mostTogether = 3

// countActs are buttons for one thumb: how many, up to half of what the card
// allows each and up to all of it.
func countActs(o *outing.Outing) []view.Act {
	var acts []view.Act
	for n := range min(o.Card.Limits.Riders, mostTogether) {
		lighter := quantity.Mass(0)
		for _, share := range []float64{0.5, 1} {
			mass := quantity.Mass(math.Floor(share*float64(o.Card.Limits.MassEach)*10) / 10)
			acts = append(acts, actOf(fmt.Sprintf(words.DayTurn, n+1, assessed.AtMost(float64(mass), "kg")), strconv.Itoa(turnsOf(o, n+1, lighter, mass)),
				"kind", string(outing.Rode), "riders", strconv.Itoa(n+1), "mass", decimal(float64(mass))))
			lighter = mass
		}
	}
	return acts
}

// turnsOf counts the turns of that many riders, heavier than one mass and up to
// another.
func turnsOf(o *outing.Outing, riders int, above, most quantity.Mass) int {
	n := 0
	for _, e := range o.State.Events {
		if e.Kind == outing.Rode && e.Riders == riders && e.AtMost > above && e.AtMost <= most {
			n++
		}
	}
	return n
}

// windActs are the signs in the trees up to one force beyond the card's.
func windActs(o *outing.Outing) []view.Act {
	var acts []view.Act
	for i, w := range o.Card.Winds {
		if i == 0 {
			acts = append(acts, actOf(capital(words.DayLess), "", "kind", string(outing.Wind), "beaufort", strconv.Itoa(w.Beaufort-1)))
		}
		if w.Beaufort <= o.Card.StopBeaufort+1 {
			acts = append(acts, actOf(capital(w.What), "", "kind", string(outing.Wind), "beaufort", strconv.Itoa(w.Beaufort)))
		}
	}
	return slices.Clip(acts)
}

// whatFollows is what an outing leaves to do.
func (a *app) whatFollows(page *view.Outing, s *notebook.Site, o *outing.Outing) {
	page.Title = words.DayIsDown
	if !o.Card.LookAgain.IsZero() {
		page.Lines = append(page.Lines, fmt.Sprintf(words.DayAgain, o.Card.LookAgain))
	}
	page.Lines = append(page.Lines, words.ExportOffer)
	if o.Down != nil && o.Down.Bark != outing.BarkAsBefore {
		page.Link = &view.Link{Text: words.DayBarkFinding, To: a.link("site", s.ID, "tree", o.Issue.Tree, "look", "limb")}
	}
}

// aboutOuting tells an outing in one line.
func aboutOuting(b notebook.Brief) string {
	switch {
	case b.Up:
		return fmt.Sprintf(words.DayUpUntil, clock(b.Until))
	case !b.Down:
		return words.DayNotUp
	}
	text := fmt.Sprintf(words.DayDone, b.Turns, b.Riders, b.Minutes, b.Swings, wording.Bark(b.Bark))
	if b.Over != "" {
		text += fmt.Sprintf(words.DayOverShort, wording.Reason(b.Over))
	}
	if b.Wear != "" {
		text += "; " + b.Wear
	}
	if !b.LookAgain.IsZero() {
		text += fmt.Sprintf(words.DayLookAgainBy, b.LookAgain)
	}
	return text
}
