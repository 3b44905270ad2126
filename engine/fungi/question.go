package fungi

import (
	"math"
	"slices"
)

// What can be asked beside the marks.
const (
	AskHost      = "host"
	AskPosition  = "position"
	AskForm      = "form"
	AskUnderside = "underside"
)

// ColourAsked returns the part whose colour a question asks for.
func ColourAsked(attribute string) (Field, bool) {
	switch attribute {
	case "upper":
		return Upper, true
	case "underside colour":
		return Underside, true
	case "flesh":
		return Flesh, true
	case "spores":
		return Spores, true
	}
	return "", false
}

// Answers to the question for a mark.
const (
	Yes = "yes"
	No  = "no"
)

// Askable is a question that can be put to a person. Attribute is one of the
// Ask names, "upper", "underside colour", "flesh" or "spores" for a colour, or
// a mark. Ease is the share of people who can answer it there and then.
type Askable struct {
	Attribute string
	Ease      float64
}

// Question is the next one to ask, and how many bits it is expected to tell.
type Question struct {
	Attribute string
	Bits      float64
}

// Ask returns the question that is expected to part the candidates best: the
// fall of entropy, averaged over the answers as they are expected, times the
// ease of answering (Shannon 1948, mutual information; from memory). ok is
// false where none tells more than the least gain.
func (k *Key) Ask(e Evidence, questions []Askable) (best Question, ok bool) {
	now := k.posterior(e)
	for _, q := range questions {
		if len(e.told(q.Attribute)) > 0 {
			continue
		}
		bits := q.Ease * k.gain(now, q.Attribute)
		if bits > best.Bits || bits == best.Bits && ok && q.Attribute < best.Attribute {
			best, ok = Question{q.Attribute, bits}, true
		}
	}
	return best, ok && best.Bits >= k.drafts.trust.LeastGain
}

// gain is the mutual information of candidates and the answer, in bits.
func (k *Key) gain(now []float64, attribute string) float64 {
	gain := 0.0
	for _, answer := range k.answers(attribute) {
		share, told := 0.0, make([]float64, len(now))
		for i, p := range k.profiles {
			told[i] = p.chance(attribute, answer)
			share += now[i] * told[i]
		}
		for i := range now {
			if now[i] > 0 && told[i] > 0 {
				gain += now[i] * told[i] * math.Log2(told[i]/share)
			}
		}
	}
	return gain
}

// answers lists what can be said to a question.
func (k *Key) answers(attribute string) []string {
	v := k.drafts.words
	switch attribute {
	case AskHost:
		return k.drafts.genera
	case AskPosition:
		return v.Positions
	case AskForm:
		return v.Forms
	case AskUnderside:
		return v.Undersides
	}
	if _, ok := ColourAsked(attribute); ok {
		return v.Colours
	}
	return []string{Yes, No}
}

// chance is the probability of one answer for a profile.
func (p profile) chance(attribute, answer string) float64 {
	switch attribute {
	case AskHost:
		return p.host[answer]
	case AskPosition:
		return p.position[answer]
	case AskForm:
		return p.form[answer]
	case AskUnderside:
		return p.underside[answer]
	}
	if f, ok := ColourAsked(attribute); ok {
		return p.colours[f][answer]
	}
	if answer == Yes {
		return p.marks[attribute]
	}
	return 1 - p.marks[attribute]
}

// told lists what was answered to a question. A colour told without a part
// answers none.
func (e Evidence) told(attribute string) []string {
	f, ok := ColourAsked(attribute)
	if ok && !slices.ContainsFunc(e.Colours, func(s Seen) bool { return s.Field == f }) {
		return nil
	}
	return e.Names(attribute)
}
