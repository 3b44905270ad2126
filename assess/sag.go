package assess

import (
	"fmt"
	"math"

	"boughline/engine/chance"
	"boughline/quantity"
	"boughline/survey"
)

// sagLaw is how far the hang point goes down for 1 N, m/N, before any reading.
type sagLaw struct{ chance.Lognormal }

// sagBefore works the law out: the stiffness of the wood, the section to the
// fourth power of its diameter, the arm to the third, and the error of theory. Limb and
// stem bend, the roots are rigid; the line's stretch is no part of it.
func (r *rig) sagBefore() (sagLaw, error) {
	if r.sag != nil {
		return *r.sag, nil
	}
	sag := 1/float64(r.springs.vertical) + r.givenByStem()
	section := r.limbs[0].cuts[0].section.cov * 4 / 3 // of the modulus, which goes with the third power
	arm := 3 * r.arm.RelativeSd()
	cov := math.Sqrt(sumOfSquares(r.rules.stiffnessCoV.Value, section, arm, r.rules.modelCoV.Value))
	law, err := chance.LognormalOf(1/sag, cov)
	if err != nil {
		return sagLaw{}, fmt.Errorf("the sag to expect cannot be told, as arm or thickness is too uncertain: %w", err)
	}
	r.sag = &sagLaw{law.Power(-1)}
	return *r.sag, nil
}

// givenByStem is how far the hang point goes down for 1 N, m/N, because the
// stem below the limb bends: x^2 times the integral of dz/(E I), x the lever in plan
// (elementary, as in Timoshenko & Gere, Mechanics of Materials, from memory).
func (r *rig) givenByStem() float64 {
	const pieces = 16
	stem, top := r.on.stem(), r.top()
	step, sum := top/pieces, 0.0
	for i := range pieces {
		for _, g := range gaussPair {
			wood := r.section(stem, (float64(i)+g)*step).mean
			sum += step / 2 * 64 / (math.Pi * math.Pow(float64(min(wood.Upright, wood.Across)), 4))
		}
	}
	at := r.hangPoint()
	return (at.X*at.X + at.Y*at.Y) * sum / r.species.wood.MOE.Value
}

func sumOfSquares(values ...float64) float64 {
	sum := 0.0
	for _, v := range values {
		sum += v * v
	}
	return sum
}

// under returns the sag to expect under a load and the band that holds nine
// limbs in ten.
func (l sagLaw) under(load quantity.Force) (middle, low, high quantity.Length) {
	at := func(z float64) quantity.Length { return quantity.Length(float64(load) * l.At(z)) }
	return at(0), at(-quantity.Tail), at(quantity.Tail)
}

// compliance is the law as a normal one, for readings to be weighed against it.
func (l sagLaw) compliance() chance.Normal {
	return chance.Normal{Mean: l.Mean(), SD: l.Mean() * l.CoV()}
}

// readings lists what the steps of a test say of the sag for 1 N.
func (r *rig) readings(test *survey.LoadTest) []chance.Normal {
	var list []chance.Normal
	for _, step := range test.Steps {
		if step.Sag == nil || !(step.Sag.Value > 0) {
			continue
		}
		sag := r.sagRead(*step.Sag)
		list = append(list, chance.SagReading{Force: step.Load(), Sag: sag.Value, SD: sag.Sd}.Compliance())
	}
	return list
}

// sagRead is a sag with no less doubt than a tape leaves.
func (r *rig) sagRead(m survey.MeasuredLength) survey.MeasuredLength {
	m = resolve(r.k, m)
	m.Sd = max(m.Sd, leastSagSd)
	return m
}

// leastSagSd is the least doubt of a sag that is read off a tape (house), m.
const leastSagSd quantity.Length = 0.002
