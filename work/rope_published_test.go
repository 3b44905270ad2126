package work

import (
	"encoding/json"
	"fmt"
	"math"
	"testing"
)

// roped works out one rope document and returns its results by name.
func roped(t *testing.T, inputs string) map[string]any {
	t.Helper()
	result, err := Run([]byte(`{"id": "r", "group": "rope", "inputs": ` + inputs + `}`))
	if err != nil {
		t.Fatal(err)
	}
	encoded, err := json.Marshal(result.Results)
	if err != nil {
		t.Fatal(err)
	}
	var results map[string]any
	if err := json.Unmarshal(encoded, &results); err != nil {
		t.Fatal(err)
	}
	return results
}

func wants(t *testing.T, what string, got any, want, tolerance float64) {
	t.Helper()
	if g, ok := got.(float64); !ok || math.Abs(g-want) > tolerance {
		t.Errorf("%s: got %v, want %v within %g", what, got, want, tolerance)
	}
}

// Pull in each of two equal legs for a load of 1 by their angle from the level:
// tables of the type of OSHA 1910.184 and ASME B30.9 print its inverse, the sine. The
// share of a choker by its angle: sling makers' sheets after ASME B30.9.
func TestRopeLegsAndChokers(t *testing.T) {
	for degrees, want := range map[float64]float64{60: 0.5774, 45: 0.7071, 30: 1, 15: 1.932} {
		got := roped(t, fmt.Sprintf(`{"kind": "two_leg", "load_N": 1, "anchor_left": [0, 0], "anchor_right": [%v, 0], "leg_left_m": 1, "leg_right_m": 1,
			"choke_angle_list_deg": [121, 120, 90, 89, 60, 59, 30, 29, 0], "choke_table_angle_from_factor": [[120, 1], [90, 0.87], [60, 0.74], [30, 0.62], [0, 0.49]],
			"sling_WLL_N": 10000, "choke_base_factor": 0.75}`, 2*math.Cos(degrees*math.Pi/180)))
		wants(t, "left leg", got["T_left_N"], want, 5e-4)
		wants(t, "right leg", got["T_right_N"], want, 5e-4)
		for i, share := range []float64{1, 1, 0.87, 0.74, 0.74, 0.62, 0.62, 0.49, 0.49} {
			wants(t, "choker", got["choke_factors"].([]any)[i], share, 1e-12)
			wants(t, "its limit", got["choke_working_load_N"].([]any)[i], 7500*share, 1e-9)
		}
	}
}

// e^(mu phi) after half a turn and after a whole one, to four places: the closed
// form of Euler and Eytelwein.
func TestRopeCapstanTable(t *testing.T) {
	for mu, want := range map[float64][2]float64{0.1: {1.3691, 1.8745}, 0.2: {1.8745, 3.5136}, 0.3: {2.5663, 6.5861}, 0.4: {3.5136, 12.3453}, 0.5: {4.8105, 23.1407}} {
		for i, turns := range []float64{0.5, 1} {
			got := roped(t, fmt.Sprintf(`{"kind": "capstan", "load_N": 1, "hold_available_N": 1, "surfaces_from_load": [{"mu": %v, "turns": %v}]}`, mu, turns))
			wants(t, "greatest", got["greatest_hold_N"], want[i], 5e-5)
			wants(t, "least", got["least_hold_N"], 1/want[i], 5e-5)
		}
	}
}

// chainOf is a chain of one textile part of 10 kN.
func chainOf(t *testing.T, knot float64, bend, thickness float64) map[string]any {
	t.Helper()
	return roped(t, fmt.Sprintf(`{"kind": "chain", "load_F_N": 1000, "design_factor": 10, "links": [{"name": "line", "strength_N": 10000, "tension_per_unit_load": 1,
		"knot_factor": %v, "angle_factor": 1, "bend_D": %v, "rope_d": %v, "count": 1, "length_m": 5, "EA_N": 19613.3}]}`, knot, bend, thickness))
}

