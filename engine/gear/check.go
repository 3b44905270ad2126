package gear

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// Rule names the demand that governs a link.
type Rule string

// The rules.
const (
	RestingRule Rule = "resting weight"
	PeakRule    Rule = "greatest pull"
)

// Bearing is what a link of known strength bears. For a working limit,
// Strength and Required are on the side of the working limit.
type Bearing struct {
	Strength quantity.Force // of one part as used, after all reductions
	Required quantity.Force // of one part
	Margin   float64        // Strength / Required; 1 just meets the demand
	Rule     Rule           // the one that governs
}

// LinkResult is the check of one link.
type LinkResult struct {
	Name       string
	Reductions []Reduction
	// Bearing is nil where the mark is unknown: no strength can be reckoned
	// with, whatever the link looks like.
	Bearing *Bearing
}

// Result is the check of a chain, link by link in the order of the chain.
type Result struct {
	Links   []LinkResult
	Weakest int   // index of the least margin among the known, the first of equals; -1 for none
	Unknown []int // indices of the links of unknown strength
}

// Margin returns the margin of the chain, that of its weakest link; known is
// false while the strength of any link is unknown.
func (r Result) Margin() (margin float64, known bool) {
	if len(r.Unknown) > 0 || r.Weakest < 0 {
		return 0, false
	}
	return r.Links[r.Weakest].Bearing.Margin, true
}

// Check returns the strength of every link as used against the demand of its
// material and kind of mark, and the weakest. resting is the weight of riders
// and seat at rest, peak the greatest pull, without load factors on top.
// Reductions multiply; of several knots the worst counts once. A margin below
// 1 is a result; errors name a link and field outside its range.
func (c Chain) Check(resting, peak quantity.Force, f Factors) (Result, error) {
	if !(peak > 0) || !(resting >= 0) || math.IsInf(float64(peak+resting), 1) {
		return Result{}, fmt.Errorf("loads: resting %v N, peak %v N; expected resting 0 or more and peak above 0", resting, peak)
	}
	result := Result{Weakest: -1}
	least := math.Inf(1)
	for i, link := range c {
		checked, err := link.check(resting, peak, f)
		if err != nil {
			return Result{}, fmt.Errorf("links[%d] (%s): %w", i, link.Name, err)
		}
		result.Links = append(result.Links, checked)
		switch {
		case checked.Bearing == nil:
			result.Unknown = append(result.Unknown, i)
		case checked.Bearing.Margin < least:
			least, result.Weakest = checked.Bearing.Margin, i
		}
	}
	return result, nil
}

func (l Link) check(resting, peak quantity.Force, f Factors) (LinkResult, error) {
	if err := l.validate(); err != nil {
		return LinkResult{}, err
	}
	reductions, err := l.reductions(f)
	if err != nil {
		return LinkResult{}, err
	}
	result := LinkResult{Name: l.Name, Reductions: reductions}
	if l.Mark.Kind == Unknown {
		return result, nil
	}
	strength := l.Mark.Value
	for _, r := range reductions {
		strength *= quantity.Force(r.Share)
	}
	result.Bearing = l.bearing(strength, resting, peak, f.demand(l.Material, l.Mark.Kind))
	return result, nil
}

func (l Link) bearing(strength, resting, peak quantity.Force, d Demand) *Bearing {
	byRest, byPeak := quantity.Force(d.OnResting)*resting, quantity.Force(d.OnPeak)*peak
	b := Bearing{Strength: strength, Required: byPeak, Rule: PeakRule}
	if byRest > byPeak {
		b.Required, b.Rule = byRest, RestingRule
	}
	b.Required *= quantity.Force(l.partPull())
	b.Margin = float64(b.Strength / b.Required)
	return &b
}

func (l Link) validate() error {
	if l.Mark.Kind != Unknown && !(l.Mark.Value > 0 && !math.IsInf(float64(l.Mark.Value), 1)) {
		return fmt.Errorf("mark.value: %v N; expected a strength above 0, or the kind unknown", l.Mark.Value)
	}
	// Parts side by side can't carry less than the pull on the chain; the last
	// digit of a rounded share is forgiven.
	if pull := l.partPull(); !(pull*float64(l.parts()) >= 1-1e-9) {
		return fmt.Errorf("part_pull: %v in each of %d parts; expected the parts to carry the whole pull together", pull, l.parts())
	}
	if l.Hitch == Basket && l.parts() != 2 {
		return fmt.Errorf("parts: %d; expected 2 for a basket", l.Parts)
	}
	return nil
}
