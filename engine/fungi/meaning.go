package fungi

import "slices"

// Meaning is what all candidates that remain say together about the tree.
type Meaning struct {
	Remaining []string // their names, the likeliest first
	Shared    []string // parts of the tree that all of them weaken
	Some      []string // parts that some of them weaken beside those
	Hiding    Hiding   // of the one that hides best
	Advice    Advice   // of the worst of them
	Worst     string   // its name
	Agreed    bool     // all of them have the same advice
	RuleOut   string   // beside a harmless answer: what bars people and is not ruled out, or empty
}

// meaning joins what remains. Of a harmless answer only harmless things
// remain, but a fungus that bars people is named as long as it is not ruled
// out. An answer that names nothing rests on all the decay fungi that remain.
func (k *Key) meaning(r Result, shares []float64) Meaning {
	harmless := r.Answer == PerhapsNone || r.Answer == HarmlessHere
	remaining := k.remaining(shares, func(c Candidate) bool { return (c.Kind == Decay) != harmless })
	m := k.join(remaining)
	if harmless {
		m.RuleOut = k.ruleOut(shares)
	}
	return m
}

// remaining lists the candidates that hold the greater part of the
// probability among those that count, the likeliest first.
func (k *Key) remaining(shares []float64, counts func(Candidate) bool) []int {
	var list []int
	whole := 0.0
	for i, c := range k.candidates {
		if counts(c) {
			list = append(list, i)
			whole += shares[i]
		}
	}
	slices.SortFunc(list, func(a, b int) int {
		switch {
		case shares[a] != shares[b]:
			if shares[a] > shares[b] {
				return -1
			}
			return 1
		case k.candidates[a].Name < k.candidates[b].Name:
			return -1
		}
		return 1
	})
	t, held := k.drafts.trust, 0.0
	for n, i := range list {
		if n > 0 && (held >= t.RemainingShare*whole || shares[i] < t.RemainingLeast*shares[list[0]]) {
			return list[:n]
		}
		held += shares[i]
	}
	return list
}

func (k *Key) join(list []int) Meaning {
	m := Meaning{Agreed: true}
	for n, i := range list {
		c := k.candidates[i]
		m.Remaining = append(m.Remaining, c.Name)
		if n == 0 {
			m.Shared, m.Advice, m.Worst, m.Hiding = slices.Clone(c.Weakens), c.Advice, c.Name, c.Hiding
			m.Some = slices.Clone(c.Weakens)
			continue
		}
		m.Shared = slices.DeleteFunc(m.Shared, func(p string) bool { return !slices.Contains(c.Weakens, p) })
		m.Some = append(m.Some, c.Weakens...)
		m.Hiding = max(m.Hiding, c.Hiding)
		m.Agreed = m.Agreed && c.Advice == k.candidates[list[0]].Advice
		if c.Advice > m.Advice {
			m.Advice, m.Worst = c.Advice, c.Name
		}
	}
	m.Some = slices.DeleteFunc(sorted(m.Some), func(p string) bool { return slices.Contains(m.Shared, p) })
	return m
}

// ruleOut names the likeliest fungus that bars people, where its share is not
// small.
func (k *Key) ruleOut(shares []float64) string {
	name, most := "", k.drafts.trust.RuleOutShare
	for i, c := range k.candidates {
		if c.Kind == Decay && c.Advice >= MeasureFirst && shares[i] >= most {
			name, most = c.Name, shares[i]
		}
	}
	return name
}
