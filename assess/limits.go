package assess

import (
	"boughline/quantity"
)

// battery is all checks of a hang, by the smaller use that can help each.
type battery struct {
	lighter, calm, space []checker
}

func (r *rig) battery() battery {
	b := battery{calm: r.windCheckers(), space: r.spaceCheckers()}
	b.lighter = append(r.gearCheckers(), r.strengthCheckers()...) // the quickest first
	b.lighter = append(b.lighter, r.chanceCheckers()...)
	b.lighter = append(b.lighter, r.testCheckers()...)
	return b
}

func (b battery) all() []checker {
	list := append([]checker{}, b.lighter...)
	list = append(list, b.calm...)
	return append(list, b.space...)
}

// askedOf is the trial that a check is judged at for a hang without limits:
// space at its full angle, all else as asked.
func (r *rig) askedOf(c checker) trial {
	u := r.asked
	if c.cure == bySpace {
		u.amplitude = r.fullSpaceAngle(u.amplitude)
	}
	return u
}

// alone is the outcome that one check by itself leads to where it does not
// hold at the use asked for.
func (r *rig) alone(c checker) Outcome {
	if r.cured(c, unfavourable) {
		return WithinLimits
	}
	if r.cured(c, favourable) {
		return Unfinished
	}
	return Leave
}

// cured reports whether the smallest use that is worth the name passes a
// check. At the favourable ends of the measurements it tells whether measuring
// better could make it pass.
func (r *rig) cured(c checker, side scenario) bool {
	defer r.inHaste()()
	u := r.asked
	switch c.cure {
	case byLighter:
		u.mass = r.lightest()
	case byCalm:
		u.mass, u.gust = r.lightest(), r.calm()
	case bySpace:
		u.mass, u.amplitude = r.lightest(), angle(r.rules.leastSpace)
		for ; u.line >= shortestLine; u.line -= lineStep {
			if holds(c.try(u, side).margin()) {
				return true
			}
		}
		return false
	}
	return holds(c.try(u, side).margin())
}

// shortestLine is the shortest line that makes a swing, lineStep the step in
// which shorter lines are tried.
const (
	shortestLine quantity.Length = 1
	lineStep     quantity.Length = 0.05
)

// lightest is the mass of the lightest riders worth a hang, and never more
// than was asked for.
func (r *rig) lightest() quantity.Mass {
	return min(r.asked.mass, quantity.Mass(r.rules.lightestRider.Value))
}

// calm is the gust of a calm day, and never more than was asked for.
func (r *rig) calm() quantity.Speed {
	return min(r.asked.gust, quantity.Speed(r.rules.calmGust.Value))
}

// greatestUse finds the greatest use at which every check holds: first line
// and amplitude by space, then the mass on a calm day, then the gust. It
// reports false where there is none. At the favourable ends of the measurements
// it tells whether measuring better could show one.
func (r *rig) greatestUse(b battery, side scenario) (trial, bool) {
	defer r.inHaste()()
	u, ok := r.greatestSpace(b.space, side)
	if !ok {
		return u, false
	}
	strength := append(append([]checker{}, b.lighter...), b.calm...)
	mass, ok := greatest(strength, side, float64(r.lightest()), float64(u.mass), func(m float64) trial {
		v := u
		v.mass, v.gust = quantity.Mass(m), r.calm()
		return v
	})
	if !ok {
		return u, false
	}
	u.mass = quantity.Mass(mass)
	gust, ok := greatest(b.calm, side, float64(r.calm()), float64(u.gust), func(g float64) trial {
		v := u
		v.gust = quantity.Speed(g)
		return v
	})
	u.gust = quantity.Speed(gust)
	return u, ok
}

// greatestSpace finds the greatest amplitude with the line asked for, and
// shortens the line only where no amplitude worth the name is left.
func (r *rig) greatestSpace(checks []checker, side scenario) (trial, bool) {
	u := r.asked
	// A line goes slack at 90 degrees: none is allowed within the allowance of it.
	u.amplitude = min(u.amplitude, angle(r.rules.designAmplitude)-angle(r.rules.allowance))
	least := angle(r.rules.leastSpace) - angle(r.rules.allowance)
	for ; u.line >= shortestLine; u.line -= lineStep {
		a, ok := greatest(checks, side, float64(min(least, u.amplitude)), float64(u.amplitude), func(a float64) trial {
			v := u
			v.amplitude = r.spaceAngle(quantity.Angle(a))
			return v
		})
		if ok {
			u.amplitude = quantity.Angle(a)
			return u, true
		}
	}
	return r.asked, false
}

// greatest finds the greatest value between low and high at which every check
// holds; at is the use at a value. Each check fails from some value on, so that
// only those that fail are searched, one after the other. It reports false
// where one fails at low.
func greatest(checks []checker, side scenario, low, high float64, at func(float64) trial) (float64, bool) {
	for _, c := range checks {
		condition := func(x float64) bool { return holds(c.try(at(x), side).margin()) }
		if condition(high) {
			continue
		}
		if !condition(low) {
			return low, false
		}
		high = lastThatHolds(low, high, condition)
	}
	return high, true
}

// lastThatHolds halves the way between a value that holds and one that does not.
func lastThatHolds(low, high float64, condition func(float64) bool) float64 {
	const halvings = 16
	for range halvings {
		middle := (low + high) / 2
		if condition(middle) {
			low = middle
		} else {
			high = middle
		}
	}
	return low
}
