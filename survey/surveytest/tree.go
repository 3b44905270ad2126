package surveytest

import (
	"fmt"

	"boughline/survey"

	"pgregory.net/rapid"
)

func tree(t *rapid.T, s *survey.Survey, i int) survey.Tree {
	height := rapid.Float64Range(8, 40).Draw(t, "height")
	tree := survey.Tree{
		ID:      fmt.Sprintf("tree %d", i+1),
		Name:    note(t, "name"),
		Species: rapid.SampledFrom([]string{"Quercus robur", "Fagus sylvatica", "Tilia cordata", "Pinus sylvestris", "Fraxinus excelsior"}).Draw(t, "species"),
		Group:   rapid.SampledFrom([]string{"", "broadleaf", "conifer"}).Draw(t, "group"),
		East:    maybe(t, "east", length(-300, 300)),
		North:   maybe(t, "north", length(-300, 300)),
		Crown:   maybe(t, "crown", crown(height)),
		Note:    note(t, "note"),
	}
	tall := length(height, height)(t)
	tree.Height = &tall
	stem := stem(t, height)
	tree.Members = []survey.Member{stem}
	for i := range rapid.IntRange(1, 4).Draw(t, "limbs") {
		limb := limb(t, i, stem)
		tree.Members = append(tree.Members, limb)
		if yesOrNo(t) {
			tree.Unions = append(tree.Unions, union(t, limb.ID))
		}
	}
	inspect(t, &tree)
	for range rapid.IntRange(0, 2).Draw(t, "gusts") {
		tree.Stood = append(tree.Stood, gust(t))
	}
	tree.Ground, tree.Obstacles = maybe(t, "ground", lie), obstacles(t)
	for range rapid.IntRange(0, 2).Draw(t, "way in") {
		tree.WayIn = append(tree.WayIn, spot(t))
	}
	for j := range rapid.IntRange(0, 2).Draw(t, "hangs") {
		tree.Hangs = append(tree.Hangs, hang(t, s, tree.Members, fmt.Sprintf("hang %d.%d", i+1, j+1)))
	}
	for _, h := range tree.Hangs {
		if yesOrNo(t) {
			tree.LoadTests = append(tree.LoadTests, loadTest(t, h.ID))
		}
	}
	return tree
}

func crown(height float64) func(*rapid.T) survey.Crown {
	return func(t *rapid.T) survey.Crown {
		return survey.Crown{
			BaseHeight: maybe(t, "base", length(0, height)),
			Width:      maybe(t, "width", length(2, 30)),
		}
	}
}

func stem(t *rapid.T, height float64) survey.Member {
	long := length(height, height)(t)
	upright := angle(90, 90)(t)
	return survey.Member{
		ID:          "stem",
		Inclination: &upright,
		Length:      &long,
		Stations:    stations(t, 0.3, 2, height),
		Bark:        maybe(t, "bark", length(0.005, 0.05)),
	}
}

func limb(t *rapid.T, i int, stem survey.Member) survey.Member {
	long := rapid.Float64Range(2, 15).Draw(t, "length")
	m := survey.Member{
		ID:       fmt.Sprintf("limb %d", i+1),
		Parent:   stem.ID,
		RisesAt:  maybe(t, "rises at", length(2, float64(stem.Length.Value))),
		Stations: stations(t, 0.1, 0.6, long),
		Tip:      maybe(t, "tip", length(0.01, 0.1)),
		Bark:     maybe(t, "bark", length(0.002, 0.03)),
	}
	if yesOrNo(t) {
		m.Path = limbPath(t, long)
		return m
	}
	reach := length(long, long)(t)
	toward, up := angle(0, 360)(t), angle(-20, 70)(t)
	m.Length, m.Azimuth, m.Inclination = &reach, &toward, &up
	return m
}

// limbPath goes out in straight pieces of which the first alone is as long as
// the limb.
func limbPath(t *rapid.T, long float64) []survey.Point {
	points := []survey.Point{{East: chosen(long)}}
	for range rapid.IntRange(0, 3).Draw(t, "corners") {
		last := points[len(points)-1]
		step := rapid.Float64Range(0.1, 1)
		points = append(points, survey.Point{
			East:  survey.ChosenLength{Value: last.East.Value + chosen(step.Draw(t, "east")).Value},
			North: chosen(step.Draw(t, "north")),
			Up:    chosen(step.Draw(t, "up")),
		})
	}
	return points
}

// stations measures a taper between two diameters over a length.
func stations(t *rapid.T, thin, thick, long float64) []survey.Station {
	n := rapid.IntRange(1, 4).Draw(t, "stations")
	all := make([]survey.Station, n)
	for i := range all {
		all[i] = station(t, length(thin, thick))
		all[i].At = chosen(long * float64(i) / float64(n))
	}
	return all
}

func station(t *rapid.T, size func(*rapid.T) survey.MeasuredLength) survey.Station {
	one, other := size(t), size(t)
	switch rapid.IntRange(0, 2).Draw(t, "by") {
	case 0:
		return survey.Station{Girth: &one}
	case 1:
		return survey.Station{Diameter: &one}
	}
	return survey.Station{Upright: &one, Across: &other}
}

func union(t *rapid.T, member string) survey.Union {
	return survey.Union{
		Member: member,
		Form:   rapid.SampledFrom([]string{survey.FormU, survey.FormV, survey.NotSeen}).Draw(t, "form"),
		Bark:   rapid.SampledFrom([]string{survey.BarkRidge, survey.BarkInclude, survey.NotSeen}).Draw(t, "bark"),
		Parent: maybe(t, "parent", length(0.2, 2)),
	}
}

func gust(t *rapid.T) survey.Gust {
	return survey.Gust{Speed: speed(t), On: days().Draw(t, "on"), InLeaf: yesOrNo(t), Source: text().Draw(t, "source"), Void: note(t, "void")}
}
