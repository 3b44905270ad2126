package chance

import (
	"fmt"
	"math"
)

// SampleSobol returns the indices of Sobol by sampling, for a margin that is not
// smooth or has many inputs: Samples times (inputs + 2) margins are worked out, and the
// intervals follow from the scatter of 64 parts of the samples. The aim of a CoV is not used.
// Errors: correlated inputs, samples outside 64 to 1e9, a margin without variance.
// Source: Saltelli et al., 2010, Computer Physics Communications 181:259, estimator b for
// the first order; Jansen, 1999, for the total (from memory).
func (p Problem) SampleSobol(s Sampling) (Sensitivity, error) {
	if err := p.checkIndependent(); err != nil {
		return Sensitivity{}, fmt.Errorf("sampled Sobol indices: %w", err)
	}
	if s.Samples < scatterParts || s.Samples > 1e9 {
		return Sensitivity{}, fmt.Errorf("sampled Sobol indices: samples %d; expected %d to 1e9", s.Samples, scatterParts)
	}
	found := make([]moments, scatterParts)
	inBlocks(0, scatterParts, func() func(int) {
		return func(part int) {
			found[part] = p.exchange(streamOf(s.Seed, part), s.Samples/scatterParts)
		}
	})
	total := newMoments(p.Inputs.Len())
	for _, f := range found {
		total.add(f)
	}
	mean, variance := total.spread()
	if !(variance > 0) {
		return Sensitivity{}, fmt.Errorf("sampled Sobol indices: variance of the margin %v; expected more than 0", variance)
	}
	result := Sensitivity{Mean: mean, Variance: variance}
	result.First, result.FirstHalf = shares(found, variance, func(m moments) []float64 { return m.first })
	result.Total, result.TotalHalf = shares(found, variance, func(m moments) []float64 { return m.total })
	return result, nil
}

const scatterParts = 64

// moments are sums over pairs of samples a and b, and a with one input from b.
type moments struct {
	pairs        float64
	sum, squares float64
	first, total []float64
	base         float64 // margin from which sum and squares count
}

func newMoments(inputs int) moments {
	return moments{first: make([]float64, inputs), total: make([]float64, inputs)}
}

func (m *moments) add(other moments) {
	m.base = other.base
	m.pairs += other.pairs
	m.sum += other.sum
	m.squares += other.squares
}

func (m moments) spread() (mean, variance float64) {
	n := 2 * m.pairs
	mean = m.sum / n
	return m.base + mean, m.squares/n - mean*mean
}

// exchange draws pairs of samples and exchanges one input after the other.
// Margins count from that of the medians, which spares digits.
func (p Problem) exchange(random stream, pairs int) moments {
	n := p.Inputs.Len()
	m := newMoments(n)
	m.pairs = float64(pairs)
	z, a, b := make([]float64, n), make([]float64, n), make([]float64, n)
	p.Inputs.Values(a, z)
	m.base = p.Margin(a)
	for range pairs {
		random.normals(z)
		p.Inputs.Values(a, z)
		random.normals(z)
		p.Inputs.Values(b, z)
		ofA, ofB := p.Margin(a)-m.base, p.Margin(b)-m.base
		m.sum += ofA + ofB
		m.squares += ofA*ofA + ofB*ofB
		for i := range n {
			kept := a[i]
			a[i] = b[i]
			change := p.Margin(a) - m.base - ofA
			a[i] = kept
			m.first[i] += ofB * change
			m.total[i] += change * change / 2
		}
	}
	return m
}

// shares returns the mean of a sum per pair over the parts against the
// variance, with half the width of its interval.
func shares(parts []moments, variance float64, of func(moments) []float64) (mean, half []float64) {
	n := len(of(parts[0]))
	mean, half = make([]float64, n), make([]float64, n)
	for i := range n {
		var sum, squares float64
		for _, m := range parts {
			share := of(m)[i] / m.pairs / variance
			sum += share
			squares += share * share
		}
		count := float64(len(parts))
		mean[i] = sum / count
		half[i] = confidence * math.Sqrt(math.Max(0, squares/count-mean[i]*mean[i])/(count-1))
	}
	return mean, half
}
