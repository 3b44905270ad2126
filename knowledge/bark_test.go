package knowledge

import (
	"math"
	"strings"
	"testing"

	"boughline/quantity"

	"pgregory.net/rapid"
)

// Diameter under over that over bark, upper stem, 20 cm over bark: Altherr et
// al. 1974-1979, to three decimals.
func TestBarkOfTheUpperStem(t *testing.T) {
	b := base(t)
	for name, want := range map[string]float64{
		"beech": 0.955, "pedunculate oak": 0.875, "sessile oak": 0.854, "ash": 0.913, "sycamore": 0.935,
		"Norway maple": 0.918, "lime": 0.926, "birch": 0.911, "hornbeam": 0.941, "robinia": 0.838,
		"elm": 0.866, "poplar": 0.866, "cherry": 0.919, "alder": 0.867, "Scots pine": 0.957,
		"spruce": 0.936, "larch": 0.873, "Douglas fir": 0.931, "silver fir": 0.928,
	} {
		f := b.Bark(mustSpecies(t, b, name), LimbPart, 0.20)
		if f.Note != "" {
			t.Errorf("%s: %s", name, f.Note)
		}
		if got := 1 - 2*f.Value/0.20; math.Abs(got-want) > 0.0006 {
			t.Errorf("%s: %.4f, want %.3f", name, got, want)
		}
	}
}

func TestBarkStaysBetweenNothingAndTheStem(t *testing.T) {
	b := base(t)
	all := append(b.SpeciesList(), Species{Group: Broadleaf}, Species{Group: Conifer}, Species{})
	rapid.Check(t, func(t *rapid.T) {
		s := rapid.SampledFrom(all).Draw(t, "species")
		part := rapid.SampledFrom([]Part{LimbPart, StemPart}).Draw(t, "part")
		d := rapid.Float64Range(0.03, 1.5).Draw(t, "diameter")
		thick := b.Bark(s, part, quantity.Length(d)).Value
		if thick <= 0 || 2*thick > 0.6*d {
			t.Fatalf("%s %s of %.3f m has %.4f m of bark a side", s.Scientific, part, d, thick)
		}
		more := b.Bark(s, part, quantity.Length(d*1.05)).Value
		if more < thick-1e-12 {
			t.Fatalf("%s %s: bark thins from %.5f to %.5f m as the diameter grows from %.3f m", s.Scientific, part, thick, more, d)
		}
	})
}

func TestUnknownBarkIsTheThickestOfItsGroup(t *testing.T) {
	b := base(t)
	unknown := b.Bark(Species{Group: Conifer}, LimbPart, 0.25)
	if !strings.Contains(unknown.Note, "thickest of its group") {
		t.Errorf("it does not say so: %q", unknown.Note)
	}
	for _, s := range b.SpeciesList() {
		if s.Group == Conifer && b.Bark(s, LimbPart, 0.25).Value > unknown.Value {
			t.Errorf("%s has thicker bark", s.Scientific)
		}
	}
}
