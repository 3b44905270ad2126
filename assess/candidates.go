package assess

import (
	"math"
	"slices"

	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

// candidate is one thing that could be measured better. apply writes into a
// varied survey how it would come out: as taken now, or so many standard deviations of what
// there is to learn to the good side.
type candidate struct {
	what, part, path string
	along            quantity.Length
	places           int // that are measured, where more than one
	apply            func(v varied, how quantity.How, good float64)
}

// candidates lists what bears on the hang and could be known better.
func (r *rig) candidates() []candidate {
	var list []candidate
	for i := range r.limbs {
		part := &r.limbs[i]
		list = append(list, r.stationCandidates(part.on, part.until, knowledge.LimbDiameterEffort)...)
		list = append(list, r.unmeasuredCandidates(part)...)
		list = append(list, r.parentCandidate(part.on))
		if bark, _ := r.barkOf(part.on, part.on.girths[0].upright.Value); bark.Sd > 0 && bark.How != quantity.Calliper {
			list = append(list, r.barkCandidate(part.on))
		}
	}
	list = append(list, r.stationCandidates(r.on.stem(), r.top(), knowledge.StemDiameterEffort)...)
	list = append(list, r.armCandidate())
	if !r.girthsAlong() {
		list = append(list, r.girthsCandidate())
	}
	if !r.riders.known() {
		list = append(list, r.ridersCandidate())
	}
	return append(list, r.lookCandidates()...)
}

func (r *rig) stationCandidates(s *shape, until float64, what string) []candidate {
	var list []candidate
	for i, station := range s.member.Stations {
		if float64(station.At.Value) > until {
			continue
		}
		list = append(list, candidate{
			what: what, part: s.member.ID, along: station.At.Value, path: element(s.path+".stations", i),
			apply: func(v varied, how quantity.How, good float64) {
				r.remeasure(&v.member(s.member.ID).Stations[i], how, good)
			},
		})
	}
	return list
}

// unmeasuredCandidates measures all that was guessed along a limb at once, and
// near where the load comes in if no station lies there: a guess anywhere leaves it open.
func (r *rig) unmeasuredCandidates(part *limbPart) []candidate {
	s, reached := part.on, false
	var places []int
	for i, g := range s.girths[:len(s.member.Stations)] {
		if guessed(g.across.How) {
			places = append(places, i)
		}
		if reached = g.at >= part.until-stationReach; reached {
			break
		}
	}
	if len(places) == 0 && reached {
		return nil
	}
	c := candidate{what: knowledge.LimbDiameterEffort, part: s.member.ID, path: s.path + ".stations", places: len(places)}
	at := quantity.Length(part.until)
	if !reached {
		c.places++
	}
	if c.places == 1 && reached && s.girths[places[0]].at <= part.until {
		return nil // the candidate of that station says the same
	}
	c.along = at
	c.apply = func(v varied, how quantity.How, good float64) {
		m := v.member(s.member.ID)
		for _, i := range places {
			r.remeasure(stationAt(m, s.girths[i].at), how, good)
		}
		if !reached {
			d := learned(r.k, s.diameter(part.until).upright, how, good)
			m.Stations = append(m.Stations, survey.Station{At: survey.ChosenLength{Value: at}, Diameter: &d})
		}
	}
	return []candidate{c}
}

// stationAt finds the station at a place; stations need not stand in order.
func stationAt(m *survey.Member, at float64) *survey.Station {
	return &m.Stations[slices.IndexFunc(m.Stations, func(s survey.Station) bool { return float64(s.At.Value) == at })]
}

// remeasure takes the diameters of a station again.
func (r *rig) remeasure(s *survey.Station, how quantity.How, good float64) {
	for _, d := range []*survey.MeasuredLength{s.Girth, s.Diameter, s.Upright, s.Across} {
		if d != nil {
			*d = learned(r.k, *d, how, good)
		}
	}
}

func (r *rig) parentCandidate(s *shape) candidate {
	_, path := r.unionOf(s)
	return candidate{what: knowledge.ParentDiameterEffort, part: s.member.ID, path: path + ".parent", apply: func(v varied, how quantity.How, good float64) {
		for i := range v.tree.Unions {
			if v.tree.Unions[i].Member == s.member.ID {
				d := learned(r.k, r.parentDiameter(s), how, good)
				v.tree.Unions[i].Parent = &d
			}
		}
	}}
}

func (r *rig) barkCandidate(s *shape) candidate {
	return candidate{what: knowledge.LimbBarkEffort, part: s.member.ID, path: s.path + ".bark", apply: func(v varied, how quantity.How, good float64) {
		bark, _ := r.barkOf(s, s.girths[0].upright.Value)
		bark.SdStated = true
		bark = learned(r.k, bark, how, -good)
		v.member(s.member.ID).Bark = &bark
	}}
}

func (r *rig) armCandidate() candidate {
	return candidate{what: knowledge.ArmEffort, part: r.on.member.ID, path: r.at + ".at", apply: func(v varied, how quantity.How, good float64) {
		v.hang.At = learned(r.k, v.hang.At, how, -good)
	}}
}

// girthsCandidate measures a limb that was measured at its base alone at two
// more places; they come out as its taper is taken now.
func (r *rig) girthsCandidate() candidate {
	s := r.on
	return candidate{what: knowledge.LimbGirthsEffort, part: s.member.ID, path: s.path + ".stations", apply: func(v varied, how quantity.How, good float64) {
		m := v.member(s.member.ID)
		for _, share := range []float64{0.4, 0.7} {
			at := share * s.length()
			d := learned(r.k, s.diameter(at).upright, how, good)
			m.Stations = append(m.Stations, survey.Station{At: survey.ChosenLength{Value: quantity.Length(at)}, Diameter: &d})
		}
	}}
}

// ridersCandidate weighs the riders: the heaviest of them comes out as the mean
// of those of whom only the age is known, or lighter or heavier by their scatter.
func (r *rig) ridersCandidate() candidate {
	return candidate{what: knowledge.RidersEffort, part: r.riders.s.ID, path: r.riders.path + ".each", apply: func(v varied, how quantity.How, good float64) {
		n := math.Sqrt(float64(r.riders.count))
		each := r.riders.mean / quantity.Mass(r.riders.count)
		sd := each * quantity.Mass(r.riders.cov*n)
		weighed := learned(r.k, survey.MeasuredMass{Value: each, Sd: sd, SdStated: true, How: quantity.Assumed}, how, -good)
		for i := range v.survey.Riders {
			if v.survey.Riders[i].ID == r.riders.s.ID {
				v.survey.Riders[i].Each = &weighed
			}
		}
	}}
}

// lookCandidates does the looks that are missing; a look comes out clear where
// it comes out as now or well.
func (r *rig) lookCandidates() []candidate {
	var list []candidate
	for _, reason := range r.toLookAt() {
		switch reason.Code {
		case LookMissing, LookBlocked, LookOld:
		default:
			continue
		}
		list = append(list, candidate{what: knowledge.LookEffort + reason.Zone, part: reason.Text, path: reason.Path, apply: func(v varied, how quantity.How, good float64) {
			if good < 0 {
				return // what a look may find is not known: it stays as it is
			}
			look := survey.Look{Zone: reason.Zone, State: survey.LookDone, On: v.survey.Day}
			if reason.Text != "" {
				look.Members = []string{reason.Text}
			}
			v.tree.Looks = append(v.tree.Looks, look)
		}})
	}
	return list
}
