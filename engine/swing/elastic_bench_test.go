package swing

import (
	"math"
	"testing"

	"boughline/engine/numeric"
	"boughline/quantity"
)

// benchmarkSwing is an elastic pendulum of 80 kg on 5 m of line (k 4000 N/m),
// released at 60 degrees with the line stretched by the weight's part along it.
func benchmarkSwing() (ElasticSwing, PlanarState) {
	s := ElasticSwing{Length: 5, Stiffness: 4000, Mass: 80}
	return s, AtRest(60*quantity.Degree, s.Balanced(60*quantity.Degree))
}

// BenchmarkElasticTwoPeriods follows the elastic pendulum over two small
// periods and reports the error at the end beside the time. Nothing may be
// allocated: the integrator is made before.
func BenchmarkElasticTwoPeriods(b *testing.B) {
	s, start := benchmarkSwing()
	end := 2 * float64(SmallPeriod(s.Length))
	for _, c := range []struct {
		name     string
		relative float64
	}{{"rtol1e-8", 1e-8}, {"rtol5e-9", 5e-9}, {"rtol1e-10", 1e-10}, {"rtol1e-12", 1e-12}} {
		b.Run(c.name, func(b *testing.B) {
			run := newElasticRun(s, start)
			exact := follow(b, run, end, numeric.Tolerance{Relative: 1e-14, Absolute: 1e-15})
			in, err := numeric.NewIntegrator(&run.elastic, 0, run.start[:], numeric.Tolerance{Relative: c.relative, Absolute: c.relative * 1e-2})
			if err != nil {
				b.Fatal(err)
			}
			b.ReportAllocs()
			for b.Loop() {
				if err := in.StartAt(0, run.start[:]); err != nil {
					b.Fatal(err)
				}
				if _, err := in.Run(end); err != nil {
					b.Fatal(err)
				}
			}
			b.ReportMetric(1e9*math.Hypot(in.State()[0]-exact[0], in.State()[1]-exact[1]), "nm-error")
			b.ReportMetric(float64(in.Evaluations)/float64(b.N+1), "evaluations")
		})
	}
}

func follow(b *testing.B, run *elasticRun, end float64, tolerance numeric.Tolerance) [2]float64 {
	in, err := numeric.NewIntegrator(&run.elastic, 0, run.start[:], tolerance)
	if err != nil {
		b.Fatal(err)
	}
	if _, err := in.Run(end); err != nil {
		b.Fatal(err)
	}
	return [2]float64{in.State()[0], in.State()[1]}
}

// BenchmarkElasticMove is the whole of it at the precision in use: peaks,
// lowest point and slack found as events.
func BenchmarkElasticMove(b *testing.B) {
	s, start := benchmarkSwing()
	window := 2 * SmallPeriod(s.Length)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := s.Move(start, window); err != nil {
			b.Fatal(err)
		}
	}
}
