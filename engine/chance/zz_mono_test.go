package chance

import (
	"fmt"
	"math/rand/v2"
	"sort"
	"testing"

	"boughline/quantity"
)

func TestMonoMass(t *testing.T) {
	r := rand.New(rand.NewPCG(11, 0))
	type hit struct {
		drop float64
		s    string
	}
	for _, covS := range []float64{0.2, 0.63, 0.7} {
		for _, factor := range []float64{1.0, 1.25} {
			var hits []hit
			n, bad, decision := 0, 0, 0
			for range 700 {
				c := randomCase(r)
				c.SelfMoment.CoV = covS
				law, _ := LognormalOf(float64(c.RideMoment.Mean), c.RideMoment.CoV)
				c.TestMoment = quantity.Moment(factor * law.At(1.645))
				ride, test := c.RideMoment.Mean, c.TestMoment
				before, peak, at := 0.0, 0.0, 0.0
				worst, desc := 1.0, ""
				isDecision := false
				for f := 0.02; f < 5; f *= 1.08 {
					c.RideMoment.Mean, c.TestMoment = ride*quantity.Moment(f), test*quantity.Moment(f)
					g, err := c.Chance()
					if err != nil {
						break
					}
					p := g.GivenLoadTest.Probability
					if p > peak {
						peak, at = p, f
					}
					if ratio := p / peak; ratio < worst {
						worst = ratio
						desc = fmt.Sprintf("peak %.3e (beta %.2f) at ride/self %.3f; then %.3e (beta %.2f) at %.3f", peak, Beta(peak), float64(ride)*at/float64(c.SelfMoment.Mean), p, g.GivenLoadTest.Beta, float64(ride)*f/float64(c.SelfMoment.Mean))
						isDecision = isDecision || Beta(peak) < 4.3 && g.GivenLoadTest.Beta > 4.3
					}
					before = p
				}
				_ = before
				n++
				if worst < 1-1e-5 {
					bad++
					if isDecision {
						decision++
						fmt.Println("   CROSS", desc, fmt.Sprintf("strength CoV %.2f S CoV %.2f Q CoV %.2f T/Q %.3f W CoV %.2f", c.Strength.CoV, covS, c.RideMoment.CoV, float64(test/ride), c.SectionModulus.CoV))
					}
					m, _ := c.model()
					hits = append(hits, hit{worst, fmt.Sprintf("%.3f %s; X sigma %.2f, median X/S %.2f, CoV Q %.2f, T/Q %.3f", worst, desc, m.resistance.Sigma, m.resistance.At(0)/m.self.At(0), c.RideMoment.CoV, float64(test/ride))})
				}
			}
			sort.Slice(hits, func(a, b int) bool { return hits[a].drop < hits[b].drop })
			fmt.Println("== CoV S", covS, "factor", factor, "cases", n, "not monotone", bad, "crossing 4.3 downwards", decision)
			for i := 0; i < len(hits) && i < 3; i++ {
				fmt.Println("  ", hits[i].s)
			}
			if len(hits) > 0 {
				fmt.Println("   median:", hits[len(hits)/2].s)
			}
		}
	}
}
