package work

import (
	"encoding/json"
	"fmt"
	"math"
	"strings"
	"testing"
)

func TestMeasureMatchesTheCases(t *testing.T) {
	checkGroup(t, "measure", []rule{{[]string{"second_order_mean_shift"}, "second_order_mean_shift"}})
}

// Worked by hand: 2 deg at 8 m to the near face are .2842 m, under any of the
// names that the kind and its readings go by.
func TestAngularWidthUnderItsNames(t *testing.T) {
	for _, names := range [][3]string{{"angular_width", "d", "A"}, {"limb_angular_width", "d_near", "alpha"}, {"thickness-by-angular-width", "distance", "width"}} {
		results := runResults(t, fmt.Sprintf(`{"id": "x", "group": "measure", "inputs": {"kind": %q, "readings": {
			%q: {"value": 8, "sd": 0.05}, %q: {"value": 0.03490658503988659, "sd": 0.001745}}}}`, names[0], names[1], names[2]))
		if one, ok := results["thickness"].(map[string]any); ok {
			results = one
		}
		if value := results["value"].(float64); math.Abs(value-0.2842) > 5e-5 {
			t.Errorf("%v: %v", names, value)
		}
		if gradient := results["gradient"].(map[string]any); gradient[names[1]] == nil || gradient[names[2]] == nil {
			t.Errorf("%v: gradient %v", names, gradient)
		}
	}
}

func TestMeasureRefuses(t *testing.T) {
	for inputs, says := range map[string]string{
		`{"kind": "tangent"}`: "inputs.kind: \"tangent\"; expected weighted_mean, angular_width",
		`{"kind": "tangent_height", "readings": {"d": {"value": 3}}}`:                 "top is missing",
		`{"kind": "tangent_height", "readings": {"x": {"value": 3}}}`:                 "\"x\" is no reading of this kind",
		`{"kind": "weighted_mean", "pairs": [{"values": [1, 2], "sds": [1]}]}`:        "inputs.pairs[0]: 2 values and 1 sds",
		`{"kind": "weighted_mean", "values": [1, 2], "sds": [1, 0]}`:                  "inputs: reading 2",
		`{"kind": "weighted_mean"}`:                                                   "0 readings; expected",
		`{"kind": "lean-by-plumb-line", "readings": {"off": {"value": 3, "sd": -1}}}`: "off: an error of",
	} {
		_, err := Run([]byte(`{"group": "measure", "inputs": ` + inputs + `}`))
		if err == nil || !strings.Contains(err.Error(), says) {
			t.Errorf("%s: %v; want %q", inputs, err, says)
		}
	}
}

func runResults(t *testing.T, document string) map[string]any {
	t.Helper()
	result, err := Run([]byte(document))
	if err != nil {
		t.Fatal(err)
	}
	encoded, err := json.Marshal(result.Results)
	if err != nil {
		t.Fatal(err)
	}
	var got map[string]any
	if err := json.Unmarshal(encoded, &got); err != nil {
		t.Fatal(err)
	}
	return got
}
