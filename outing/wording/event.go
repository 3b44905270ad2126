package wording

import (
	"errors"
	"fmt"
	"strings"
	"time"

	"boughline/assess/wording"
	"boughline/outing"
)

var stages = map[outing.Stage]string{
	outing.Issued: "card issued, not up yet", outing.Up: "up, not load-tested", outing.Tested: "load-tested, not looked over", outing.Ready: "looked over, nobody rides yet",
	outing.InUse: "in use", outing.AtRest: "stopped", outing.Dismounted: "taken down",
}

// Stage says where an outing stands.
func Stage(s outing.Stage) string { return stages[s] }

var reasons = map[outing.Reason]string{
	outing.Gust: "wind or a gust", outing.Sound: "a creak or a crack", outing.Movement: "stem or ground moved", outing.Rain: "rain", outing.Lightning: "lightning",
	outing.Hurt: "somebody is hurt", outing.Happened: "an incident", outing.Crossed: "somebody in the arc", outing.Break: "a break", outing.End: "end of riding",
	outing.Failing: "the load test was not passed",
}

// Reason says why riding stopped.
func Reason(r outing.Reason) string { return reasons[r] }

var checks = map[outing.Check]string{
	"people": "Nobody below the limb; everybody knows the waiting place.",
	"gear":   "Line, slings, connectors and seat looked over: no cut, no crack, gates locked.",
	"bark":   "A sleeve or pad lies between line and bark.",
	"anchor": "The line lies at the hang point of the card, chokes the limb and cannot slide.",
	"height": "Line and seat height as on the card; feet clear the ground at the lowest point.",
	"gaps":   "No opening and no loop that takes a head: see the card.",
	"ground": "The kept-clear ground is paced out, marked and free of stumps, stones and things.",
}

// Check words one check of putting a swing up.
func Check(c outing.Check) string { return checks[c] }

// LookOver lists what is looked over before use and after each break (common
// practice, no published source).
func LookOver() []string {
	return []string{
		"Limb and union: no new crack, no new sag, nothing that hangs above.",
		"Bark, sleeve and anchor: where they were.",
		"Line, knots and connectors, hand over hand; seat; gates locked.",
		"Stem and ground at its foot: nothing moves, nothing new.",
		"Kept-clear ground free; wind as on the card.",
	}
}

var barks = map[outing.Bark]string{outing.BarkAsBefore: "as before", outing.BarkRubbed: "rubbed, not through", outing.BarkBroken: "broken or through to the wood"}

// Bark says how the bark looked.
func Bark(b outing.Bark) string { return barks[b] }

var kinds = map[outing.Kind]string{
	outing.LookedOver: "looked over", outing.Started: "riding begins", outing.TakenDown: "taken down", outing.Note: "note",
}

// Event words one event.
func Event(e outing.Event, i outing.Issue) string {
	var text string
	switch e.Kind {
	case outing.Checked:
		text = "checked: " + Check(e.Check)
	case outing.LoadTest:
		text = test(e)
	case outing.Rode:
		text = fmt.Sprintf("a turn: %d %s of up to %s", e.Riders, plural("rider", e.Riders), wording.AtMost(float64(e.AtMost), "kg"))
	case outing.Stopped:
		text = "stopped"
		if e.Reason != "" {
			text += ": " + Reason(e.Reason)
		}
	case outing.Why:
		text = "it was stopped for " + Reason(e.Reason)
	case outing.Wind:
		text = windText(e)
	case outing.Thunder:
		text = thunder(e)
	case outing.Incident:
		text = "incident"
		if e.NearMiss {
			text = "near miss"
		}
	case outing.TakenDown:
		text = "taken down; bark " + Bark(e.Bark)
		if e.Wet {
			text += "; the gear got wet"
		}
	case outing.Correction:
		text = fmt.Sprintf("correction of %d", e.Corrects)
	default:
		text = kinds[e.Kind]
	}
	if e.Text != "" {
		text += ": " + e.Text
	}
	if e.By != "" {
		text += " (" + e.By + ")"
	}
	return e.At.In(i.At.Location()).Format("15:04") + " " + text
}

func test(e outing.Event) string {
	if e.Test == nil || len(e.Test.Steps) == 0 {
		return "load test"
	}
	text := "load test up to " + wording.Quantity(float64(e.Test.Steps[len(e.Test.Steps)-1].Load()), "N")
	for _, sign := range e.Test.Signs {
		text += "; stopped by " + wording.StopSign(sign)
	}
	return text
}

func windText(e outing.Event) string {
	if e.Beaufort != nil {
		return fmt.Sprintf("wind: Beaufort %d by the trees", *e.Beaufort)
	}
	if e.Gust != nil {
		return fmt.Sprintf("wind: a gust of %s read", wording.Quantity(float64(*e.Gust), "m/s"))
	}
	return "wind"
}

func thunder(e outing.Event) string {
	if e.Count == nil {
		return "thunder, not counted"
	}
	return fmt.Sprintf("lightning, %.0f s to the bang", float64(*e.Count))
}

func plural(word string, n int) string {
	if n == 1 {
		return word
	}
	return word + "s"
}

// NoCard words why no card is issued, one line for each cause.
func NoCard(err error) []string {
	var n *outing.NoCard
	if !errors.As(err, &n) {
		return []string{err.Error()}
	}
	switch n.Cause {
	case outing.NotRideable:
		return append([]string{wording.Outcome(n.Outcome)}, because(n)...)
	case outing.Lapsed:
		lapsed := "The examination has lapsed"
		if n.Detail != "" {
			lapsed += ": " + n.Detail
		}
		return append([]string{lapsed}, because(n)...)
	}
	return []string{capital(n.Detail)}
}

func because(n *outing.NoCard) []string {
	var list []string
	for _, r := range n.Reasons {
		list = append(list, wording.Reason(r))
	}
	return list
}

// Refusal words why an event was refused.
func Refusal(r *outing.Refused) string {
	return capital(r.Fault) + ": " + r.Do + "."
}

func capital(text string) string {
	if text == "" {
		return text
	}
	return strings.ToUpper(text[:1]) + text[1:]
}

// Summary says in one line what an outing carried.
func Summary(s *outing.State, now time.Time) string {
	turns, riders := s.Riders()
	text := fmt.Sprintf("%d %s, %d %s", turns, plural("turn", turns), riders, plural("rider", riders))
	if swings := s.Swings(now); swings > 0 {
		text += fmt.Sprintf("; in use for %.0f minutes, at most %d swings", s.InUseFor(now).Minutes(), swings)
	}
	return text
}
