package figure_test

import (
	"fmt"
	"testing"

	"boughline/assess"
	"boughline/quantity"
	"boughline/sheet/figure"
	"boughline/survey"

	"pgregory.net/rapid"
)

// However many findings a tree has, each is drawn once and its words cover no
// others.
func TestAnyNumberOfFindings(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := demoSurvey(t)
		s.Trees = s.Trees[:1]
		tree := &s.Trees[0]
		tree.Findings = nil
		for i := range rapid.IntRange(0, 90).Draw(t, "findings") {
			f := survey.Finding{ID: fmt.Sprint(rapid.SampledFrom([]string{"F", "finding ", "Ein sehr langer Name für einen Fund "}).Draw(t, "name"), i), Sign: "crown-06", Member: rapid.SampledFrom([]string{"stem", "L1", "L2"}).Draw(t, "member")}
			f.At = &survey.MeasuredLength{Value: quantity.Length(rapid.Float64Range(0, 8).Draw(t, "at"))}
			tree.Findings = append(tree.Findings, f)
		}
		figures, err := assess.NewFigures(s, tables)
		if err != nil {
			t.Fatal(err)
		}
		drawn := figures.Trees()[0]
		checkFindings(t, figure.Elevation(drawn, nil), drawn)
		hold(t, figure.Elevation(drawn, nil))
		checkFindings(t, figure.Plan(drawn, nil), drawn)
		hold(t, figure.Plan(drawn, nil))
	})
}
