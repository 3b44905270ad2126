package knowledge

import (
	"slices"
	"strings"
	"testing"

	"boughline/engine/signs"
)

func TestHazards(t *testing.T) {
	b := base(t)
	if n := len(b.Hazards()); n < 20 {
		t.Errorf("only %d hazards", n)
	}
	for _, h := range b.Hazards() {
		for _, text := range []string{h.Name, h.LookFor, h.Means, h.Do} {
			if strings.TrimSpace(text) == "" {
				t.Errorf("%s has an empty text", h.ID)
			}
		}
		if h.Near < h.Beyond || h.Reach <= 0 {
			t.Errorf("%s: near %v, farther %v, within %v m", h.ID, h.Near, h.Beyond, float64(h.Reach))
		}
		s, ok := b.Sign(h.Sign)
		if h.Sign != "" && (!ok || s.Zone != signs.Surroundings) {
			t.Errorf("%s: %q is no sign of the surroundings", h.ID, h.Sign)
		}
		if group := []string{"law", "wildlife"}; slices.Contains(group, h.Group) && h.Near >= signs.Question && h.CheckWith == "" {
			t.Errorf("%s may bring duties and says with whom to check", h.ID)
		}
	}
	for _, id := range []string{"power-line", "nest-in-use", "bat-roost", "oak-processionary", "giant-hogweed", "ticks", "wasps-hornets-bees", "protected-tree", "open-water"} {
		if _, ok := b.Hazard(id); !ok {
			t.Errorf("no hazard %s", id)
		}
	}
	if _, ok := b.Hazard("dragon"); ok {
		t.Error("a hazard that does not exist was found")
	}
}

// Duties are for others to say: no row tells the law, each says with whom to
// check.
func TestNoRowTellsTheLaw(t *testing.T) {
	for _, h := range base(t).Hazards() {
		for _, text := range []string{h.Means, h.Do, h.LookFor} {
			for _, word := range []string{" Act ", "illegal", "fine of", "licence", "must by law", "prison"} {
				if strings.Contains(text, word) {
					t.Errorf("%s: %q tells the law", h.ID, text)
				}
			}
		}
	}
}

// What stands in the table of signs as well leads to as much near people.
func TestHazardsAgreeWithSigns(t *testing.T) {
	b := base(t)
	for _, h := range b.Hazards() {
		s, ok := b.Sign(h.Sign)
		if ok && s.Urgency != signs.Note && h.Near < min(s.AbovePeople, signs.Question) {
			t.Errorf("%s: near people %v, as the sign %s %v", h.ID, h.Near, s.ID, s.AbovePeople)
		}
	}
}
