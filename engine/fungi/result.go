package fungi

import (
	"cmp"
	"math"
	"slices"
	"strings"
)

// Answer says what kind of answer a result is.
type Answer string

// The answers.
const (
	NotEnoughSeen Answer = "not enough seen"
	PerhapsNone   Answer = "perhaps no fungus"
	HarmlessHere  Answer = "harmless here"
	Named         Answer = "named"
	Unknown       Answer = "not in the tables"
)

// Ranked is one candidate with its probability.
type Ranked struct {
	Name        string
	Kind        Kind
	Probability float64
}

// Result is what the key makes of the evidence. The probabilities of Ranked
// sum to less than one; Rest is the share of all that the tables do not hold.
type Result struct {
	Answer  Answer
	Ranked  []Ranked // by falling probability, then by name
	Rest    float64
	Bits    float64 // of information in the answers, against knowing nothing
	Meaning Meaning
}

// Identify ranks the candidates by the evidence and says what those that
// remain mean together. Errors name an answer that is not in the vocabulary.
func (k *Key) Identify(e Evidence) (Result, error) {
	if err := k.drafts.words.evidence(e); err != nil {
		return Result{}, err
	}
	shares := k.posterior(e)
	r := Result{Rest: shares[len(shares)-1], Bits: k.bits(shares)}
	for i, c := range k.candidates {
		r.Ranked = append(r.Ranked, Ranked{c.Name, c.Kind, shares[i]})
	}
	slices.SortFunc(r.Ranked, func(a, b Ranked) int {
		return cmp.Or(-cmp.Compare(a.Probability, b.Probability), cmp.Compare(a.Name, b.Name))
	})
	r.Answer = k.answer(r, e)
	r.Meaning = k.meaning(r, shares)
	return r, nil
}

// bits is the information that the answers brought: the relative entropy of
// what is believed now to what was believed before (Kullback and Leibler 1951,
// from memory).
func (k *Key) bits(shares []float64) float64 {
	sum := 0.0
	for i, p := range shares {
		if p > 0 {
			sum += p * math.Log2(p/k.prior[i])
		}
	}
	return sum
}

// Share is the part of a kind in the ranking.
func (r Result) Share(kind Kind) float64 {
	if kind == Unlisted {
		return r.Rest
	}
	sum := 0.0
	for _, one := range r.Ranked {
		if one.Kind == kind {
			sum += one.Probability
		}
	}
	return sum
}

// answer decides what can be said. Where a thing grows is no look at it: host,
// place and month alone never name it. To put something aside as harmless asks
// for more than to name a fungus.
func (k *Key) answer(r Result, e Evidence) Answer {
	t := k.drafts.trust
	none, harmless := r.Share(NoFungus), r.Share(Harmless)
	switch {
	case r.Bits < t.EnoughBits, e.looks() == 0, e.Answers() < fewAnswers && r.Bits < 2*t.EnoughBits:
		return NotEnoughSeen
	case onTwigOnly(e) && none < t.HarmlessFrom:
		return HarmlessHere
	case none+harmless >= t.HarmlessFrom && r.bestHarmless() < t.EnoughShare:
		return NotEnoughSeen
	case none >= t.HarmlessFrom:
		return PerhapsNone
	case none+harmless >= t.HarmlessFrom:
		return HarmlessHere
	case r.Rest > 0.5:
		return Unknown
	case r.Share(Decay) < 0.5 || r.bestGenus() < t.EnoughShare:
		return NotEnoughSeen
	}
	return Named
}

// House: fewer answers than these name something only if they tell much.
const fewAnswers = 3

// bestGenus is the greatest share that one genus of decay fungi holds: close
// relatives mean much the same.
func (r Result) bestGenus() float64 {
	shares := map[string]float64{}
	best := 0.0
	for _, one := range r.Ranked {
		if genus, _, _ := strings.Cut(one.Name, " "); one.Kind == Decay {
			shares[genus] += one.Probability
			best = math.Max(best, shares[genus])
		}
	}
	return best
}

// bestHarmless is the share of the likeliest thing that is no decay fungus.
func (r Result) bestHarmless() float64 {
	for _, one := range r.Ranked {
		if one.Kind != Decay {
			return one.Probability
		}
	}
	return 0
}

// Twig is the position of what lies on the ground or is dead and thin. What
// grows on it says nothing about the standing tree (common practice, no
// published source).
const Twig = "twig"

func onTwigOnly(e Evidence) bool {
	if !slices.Contains(e.Positions, Twig) {
		return false
	}
	for _, p := range e.Positions {
		if p == "butt" || p == "stem" || p == "roots_away" || p == "cavity" {
			return false
		}
	}
	return true
}
