package work

import (
	"encoding/json"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// The sampled figures of the files are held to their intervals in the next test.
func TestReliability(t *testing.T) {
	checkGroup(t, "reliability", []rule{
		{[]string{"u_star", "Pf_IS", "beta_equiv", "MC", "SORM"}, ""},
		{[]string{"beta_FORM"}, "beta_FORM"},
		{[]string{"alpha"}, "alpha"},
	})
}

// Our intervals overlap those of the files, both at 95 %; second-order and
// importance-sampled figures agree far closer than the files ask.
func TestSampledReliabilityMatchesItsIntervals(t *testing.T) {
	files, err := filepath.Glob("testdata/cases/rel_limb_*.json")
	if err != nil || len(files) == 0 {
		t.Fatalf("files %v, error %v", files, err)
	}
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		var c struct{ Expected reliabilityResults }
		if err := json.Unmarshal(data, &c); err != nil {
			t.Fatal(err)
		}
		result, err := Run(data)
		if err != nil {
			t.Fatal(err)
		}
		got, want := result.Results.(reliabilityResults), c.Expected
		overlap(t, file+" importance sampling", got.PfISCI, want.PfISCI)
		overlap(t, file+" Monte Carlo", got.PfMCCI, want.PfMCCI)
		relative(t, file+" importance sampling", got.PfIS, want.PfIS, 0.03)
		relative(t, file+" second order", *got.PfSORM, *want.PfSORM, 1e-6)
	}
}

func overlap(t *testing.T, what string, a, b [2]float64) {
	t.Helper()
	if !(a[0] <= b[1] && b[0] <= a[1]) {
		t.Errorf("%s: interval %v does not overlap %v", what, a, b)
	}
}

func relative(t *testing.T, what string, got, want, rel float64) {
	t.Helper()
	if !(math.Abs(got-want) <= rel*want) {
		t.Errorf("%s: got %v, want %v", what, got, want)
	}
}

const limbDocument = `{"id": "x", "group": "reliability", "inputs": {"g": 9.81, "MOR_mean_Pa": 5e7, "MOR_cov": 0.2,
	"d_mean_m": 0.12, "d_cov": 0.05, "m_mean_kg": 60, "m_cov": 0.2, "theta_mean_deg": 50, "theta_sd_deg": 6,
	"DAF_mean": 1.1, "DAF_cov": 0.1, "a_mean_m": 2, "a_sd_m": 0.05, "M_self_Nm": 500}}`

// A diameter said to be lognormal counts as one: the chance moves.
func TestReliabilityTakesTheNamedDistribution(t *testing.T) {
	beta := func(document string) float64 {
		result, err := Run([]byte(document))
		if err != nil {
			t.Fatal(err)
		}
		return result.Results.(reliabilityResults).BetaFORM
	}
	normal := beta(limbDocument)
	other := beta(strings.Replace(limbDocument, `"g":`, `"distributions": {"d": "lognormal(mean,cov)"}, "g":`, 1))
	if !(other > normal+0.01 && other < normal+0.5) {
		t.Errorf("beta %v with a lognormal diameter, %v with a normal one", other, normal)
	}
}

func TestChanceGroupsNameWhatIsWrong(t *testing.T) {
	limb := func(old, new string) string { return strings.Replace(limbDocument, old, new, 1) }
	evidence := func(inputs string) string {
		return `{"id": "x", "group": "evidence", "inputs": {` + inputs + `}}`
	}
	for word, document := range map[string]string{
		"MOR":          limb("5e7", "-1"),
		"d_mean_m":     limb("0.12", "0"),
		"DAF":          limb(`"DAF_cov": 0.1`, `"DAF_cov": -0.1`),
		"distribution": limb(`"g":`, `"distributions": {"m": "uniform(0,1)"}, "g":`),
		"kind":         evidence(`"kind": "guess"`),
		"prior_mean":   evidence(`"kind": "proof_truncation", "prior_cov": 0.2, "proof_P": 1`),
		"proof_P":      evidence(`"kind": "proof_truncation", "prior_mean": 1, "prior_cov": 0.2`),
		"load_mean":    evidence(`"kind": "proof_uncertain", "prior_mean": 1, "prior_cov": 0.2, "load_sd": -1`),
		"prior_k_mean": evidence(`"kind": "normal_normal"`),
		"sag_sd_m":     evidence(`"kind": "normal_normal", "prior_k_mean": 1, "prior_k_sd": 1`),
		"sags_m":       evidence(`"kind": "normal_normal", "prior_k_mean": 1, "prior_k_sd": 1, "sag_sd_m": 1, "loads_N": [1]`),
	} {
		if _, err := Run([]byte(document)); err == nil || !strings.Contains(err.Error(), word) {
			t.Errorf("error %v; expected one that names %s", err, word)
		}
	}
}

// A fixed load that a certain proof rules out has no index: it is left out.
func TestEvidenceOfARuledOutLoad(t *testing.T) {
	result, err := Run([]byte(`{"id": "x", "group": "evidence", "inputs": {"kind": "proof_uncertain", "prior_mean": 10,
		"prior_cov": 0.3, "load_mean": 5, "load_sd": 0, "proofs": [{"P": 6, "sd": 0}]}}`))
	if err != nil {
		t.Fatal(err)
	}
	data, err := json.Marshal(result)
	if err != nil || strings.Contains(string(data), "beta_after") || !strings.Contains(string(data), `"pf_after":0,`) {
		t.Errorf("%s, error %v", data, err)
	}
}

// Against 2 sin^2(x/2), which keeps its digits near 0 (elementary identity), on both
// sides of the right angle at which the series ends.
func TestVersine(t *testing.T) {
	for x := -3.0; x <= 3; x += 0.01 {
		half := math.Sin(x / 2)
		if want := 2 * half * half; math.Abs(versine(x)-want) > 2e-14*want {
			t.Errorf("1 - cos %v = %.17g, want %.17g", x, versine(x), want)
		}
	}
}
