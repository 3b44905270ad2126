package web

import (
	"fmt"
	"math"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/sheet/figure"
	"boughline/web/view"
	"boughline/web/words"
)

func chanceView(page *view.Chance, in wording.Units, c assess.HangChances) {
	page.LeavesOut = wording.LeavesOut(c.LeftOut)
	page.About = aboutChance(in, c)
	for _, d := range c.Deciding {
		check := wording.Check(assess.Check{Code: d.Code, Where: assess.Where{Part: d.Part}})
		page.Deciding = append(page.Deciding, view.Row{Name: check, Value: against(d.Index, c.Target)})
	}
	for _, e := range c.Exposures {
		page.Exposures = append(page.Exposures, exposureView(e, c.Target))
		if e.Code == assess.OneSeason && e.FirstOrder.Beta < c.Target {
			page.Mind = words.ChanceMind
		}
	}
	if c.Samples == 0 {
		page.Samples = mostSamples
	}
	hardest := c.Exposures[len(c.Exposures)-1]
	page.WaysOf = fmt.Sprintf(words.WaysToFailHow, wording.Exposure(hardest.Code))
	for _, w := range hardest.Ways {
		way := view.FailureWay{Margin: wording.Margin(w.Beta), Text: in.WayToFail(w)}
		for _, input := range w.At {
			way.From = append(way.From, in.DesignInput(input))
		}
		page.Ways = append(page.Ways, way)
	}
	page.Drawings = chanceDrawings(c)
}

func aboutChance(in wording.Units, c assess.HangChances) []view.Row {
	of := words.ChanceAsked
	if c.WithinUse {
		of = words.ChanceWithin
	}
	rows := append([]view.Row{{Name: words.ChanceFor, Value: of}}, useRows(in, c.Use)...)
	return append(rows,
		view.Row{Name: words.ChanceGiven, Value: fmt.Sprintf(words.ChanceGivenTest, in.Quantity(float64(c.TestMass), "kg"))},
		view.Row{Name: words.ChanceTarget, Value: fmt.Sprintf(words.ChanceTargetIs, wording.Margin(c.Target))})
}

// against says how an index stands to the target, which is one for a season.
func against(index, target float64) string {
	text := words.ChanceMeets
	if index < target {
		text = words.ChanceShort
	}
	return fmt.Sprintf(text, wording.Margin(index), wording.Margin(target))
}

func exposureView(e assess.ExposureChance, target float64) view.Exposure {
	shown := view.Exposure{Name: capital(wording.Exposure(e.Code)), Rides: fmt.Sprintf(words.ChanceRides, e.Rides)}
	if e.Rides == 1 {
		shown.Rides = words.ChanceOneRide
	}
	if e.AtDesign {
		shown.Rides += ", " + words.ChanceAtDesign
	}
	shown.Rows = []view.Row{
		{Name: words.ChanceLikeliest, Value: wording.Figure(e.FirstOrder)},
		{Name: words.ChanceAllWays, Value: wording.Figure(e.Bound)},
	}
	if e.Code == assess.OneSeason {
		shown.Rows = append(shown.Rows, view.Row{Name: words.ChanceAgainst, Value: against(e.FirstOrder.Beta, target)})
	}
	if e.Sampled != nil {
		shown.Rows = append(shown.Rows, view.Row{Name: words.ChanceSampled, Value: wording.Interval(*e.Sampled)},
			view.Row{Name: words.ChancePlain, Value: wording.Interval(*e.Plain)})
	}
	for _, lost := range e.Lost {
		shown.Rows = append(shown.Rows, view.Row{Name: words.ChanceNotFound, Value: lost + ": " + words.ChanceNoWay})
	}
	return shown
}

// chanceDrawings draw the index that decides, and the wider one of a season.
// Neither has a band: what the samples leave open is not what nobody knows.
func chanceDrawings(c assess.HangChances) []string {
	var list []string
	draw := func(key, title, note string, index float64) {
		list = append(list, drawn(figure.Chance(figure.ChanceInput{
			Key: c.Hang + " " + key, Title: title, Beta: index, Low: index, High: index, Target: c.Target, Notes: []string{note},
		})))
	}
	if len(c.Deciding) > 0 {
		least := math.Inf(1)
		for _, d := range c.Deciding {
			least = math.Min(least, d.Index)
		}
		draw("deciding", words.ChanceDrawn, words.ChanceDrawnNote, least)
	}
	for _, e := range c.Exposures {
		if e.Code == assess.OneSeason {
			draw("season", words.ChanceDrawnWide, words.ChanceWideNote, e.FirstOrder.Beta)
		}
	}
	return list
}
