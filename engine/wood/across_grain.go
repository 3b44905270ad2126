package wood

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// AcrossGrain is the greatest stress across the grain (radial) of a curved part
// at the two extremes of a bending moment in the plane of the curve; positive is
// tension, which splits.
type AcrossGrain struct{ AtFirst, AtSecond quantity.Stress }

// Tension returns the greater tension of both, 0 if there is none.
func (a AcrossGrain) Tension() quantity.Stress { return max(0, a.AtFirst, a.AtSecond) }

// MomentExtremes are the two extreme moments in the plane of a curved part.
// Positive straightens the curve. Bending that swings from side to side has both
// signs; a steady load has the same value twice.
type MomentExtremes struct{ First, Second quantity.Moment }

// AcrossGrainOfRectangle returns the stress across the grain at mid-depth of a
// curved rectangular part: 3 M / (2 R b h), R the radius of the axis. For
// gentle curvature (R well above h). Tests of glued beams found 2 to 4 times the
// theory (Cheung & Sorensen, 1983, Wood and Fiber Science), so the result is on
// the unsafe side unless multiplied.
// Errors: a size that is not positive.
// Source: Wilson's equation as in texts on curved beams; EN 1995-1-1, 6.4.3, with
// k_p = h/(4R), is the same (from memory).
func AcrossGrainOfRectangle(m MomentExtremes, width, depth, radius quantity.Length) (AcrossGrain, error) {
	if !(width > 0) || !(depth > 0) {
		return AcrossGrain{}, fmt.Errorf("curved part: width %v m, depth %v m; expected both more than 0",
			float64(width), float64(depth))
	}
	return m.acrossGrain(1.5, float64(width)*float64(depth), radius)
}

// AcrossGrainOfRound returns the stress across the grain at the axis of a curved
// round part: 4 M / (3 A R), A the area, R the radius of the axis; a third of
// r/R of the bending stress. Range, bias and errors as AcrossGrainOfRectangle.
// Source: derived from the shear analogy M S / (I b R) for a thin curvature.
func AcrossGrainOfRound(m MomentExtremes, diameter, radius quantity.Length) (AcrossGrain, error) {
	if !(diameter > 0) {
		return AcrossGrain{}, fmt.Errorf("curved part: diameter %v m; expected more than 0", float64(diameter))
	}
	d := float64(diameter)
	return m.acrossGrain(4.0/3, math.Pi*d*d/4, radius)
}

// acrossGrain returns shape M / (A R).
func (m MomentExtremes) acrossGrain(shape, area float64, radius quantity.Length) (AcrossGrain, error) {
	if !(radius > 0) {
		return AcrossGrain{}, fmt.Errorf("curved part: radius of curvature %v m; expected more than 0", float64(radius))
	}
	perMoment := shape / (area * float64(radius))
	return AcrossGrain{
		AtFirst:  quantity.Stress(float64(m.First) * perMoment),
		AtSecond: quantity.Stress(float64(m.Second) * perMoment),
	}, nil
}
