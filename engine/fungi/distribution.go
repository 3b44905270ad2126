package fungi

import (
	"math"
	"slices"
)

// distribution gives each name of an attribute its probability; all sum to 1.
type distribution map[string]float64

// flat is the distribution that prefers nothing.
func flat(names []string) distribution {
	d := make(distribution, len(names))
	for _, n := range names {
		d[n] = 1 / float64(len(names))
	}
	return d
}

// mix returns share parts of a and the rest of b.
func mix(a, b distribution, share float64) distribution {
	d := make(distribution, len(b))
	for n, p := range b {
		d[n] = share*a[n] + (1-share)*p
	}
	return d
}

// mean is the average of several distributions over the same names.
func mean(all []distribution) distribution {
	d := distribution{}
	for _, one := range all {
		for n, p := range one {
			d[n] += p / float64(len(all))
		}
	}
	return d
}

// blur tells how each name is told: mostly by itself, with the share of each
// confusion by its neighbour.
func blur(names []string, mixed []Confusion) map[string]distribution {
	told := make(map[string]distribution, len(names))
	for _, n := range names {
		told[n] = distribution{n: 1}
	}
	for _, c := range mixed {
		told[c.One][c.Other] += c.Share
		told[c.Other][c.One] += c.Share
	}
	for _, d := range told {
		d.normalise()
	}
	return told
}

func (d distribution) normalise() {
	sum := 0.0
	for _, n := range d.names() {
		sum += d[n]
	}
	for n := range d {
		d[n] /= sum
	}
}

// names lists the names in alphabetical order, so that sums come out the same
// in every run.
func (d distribution) names() []string {
	names := make([]string, 0, len(d))
	for n := range d {
		names = append(names, n)
	}
	slices.Sort(names)
	return names
}

// listed is the distribution of a list whose weight falls along it, each told
// by its blur, with floor parts spread over all names.
func listed(list, names []string, told map[string]distribution, decline, floor float64) distribution {
	if len(list) == 0 {
		return flat(names)
	}
	d, whole := distribution{}, 0.0
	for i := range list {
		whole += 1 / (1 + decline*float64(i))
	}
	for i, one := range list {
		weight := 1 / (1 + decline*float64(i)) / whole
		for n, p := range told[one] {
			d[n] += weight * p
		}
	}
	return mix(flat(names), fill(d, names), floor)
}

// fill gives names that d does not hold a probability of 0.
func fill(d distribution, names []string) distribution {
	for _, n := range names {
		d[n] += 0
	}
	return d
}

// logOf is the log-likelihood of several names told of one attribute: their
// mean, times their number to the power of repetition. Repeated words of one
// kind are not independent.
func logOf(d distribution, told []string, repetition float64) float64 {
	if len(told) == 0 {
		return 0
	}
	sum := 0.0
	for _, n := range told {
		sum += math.Log(d[n])
	}
	return sum * math.Pow(float64(len(told)), repetition-1)
}
