package knowledge

import (
	"fmt"
	"strings"

	"boughline/engine/fungi"
)

// meaningText words what all that remain mean together.
func (b *Base) meaningText(r fungi.Result) string {
	m := r.Meaning
	switch r.Answer {
	case fungi.PerhapsNone:
		return "Perhaps no fungus. " + b.harmlessText(m)
	case fungi.HarmlessHere:
		return "Says little or nothing against the standing tree. " + b.harmlessText(m)
	case fungi.NotEnoughSeen:
		return "Not enough seen to name it. " + b.unnamedText(m)
	case fungi.Unknown:
		return "It fits nothing in the tables well. " + b.unnamedText(m)
	}
	return b.decayText(m)
}

// unnamedText says what an unnamed fungus counts as.
func (b *Base) unnamedText(m fungi.Meaning) string {
	return fmt.Sprintf("Until it is named, an unknown fungus at the foot, over the roots or on the load path counts as the worst of what remains, so far %s: %s Look closer, answer more, or ask a mycologist.",
		m.Worst, lowerFirst(b.adviceText(m)))
}

func lowerFirst(text string) string { return strings.ToLower(text[:1]) + text[1:] }

func (b *Base) harmlessText(m fungi.Meaning) string {
	k, _ := b.lookalike(m.Remaining[0])
	text := fmt.Sprintf("Most like this: %s. %s", k.Name, k.Meaning)
	if m.Advice == fungi.LookCloser {
		text += " Look at what it grows from before this is put aside."
	}
	if m.RuleOut != "" {
		text += fmt.Sprintf(" First rule out %s, which would count against the tree.", m.RuleOut)
	}
	return strings.TrimSpace(text)
}

// decayText says which part loses strength, how it hides, and what follows.
func (b *Base) decayText(m fungi.Meaning) string {
	var s []string
	if len(m.Shared) > 0 {
		s = append(s, "All that remain weaken "+partList(m.Shared)+".")
	}
	if len(m.Some) > 0 && len(m.Shared) > 0 {
		s = append(s, "Some of them also weaken "+partList(m.Some)+".")
	} else if len(m.Some) > 0 {
		s = append(s, "Those that remain weaken different parts: "+partList(m.Some)+".")
	}
	s = append(s, hidingTexts[m.Hiding], b.adviceText(m))
	if len(m.Remaining) == 1 {
		if f, ok := b.Fungus(m.Remaining[0]); ok {
			s = append(s, fmt.Sprintf("Of %s: %s", f.Name, f.MeaningForPeople))
		}
	}
	if !m.Agreed {
		s = append(s, fmt.Sprintf("They differ in weight; until they are parted the worst of them counts, %s.", m.Worst))
	}
	return strings.Join(s, " ")
}

var partNames = map[string]string{
	"root_plate": "the root plate", "butt": "the foot of the stem", "stem": "the stem",
	"limb": "the limb that bears it", "wound": "the wood at the wound",
}

func partList(parts []string) string {
	names := make([]string, len(parts))
	for i, p := range parts {
		names[i] = partNames[p]
	}
	if len(names) < 2 {
		return strings.Join(names, "")
	}
	return strings.Join(names[:len(names)-1], ", ") + " and " + names[len(names)-1]
}

var hidingTexts = map[fungi.Hiding]string{
	fungi.AllYear:   "Its fruit bodies last, yet the decay reaches farther than they show.",
	fungi.LeavesOld: "Fresh ones show for part of the year; look for old remains in the other months.",
	fungi.PartYear:  "It shows for some weeks of the year only; the decay is there all year, and the crown can stay green.",
}

func (b *Base) adviceText(m fungi.Meaning) string {
	switch m.Advice {
	case fungi.NoPeople:
		return "No people on or under this tree: it can break or go over without warning. Leave it, and show it to an arborist."
	case fungi.NotThisPart:
		return "The wood that bears it is dead or dying: nobody on or under that limb, and no load path through it. Look for the same elsewhere on the tree."
	}
	for _, p := range append(append([]string{}, m.Shared...), m.Some...) {
		if p == "root_plate" || p == "butt" {
			return "It carries the whole load path: no people before an arborist has measured the foot of the stem and looked at the roots."
		}
	}
	return "On the load path or above people it bars that part: nobody on or under what bears it, or on limbs that grow from that stretch of stem, before an arborist has measured the wood there. On the far side of the tree note it, and look for more."
}
