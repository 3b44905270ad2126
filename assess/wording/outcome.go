package wording

import "boughline/assess"

// outcomeWords is what each outcome says, as a sentence and as a shape that
// reads without colour.
var outcomeWords = map[assess.Outcome]struct{ shape, sentence string }{
	assess.MayHang:      {"|====|", "May be put up and load-tested for the use asked for."},
	assess.WithinLimits: {"|=  =|", "May be put up and load-tested within the limits below."},
	assess.Unfinished:   {"|  ..|", "Not decided: something has not been looked at or measured."},
	assess.AskArborist:  {"|  ? |", "Ask a consulting arborist before anything is hung here."},
	assess.Leave:        {"|    |", "Leave it: nothing is hung here."},
}

// Outcome returns the sentence of an outcome.
func Outcome(o assess.Outcome) string { return outcomeWords[o].sentence }

// briefs says what the shape of an outcome stands for, in a few words.
var briefs = map[assess.Outcome]string{
	assess.MayHang:      "may be put up and load-tested",
	assess.WithinLimits: "may be put up and load-tested within limits",
	assess.Unfinished:   "not decided yet",
	assess.AskArborist:  "ask a consulting arborist first",
	assess.Leave:        "nothing is hung here",
}

// Brief returns an outcome in a few words, for where no limits stand below.
func Brief(o assess.Outcome) string { return briefs[o] }

// Shape returns the mark of an outcome, six characters wide: a line that is
// whole, broken at limits, trailing off, in question, or not there.
func Shape(o assess.Outcome) string { return outcomeWords[o].shape }

// Cautions are printed with every assessment.
func Cautions() []string {
	return []string{
		"People can be hurt. This works out what was seen and measured; it does not see what nobody saw. In one storm study nearly all broken limbs had no visible defect.",
		"Riding needs the load test of the day passed first, and the swing comes down the same day.",
		"Local codes, the maker's instructions and the landowner's word come before anything printed here. Where in doubt, a consulting arborist decides; the person in charge signs.",
		"Rows from memory and house values are marked. An independent arborist or mycologist has not yet checked them.",
	}
}
