package wording

import (
	"fmt"
	"strconv"

	"boughline/assess"
	"boughline/engine/chance"
)

// Probability writes a chance with two digits; below 1e-15 the laws say nothing.
func Probability(p float64) string {
	switch {
	case p < 1e-15:
		return "below 1e-15"
	case p >= 0.01:
		return strconv.FormatFloat(p, 'g', 2, 64)
	}
	return strconv.FormatFloat(p, 'e', 1, 64)
}

// Figure writes a chance with its reliability index.
func Figure(f chance.Figure) string {
	return fmt.Sprintf("%s (index %s)", Probability(f.Probability), Margin(f.Beta))
}

// LimbChances writes the chance of an assessment with what it leaves out.
func LimbChances(c assess.LimbChances) string {
	text := fmt.Sprintf("that the limb breaks in a year of outings as asked for, load test passed each day: %s; target index %s.",
		Figure(chance.Figure{Probability: c.Probability, Beta: c.Index}), Margin(c.Target))
	if c.Index <= 0 {
		text = "no chance can be told: by its laws the limb hardly bears the planned load test."
	}
	return text + " " + LeavesOut(c.LeftOut)
}

// Interval writes an estimate with its interval.
func Interval(s assess.SampledChance) string {
	if s.Probability == 0 {
		return fmt.Sprintf("none of %d failed: with 95 %% confidence at most %s", s.Samples, Probability(s.High))
	}
	return fmt.Sprintf("%s, 95 %% between %s and %s, %d samples", Probability(s.Probability), Probability(s.Low), Probability(s.High), s.Samples)
}

// WayToFail names a check with its place, in metric units.
func WayToFail(w assess.WayToFail) string { return Metric.WayToFail(w) }

// WayToFail names a check with its place.
func (u Units) WayToFail(w assess.WayToFail) string {
	check := Check(assess.Check{Code: w.Code, Where: assess.Where{Part: w.Part}})
	if w.Along > 0 {
		check += ", " + u.length(float64(w.Along)) + " from its foot"
	}
	return check
}

// DesignInput writes an input at the likeliest failure, in metric units.
func DesignInput(in assess.DesignInput) string { return Metric.DesignInput(in) }

// DesignInput writes an input at the likeliest failure.
func (u Units) DesignInput(in assess.DesignInput) string {
	side := "high"
	if in.Importance < 0 {
		side = "low"
	}
	return fmt.Sprintf("%.0f %%  %s %s: %s = %s", 100*in.Importance*in.Importance, in.Name, side, in.Symbol, u.Quantity(in.Value, in.Unit))
}

// RandomInput writes an input with its law, in metric units.
func RandomInput(in assess.RandomInput) string { return Metric.RandomInput(in) }

// RandomInput writes an input with its law.
func (u Units) RandomInput(in assess.RandomInput) string {
	text := fmt.Sprintf("%s = %s, nine in ten from %s to %s  %s, %s", in.Symbol, u.Quantity(in.Middle, in.Unit), u.Quantity(in.Low, in.Unit), u.Quantity(in.High, in.Unit), in.Name, in.Law)
	if in.How != "" {
		text += ", " + string(in.How)
	}
	return text
}
