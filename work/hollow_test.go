package work

import (
	"math"
	"testing"
)

// Published worked values of two sections, as a table in an Arboriculture &
// Urban Forestry paper gives them: d/D 0.60 closed, 13 % (Coder), 22 %
// (Wagener), 22 % (Smiley & Fraedrich); d/D 0.45 with an opening of 5.4 % of
// the circumference, 4 %, 9 %, 14 %.
func TestHollowMatchesThePublishedSections(t *testing.T) {
	for _, row := range []struct {
		inputs                 string
		wagener, coder, opened float64
	}{
		{`{"outer_diameter_m": 1, "hollow_diameter_m": 0.60, "opening_share": 0}`, 0.22, 0.13, 0.22},
		{`{"outer_diameter_m": 1, "hollow_diameter_m": 0.45, "opening_share": 0.054}`, 0.09, 0.04, 0.14},
	} {
		result, err := Run([]byte(`{"id": "h", "group": "hollow", "inputs": ` + row.inputs + `}`))
		if err != nil {
			t.Fatal(err)
		}
		got := result.Results.(hollowResults)
		for name, pair := range map[string][2]float64{
			"1963": {got.Wagener, row.wagener}, "1989": {got.Coder, row.coder}, "1992": {got.SmileyFraedrich, row.opened},
		} {
			if math.Abs(pair[0]-pair[1]) > 0.005 {
				t.Errorf("%s: rule of %s gives %.3f, want %.2f", row.inputs, name, pair[0], pair[1])
			}
		}
	}
	if _, err := Run([]byte(`{"id": "h", "group": "hollow", "inputs": {"outer_diameter_m": 1, "hollow_diameter_m": 2}}`)); err == nil {
		t.Error("a hollow wider than the stem: no error")
	}
}
