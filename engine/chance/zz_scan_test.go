package chance

import (
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"sort"
	"testing"
	"time"

	"boughline/quantity"
)

func randomCase(r *rand.Rand) LimbCase {
	u := func(a, b float64) float64 { return a + (b-a)*r.Float64() }
	lu := func(a, b float64) float64 { return a * math.Exp(r.Float64()*math.Log(b/a)) }
	pick := func(v ...float64) float64 { return v[r.IntN(len(v))] }
	mean := u(15e6, 60e6)
	w := 1e-3
	ratio := lu(0.1, 10)
	margin := u(0.8, 4)
	total := mean * w / margin
	q := total / (1 + ratio)
	c := LimbCase{
		Strength:       Variable[quantity.Stress]{Mean: quantity.Stress(mean), CoV: u(0.25, 0.45)},
		SectionModulus: Variable[quantity.Volume]{Mean: 1e-3, CoV: pick(0.02, 0.05, 0.15, 0.3, 0.5)},
		SelfMoment:     Variable[quantity.Moment]{Mean: quantity.Moment(q * ratio), CoV: pick(0.2, 0.7)},
		RideMoment:     Variable[quantity.Moment]{Mean: quantity.Moment(q), CoV: pick(0.03, 0.08, 0.15, 0.25)},
		LastingCoV:     0.10,
	}
	law, _ := LognormalOf(q, c.RideMoment.CoV)
	c.TestMoment = quantity.Moment(pick(1.25, 1.0) * law.At(1.645))
	return c
}

func TestScan(t *testing.T) {
	r := rand.New(rand.NewPCG(7, uint64(len(os.Getenv("SEED")))))
	n := 300
	type rec struct {
		e float64
		s string
	}
	var recs [3][]rec
	worstBy := map[string]float64{}
	var total time.Duration
	k := 0
	var slowest time.Duration
	for range n {
		c := randomCase(r)
		switch os.Getenv("MODE") {
		case "tail":
			c.Strength.Mean *= quantity.Stress(1 + 5*r.Float64())
			c.SectionModulus.CoV = 0.02
			c.Strength.CoV = 0.2 + 0.15*r.Float64()
		case "wild":
			c.Strength.CoV = 0.15 + 0.35*r.Float64()
			c.SelfMoment.CoV = 0.65 * r.Float64()
			c.RideMoment.CoV = 0.4 * r.Float64()
			c.LastingCoV = 0.08 + 0.12*r.Float64()
			c.TestMoment = c.RideMoment.Mean * quantity.Moment(0.1+1.9*r.Float64())
		}
		start := time.Now()
		g, err := c.Chance()
		d := time.Since(start)
		if err != nil {
			continue
		}
		total += d
		k++
		slowest = max(slowest, d)
		p, o, l := reference(c)
		for i, v := range [][2]float64{{g.Prior.Probability, p}, {g.GivenOwnWeight.Probability, o}, {g.GivenLoadTest.Probability, l}} {
			e := math.Abs(v[0]/v[1] - 1)
			recs[i] = append(recs[i], rec{e, fmt.Sprintf("%.2e p=%.2e %+v", e, v[1], c)})
			key := fmt.Sprintf("%d 1e%03.0f", i, math.Floor(math.Log10(v[1])/2)*2)
			worstBy[key] = max(worstBy[key], e)
		}
	}
	for i := range recs {
		sort.Slice(recs[i], func(a, b int) bool { return recs[i][a].e > recs[i][b].e })
		for _, x := range recs[i][:6] {
			fmt.Println(i, x.s)
		}
	}
	var keys []string
	for k := range worstBy {
		keys = append(keys, k)
	}
	sort.Strings(keys)
	for _, k := range keys {
		fmt.Printf("%s %.1e\n", k, worstBy[k])
	}
	fmt.Println("n", k, "mean", total/time.Duration(k), "slowest", slowest)
}
