package gear

import (
	"math"
	"testing"

	"boughline/quantity"
	"pgregory.net/rapid"
)

// A belt to a point two radii from the centre, by hand: the tangents are
// sqrt(3) R long and touch 60 degrees off, so the belt lies on 240 degrees of the
// circle: 2 sqrt(3) R + 4/3 pi R.
func TestBasketDrop(t *testing.T) {
	const r = 0.12
	got, err := BasketDrop(quantity.Length(r*(2*math.Sqrt(3)+4*math.Pi/3)), r)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "drop", float64(got), r, 1e-9)
	if _, err := BasketDrop(0.7, 0.12); err == nil {
		t.Error("a sling of 0.70 m goes round a limb of 0.75 m girth")
	}
	choked, err := ChokedDrop(1.2, 0.1)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "choked", float64(choked), 1.2-0.6283185, 1e-7)
}

// A longer sling hangs lower, a thicker limb takes more of it; a basket lies
// between the whole of its half length and that less half the way round.
func TestBasketDropInItsBounds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := rapid.Float64Range(0.02, 0.4).Draw(t, "radius")
		s := 2*math.Pi*r + rapid.Float64Range(0.01, 4).Draw(t, "more")
		got, err := BasketDrop(quantity.Length(s), quantity.Length(r))
		if err != nil {
			t.Fatal(err)
		}
		longer, err := BasketDrop(quantity.Length(s+0.01), quantity.Length(r))
		if err != nil {
			t.Fatal(err)
		}
		if drop := float64(got); !(longer > got && drop > 0 && drop < s/2-2*r) {
			t.Fatalf("drop %v of a sling of %v round %v, %v when longer", drop, s, r, longer)
		}
	})
}
