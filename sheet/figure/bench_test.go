package figure_test

import (
	"testing"

	"boughline/draw/svg"
	"boughline/sheet/figure"
	"boughline/survey/surveytest"

	"boughline/assess"
)

func BenchmarkDrawings(b *testing.B) {
	_, hangs := judged(b, demoSurvey(b))
	j := hangs[0]
	b.Run("hang", func(b *testing.B) {
		for b.Loop() {
			for _, s := range ofHang(b, j) {
				svg.Text(s, svg.Options{})
			}
		}
	})
	figures, err := assess.NewFigures(surveytest.Large(200), tables)
	if err != nil {
		b.Fatal(err)
	}
	trees := figures.Trees()
	b.Run("site of 200 trees", func(b *testing.B) {
		for b.Loop() {
			svg.Text(figure.Site("large", trees, nil), svg.Options{})
		}
	})
}
