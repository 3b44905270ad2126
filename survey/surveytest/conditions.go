package surveytest

import (
	"boughline/survey"

	"pgregory.net/rapid"
)

// conditions adds to a finished site what the looks were made in, and a hazard.
func conditions(t *rapid.T, s *survey.Survey) {
	for i := range s.Trees {
		for j := range s.Trees[i].Looks {
			l := &s.Trees[i].Looks[j]
			l.Leaves = rapid.SampledFrom([]string{"", "in leaf", "part in leaf", "bare"}).Draw(t, "leaves")
			l.Air = rapid.SampledFrom([]string{"", "still", "twigs move", "limbs move"}).Draw(t, "air")
			if yesOrNo(t) {
				l.InTheWay = []string{rapid.SampledFrom([]string{"snow", "litter", "undergrowth", "ivy", "leaves"}).Draw(t, "in the way")}
			}
		}
	}
	if yesOrNo(t) {
		s.Hazards = []survey.Hazard{hazard(t, s.Trees)}
	}
}

func hazard(t *rapid.T, trees []survey.Tree) survey.Hazard {
	h := survey.Hazard{
		ID: "hazard 1", Hazard: rapid.SampledFrom([]string{"power-line", "ticks", "open-water"}).Draw(t, "hazard"),
		SeenOn: days().Draw(t, "seen on"), Note: note(t, "note"),
	}
	switch rapid.IntRange(0, 2).Draw(t, "place") {
	case 0:
		h.Tree = trees[0].ID
		side, distance := angle(0, 360)(t), length(0, 100)(t)
		h.Side, h.Distance = &side, &distance
	case 1:
		east, north := length(-300, 300)(t), length(-300, 300)(t)
		h.East, h.North = &east, &north
	}
	h.Cleared = maybe(t, "cleared", func(t *rapid.T) survey.Cleared {
		return survey.Cleared{On: h.SeenOn.AddMonths(1), How: text().Draw(t, "how"), By: note(t, "by")}
	})
	return h
}
