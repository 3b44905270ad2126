package fungi

import (
	"math"
	"slices"
	"strconv"
)

// logLikelihood is how well a profile accounts for the evidence. Attributes
// are taken as independent given the candidate, what a naive Bayes key does;
// answers of one kind are not, and count by Trust.Repetition.
func (k *Key) logLikelihood(p profile, e Evidence) float64 {
	t := k.drafts.trust
	log := logOf(p.position, sorted(e.Positions), t.Repetition) +
		logOf(p.form, sorted(e.Forms), t.Repetition) + logNone(p.form, sorted(e.NotForms)) +
		logOf(p.underside, sorted(e.Undersides), t.Repetition) + logNone(p.underside, sorted(e.NotUnder))
	if genera, ok := k.drafts.words.genera(e.Host); ok && e.Host != "" {
		share := 0.0
		for _, g := range genera {
			share += p.host[g]
		}
		log += math.Log(share)
	}
	if e.Month > 0 {
		log += math.Log(p.month[strconv.Itoa(e.Month)])
	}
	if e.Size > 0 {
		log += p.logSize(float64(e.Size), t.SizeFloor)
	}
	return log + k.logColours(p, e.Colours) + k.logMarks(p, e.Marks)
}

// logNone is the log-likelihood that none of the names is true.
func logNone(d distribution, names []string) float64 {
	rest := 1.0
	for _, n := range names {
		rest -= d[n]
	}
	return math.Log(math.Max(rest, leastRest))
}

// House: what is denied may still be true.
const leastRest = 0.05

func (k *Key) logColours(p profile, seen []Seen) float64 {
	log := 0.0
	for _, f := range append(slices.Clone(fields), AnyField) {
		var told []string
		for _, s := range seen {
			if s.Field == f {
				told = append(told, s.Colour)
			}
		}
		log += logOf(p.colours[f], sorted(told), k.drafts.trust.Repetition)
	}
	return log
}

// logMarks counts what was seen and what was looked for in vain.
func (k *Key) logMarks(p profile, marks map[string]bool) float64 {
	names := make([]string, 0, len(marks))
	for m := range marks {
		names = append(names, m)
	}
	slices.Sort(names)
	sum := 0.0
	for _, m := range names {
		if marks[m] {
			sum += math.Log(p.marks[m])
		} else {
			sum += math.Log(1 - p.marks[m])
		}
	}
	if len(names) > 0 {
		sum *= math.Pow(float64(len(names)), (k.drafts.trust.Repetition-1)/2)
	}
	return sum
}

func sorted(names []string) []string {
	names = slices.Clone(names)
	slices.Sort(names)
	return slices.Compact(names)
}
