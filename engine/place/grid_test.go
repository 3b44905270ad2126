package place

import (
	"fmt"
	"strconv"
	"testing"

	"boughline/quantity"
)

// Every length is the number that its decimal reads as (strconv).
func TestAxisValuesAreDecimals(t *testing.T) {
	for _, row := range []struct {
		axis   Axis
		digits int
		count  int
	}{
		{Axis{0.3, 4.8, 0.01}, 2, 451}, {Axis{1, 5, 0.01}, 2, 401}, {Axis{0.3, 0.3, 0.01}, 2, 1},
		{Axis{0.3, 3.3, 0.05}, 2, 61}, {Axis{1, 3, 0.02}, 2, 101}, {Axis{0.605, 2, 0.005}, 3, 280}, {Axis{0.3, 1, 0.3}, 1, 3},
	} {
		values := row.axis.Values()
		if len(values) != row.count {
			t.Errorf("%v: %d values, want %d", row.axis, len(values), row.count)
		}
		for i, x := range values {
			text := fmt.Sprintf("%.*f", row.digits, float64(row.axis.From)+float64(i)*float64(row.axis.Step))
			if want, _ := strconv.ParseFloat(text, 64); float64(x) != want {
				t.Errorf("%v: value %d is %v, want %v", row.axis, i, x, want)
			}
			if k, ok := row.axis.index(x); !ok || k != i {
				t.Errorf("%v: %v has index %d, %v, want %d", row.axis, x, k, ok, i)
			}
		}
	}
}

func TestAxisIndexRefusesWhatLiesBetween(t *testing.T) {
	axis := Axis{0.3, 4.8, 0.01}
	for _, x := range []quantity.Length{0.29, 4.81, 1.005} {
		if i, ok := axis.index(x); ok {
			t.Errorf("%v m has index %d, want none", x, i)
		}
	}
}
