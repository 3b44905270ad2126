package figure_test

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"boughline/assess"
	"boughline/draw"
	"boughline/sheet/figure"
	"boughline/survey"
	"boughline/survey/surveytest"

	"pgregory.net/rapid"
)

// drawn is every drawing of a survey by what it shows.
type drawn struct {
	tree  assess.TreeFigure
	hang  *figure.Judged
	views []*draw.Scene // elevation and plan
	rest  []*draw.Scene
}

func all(t fataler, s *survey.Survey) []drawn {
	trees, hangs := judged(t, s)
	var list []drawn
	for _, tree := range trees {
		list = append(list, drawn{tree: tree, views: []*draw.Scene{figure.Elevation(tree, nil), figure.Plan(tree, nil)}})
	}
	for _, j := range hangs {
		d := drawn{tree: j.Figure.Tree, hang: &j, views: []*draw.Scene{figure.Elevation(j.Figure.Tree, &j), figure.Plan(j.Figure.Tree, &j)}}
		d.rest = append(d.rest, figure.Bending(j), figure.SectionOf(j, j.Figure.Survey().At.Value))
		if swing, err := figure.Swing(j); err == nil {
			d.rest = append(d.rest, swing)
		}
		if rig, err := figure.Rig(j); err == nil {
			d.rest = append(d.rest, rig)
		}
		list = append(list, d)
	}
	return append(list, drawn{rest: []*draw.Scene{figure.Site(s.Site, trees, hangs)}})
}

// TestRandomSites holds every drawing of sites that nobody would draw by hand
// to what all drawings promise.
func TestRandomSites(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		for _, d := range all(t, surveytest.Site().Draw(t, "site")) {
			for _, s := range append(d.views, d.rest...) {
				checkWords(t, s)
				checkInk(t, s)
				checkText(t, s)
			}
			for _, s := range d.views {
				checkFindings(t, s, d.tree)
			}
			if d.hang != nil {
				checkScale(t, d)
			}
		}
	})
}

// checkWords wants words that stay apart from one another and on the paper.
func checkWords(t fataler, s *draw.Scene) {
	paper := draw.BoxAt(draw.Point{}, s.Width, s.Height)
	var boxes []draw.Box
	var words []string
	s.Each(func(i draw.Item) {
		text, ok := i.(*draw.Text)
		if !ok {
			return
		}
		box := text.Box()
		if !paper.Holds(box) {
			t.Fatal(s.Key, ": ", text.Words, " leaves the paper: ", box)
		}
		for k, other := range boxes {
			if box.Overlaps(other) {
				t.Fatal(s.Key, ": ", text.Words, " overlaps ", words[k], ": ", box, other)
			}
		}
		boxes, words = append(boxes, box), append(words, text.Words)
	})
}

// checkInk wants every line on the paper.
func checkInk(t fataler, s *draw.Scene) {
	paper, group := draw.BoxAt(draw.Point{}, s.Width, s.Height), ""
	hold := func(points []draw.Point) {
		for _, p := range points {
			if !paper.Holds(draw.Box{Min: p, Max: p}) {
				t.Fatal(s.Key, ": ink beside the paper at ", p, ", after ", group)
			}
		}
	}
	s.Each(func(i draw.Item) {
		if g, ok := i.(*draw.Group); ok {
			group = g.Key
		}
		switch i := i.(type) {
		case *draw.Line:
			hold(i.Points)
		case *draw.Polygon:
			hold(i.Points)
		case *draw.Circle:
			hold(draw.Round(i.Centre, i.Radius))
		}
	})
}

// checkFindings wants every finding drawn once, and named in the text.
func checkFindings(t fataler, s *draw.Scene, tree assess.TreeFigure) {
	count := map[string]int{}
	s.Each(func(i draw.Item) {
		if g, ok := i.(*draw.Group); ok && strings.HasPrefix(g.Key, "finding ") {
			count[g.Key]++
		}
	})
	for _, f := range tree.Findings {
		if count["finding "+f.Survey.ID] != 1 {
			t.Fatal(s.Key, ": ", f.Survey.ID, " is drawn ", count["finding "+f.Survey.ID], " times")
		}
		if !strings.Contains(strings.Join(s.Says, " "), f.Survey.ID) {
			t.Fatal(s.Key, ": the text says nothing of ", f.Survey.ID)
		}
	}
	if len(count) != len(tree.Findings) {
		t.Fatal(s.Key, ": drawn ", count)
	}
}

// checkScale wants the limb of the hang true to scale. The elevation sees it
// square: the chord from foot to tip is as long as it is. In the plan it is as
// long as its shadow at noon.
func checkScale(t fataler, d drawn) {
	for _, m := range d.tree.Members {
		if m.ID != d.hang.Assessed.Member {
			continue
		}
		way := m.Axis[len(m.Axis)-1].Position.Sub(m.Axis[0].Position)
		for i, want := range []float64{way.Norm(), math.Hypot(way.X, way.Y)} {
			got := chordOf(d.views[i], m.ID) / scaleOf(t, d.views[i])
			if math.Abs(got-want) > 1e-6*math.Max(1, want) {
				t.Fatal(d.views[i].Key, ": limb ", m.ID, " is ", got, " m long on paper, ", want, " m on the tree")
			}
		}
	}
}

// chordOf is the distance on paper from the foot of a member to its tip.
func chordOf(s *draw.Scene, member string) (mm float64) {
	s.Each(func(i draw.Item) {
		if g, ok := i.(*draw.Group); ok && g.Key == "member "+member {
			p := g.Items[0].(*draw.Polygon).Points
			half := len(p) / 2
			middle := func(a, b draw.Point) draw.Point { return draw.Point{X: (a.X + b.X) / 2, Y: (a.Y + b.Y) / 2} }
			mm = draw.Distance(middle(p[0], p[len(p)-1]), middle(p[half-1], p[half]))
		}
	})
	return mm
}

// scaleOf reads the scale off the bar, mm of paper for each metre.
func scaleOf(t fataler, s *draw.Scene) (perMetre float64) {
	s.Each(func(i draw.Item) {
		if g, ok := i.(*draw.Group); ok && g.Key == "scale" {
			left, right := g.Items[0].(*draw.Polygon).Points, g.Items[1].(*draw.Polygon).Points
			metres, err := parseMetres(g.Items[2].(*draw.Text).Words)
			if err != nil {
				t.Fatal(err)
			}
			perMetre = (right[1].X - left[0].X) / metres
		}
	})
	return perMetre
}

func parseMetres(words string) (float64, error) {
	return strconv.ParseFloat(strings.TrimSuffix(words, " m"), 64)
}

// checkText wants a text equivalent that promises nothing.
func checkText(t fataler, s *draw.Scene) {
	says := strings.Join(s.Says, " ")
	if says == "" || s.Title == "" {
		t.Fatal(s.Key, ": no text equivalent")
	}
	if strings.Contains(strings.ToLower(says), " safe") {
		t.Fatal(s.Key, ": it promises: ", says)
	}
}
