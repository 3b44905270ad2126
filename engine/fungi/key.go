package fungi

import (
	"math"
	"slices"
)

// Key is the key with its knowledge worked in. It is not changed after New.
type Key struct {
	candidates []Candidate
	profiles   []profile // as candidates, the last one for what is not in the tables
	prior      []float64
	drafts     drafts
}

// New works the knowledge into a key. Errors name a candidate and the name it
// uses that the vocabulary does not hold.
func New(v Vocabulary, t Trust, candidates []Candidate) (*Key, error) {
	if err := Check(v, candidates); err != nil {
		return nil, err
	}
	k := &Key{candidates: slices.Clone(candidates), drafts: newDrafts(v, t, candidates)}
	for _, c := range candidates {
		k.profiles = append(k.profiles, k.drafts.profile(c))
	}
	k.profiles = append(k.profiles, k.drafts.unlisted(k.profiles))
	k.prior = priors(candidates, t)
	return k, nil
}

// unlisted is anything that the tables do not hold: half like the average of
// what they hold, half like nothing in particular.
func (d drafts) unlisted(known []profile) profile {
	pick := func(of func(profile) distribution, names []string) distribution {
		all := make([]distribution, len(known))
		for i, p := range known {
			all[i] = of(p)
		}
		return mix(mean(all), flat(names), 0.5)
	}
	u := profile{
		host:      d.commonHosts,
		position:  pick(func(p profile) distribution { return p.position }, d.words.Positions),
		month:     flat(months),
		form:      pick(func(p profile) distribution { return p.form }, d.words.Forms),
		underside: pick(func(p profile) distribution { return p.underside }, d.words.Undersides),
		colours:   map[Field]distribution{}, marks: map[string]float64{},
	}
	for _, f := range append(slices.Clone(fields), AnyField) {
		u.colours[f] = pick(func(p profile) distribution { return p.colours[f] }, d.words.Colours)
	}
	for m := range d.words.Stray {
		for _, p := range known {
			u.marks[m] += p.marks[m] / float64(len(known))
		}
	}
	return u
}

// priors shares out what people ask about: by kind, then by commonness.
func priors(candidates []Candidate, t Trust) []float64 {
	share := map[Kind]float64{Decay: t.DecayShare, Harmless: t.HarmlessShare, NoFungus: t.NoneShare}
	whole := map[Kind]float64{}
	for _, c := range candidates {
		whole[c.Kind] += c.Commonness
	}
	prior, rest := make([]float64, len(candidates)+1), 1.0
	for i, c := range candidates {
		prior[i] = share[c.Kind] * c.Commonness / whole[c.Kind]
	}
	for kind := range whole {
		rest -= share[kind]
	}
	prior[len(candidates)] = rest
	return prior
}

// posterior returns the probability of each candidate and of what is not in
// the tables, given the evidence. They sum to 1.
func (k *Key) posterior(e Evidence) []float64 {
	logs := make([]float64, len(k.profiles))
	highest := math.Inf(-1)
	for i, p := range k.profiles {
		logs[i] = math.Log(k.prior[i]) + k.logLikelihood(p, e)
		highest = math.Max(highest, logs[i])
	}
	sum := 0.0
	for i := range logs {
		logs[i] = math.Exp(logs[i] - highest)
		sum += logs[i]
	}
	for i := range logs {
		logs[i] /= sum
	}
	return logs
}
