package hangsearch

import (
	"bytes"
	"fmt"
	"sync"
	"testing"

	"boughline/demo"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

var tables = sync.OnceValue(func() *knowledge.Base {
	k, err := knowledge.Load()
	if err != nil {
		panic(err)
	}
	return k
})

// oak is the first tree of the demo with six limbs, on ground that slopes, and
// three groups of riders.
func oak(t testing.TB) *survey.Survey {
	t.Helper()
	s, problems, err := survey.Read(bytes.NewReader(demo.Survey()))
	if err != nil || len(problems) > 0 {
		t.Fatal(err, problems)
	}
	s.Trees, s.Riders, s.Lines = s.Trees[:1], s.Riders[:3], nil
	tree := &s.Trees[0]
	first, union := tree.Members[1], tree.Unions[0]
	for i := range 4 { // beside the two that the demo has
		limb := first
		limb.ID = fmt.Sprintf("M%d", i+1)
		rises, azimuth := *first.RisesAt, *first.Azimuth
		rises.Value += quantity.Length(i%3)*0.2 + 0.1
		azimuth.Value += quantity.Angle(55*(i+1)) * quantity.Degree
		limb.RisesAt, limb.Azimuth = &rises, &azimuth
		u := union
		u.Member = limb.ID
		tree.Members, tree.Unions = append(tree.Members, limb), append(tree.Unions, u)
	}
	tree.Ground = sloping(0.06, -0.03)
	tree.Hangs = nil
	return s
}

// sloping is measured ground that rises to the east and to the north.
func sloping(east, north float64) *survey.Lie {
	depth := measured(0.45)
	g := &survey.Lie{Surface: "loose fill 300 mm", DepthLoose: &depth}
	for _, spot := range [][2]float64{{22, 0}, {22, 60}, {22, 120}, {22, 180}, {22, 240}, {22, 300}, {6, 20}, {6, 140}, {6, 260}} {
		at := quantity.Heading(quantity.Angle(spot[1])*quantity.Degree, 0).Scale(spot[0])
		g.Spots = append(g.Spots, survey.SpotHeight{
			Azimuth:  survey.ChosenAngle{Value: quantity.Angle(spot[1]) * quantity.Degree},
			Distance: survey.ChosenLength{Value: quantity.Length(spot[0])},
			Height:   survey.MeasuredLength{Value: quantity.Length(east*at.X + north*at.Y), Sd: 0.02, SdStated: true, How: quantity.Clinometer},
		})
	}
	return g
}

func measured(m float64) survey.MeasuredLength {
	return survey.MeasuredLength{Value: quantity.Length(m), How: quantity.Taped}
}
