package work

import (
	"encoding/json"
	"os"
	"strings"
	"testing"
)

// What a file leaves out is worked out from the rest: the results stay those
// of the full file, whose tolerance holds.
func TestFewerInputs(t *testing.T) {
	for file, c := range map[string]struct {
		without []string
		rules   []rule
	}{
		"pend_drag_01":      {[]string{"g", "rho_air", "half_swings"}, []rule{{[]string{"."}, "peak_tension"}}},
		"pend_elastic_01":   {[]string{"g", "k", "r_initial", "t_end", "velocity0", "tension_only", "damping"}, pendElasticRules},
		"pend_elastic_05":   {[]string{"EA", "r_initial"}, pendElasticRules},
		"pend_slackjerk_08": {[]string{"k", "c_Ns_m"}, nil},
		"pend_slackjerk_10": {[]string{"x0", "depth0", "t_end", "k"}, []rule{{[]string{"."}, "peak"}}},
		"pend_spherical_07": {[]string{"g", "T_ref_s"}, []rule{{[]string{"."}, "closest"}}},
		"flexlimb_01":       {[]string{"k_vertical", "c_vertical", "initial", "t_end", "two_dof"}, []rule{{[]string{"."}, "force"}}},
		"flexlimb_07":       {[]string{"f_vertical_Hz", "k_horizontal", "c_horizontal", "initial"}, []rule{{[]string{"."}, "force"}}},
		"flexlimb_08":       {[]string{"f_vertical_Hz", "f_horizontal_Hz", "zeta"}, []rule{{[]string{"."}, "force"}}},
	} {
		t.Run(file, func(t *testing.T) {
			full, err := os.ReadFile("testdata/cases/" + file + ".json")
			if err != nil {
				t.Fatal(err)
			}
			var whole caseFile
			if err := json.Unmarshal(full, &whole); err != nil {
				t.Fatal(err)
			}
			checkCase(t, whole, leaveOut(t, full, c.without), c.rules)
		})
	}
}

// leaveOut empties inputs of a file, half of them to null.
func leaveOut(t *testing.T, data []byte, names []string) []byte {
	t.Helper()
	var file map[string]any
	if err := json.Unmarshal(data, &file); err != nil {
		t.Fatal(err)
	}
	inputs := file["inputs"].(map[string]any)
	for i, name := range names {
		if i%2 == 0 {
			delete(inputs, name)
		} else {
			inputs[name] = nil
		}
	}
	out, err := json.Marshal(file)
	if err != nil {
		t.Fatal(err)
	}
	return out
}

func TestInputsThatCannotBeComputed(t *testing.T) {
	for name, c := range map[string]struct{ file, want string }{
		"rod beyond 180 deg":  {`{"group":"pend_period","inputs":{"L":3,"m":70,"amplitude_deg":[30,180]}}`, "amplitude_deg[1]"},
		"drag from 95 deg":    {`{"group":"pend_drag","inputs":{"L":3,"m":70,"CdA":0.5,"theta0_deg":95}}`, "slack"},
		"no half swing":       {`{"group":"pend_drag","inputs":{"L":3,"m":70,"CdA":0.5,"theta0_deg":45,"half_swings":0}}`, "half_swings"},
		"line that pushes":    {`{"group":"pend_elastic","inputs":{"L_natural":5,"m":80,"k":4000,"theta0_deg":60,"tension_only":false}}`, "tension_only"},
		"line without k":      {`{"group":"pend_elastic","inputs":{"L_natural":5,"m":80,"theta0_deg":60}}`, "inputs.k"},
		"speed without parts": {`{"group":"pend_elastic","inputs":{"L_natural":5,"m":80,"k":4000,"theta0_deg":60,"velocity0":2}}`, "velocity0"},
		"drop upward":         {`{"group":"pend_slackjerk","inputs":{"L_natural":5,"m":80,"k":4000,"drop_h":-1}}`, "drop_h"},
		"drop from nowhere":   {`{"group":"pend_slackjerk","inputs":{"L_natural":5,"m":80,"k":4000}}`, "drop_h"},
		"launch along line":   {`{"group":"pend_spherical","inputs":{"L":5,"m":70,"theta0_deg":45,"velocity0":[0,1,0]}}`, "square"},
		"limb without k":      {`{"group":"flexlimb","inputs":{"L":5,"m":80,"limb_eff_mass_M":60,"theta0_deg":45}}`, "k_vertical"},
		"limb without mass":   {`{"group":"flexlimb","inputs":{"L":5,"m":80,"k_vertical":9000,"theta0_deg":45}}`, "limb mass"},
	} {
		if _, err := Run([]byte(c.file)); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: got %v, want an error about %s", name, err, c.want)
		}
	}
}
