package cli

import (
	"fmt"
	"strings"

	"boughline/engine/measure"
)

// leastShare is the share in the variance from which a reading is named.
const leastShare = 0.05

// measuredPage writes results for people: first the value as a survey takes it,
// then how far it may be out and which reading to repeat.
func measuredPage(outcome measure.Outcome) string {
	var b strings.Builder
	for _, r := range outcome.Results {
		b.WriteString(hanging(r.Name, r.Text(), column))
		if r.Name != r.Label {
			b.WriteString(hanging("", r.Label, column))
		}
		if r.Sd > 0 {
			low, high := r.Bounds()
			b.WriteString(hanging("", fmt.Sprintf("95 times in 100 within %s to %s, if nothing but the readings errs", low, high), column))
			if parts := shares(r); len(parts) > 1 {
				b.WriteString(hanging("", "error from "+strings.Join(parts, ", "), column))
			}
		}
		if r.TooCoarse() {
			b.WriteString(hanging("", "the readings are too coarse for this way: its error is a rough idea only", column))
		}
	}
	for _, r := range outcome.Repeated {
		b.WriteString(hanging("!", repeatedText(r), 2))
	}
	b.WriteString(hanging("!", outcome.Caution, 2))
	return b.String()
}

// shares names the readings that make the error, the greatest part first.
func shares(r measure.Result) []string {
	var parts []string
	for _, name := range largestFirst(r.Share) {
		if r.Share[name] >= leastShare {
			parts = append(parts, fmt.Sprintf("%s %.0f %%", name, 100*r.Share[name]))
		}
	}
	return parts
}

func repeatedText(r measure.Repeated) string {
	text := fmt.Sprintf("%s: %d readings, up to %s apart, ", r.Field, r.Degrees+1, r.Apart())
	if r.Agree() {
		return text + fmt.Sprintf("no more than their errors explain (probability %.2g)", r.P)
	}
	return text + fmt.Sprintf("more than their errors explain (probability %.2g): look for a mistake; the error is widened", r.P)
}

type measuredResult struct {
	measure.Result
	Text string  `json:"text"` // as a survey takes it
	Low  float64 `json:"low"`  // of the 95 % interval
	High float64 `json:"high"`
	// TooCoarse says that the error is a rough idea only.
	TooCoarse bool `json:"too_coarse,omitempty"`
}

type measuredOutcome struct {
	measure.Outcome
	Results []measuredResult `json:"results"`
}

func measuredJSON(outcome measure.Outcome) measuredOutcome {
	all := measuredOutcome{Outcome: outcome}
	for _, r := range outcome.Results {
		low, high := r.Interval()
		all.Results = append(all.Results, measuredResult{r, r.Text(), low, high, r.TooCoarse()})
	}
	return all
}
