package frame

import (
	"math"
	"slices"

	"boughline/engine/numeric"
	"boughline/quantity"
)

// Peak is a cut at which a stress is greatest, with what acts there.
type Peak struct {
	At      Place
	Side    Side
	Stress  quantity.Stress // signed for a fibre, positive for shear
	Fibre   Fibre           // the worst fibre at this cut
	Section Section
	Forces  SectionForces
}

// GreatestFibre returns the cut with the greatest stress along the grain of
// either sign over the whole frame, the one nearest the root where several are
// equal.
func (s Statics) GreatestFibre() Peak {
	best := Peak{}
	for i := range s.frame.members {
		if p := s.GreatestFibreOn(i, 0, s.frame.Length(i)); i == 0 || exceeds(p, best) {
			best = p
		}
	}
	return best
}

// GreatestFibreOn does the same on a stretch of one member, given by arc
// lengths; both ends count with the side that lies in the stretch.
func (s Statics) GreatestFibreOn(member int, from, to quantity.Length) Peak {
	return s.greatest(member, from, to, func(w Section, f SectionForces) quantity.Stress {
		return w.Worst(f).Stress
	})
}

// GreatestShearOn returns the cut with the greatest shear stress (see
// Section.Shear) on a stretch of one member.
func (s Statics) GreatestShearOn(member int, from, to quantity.Length) Peak {
	return s.greatest(member, from, to, Section.Shear)
}

// exceeds says whether p is greater than best by more than rounding.
func exceeds(p, best Peak) bool {
	const rounding = 1e-12
	return math.Abs(float64(p.Stress)) > math.Abs(float64(best.Stress))*(1+rounding)
}

// greatest looks at every smooth stretch in turn: it compares both ends and
// points in between, then closes in on the maximum around each point that is
// higher than its neighbours.
func (s Statics) greatest(member int, from, to quantity.Length, stress func(Section, SectionForces) quantity.Stress) Peak {
	knots := s.stretches(member, from, to)
	best := Peak{}
	for k := 0; k+1 < len(knots); k++ {
		look := func(along float64) Peak {
			at, side := Place{member, quantity.Length(along)}, TipSide
			if along == knots[k+1] {
				side = RootSide
			}
			p := Peak{At: at, Side: side, Section: s.frame.Section(at, side), Forces: s.At(at, side)}
			p.Stress, p.Fibre = stress(p.Section, p.Forces), p.Section.Worst(p.Forces)
			return p
		}
		if p := smoothMaximum(knots[k], knots[k+1], look); k == 0 || exceeds(p, best) {
			best = p
		}
	}
	return best
}

// smoothMaximum finds the greatest peak on one smooth stretch.
func smoothMaximum(from, to float64, look func(float64) Peak) Peak {
	const samples = 24
	var peaks [samples + 1]Peak
	best := Peak{}
	for i := range peaks {
		along := from + (to-from)*float64(i)/samples
		if i == samples {
			along = to
		}
		if peaks[i] = look(along); i == 0 || exceeds(peaks[i], best) {
			best = peaks[i]
		}
	}
	for i := range peaks {
		before, after := peaks[max(i-1, 0)], peaks[min(i+1, samples)]
		if exceeds(before, peaks[i]) || exceeds(after, peaks[i]) {
			continue
		}
		if end := i == 0 || i == samples; end && !exceeds(look(justInside(peaks[i], before, after)), peaks[i]) {
			continue // it falls from the end inwards
		}
		// 40 steps narrow to the root of rounding, below which the top is flat.
		along, _ := numeric.Greatest(func(along float64) float64 { return math.Abs(float64(look(along).Stress)) },
			float64(before.At.Along), float64(after.At.Along), 40)
		if p := look(along); exceeds(p, best) {
			best = p
		}
	}
	return best
}

// justInside is a place a millionth of a sample inside an end of a stretch.
func justInside(end, before, after Peak) float64 {
	return float64(end.At.Along + 1e-6*(before.At.Along+after.At.Along-2*end.At.Along))
}

// stretches lists the arc lengths between which forces and section are smooth,
// from the first to the last asked for.
func (s Statics) stretches(member int, from, to quantity.Length) []float64 {
	low := math.Max(float64(from), 0)
	high := math.Min(float64(to), s.frame.members[member].length)
	knots := []float64{low, high}
	for _, t := range s.terms {
		for _, sp := range t.spans[member] {
			if sp.from > low+joint && sp.from < high-joint {
				knots = append(knots, sp.from)
			}
		}
	}
	slices.Sort(knots)
	return slices.CompactFunc(knots, func(a, b float64) bool { return math.Abs(b-a) < joint })
}
