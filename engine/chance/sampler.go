package chance

import "math"

// chunk is the number of samples worked through together, few enough to stay
// in the fastest memory.
const chunk = 256

// sampler draws samples, one row of inputs after the other, and tells which
// fail. It allocates nothing while it draws.
type sampler struct {
	Problem
	centres []centre
	rows    []float64
	mixture []float64 // density of the samples drawn over that of the inputs
}

type centre struct {
	at   []float64
	half float64 // of its squared distance
}

func (p Problem) sampler(centres [][]float64) *sampler {
	s := &sampler{Problem: p, rows: make([]float64, chunk*p.Inputs.Len()), mixture: make([]float64, chunk)}
	for _, c := range centres {
		s.centres = append(s.centres, centre{at: c, half: dot(c, c) / 2})
	}
	return s
}

// block draws n samples and tallies those that fail.
func (s *sampler) block(random stream, n int) (t tally) {
	for left := n; left > 0; left -= chunk {
		rows := s.rows[:min(left, chunk)*s.Inputs.Len()]
		random.normals(rows)
		if len(s.centres) > 0 {
			s.shift(rows)
		}
		s.Inputs.transform(rows)
		s.count(&t, rows)
	}
	t.samples = n
	return t
}

// shift moves the samples to the centres in turn, and notes the density of the
// mixture at each.
func (s *sampler) shift(rows []float64) {
	n := s.Inputs.Len()
	for k := range len(rows) / n {
		row := rows[k*n : (k+1)*n]
		for i, at := range s.centres[k%len(s.centres)].at {
			row[i] += at
		}
		sum := 0.0
		for _, c := range s.centres {
			sum += math.Exp(dot(c.at, row) - c.half)
		}
		s.mixture[k] = sum / float64(len(s.centres))
	}
}

// count adds the samples that fail, each by its weight.
func (s *sampler) count(t *tally, rows []float64) {
	n, margin := s.Inputs.Len(), s.Margin
	for k := 0; len(rows) > 0; k++ {
		row := rows[:n]
		rows = rows[n:]
		if margin(row) >= 0 {
			continue
		}
		weight := 1.0
		if len(s.centres) > 0 {
			weight = 1 / s.mixture[k]
		}
		t.failures++
		t.sum += weight
		t.squares += weight * weight
	}
}

// transform turns rows of independent standard normal variables into values of
// the inputs.
func (in Inputs) transform(rows []float64) {
	n := len(in.laws)
	if in.lower != nil {
		for at := 0; at < len(rows); at += n {
			in.correlate(rows[at : at+n])
		}
	}
	for i, law := range in.laws {
		fill(law, rows[i:], n)
	}
}

// correlate works from the last variable back, as each needs those before it.
func (in Inputs) correlate(z []float64) {
	for i := len(z) - 1; i >= 0; i-- {
		z[i] = dot(in.lower[i][:i+1], z)
	}
}

// fill replaces every stride-th standard normal variable by the value of a law.
func fill(law Law, z []float64, stride int) {
	switch l := law.(type) {
	case Normal:
		for k := 0; k < len(z); k += stride {
			z[k] = l.Mean + l.SD*z[k]
		}
	case Lognormal:
		exponentials(z, stride, l.Mu, l.Sigma)
	default:
		for k := 0; k < len(z); k += stride {
			z[k] = law.At(z[k])
		}
	}
}
