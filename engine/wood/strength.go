package wood

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// Member describes the strength of a whole limb or stem by that of small clear
// specimens of its species.
type Member struct {
	Clear     quantity.Stress // mean of small clear green specimens
	ClearCoV  float64         // variation between clear specimens
	Factor    float64         // strength of the member / that of clear wood, mean
	FactorCoV float64         // variation of the factor
}

// Strength is a lognormal strength. Characteristic is its lower 5 % fractile.
type Strength struct {
	Mean           quantity.Stress
	CoV            float64
	Characteristic quantity.Stress
}

// MemberStrength returns the strength of a member as the product of two
// independent lognormal variables, the clear wood and the member factor: the
// mean is the product of the means, and 1 + CoV^2 the product of both
// 1 + CoV^2 (exact for any independent factors). Defects nobody saw are not in it.
// Errors: a mean or factor that is not positive, a negative variation.
// Source: elementary probability; 5 % lower fractile as in EN 1990, 4.2
// (from memory).
func MemberStrength(m Member) (Strength, error) {
	if err := m.check(); err != nil {
		return Strength{}, fmt.Errorf("member strength: %w", err)
	}
	mean := float64(m.Clear) * m.Factor
	cov := math.Sqrt((1+m.ClearCoV*m.ClearCoV)*(1+m.FactorCoV*m.FactorCoV) - 1)
	return Strength{
		Mean:           quantity.Stress(mean),
		CoV:            cov,
		Characteristic: quantity.Stress(lowerFractile(mean, cov)),
	}, nil
}

// Design returns the strength that checks compare stresses with:
// characteristic strength x duration factor / material factor. duration is
// that of the shortest load in the combination (see DurationFactor).
// Errors: a material factor below 1, a duration factor outside 0 to 1.
// Source: form of EN 1995-1-1, 2.4.1 (from memory).
func (s Strength) Design(materialFactor, duration float64) (quantity.Stress, error) {
	if !(materialFactor >= 1) || math.IsInf(materialFactor, 1) {
		return 0, fmt.Errorf("design strength: material factor %v; expected 1 or more", materialFactor)
	}
	if !(duration > 0 && duration <= 1) {
		return 0, fmt.Errorf("design strength: duration factor %v; expected more than 0, at most 1", duration)
	}
	return quantity.Stress(float64(s.Characteristic) * duration / materialFactor), nil
}

func (m Member) check() error {
	if !(m.Clear > 0) || math.IsInf(float64(m.Clear), 1) {
		return fmt.Errorf("clear-wood mean %v Pa; expected more than 0", float64(m.Clear))
	}
	if !(m.Factor > 0 && m.Factor <= 1) {
		return fmt.Errorf("member factor %v; expected more than 0, at most 1", m.Factor)
	}
	for _, cov := range []float64{m.ClearCoV, m.FactorCoV} {
		if !(cov >= 0 && cov <= 2) {
			return fmt.Errorf("coefficient of variation %v; expected 0 to 2", cov)
		}
	}
	return nil
}

// lowerFractile returns the 5 % fractile of a lognormal variable.
func lowerFractile(mean, cov float64) float64 {
	variance := math.Log1p(cov * cov)
	return mean * math.Exp(-variance/2-quantity.Tail*math.Sqrt(variance))
}
