package chance

import "testing"

// Plain Monte Carlo of a limb in bending: six inputs, three of them lognormal,
// and a cosine. With -cpu 1,2 it shows what a second core adds.
func BenchmarkMonteCarlo(b *testing.B) {
	problem, samples := ridden(0.108).problem(b), 1<<22
	for b.Loop() {
		if _, err := problem.MonteCarlo(Sampling{Samples: samples, Seed: 1}); err != nil {
			b.Fatal(err)
		}
	}
	b.ReportMetric(float64(samples)*float64(b.N)/b.Elapsed().Seconds()/1e6, "Msamples/s")
}

// A chance of about 1e-6 to a coefficient of variation of 5 %, design point included.
func BenchmarkImportanceSamplingOfOneInAMillion(b *testing.B) {
	problem := ridden(0.1385).problem(b)
	for b.Loop() {
		point, err := problem.FirstOrder(nil)
		if err != nil {
			b.Fatal(err)
		}
		got, err := problem.ImportanceSampling(Sampling{Samples: 1 << 20, Seed: 1, CoV: 0.05}, point.U)
		if err != nil {
			b.Fatal(err)
		}
		b.ReportMetric(got.Probability, "chance")
		b.ReportMetric(got.CoV, "CoV")
	}
}

func BenchmarkFirstOrder(b *testing.B) {
	problem := ridden(0.122).problem(b)
	for b.Loop() {
		if _, err := problem.FirstOrder(nil); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkNormals(b *testing.B) {
	z, random := make([]float64, chunk), streamOf(1, 0)
	for b.Loop() {
		random.normals(z)
	}
	b.ReportMetric(b.Elapsed().Seconds()*1e9/float64(b.N*chunk), "ns/normal")
}
