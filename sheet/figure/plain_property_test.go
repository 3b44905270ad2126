package figure_test

import (
	"fmt"
	"math"
	"testing"

	"boughline/assess"
	"boughline/draw"
	"boughline/engine/section"
	"boughline/quantity"
	"boughline/sheet/figure"
	"boughline/survey/surveytest"

	"pgregory.net/rapid"
)

func hold(t *rapid.T, s *draw.Scene) {
	checkWords(t, s)
	checkInk(t, s)
	checkText(t, s)
}

func words(t *rapid.T, label string) string {
	return rapid.StringMatching(`[A-Za-zäöü][a-zé '/-]{0,90}`).Draw(t, label)
}

func TestAnyChanceFitsThePaper(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		number := func(label string, low, high float64) float64 { return rapid.Float64Range(low, high).Draw(t, label) }
		beta := number("beta", -6, 12)
		in := figure.ChanceInput{
			Key: "any", Title: words(t, "title"), Quantity: "fibre stress, MPa", Beta: beta, Target: number("target", 1, 6),
			Low: beta - number("below", 0, 4), High: beta + number("above", 0, 4),
		}
		if rapid.Bool().Draw(t, "densities") {
			in.Load = normal(number("load", 0.001, 400), number("sd", 0.001, 60))
			in.Strength = normal(number("strength", 0.001, 400), number("sd", 0.001, 60))
		}
		hold(t, figure.Chance(in))
	})
}

func TestAnyBandFitsThePaper(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := figure.BandInput{Key: "any", Title: words(t, "title"), Limb: quantity.Length(rapid.Float64Range(0.5, 25).Draw(t, "limb")), Longest: quantity.Length(rapid.Float64Range(1, 40).Draw(t, "longest"))}
		columns := rapid.IntRange(0, 40).Draw(t, "columns")
		for i := range columns {
			cut := in.Longest * quantity.Length(rapid.Float64Range(0, 1).Draw(t, "cut"))
			run := figure.BandRun{From: in.Limb * quantity.Length(i) / quantity.Length(columns), To: in.Limb * quantity.Length(i+1) / quantity.Length(columns)}
			for _, ends := range [][2]quantity.Length{{0, cut}, {cut, in.Longest}} {
				run.Shortest, run.Longer = ends[0], ends[1]
				if run.Binding = ""; rapid.Bool().Draw(t, "binds") {
					run.Binding = fmt.Sprint("check ", rapid.IntRange(0, 12).Draw(t, "code"))
				}
				in.Runs = append(in.Runs, run)
			}
		}
		if in.Marked = rapid.Bool().Draw(t, "marked"); in.Marked {
			in.At = in.Limb * quantity.Length(rapid.Float64Range(0, 1).Draw(t, "at"))
			in.Line = in.Longest * quantity.Length(rapid.Float64Range(0, 1).Draw(t, "line"))
		}
		hold(t, figure.Band(in))
	})
}

func TestAnySectionFitsThePaper(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		across, upright := rapid.Float64Range(0.01, 1).Draw(t, "across"), rapid.Float64Range(0.01, 1).Draw(t, "upright")
		ellipse := func(share float64) section.Ring {
			return section.Ellipse(section.Point{}, quantity.Length(across*share), quantity.Length(upright*share), quantity.Angle(rapid.Float64Range(0, math.Pi).Draw(t, "turn")))
		}
		in := figure.SectionInput{Key: "any", Title: words(t, "title"), Outline: ellipse(1)}
		for range rapid.IntRange(0, 6).Draw(t, "cavities") {
			in.Cavities = append(in.Cavities, ellipse(rapid.Float64Range(0.02, 0.5).Draw(t, "size")))
		}
		hold(t, figure.Section(in))
	})
}

// A site of two hundred trees names every tree once, on the plan or below it.
func TestLargeSite(t *testing.T) {
	s := surveytest.Large(200)
	figures, err := assess.NewFigures(s, tables)
	if err != nil {
		t.Fatal(err)
	}
	scene := figure.Site(s.Site, figures.Trees(), nil)
	checkWords(t, scene)
	count := map[string]int{}
	scene.Each(func(i draw.Item) {
		if g, ok := i.(*draw.Group); ok {
			count[g.Key]++
		}
	})
	for _, tree := range s.Trees {
		if count["tree "+tree.ID] != 1 {
			t.Errorf("%s is drawn %d times", tree.ID, count["tree "+tree.ID])
		}
	}
}
