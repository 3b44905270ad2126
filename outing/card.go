package outing

import (
	"time"

	"boughline/assess"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

// Issue is what a card is asked for: the first event of an outing.
type Issue struct {
	Tree   string    `json:"tree"`
	Hang   string    `json:"hang"`
	At     time.Time `json:"at"`
	Until  time.Time `json:"until"` // the swing is down by then, on the day of At
	Signed string    `json:"signed"`
}

// Day is the calendar day of the outing.
func (i Issue) Day() survey.Date { return dayOf(i.At) }

// Card is what one day's use of a hang is held to. It follows from a survey and
// is worked out anew whenever it is looked at.
type Card struct {
	Issue
	Site     string         `json:"site"`
	TreeName string         `json:"tree_name,omitempty"`
	Species  string         `json:"species"`
	Member   string         `json:"member"`
	At       float64        `json:"out_along_m"` // hang point along the member
	Outcome  assess.Outcome `json:"outcome"`
	Group    survey.Riders  `json:"group"`
	Limits   assess.Limits  `json:"limits"`
	// Rise is how high the seat comes above its place at rest, and Out how far
	// from the plumb line.
	Rise quantity.Length `json:"seat_rises_m"`
	Out  quantity.Length `json:"seat_out_m"`
	// StopBeaufort is the first wind force that stops riding, StopSigns what
	// tells it; Winds is the scale in order.
	StopBeaufort int             `json:"stop_beaufort"`
	StopSigns    string          `json:"stop_signs"`
	Winds        []WindSign      `json:"winds"`
	Clear        Ground          `json:"kept_clear"`
	Swings       quantity.Angle  `json:"swing_azimuth_rad"`
	Waiting      []survey.Spot   `json:"waiting,omitempty"`
	Place        *survey.Place   `json:"place,omitempty"`
	Slack        quantity.Length `json:"slack_m"` // most slack at mounting
	TrapFrom     quantity.Length `json:"trap_from_m"`
	TrapTo       quantity.Length `json:"trap_to_m"`
	// Leave is the time from flash to bang at which everybody leaves, Return how
	// long after the last thunder somebody may come back.
	Leave     quantity.Time `json:"lightning_leave_s"`
	Return    quantity.Time `json:"lightning_return_s"`
	LookAgain survey.Date   `json:"look_again"`
	Chain     string        `json:"chain"`
	NotWith   []string      `json:"not_with,omitempty"` // hangs not to be ridden at the same time
}

// WindSign is a wind force with what tells it on land.
type WindSign struct {
	Beaufort int    `json:"beaufort"`
	What     string `json:"what"`
}

// Ground is how far the kept-clear ground reaches from the plumb line.
type Ground struct {
	Ahead  quantity.Length `json:"ahead_m"` // towards the swing azimuth
	Behind quantity.Length `json:"behind_m"`
	Side   quantity.Length `json:"side_m"` // the farther of the two
}

// Steps is a distance paced out: the number of steps that surely reach it.
func Steps(d, pace quantity.Length) int {
	if pace <= 0 {
		return 0
	}
	n := int(d / pace)
	if quantity.Length(n)*pace < d-1e-9 {
		n++
	}
	return n
}

// cardOf puts a card together from an assessed hang of a survey.
func cardOf(s *survey.Survey, k *knowledge.Base, i Issue, judged assess.Hang) (Card, error) {
	figures, err := assess.NewFigures(s, k)
	if err != nil {
		return Card{}, err
	}
	figure, err := figures.Hang(i.Hang)
	if err != nil {
		return Card{}, err
	}
	t, h := hangOf(s, i)
	l := *judged.Limits
	c := Card{
		Issue: i, Site: s.Site, TreeName: t.Name, Species: t.Species, Member: h.Member, At: float64(h.At.Value), Outcome: judged.Outcome, Limits: l, Chain: h.Chain,
		Rise: l.Line * quantity.Length(1-l.Amplitude.Cos()), Out: l.Line * quantity.Length(l.Amplitude.Sin()),
		Swings: figure.SwingAzimuth(), Waiting: h.Waiting, Place: s.Place,
		Slack:    quantity.Length(k.Parameter(knowledge.MountingSlack).Value),
		TrapFrom: quantity.Length(k.Parameter(knowledge.HeadTrapFrom).Value), TrapTo: quantity.Length(k.Parameter(knowledge.HeadTrapTo).Value),
		Leave: quantity.Time(k.Parameter(knowledge.LightningLeave).Value), Return: quantity.Time(k.Parameter(knowledge.LightningReturn).Value),
		LookAgain: lookAgain(t, int(k.Parameter(knowledge.DatedLookMonths).Value)),
	}
	if h.Slack != nil {
		c.Slack = h.Slack.Value
	}
	for _, r := range s.Riders {
		if r.ID == h.Riders {
			c.Group = r
		}
	}
	for _, r := range judged.Reasons {
		if r.Code == assess.NotTogether {
			c.NotWith = append(c.NotWith, r.Text)
		}
	}
	c.Clear = groundOf(l.KeptClearArea, figure.Point(), c.Swings)
	c.wind(k)
	return c, nil
}

// hangOf finds tree and hang, nil where the survey has no such.
func hangOf(s *survey.Survey, i Issue) (*survey.Tree, *survey.Hang) {
	for t := range s.Trees {
		for h := range s.Trees[t].Hangs {
			if s.Trees[t].ID == i.Tree && s.Trees[t].Hangs[h].ID == i.Hang {
				return &s.Trees[t], &s.Trees[t].Hangs[h]
			}
		}
	}
	return nil, nil
}

// groundOf measures an outline from the plumb line, along the swing and square
// to it.
func groundOf(area [][2]float64, from quantity.Vec3, swings quantity.Angle) Ground {
	reach := func(azimuth quantity.Angle) quantity.Length {
		heading, far := quantity.Heading(azimuth, 0), quantity.Length(0)
		for _, corner := range area {
			far = max(far, quantity.Length(quantity.Vec3{X: corner[0] - from.X, Y: corner[1] - from.Y}.Dot(heading)))
		}
		return far
	}
	return Ground{
		Ahead: reach(swings), Behind: reach(swings + 180*quantity.Degree),
		Side: max(reach(swings+90*quantity.Degree), reach(swings-90*quantity.Degree)),
	}
}

// wind writes the scale onto the card, and the first force above its gust.
func (c *Card) wind(k *knowledge.Base) {
	for force := range 11 {
		b, ok := k.Beaufort(force)
		if !ok {
			continue
		}
		c.Winds = append(c.Winds, WindSign{b.Number, b.What})
		if c.StopBeaufort == 0 && force > c.Limits.Beaufort {
			c.StopBeaufort, c.StopSigns = b.Number, b.What
		}
	}
}
