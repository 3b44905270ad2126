package chance

import (
	"fmt"
	"math"
)

// Sampling says how a problem is sampled. The same seed gives the same result on
// any number of processors.
type Sampling struct {
	Samples int // most samples
	Seed    uint64
	CoV     float64 // stop once the estimate has this coefficient of variation; 0: never
	// Progress, if there is one, is told between the rounds how many samples are
	// done; an error from it ends the sampling and is returned. It changes no figure.
	Progress func(done int) error
}

// Estimate is a chance by sampling, with its interval at 95 % confidence.
type Estimate struct {
	Figure
	Low, High         float64
	CoV               float64 // of the estimate; +Inf without a failure
	Samples, Failures int
}

// MonteCarlo returns the share of samples that fail, with Wilson's interval,
// which holds for no failure as well.
// Errors: no margin or input, samples outside 1 to 1e12, a coefficient of variation below 0.
// Source: Wilson, 1927, Journal of the American Statistical Association 22:209 (from memory).
func (p Problem) MonteCarlo(s Sampling) (Estimate, error) {
	total, err := p.sample(s, nil)
	if err != nil {
		return Estimate{}, fmt.Errorf("plain sampling: %w", err)
	}
	return total.plain(), nil
}

// plain is the estimate by unweighted samples, with Wilson's interval.
func (t tally) plain() Estimate {
	e := t.estimate()
	n, q := float64(e.Samples), confidence*confidence
	middle := (e.Probability + q/(2*n)) / (1 + q/n)
	half := confidence / (1 + q/n) * math.Sqrt(e.Probability*(1-e.Probability)/n+q/(4*n*n))
	e.Low, e.High = math.Max(0, middle-half), math.Min(1, middle+half)
	return e
}

// ImportanceSampling returns the chance by samples about the given points of
// standard normal space, design points as a rule: normal with unit deviation about each in
// turn, each failure weighted by the ratio of the densities. It must be given a point for
// every region that matters: what it never meets is missing in the interval too.
// Errors: as MonteCarlo, and no centre or one of the wrong length.
// Source: Harbitz, 1986, Structural Safety 3:109; several points in one mixture by Veach &
// Guibas, 1995 (both from memory).
func (p Problem) ImportanceSampling(s Sampling, centres ...[]float64) (Estimate, error) {
	if len(centres) == 0 {
		return Estimate{}, fmt.Errorf("importance sampling: no centre; expected one or more")
	}
	for _, c := range centres {
		if len(c) != p.Inputs.Len() {
			return Estimate{}, fmt.Errorf("importance sampling: centre of %d values; expected %d", len(c), p.Inputs.Len())
		}
	}
	total, err := p.sample(s, centres)
	if err != nil {
		return Estimate{}, fmt.Errorf("importance sampling: %w", err)
	}
	e := total.estimate()
	half := confidence * e.Probability * e.CoV
	if total.failures == 0 {
		half = 1 // nothing is known
	}
	e.Low, e.High = math.Max(0, e.Probability-half), math.Min(1, e.Probability+half)
	return e, nil
}

// confidence is the normal deviate of an interval at 95 %.
const confidence = 1.959963984540054

// tally is what a block of samples adds to an estimate.
type tally struct {
	samples, failures int
	sum, squares      float64 // of the weights of the failures
}

func (t *tally) add(other tally) {
	t.samples += other.samples
	t.failures += other.failures
	t.sum += other.sum
	t.squares += other.squares
}

func (t tally) estimate() Estimate {
	n := float64(t.samples)
	mean := t.sum / n
	variance := math.Max(0, t.squares/n-mean*mean)
	e := Estimate{Figure: FigureOf(math.Min(1, mean)), CoV: math.Inf(1), Samples: t.samples, Failures: t.failures}
	if mean > 0 {
		e.CoV = math.Sqrt(variance/n) / mean
	}
	return e
}

const (
	blockSamples = 4096
	mostBlocks   = 64 // between two looks at the estimate
)

// sample works through rounds of blocks, each round as long as all before, and
// adds their tallies in order.
func (p Problem) sample(s Sampling, centres [][]float64) (tally, error) {
	if err := p.check(); err != nil {
		return tally{}, err
	}
	if s.Samples < 1 || s.Samples > 1e12 {
		return tally{}, fmt.Errorf("samples %d; expected 1 to 1e12", s.Samples)
	}
	if !(s.CoV >= 0) {
		return tally{}, fmt.Errorf("coefficient of variation %v; expected 0 or more", s.CoV)
	}
	blocks := (s.Samples + blockSamples - 1) / blockSamples
	var total tally
	for first := 0; first < blocks; {
		end := min(blocks, first+min(max(1, first), mostBlocks))
		tallies := make([]tally, end-first)
		inBlocks(first, end, func() func(int) {
			worker := p.sampler(centres)
			return func(block int) {
				n := min(blockSamples, s.Samples-block*blockSamples)
				tallies[block-first] = worker.block(streamOf(s.Seed, block), n)
			}
		})
		for _, t := range tallies {
			total.add(t)
		}
		if s.Progress != nil {
			if err := s.Progress(total.samples); err != nil {
				return tally{}, fmt.Errorf("after %d samples: %w", total.samples, err)
			}
		}
		if s.CoV > 0 && total.estimate().CoV <= s.CoV {
			break
		}
		first = end
	}
	return total, nil
}
