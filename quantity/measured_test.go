package quantity

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// The one-sided 5 % fractile of the standard normal distribution is
// 1.6448536... (tables of the normal distribution; here from the error
// function of the standard library).
func TestTailLeavesFivePercent(t *testing.T) {
	if beyond := math.Erfc(Tail/math.Sqrt2) / 2; math.Abs(beyond-0.05) > 2e-5 {
		t.Errorf("%v lies beyond Tail, want 0.05", beyond)
	}
}

func TestLowAndHighEncloseTheValue(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := Measured[Length]{
			Value: Length(rapid.Float64Range(0, 100).Draw(t, "value")),
			Sd:    Length(rapid.Float64Range(0, 10).Draw(t, "sd")),
		}
		if m.Low() < 0 || m.Low() > m.Value || m.High() < m.Value {
			t.Fatalf("%v lies outside %v to %v", m.Value, m.Low(), m.High())
		}
	})
}

func TestRelativeSd(t *testing.T) {
	tests := []struct {
		m    Measured[Length]
		want float64
	}{
		{Measured[Length]{Value: 2, Sd: 0.5}, 0.25},
		{Measured[Length]{Value: -2, Sd: 0.5}, 0.25},
		{Measured[Length]{Sd: 0.5}, 0},
	}
	for _, test := range tests {
		if got := test.m.RelativeSd(); got != test.want {
			t.Errorf("%+v: got %v, want %v", test.m, got, test.want)
		}
	}
}
