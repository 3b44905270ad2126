package web

import (
	"fmt"
	"math"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/engine/chance"
	"boughline/sheet/figure"
	"boughline/web/view"
	"boughline/web/words"
)

func chanceView(page *view.Chance, in wording.Units, c assess.HangChances, e easel) {
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
	page.Drawings = chanceDrawings(c, e)
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

// chanceDrawings draw the index that decides, over load and strength of its
// section, and the wider one of a season. Neither has a band: what the samples
// leave open is not what nobody knows.
func chanceDrawings(c assess.HangChances, e easel) []view.Drawing {
	var list []view.Drawing
	input := func(key, title, note string, index float64) figure.ChanceInput {
		return figure.ChanceInput{Key: c.Hang + " " + key, Title: title, Beta: index, Low: index, High: index, Target: c.Target, Notes: []string{note}}
	}
	if len(c.Deciding) > 0 {
		least := math.Inf(1)
		for _, d := range c.Deciding {
			least = math.Min(least, d.Index)
		}
		in := input("deciding", words.ChanceDrawn, words.ChanceDrawnNote, least)
		withDensities(&in, c.Figure)
		list = append(list, e.drawn(figure.Chance(in)))
	}
	for _, exposure := range c.Exposures {
		if exposure.Code == assess.OneSeason {
			list = append(list, e.drawn(figure.Chance(input("season", words.ChanceDrawnWide, words.ChanceWideNote, exposure.FirstOrder.Beta))))
		}
	}
	return list
}

// withDensities adds load and strength of the section that decides.
func withDensities(in *figure.ChanceInput, of *assess.ChanceFigure) {
	if of == nil {
		return
	}
	points := func(list []chance.Density) []figure.DensityPoint {
		var points []figure.DensityPoint
		for _, d := range list {
			points = append(points, figure.DensityPoint{Value: d.Value / 1000, Density: d.Density})
		}
		return points
	}
	in.Load, in.Strength, in.Quantity = points(of.Load), points(of.Strength), words.ChanceMoment
	in.Notes = append(in.Notes, fmt.Sprintf(words.ChanceCurves, wording.Check(assess.Check{Code: of.Code, Where: assess.Where{Part: of.Part}})))
}
