package measure

import (
	"testing"

	"boughline/quantity"
)

// The foot is 0.3048 m, the inch a twelfth of it (international foot, 1959);
// the error keeps two digits in each unit.
func TestAResultInAnotherUnit(t *testing.T) {
	r := Result{Output: Output{Dimension: Length}, Value: 0.3048, Sd: 0.0127, How: quantity.Taped}
	for _, row := range []struct {
		unit            quantity.Unit
		text, low, high string
	}{
		{quantity.Unit{Symbol: "m", Factor: 1}, "0.305 m ±0.013 m taped", "0.280 m", "0.330 m"},
		{quantity.Unit{Symbol: "ft", Factor: 0.3048}, "1.000 ft ±0.042 ft taped", "0.918 ft", "1.082 ft"},
		{quantity.Unit{Symbol: "in", Factor: 0.0254}, "12.00 in ±0.50 in taped", "11.02 in", "12.98 in"},
	} {
		low, high := r.BoundsIn(row.unit)
		if text := r.TextIn(row.unit); text != row.text || low != row.low || high != row.high {
			t.Errorf("%s, %s to %s; want %s, %s to %s", text, low, high, row.text, row.low, row.high)
		}
	}
	if r.Text() != "0.305 m ±0.013 m taped" {
		t.Errorf("as a survey takes it: %s", r.Text())
	}
}
