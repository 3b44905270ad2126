package knowledge

import (
	"strings"
	"testing"
)

func TestSpeciesIsFoundByAnyName(t *testing.T) {
	b := base(t)
	for name, want := range map[string]string{
		"Quercus robur": "Quercus robur", "quercus  ROBUR": "Quercus robur", "English oak": "Quercus robur",
		"pedunculate-oak": "Quercus robur", "Platanus × acerifolia": "Platanus x hispanica", "Platanus acerifolia": "Platanus x hispanica",
		"Tilia x europaea": "Tilia x europaea", "crack willow": "Salix alba", "Douglas-fir": "Pseudotsuga menziesii",
		"yellow poplar": "Liriodendron tulipifera", "Lawson cypress": "Chamaecyparis lawsoniana",
	} {
		s, ok := b.Species(name)
		if !ok || s.Scientific != want || !s.Known {
			t.Errorf("%q: got %q %v, want %q", name, s.Scientific, ok, want)
		}
	}
	for _, name := range []string{"", "x", "Quercus", "money tree"} {
		if s, ok := b.Species(name); ok {
			t.Errorf("%q was taken for %s", name, s.Scientific)
		}
	}
}

func TestSpeciesPointAtTablesThatExist(t *testing.T) {
	b := base(t)
	barks, woods := map[string]bool{}, map[string]bool{}
	for _, r := range b.bark {
		barks[r.species] = true
	}
	for _, w := range b.wood {
		for _, s := range w.Species {
			woods[s] = true
		}
	}
	reached := map[string]bool{}
	for _, s := range b.SpeciesList() {
		if s.BarkSpecies != "" && !barks[s.BarkSpecies] {
			t.Errorf("%s: no bark of %s", s.Scientific, s.BarkSpecies)
		}
		for _, w := range s.WoodSpecies {
			reached[w] = true
			if !woods[w] {
				t.Errorf("%s: no wood of %s", s.Scientific, w)
			}
		}
		if strings.ContainsAny(s.Scientific, "/()") {
			t.Errorf("%q is not one name", s.Scientific)
		}
	}
	for w := range woods {
		if !reached[w] && w != "Tilia platyphyllos" {
			t.Errorf("no species uses the wood of %s", w)
		}
	}
}
