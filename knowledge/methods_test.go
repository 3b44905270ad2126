package knowledge

import (
	"math"
	"testing"

	"boughline/quantity"
)

// 1.5 % of a taped girth (Luoma 2017), and 1 deg of any angle by clinometer (house).
func TestStandardDeviationOfAValue(t *testing.T) {
	b, err := Load()
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		how       quantity.How
		quantity  string
		value, sd float64
	}{
		{quantity.Taped, "length", 2, 0.03},
		{quantity.Taped, "length", -2, 0.03},
		{quantity.Clinometer, "angle", 0.7, math.Pi / 180},
	} {
		if got := b.StandardDeviation(c.how, c.quantity, c.value); math.Abs(got-c.sd) > 1e-12 {
			t.Errorf("%s of %v by %s: got %v, want %v", c.quantity, c.value, c.how, got, c.sd)
		}
	}
}
