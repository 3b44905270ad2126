package cli

import (
	"fmt"
	"time"

	"boughline/knowledge"
	"boughline/outing"
	"boughline/outing/wording"
	"boughline/quantity"
	"boughline/survey"
)

type dayLogCommand struct {
	Log      string   `arg:"" help:"File of the day." type:"path"`
	Event    string   `arg:"" help:"check, load-test, looked-over, started, riders, stopped, why, wind, lightning, incident, correction or note."`
	At       string   `help:"When it happened, today; now if left out." placeholder:"HH:MM"`
	By       string   `help:"Who says so." placeholder:"NAME"`
	Check    []string `help:"Checks of putting up that are confirmed, in order: people, gear, bark, anchor, height, gaps, ground." placeholder:"CHECK"`
	Step     []string `help:"Load test: load in all and sag under it: \"215 kg weighed, 4 mm taped\"." placeholder:"LOAD,SAG" sep:"none"`
	Set      string   `help:"Load test: sag that stayed." placeholder:"LENGTH"`
	Sign     []string `help:"Load test: what stopped it." placeholder:"SIGN"`
	Riders   int      `help:"How many rode in one turn." placeholder:"N"`
	Mass     string   `help:"What none of them weighs more than: \"35 kg\"." placeholder:"MASS"`
	Reason   string   `help:"Why it stopped: gust, sound, movement, rain, lightning, hurt, crossed, break or end." placeholder:"REASON"`
	Beaufort *int     `help:"Wind by the signs in the trees." placeholder:"N"`
	Gust     string   `help:"Wind read on a meter: \"12 m/s\". It may stop a day, never permit one." placeholder:"SPEED"`
	Seconds  *float64 `help:"Lightning: flash to bang; left out where nobody counted." placeholder:"S"`
	NearMiss bool     `help:"Incident: nobody was hurt."`
	Corrects int      `help:"Correction: number of the event." placeholder:"N"`
	Text     string   `help:"What happened, what was done, what was wrong." placeholder:"TEXT"`
}

// Run adds the event. One that does not fit is refused, and nothing is written.
func (c dayLogCommand) Run(env Env) error {
	at, err := timeToday(env.now(), c.At)
	if err != nil {
		return err
	}
	e := outing.Event{
		At: at, Kind: outing.Kind(c.Event), By: c.By, Riders: c.Riders, Reason: outing.Reason(c.Reason), Beaufort: c.Beaufort,
		NearMiss: c.NearMiss, Corrects: c.Corrects, Text: c.Text,
	}
	if c.Seconds != nil {
		seconds := quantity.Time(*c.Seconds)
		e.Count = &seconds
	}
	if err := c.measured(&e); err != nil {
		return refusal{err}
	}
	if e.Kind != outing.Checked {
		return addToDay(env, c.Log, e)
	}
	var events []outing.Event
	for _, check := range c.Check {
		e.Check = outing.Check(check)
		events = append(events, e)
	}
	if len(events) == 0 {
		return refusal{fmt.Errorf("--check is missing; expected one or more of %v", outing.PutUp())}
	}
	return addToDay(env, c.Log, events...)
}

// measured reads mass, wind and load test from their texts.
func (c dayLogCommand) measured(e *outing.Event) error {
	if c.Mass != "" {
		mass, err := quantity.ParseChosen[quantity.Mass](c.Mass)
		if err != nil {
			return fmt.Errorf("--mass: %w", err)
		}
		e.AtMost = mass.Value
	}
	if c.Gust != "" {
		gust, err := quantity.ParseChosen[quantity.Speed](c.Gust)
		if err != nil {
			return fmt.Errorf("--gust: %w", err)
		}
		e.Gust = &gust.Value
	}
	if e.Kind != outing.LoadTest {
		return nil
	}
	test, err := loadTestRecordCommand{Step: c.Step, Set: c.Set, Sign: c.Sign, By: c.By}.test(survey.Date{})
	e.Test = &test
	return err
}

// timeToday is a time of day up to now.
func timeToday(now time.Time, text string) (time.Time, error) {
	if text == "" {
		return now, nil
	}
	at, err := time.Parse("15:04", text)
	if err != nil {
		return now, refusal{fmt.Errorf("--at: %q is no time of day; expected the form 10:40", text)}
	}
	when := time.Date(now.Year(), now.Month(), now.Day(), at.Hour(), at.Minute(), 0, 0, now.Location())
	if when.After(now) {
		return now, refusal{fmt.Errorf("--at: %s is still to come; expected a time up to now, %s", text, now.Format("15:04"))}
	}
	return when, nil
}

type dayDownCommand struct {
	Log      string `arg:"" help:"File of the day." type:"path"`
	Bark     string `required:"" help:"The bark where the line lay: \"as before\", rubbed or broken." placeholder:"BARK"`
	GearBack bool   `help:"All gear is back and counted."`
	Wet      bool   `help:"The gear got wet."`
	At       string `help:"When, today; now if left out." placeholder:"HH:MM"`
	By       string `help:"Who says so." placeholder:"NAME"`
	Text     string `help:"Wear seen on gear or bark." placeholder:"TEXT"`
}

// Run writes the take-down.
func (c dayDownCommand) Run(env Env) error {
	at, err := timeToday(env.now(), c.At)
	if err != nil {
		return err
	}
	return addToDay(env, c.Log, outing.Event{At: at, Kind: outing.TakenDown, By: c.By, Bark: outing.Bark(c.Bark), GearBack: c.GearBack, Wet: c.Wet, Text: c.Text})
}

type dayShowCommand struct {
	Log      string `arg:"" help:"File of the day." type:"path"`
	Pace     string `help:"Length of one of your steps; 0.7 m if left out." placeholder:"LENGTH"`
	Calendar bool   `help:"Print an iCalendar entry for take-down instead."`
	JSON     bool   `name:"json" help:"Print the card as JSON."`
}

// Run prints a card as it follows from the file now.
func (c dayShowCommand) Run(env Env) error {
	k, err := knowledge.Load()
	if err != nil {
		return err
	}
	o, err := readDay(env, c.Log, k)
	if err != nil {
		return err
	}
	pace, err := paceOf(c.Pace, k)
	switch {
	case err != nil:
		return err
	case c.Calendar:
		_, err := env.Stdout.Write(wording.Calendar(o))
		return err
	case c.JSON:
		return writeJSON(env.Stdout, o.Card)
	}
	if err := (page{env.Stdout}).dayCard(o.Card, pace); err != nil {
		return err
	}
	fmt.Fprintf(env.Stdout, "\n0 %s card issued, signed by %s\n", o.Issue.At.Format("15:04"), o.Issue.Signed)
	for n, e := range o.State.Events {
		fmt.Fprintf(env.Stdout, "%s", hanging(fmt.Sprint(n+1), wording.Event(e, o.Issue), len(fmt.Sprint(n+1))+1))
	}
	return page{env.Stdout}.dayStands(o, env.now())
}
