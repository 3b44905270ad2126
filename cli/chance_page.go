package cli

import (
	"fmt"
	"io"
	"strings"

	"boughline/assess"
	"boughline/assess/wording"
)

// chances writes how likely a hang fails and what to measure next.
func (p page) chances(c assess.HangChances, next assess.NextSteps, inputs bool) error {
	var b strings.Builder
	b.WriteString(hanging(c.Hang, wording.Outcome(c.Outcome), max(column, len(c.Hang)+2)))
	of := "the use asked for: "
	if c.WithinUse {
		of = "the greatest use within the limits: "
	}
	b.WriteString(hanging("  of", of+wording.Use(c.Use), column))
	b.WriteString(hanging("  given", "the limb carries its own weight, and has passed the load test of "+wording.Quantity(float64(c.TestMass), "kg"), column))
	b.WriteString(hanging("  target", fmt.Sprintf("index %s for a year of outings (house)", wording.Margin(c.Target)), column))
	for _, d := range c.Deciding {
		b.WriteString(hanging("  decides", fmt.Sprintf("%s: index %s, in still air, the season's hardest ride at 80 deg", wording.Check(assess.Check{Code: d.Code, Where: assess.Where{Part: d.Part}}), wording.Margin(d.Index)), column))
	}
	if season := c.Exposures[2]; season.FirstOrder.Beta < c.Target {
		b.WriteString(hanging("  mind", "with jerk, motion, wind, stem and roots counted too, a season's index lies below the target. The outcome does not rest on that figure, whose laws of slack and gusts are house: whoever signs should weigh it. What it comes from stands under the ways to fail.", column))
	}
	for _, e := range c.Exposures {
		b.WriteString("\n" + exposure(e))
	}
	b.WriteString("\n" + likeliestWays(c.Exposures[len(c.Exposures)-1]))
	if inputs {
		b.WriteString("\n" + randomInputs(c.Exposures[len(c.Exposures)-1].Inputs))
	}
	b.WriteString("\n" + nextSteps(next))
	b.WriteString("\n" + hanging("!", wording.LeavesOut(c.LeftOut)+" Chances rest on laws that are partly from memory or house values; they are no promise.", 2))
	_, err := io.WriteString(p.w, b.String())
	return err
}

func exposure(e assess.ExposureChance) string {
	var b strings.Builder
	rides := fmt.Sprintf("largest of %d rides", e.Rides)
	if e.Rides == 1 {
		rides = "one ride at the amplitude declared"
	}
	if e.AtDesign {
		rides += ", at the amplitude that strength is checked at"
	}
	const indent = 20
	b.WriteString(hanging(wording.Exposure(e.Code), rides, indent))
	b.WriteString(hanging("  first order", wording.Figure(e.FirstOrder), indent))
	b.WriteString(hanging("  at most", wording.Figure(e.Bound)+", all ways together", indent))
	if e.Sampled != nil {
		b.WriteString(hanging("  sampled", wording.Interval(*e.Sampled), indent))
		b.WriteString(hanging("  plain samples", wording.Interval(*e.Plain), indent))
	}
	for _, lost := range e.Lost {
		b.WriteString(hanging("  not covered", lost+": no likeliest failure was found", indent))
	}
	return b.String()
}

// likeliestWays writes the ways to fail with what each depends on.
func likeliestWays(e assess.ExposureChance) string {
	var b strings.Builder
	b.WriteString(hanging("ways to fail", "in "+wording.Exposure(e.Code)+", the likeliest first; shares say what decides", 20))
	for _, w := range e.Ways {
		b.WriteString(hanging("  "+wording.Margin(w.Beta), wording.WayToFail(w), 8))
		for _, in := range w.At {
			b.WriteString(hanging("", wording.DesignInput(in), 10))
		}
	}
	return b.String()
}

func randomInputs(list []assess.RandomInput) string {
	var b strings.Builder
	b.WriteString("random inputs\n")
	for _, in := range list {
		b.WriteString(hanging("", wording.RandomInput(in), 2))
		if in.Path != "" {
			b.WriteString(hanging("", "survey: "+in.Path, 4))
		}
		for _, ref := range in.Refs {
			b.WriteString(hanging("", "source: "+ref.Citation(), 4))
		}
	}
	return b.String()
}

func nextSteps(next assess.NextSteps) string {
	var b strings.Builder
	first := "measure next"
	for i, n := range next.List {
		b.WriteString(hanging(first, fmt.Sprintf("%d. %s", i+1, wording.Next(n)), 14))
		first = ""
	}
	switch {
	case len(next.List) == 0:
		b.WriteString(hanging(first, "nothing that a better measurement of this hang would move", 14))
	case len(next.List) > 1:
		b.WriteString(hanging("", wording.Together(next), 14))
	}
	return b.String()
}
