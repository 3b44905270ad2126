package wording

import (
	"fmt"
	"strings"

	"boughline/assess/wording"
	"boughline/outing"
	"boughline/quantity"
	"boughline/survey"
)

// Line is one line of a day card.
type Line struct{ Head, Text string }

// Title names a card.
func Title(c outing.Card) string { return "Day card: " + c.Hang }

// Where says where the hang is.
func Where(c outing.Card) string {
	name := c.Tree
	if c.TreeName != "" {
		name = c.TreeName + " (" + c.Tree + ")"
	}
	return fmt.Sprintf("%s, %s, %s: limb %s, %s out", c.Site, name, c.Species, c.Member, length(quantity.Length(c.At)))
}

// Limits are the lines that are read first: who, how high, how windy, until
// when.
func Limits(c outing.Card) []Line {
	return []Line{
		{"Who", who(c)},
		{"How high", fmt.Sprintf("Never beyond %s from the plumb line to either side: the seat rises %s and goes %s out.", wording.AtMost(float64(c.Limits.Amplitude), "rad"), cut(c.Rise), cut(c.Out))},
		{"Wind", fmt.Sprintf("Stop when %s (Beaufort %d), or at any gust above %s. %s", c.StopSigns, c.StopBeaufort, wording.AtMost(float64(c.Limits.Gust), "m/s"), calmer(c))},
		{"Down by", c.Until.Format("15:04 on 2 January 2006")},
	}
}

func who(c outing.Card) string {
	n := "one at a time"
	if c.Limits.Riders > 1 {
		n = fmt.Sprintf("at most %d at a time", c.Limits.Riders)
	}
	text := fmt.Sprintf("%s: %s, each up to %s", c.Group.ID, n, wording.AtMost(float64(c.Limits.MassEach), "kg"))
	if a := c.Group.Ages; a != nil {
		text += fmt.Sprintf(", aged %d to %d", a.From, a.To)
	}
	if c.Group.Posture != "" {
		text += ", " + c.Group.Posture
	}
	return text + ". Nobody heavier, nobody else."
}

// calmer says up to which force riding may go on.
func calmer(c outing.Card) string {
	for _, w := range c.Winds {
		if w.Beaufort == c.Limits.Beaufort {
			return fmt.Sprintf("Up to Beaufort %d, %s.", w.Beaufort, w.What)
		}
	}
	return "Below that the leaves hardly move."
}

// Rules are the other lines. Pace is the length of one step. What is not computed
// in them is common practice without a published source.
func Rules(c outing.Card, pace quantity.Length) []Line {
	lines := []Line{
		{"Keep clear", fmt.Sprintf("From the plumb line of the seat, paced at %s a step: %s, %s, %s. Marked on the ground.",
			length(pace), paced("ahead, towards "+bearing(c.Swings), c.Clear.Ahead, pace), paced("behind", c.Clear.Behind, pace), paced("to each side", c.Clear.Side, pace))},
		{"Crossing the arc", "Nobody, at no time. Whoever hands the seat on comes from the side when it hangs still."},
		{"Waiting", waiting(c, pace)},
		{"Getting on", fmt.Sprintf("From the ground below the hang point, line taut, at most %s of slack. Never from a bank, a stump or a branch, never with a run or a jump, never pushed from behind.", length(c.Slack))},
		{"Stopping a rider", "Let it run out. Stand beside the arc, never in it; take hold of the rider, not of the seat, when it is slow and low."},
		{"Head and neck", fmt.Sprintf("No opening from %s to %s in seat, ladder or lines, no loop that a head goes through. Hoods, scarves, cords and helmet straps come off before anyone gets on.", millimetres(c.TrapFrom), millimetres(c.TrapTo))},
		{"Stop at once", "A creak or a crack, a stem or ground that moves, wind as above, rain that makes line or bark slippery, thunder, somebody in the arc, anybody hurt. Look it over before it goes on."},
		{"Lightning", fmt.Sprintf("%.0f s or less from flash to bang: everybody leaves the trees. Back %.0f minutes after the last thunder, not before.", float64(c.Leave), float64(c.Return)/60)},
		{"Ambulance", ambulance(c.Place)},
		{"Load test", fmt.Sprintf("Of the day, before anyone rides: %s of dead mass in steps. People are never the test mass.", wording.Quantity(float64(c.Limits.TestMass), "kg"))},
	}
	if len(c.NotWith) > 0 {
		lines = append(lines, Line{"Not at the same time as", strings.Join(c.NotWith, ", ")})
	}
	return lines
}

func paced(where string, d, pace quantity.Length) string {
	n := outing.Steps(d, pace)
	return fmt.Sprintf("%s %s, %d steps", where, up(d), n)
}

func waiting(c outing.Card, pace quantity.Length) string {
	var list []string
	for _, w := range c.Waiting {
		list = append(list, spot(w, pace))
	}
	if len(list) == 0 {
		return "Outside the ground that is kept clear; nobody under the limb."
	}
	return "Everybody else: " + strings.Join(list, "; or ") + ". Nobody under the limb."
}

func spot(w survey.Spot, pace quantity.Length) string {
	return fmt.Sprintf("%s from the foot of the stem, %s, %d steps", bearing(w.Azimuth.Value), length(w.Distance.Value), outing.Steps(w.Distance.Value, pace))
}

func ambulance(p *survey.Place) string {
	if p == nil {
		return "The position is not written down. Find it out before the first rider, and write it here: ______________________"
	}
	parts := []string{outing.Position(p.Latitude, p.Longitude) + " (WGS 84)."}
	for _, l := range []Line{{"Way in for a vehicle", p.Access}, {"Somebody meets it at", p.MeetingPoint}, {"How to get there", p.WayIn}} {
		if l.Text != "" {
			parts = append(parts, l.Head+": "+strings.TrimRight(l.Text, ".")+".")
		}
	}
	if p.Access == "" && p.MeetingPoint == "" {
		parts = append(parts, "Where somebody meets it: ______________________")
	}
	return strings.Join(parts, " ")
}

// Signature is who signs and for what.
func Signature(c outing.Card) string {
	text := fmt.Sprintf("%s is in charge and signs, %s.", c.Signed, c.Issue.At.Format("15:04 on 2 January 2006"))
	if len(c.Limits.Departures) > 0 {
		text += " Signed for as well: " + wording.Departures(c.Limits.Departures) + "."
	}
	return text
}

// Lapses says how long a card holds.
func Lapses(c outing.Card) string {
	return fmt.Sprintf("This card holds for one hang and one day. It lapses at %s, and before that with a creak, a crack, a moving stem or a load test that was not passed.", c.Until.Format("15:04"))
}

func length(l quantity.Length) string { return wording.Quantity(float64(l), "m") }

// up writes a distance to keep, cut to a tenth and never rounded down.
func up(l quantity.Length) string {
	tenths := int(l*10 + 1 - 1e-9)
	return fmt.Sprintf("%.1f m", float64(tenths)/10)
}

// cut writes a limit to the centimetre and never rounds it up.
func cut(l quantity.Length) string { return fmt.Sprintf("%.2f m", float64(int(l*100+1e-9))/100) }

func millimetres(l quantity.Length) string { return fmt.Sprintf("%.0f mm", float64(l)*1000) }

var points = []string{"north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"}

// bearing is a direction by name with its degrees.
func bearing(a quantity.Angle) string {
	degrees := int(a.Degrees()+360*4+0.5) % 360
	return fmt.Sprintf("%s (%d°)", points[(degrees*2+45)/90%8], degrees)
}
