// Package surveytest draws plausible whole surveys for property tests. What it
// draws is always valid; all of it is invented.
package surveytest

import (
	"fmt"

	"boughline/survey"

	"pgregory.net/rapid"
)

// Site draws a site with one to three trees, each with a stem, limbs, looks,
// findings and hangs, and the riders and chains that the hangs use.
func Site() *rapid.Generator[*survey.Survey] {
	return rapid.Custom(func(t *rapid.T) *survey.Survey { return site(t, rapid.IntRange(1, 3).Draw(t, "trees")) })
}

// Large returns a site with the given number of trees, the same each time.
func Large(trees int) *survey.Survey {
	return rapid.Custom(func(t *rapid.T) *survey.Survey { return site(t, trees) }).Example(1)
}

func site(t *rapid.T, trees int) *survey.Survey {
	s := &survey.Survey{
		Version:  survey.Version,
		Site:     text().Draw(t, "site"),
		Place:    maybe(t, "place", place),
		Day:      days().Draw(t, "day"),
		Surveyor: note(t, "surveyor"),
		Note:     note(t, "note"),
		Wind:     maybe(t, "wind", wind),
	}
	for i := range rapid.IntRange(1, 3).Draw(t, "riders") {
		s.Riders = append(s.Riders, riders(t, i))
	}
	for i := range rapid.IntRange(1, 2).Draw(t, "chains") {
		s.Chains = append(s.Chains, chain(t, i))
	}
	for i := range trees {
		s.Trees = append(s.Trees, tree(t, s, i))
	}
	conditions(t, s)
	return s
}

func place(t *rapid.T) survey.Place {
	return survey.Place{
		Latitude:  rapid.Float64Range(-90, 90).Draw(t, "latitude"),
		Longitude: rapid.Float64Range(-180, 180).Draw(t, "longitude"),
		WayIn:     note(t, "way in"),
	}
}

func wind(t *rapid.T) survey.Wind {
	return survey.Wind{
		Terrain:      rapid.SampledFrom([]string{"0", "I", "II", "III", "IV"}).Draw(t, "terrain"),
		InLeaf:       maybe(t, "in leaf", yesOrNo),
		StopBeaufort: maybe(t, "stop", func(t *rapid.T) int { return rapid.IntRange(0, 12).Draw(t, "beaufort") }),
	}
}

func riders(t *rapid.T, i int) survey.Riders {
	return survey.Riders{
		ID:       fmt.Sprintf("riders %d", i+1),
		Count:    rapid.IntRange(1, 20).Draw(t, "count"),
		Ages:     maybe(t, "ages", ages),
		Each:     maybe(t, "each", mass(3, 250)),
		Standard: yesOrNo(t),
		Seat:     maybe(t, "seat", mass(0, 40)),
		Posture:  rapid.SampledFrom([]string{"", survey.Seated, survey.Straddled, survey.Standing}).Draw(t, "posture"),
	}
}

func ages(t *rapid.T) survey.Ages {
	from := rapid.IntRange(1, 99).Draw(t, "from")
	return survey.Ages{From: from, To: rapid.IntRange(from, 99).Draw(t, "to")}
}
