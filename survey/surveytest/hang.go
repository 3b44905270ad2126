package surveytest

import (
	"fmt"

	"boughline/quantity"
	"boughline/survey"

	"pgregory.net/rapid"
)

func hang(t *rapid.T, s *survey.Survey, members []survey.Member, id string) survey.Hang {
	limb := members[rapid.IntRange(1, len(members)-1).Draw(t, "limb")]
	h := survey.Hang{
		ID:           id,
		Member:       limb.ID,
		At:           length(0, memberLength(limb)*0.8)(t),
		Line:         chosen(rapid.Float64Range(1, 12).Draw(t, "line")),
		SwingAzimuth: maybe(t, "swing azimuth", chosenAngle(0, 360)),
		Amplitude:    chosenAngle(10, 80)(t),
		Riders:       rapid.SampledFrom(s.Riders).Draw(t, "riders").ID,
		Chain:        rapid.SampledFrom(s.Chains).Draw(t, "chain").ID,
		Height:       maybe(t, "height", length(2, 15)),
		Ground:       maybe(t, "ground", ground),
		Sleeve:       rapid.SampledFrom([]string{"", "none", "hose", "strap", "pad"}).Draw(t, "sleeve"),
		Note:         note(t, "note"),
	}
	if yesOrNo(t) {
		slack := chosen(rapid.Float64Range(0, 1).Draw(t, "slack"))
		h.Slack = &slack
	}
	for range rapid.IntRange(0, 2).Draw(t, "spots") {
		h.Waiting = append(h.Waiting, spot(t))
		h.WayIn = append(h.WayIn, spot(t))
	}
	h.Obstacles = obstacles(t)
	return h
}

func obstacles(t *rapid.T) (list []survey.Obstacle) {
	for range rapid.IntRange(0, 2).Draw(t, "obstacles") {
		o := survey.Obstacle{
			What: text().Draw(t, "what"), Kind: rapid.SampledFrom([]string{"", survey.Solid, survey.Water, survey.Path}).Draw(t, "kind"),
			Azimuth: angle(0, 360)(t), Distance: length(1, 20)(t), Radius: length(0.1, 2)(t), Area: yesOrNo(t),
		}
		for range rapid.IntRange(0, 3).Draw(t, "corners") {
			o.Corners = append(o.Corners, spot(t))
		}
		list = append(list, o)
	}
	return list
}

// lie is a ring of spot heights about the stem.
func lie(t *rapid.T) survey.Lie {
	l := survey.Lie{Surface: rapid.SampledFrom([]string{"turf", "soil", "sand"}).Draw(t, "surface"), DepthLoose: maybe(t, "depth", length(0, 0.5))}
	for i := range rapid.IntRange(3, 8).Draw(t, "spots") {
		l.Spots = append(l.Spots, survey.SpotHeight{
			Azimuth: chosenAngle(float64(45*i), float64(45*i+20))(t), Distance: chosen(rapid.Float64Range(5, 20).Draw(t, "distance")), Height: length(-2, 2)(t),
		})
	}
	return l
}

func ground(t *rapid.T) survey.Ground {
	g := survey.Ground{
		Surface:    rapid.SampledFrom([]string{"turf", "soil", "wood chips", "sand"}).Draw(t, "surface"),
		DepthLoose: maybe(t, "depth", length(0, 0.5)),
	}
	for i := range rapid.IntRange(1, 5).Draw(t, "points") {
		g.Along = append(g.Along, survey.GroundPoint{At: chosen(float64(i)*2 - 4), Height: length(-2, 2)(t)})
	}
	for i := range rapid.IntRange(0, 3).Draw(t, "points across") {
		g.Across = append(g.Across, survey.GroundPoint{At: chosen(float64(i)*2 - 2), Height: length(-2, 2)(t)})
	}
	return g
}

func spot(t *rapid.T) survey.Spot {
	return survey.Spot{Azimuth: chosenAngle(0, 360)(t), Distance: chosen(rapid.Float64Range(1, 30).Draw(t, "distance"))}
}

func chain(t *rapid.T, i int) survey.Chain {
	return survey.Chain{ID: fmt.Sprintf("chain %d", i+1), Parts: []survey.Part{
		sling(t),
		part(t, "connector", "metal"),
		part(t, "rope", "textile"),
		part(t, "seat", "textile"),
	}}
}

func part(t *rapid.T, kind, material string) survey.Part {
	p := survey.Part{
		Name: text().Draw(t, "name"), Kind: kind, Material: material,
		Ends:      rapid.SliceOfN(rapid.SampledFrom([]string{"figure eight", "bowline", "sewn eye"}), 0, 2).Draw(t, "ends"),
		Condition: rapid.SampledFrom([]string{"", "good", "worn", "retired", "unknown"}).Draw(t, "condition"),
		Thickness: maybe(t, "thickness", length(0.008, 0.04)),
		Length:    maybe(t, "length", length(0.1, 20)),
	}
	if len(p.Ends) == 0 {
		p.Ends = nil
	}
	if yesOrNo(t) {
		p.Item, p.Despite = text().Draw(t, "item"), note(t, "despite")
	}
	if yesOrNo(t) {
		p.InServiceSince = days().Draw(t, "since")
	}
	if yesOrNo(t) {
		p.Standard = rapid.SampledFrom([]string{"EN 362", "EN 566", "EN 1891 A"}).Draw(t, "standard")
	} else {
		p.Mark = maybe(t, "mark", mark)
	}
	return p
}

func sling(t *rapid.T) survey.Part {
	p := part(t, "sling", "textile")
	p.Hitch = rapid.SampledFrom([]string{"straight", "basket", "choker", "girth"}).Draw(t, "hitch")
	p.ChokeAngle = maybe(t, "choke", chosenAngle(90, 180))
	p.LegAngle = maybe(t, "leg", chosenAngle(30, 90))
	p.BendOver = maybe(t, "bend over", length(0.1, 0.6))
	p.Width = maybe(t, "width", length(0.02, 0.1))
	p.AxialStiffness = maybe(t, "stiffness", force(1e4, 1e6))
	return p
}

func mark(t *rapid.T) survey.Mark {
	return survey.Mark{
		Strength: force(1000, 50000)(t),
		Kind:     rapid.SampledFrom([]string{survey.MarkBreaking, survey.MarkWorking, survey.MarkUnknown}).Draw(t, "kind"),
	}
}

func force(low, high float64) func(*rapid.T) survey.ChosenForce {
	return func(t *rapid.T) survey.ChosenForce {
		return survey.ChosenForce{Value: quantity.Force(rapid.Float64Range(low, high).Draw(t, "N"))}
	}
}
