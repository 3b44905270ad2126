package wording

import (
	"strings"
	"testing"

	"boughline/assess"
)

// Factors of NIST Special Publication 811, Appendix B (from memory): 1 ft = 0.3048 m,
// 1 lb = 0.453 592 37 kg, 1 lbf = 4.448 222 N, 1 psi = 6894.757 Pa, 1 mph = 0.447 04 m/s,
// 1 lbf ft = 1.355 818 N m, 1 lbf/ft = 14.593 90 N/m, 1 lb/ft3 = 16.018 46 kg/m3.
func TestFeetAndPounds(t *testing.T) {
	for _, c := range []struct {
		value float64
		unit  string
		want  string
	}{
		{3.048, "m", "10 ft"}, {0.0254, "m", "1 in"}, {-0.254, "m", "-10 in"}, {45.359237, "kg", "100 lb"}, {4448.222, "N", "1000 lbf"},
		{6894757, "Pa", "1000 psi"}, {13.4112, "m/s", "30 mph"}, {1355.818, "N m", "1000 lbf ft"}, {1459.39, "N/m", "100 lbf/ft"},
		{1000, "kg/m3", "62.4 lb/ft3"}, {0.7853981633974483, "rad", "45 deg"}, {2, "Hz", "2 Hz"}, {1.5, "1", "1.5"},
	} {
		if got := (Units{Feet: true}).Quantity(c.value, c.unit); got != c.want {
			t.Errorf("%v %s: %q, want %q", c.value, c.unit, got, c.want)
		}
	}
	if got := (Units{Feet: true}).AtMost(45.4, "kg"); got != "100 lb" { // 100.09 lb, cut
		t.Errorf("a limit: %q", got)
	}
	if got := Metric.Fine(3.61411831, "s"); got != "3.6141 s" {
		t.Errorf("fine: %q", got)
	}
}

func TestReasonsFollowTheUnits(t *testing.T) {
	r := assess.Reason{Code: assess.FootClearance, Check: &assess.Check{Code: assess.FootClearance, Unit: "m", Demand: 0.3048, Capacity: 3.048, Margin: 10}}
	if got := (Units{Feet: true}).Reason(r); !strings.Contains(got, "10 ft, at least 12 in") {
		t.Error(got)
	}
	if got := Reason(r); !strings.Contains(got, "3.05 m, at least 0.305 m") {
		t.Error(got)
	}
}
