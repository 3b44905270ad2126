package work

import (
	"encoding/json"
	"os"
	"testing"

	"boughline/engine/chance"
)

// Plain Monte Carlo of the case rel_limb_01, to be set against NumPy in one run
// by bench/compare.sh. With -cpu 1,2 it shows what a second core adds.
func BenchmarkPlainMonteCarloOfTheCase(b *testing.B) {
	data, err := os.ReadFile("testdata/cases/rel_limb_01.json")
	if err != nil {
		b.Fatal(err)
	}
	var c struct {
		Inputs json.RawMessage `json:"inputs"`
	}
	if err := json.Unmarshal(data, &c); err != nil {
		b.Fatal(err)
	}
	problem, err := readProblem(c.Inputs)
	if err != nil {
		b.Fatal(err)
	}
	const samples = 1 << 19
	var e chance.Estimate
	for b.Loop() {
		if e, err = problem.MonteCarlo(chance.Sampling{Samples: samples, Seed: 1}); err != nil {
			b.Fatal(err)
		}
	}
	b.ReportMetric(samples, "samples")
	b.ReportMetric(e.Probability, "chance")
}
