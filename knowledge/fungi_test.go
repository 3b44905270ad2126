package knowledge

import (
	"regexp"
	"slices"
	"testing"
)

func TestFungiKeepToTheVocabulary(t *testing.T) {
	words := map[string][]string{
		"position":  {"roots_away", "butt", "stem", "wound", "limb", "crown", "cavity", "stump"},
		"form":      {"bracket", "hoof", "crust", "burnt_mass", "cushion", "tongue", "rosette", "shelf_cluster", "toadstool", "toadstool_cluster", "teeth_cluster", "ear", "split_gill"},
		"underside": {"pores", "gills", "smooth", "teeth", "crust"},
		"decay":     {"white_simultaneous", "white_selective", "brown_cubical", "soft_rot"},
		"part":      {"butt", "root_plate", "stem", "limb", "wound"},
		"speed":     {"slow", "medium", "fast"},
		"wider":     {"", "any", "broadleaves", "conifers"},
		"region":    {"EU", "NA"},
	}
	genus := regexp.MustCompile(`^[A-Z][a-z]+$`)
	for _, f := range base(t).Fungi() {
		for field, values := range map[string][]string{
			"position": f.Positions, "form": f.Forms, "underside": f.Undersides, "decay": f.Decays,
			"part": f.PartsLosingStrength, "speed": {f.Speed}, "wider": {f.WiderHosts}, "region": f.Regions,
		} {
			if len(values) == 0 {
				t.Errorf("%s: no %s", f.Name, field)
			}
			for _, v := range values {
				if !slices.Contains(words[field], v) {
					t.Errorf("%s: %s is %q", f.Name, field, v)
				}
			}
		}
		for _, h := range append(slices.Clone(f.Hosts), f.RareHosts...) {
			if !genus.MatchString(h) {
				t.Errorf("%s: the host %q is no genus", f.Name, h)
			}
		}
		if f.MeaningForPeople == "" || len(f.Months) == 0 || len(f.Hosts) == 0 || f.SizeLow <= 0 {
			t.Errorf("%s is not complete", f.Name)
		}
	}
}

func TestFungusIsFoundByASynonym(t *testing.T) {
	b := base(t)
	for name, want := range map[string]string{"Ustulina deusta": "Kretzschmaria deusta", "ganoderma ADSPERSUM": "Ganoderma australe"} {
		if f, ok := b.Fungus(name); !ok || f.Name != want {
			t.Errorf("%q: got %q %v", name, f.Name, ok)
		}
	}
	if _, ok := b.Fungus("Amanita"); ok {
		t.Error("a fungus that is not in the table was found")
	}
}

// The fungi that rule out people are those of brittle or unseen loss in stem,
// butt or roots (house judgement on the decay and part of each row).
func TestFungiThatRuleOutPeople(t *testing.T) {
	b := base(t)
	for name, want := range map[string]bool{
		"Kretzschmaria deusta": true, "Armillaria mellea": true, "Fomitopsis betulina": true, "Perenniporia fraxinea": true,
		"Fistulina hepatica": false, "Trametes versicolor": false, "Ganoderma applanatum": false,
	} {
		if f, ok := b.Fungus(name); !ok || f.NoPeople != want {
			t.Errorf("%s: no people is %v, want %v", name, f.NoPeople, want)
		}
	}
	for _, f := range b.Fungi() {
		limbOnly := !slices.ContainsFunc(f.PartsLosingStrength, func(p string) bool { return p != "limb" && p != "wound" })
		if f.NoPeople && limbOnly {
			t.Errorf("%s weakens limbs only, yet rules out the tree", f.Name)
		}
	}
}