// What a bend leaves: rows of wire rope handbooks, from memory. What knots leave:
// Jacobson, Knots for the Outdoors, p. 24. EN 1891 A holds 15 of its 22 kN with figure-eight ends, B
// 12 of 18. Stretch: a line at the limit of EN 1891 (5 % for 100 kg, EA 19.6 kN), 5 m under 1 kN.
func TestRopeKnotsBendsAndStretch(t *testing.T) {
	for ratio, want := range map[float64]float64{1: 0.5, 4: 0.75, 16: 0.875, 25: 0.9} {
		link := chainOf(t, 1, ratio*0.012, 0.012)["links"].([]any)[0].(map[string]any)
		wants(t, "bend", link["Dd_factor"], want, 1e-12)
		wants(t, "strength over it", link["effective_strength_N"], 10000*want, 1e-6)
	}
	for _, share := range []float64{0.6, 0.75, 0.7, 0.48, 0.45, 0.9, 0.95, 15.0 / 22, 12.0 / 18} {
		got := chainOf(t, share, 0.3, 0.012)
		wants(t, "limit", got["working_load_N"], 1000*share*(1-0.5/5), 1e-6)
	}
	wants(t, "stretch", chainOf(t, 1, 1, 0.01)["stretch_total_m"], 0.254929, 1e-6)
}

// A whole chain by hand, a factor of 10 on each: a sling of 22 kN choked (0.75) at 75
// degrees (0.74), 12 210 N; a link of 25 kN; a line of 22 kN of 11 mm with a bowline (0.6) over a pin
// of 12 mm, 1 - 0.5/sqrt(12/11) = 0.521286, 6 880.98 N; and two bridle legs of 16 kN with eye
// splices (0.95) at 60 degrees, 0.577350 of the load each, 15 200 N: by them the chain bears
// 2 632.72 N. The line is the weakest at 688.10 N; with a pin of 176 mm (D/d 16, 0.875) it bears
// 1 155 N and is so still.
func TestRopeChainByHand(t *testing.T) {
	chain := func(pin float64) map[string]any {
		return roped(t, fmt.Sprintf(`{"kind": "chain", "load_F_N": 600, "design_factor": 10, "links": [
		{"name": "sling", "strength_N": 22000, "tension_per_unit_load": 1, "knot_factor": 1, "angle_factor": 0.555, "bend_D": null, "rope_d": null, "count": 1, "length_m": 0, "EA_N": null},
		{"name": "link", "strength_N": 25000, "tension_per_unit_load": 1, "knot_factor": 1, "angle_factor": 1, "bend_D": null, "rope_d": null, "count": 1, "length_m": 0, "EA_N": null},
		{"name": "line", "strength_N": 22000, "tension_per_unit_load": 1, "knot_factor": 0.6, "angle_factor": 1, "bend_D": %v, "rope_d": 0.011, "count": 1, "length_m": 3, "EA_N": 33000},
		{"name": "bridle", "strength_N": 16000, "tension_per_unit_load": 0.5773502691896258, "knot_factor": 0.95, "angle_factor": 1, "bend_D": null, "rope_d": null, "count": 2, "length_m": 0.5, "EA_N": 33000}]}`, pin))
	}
	got := chain(0.012)
	for i, want := range []float64{12210, 25000, 6880.98, 15200} {
		wants(t, "strength", got["links"].([]any)[i].(map[string]any)["effective_strength_N"], want, 0.01)
	}
	wants(t, "bridle", got["links"].([]any)[3].(map[string]any)["working_load_of_chain_N"], 2632.72, 0.01)
	wants(t, "chain", got["working_load_N"], 688.10, 0.01)
	wants(t, "next", got["second_weakest_over_weakest"], 1221/688.0981, 1e-5)
	// 600 x 3/33000 and 2 x (1/3) x 600 x 0.5/33000.
	wants(t, "stretch", got["stretch_total_m"], 0.0545455+0.0060606, 1e-6)
	if got["weakest"] != "line" || got["holds_F"] != true {
		t.Errorf("weakest %v, holds %v", got["weakest"], got["holds_F"])
	}
	if wide := chain(0.176); wide["weakest"] != "line" {
		t.Errorf("over a wide pin the weakest is %v", wide["weakest"])
	} else {
		wants(t, "over a wide pin", wide["working_load_N"], 1155, 1e-6)
	}
}
