package assess

import (
	"boughline/engine/swing"
	"boughline/knowledge"
	"boughline/quantity"
)

// randomHang is a hang as margins of its random inputs. Section forces of a limb
// do not depend on how stiff it is, so that the unit cases of its frame serve every draw and
// nothing is solved anew.
//
// What is simplified: the swing angle at which a demand is greatest is that at the middle
// values, as a share of the amplitude; the union's share of strength stays at its
// unfavourable value; the dynamic factor is that of the amplitude strength is checked at and of
// the stiffness as worked out. Stem and root plate are judged in wind only where the
// survey describes crown and wind.
type randomHang struct {
	rig           *rig
	riders        group
	use           trial
	inputs        randomInputs
	places        randomPlaces
	cuts          []randomCut // of all limbs of the load path
	bends         []randomCut
	stems         []randomStem
	dynamic       dynamicCurve
	sway          float64
	onLimb        curve // force of a gust on the limb
	jerkStiffness quantity.Stiffness
	acrossFactor  float64
	test          quantity.Force // total of the load test, 0 where none is counted
}

// newRandomHang states the inputs of a hang for an exposure, and its sections.
func (r *rig) newRandomHang(u trial, e Exposure, test quantity.Force) (*randomHang, error) {
	h := &randomHang{
		rig: r, riders: r.riders, use: u, test: test, sway: r.swayFactor(u.line),
		jerkStiffness: swing.InSeries(r.lineStiffness(u.line, stiffest), r.springs.vertical),
		acrossFactor:  r.k.Parameter(knowledge.AcrossGrainFactor).Value,
	}
	var err error
	if h.dynamic, err = r.dynamicCurveOf(u.line); err != nil {
		return nil, err
	}
	if err = h.stateInputs(e); err != nil {
		return nil, err
	}
	if err = h.stateWind(); err != nil {
		return nil, err
	}
	for i := range r.limbs {
		h.cutLimb(&r.limbs[i])
	}
	return h, nil
}

// stateWind tabulates the wind on limb and stem where it is known.
func (h *randomHang) stateWind() error {
	r := h.rig
	if r.air == nil {
		return nil
	}
	share, height := r.shareOfCrown(), quantity.Length(r.on.position(r.on.length()/2).Z)
	var err error
	h.onLimb, err = windCurve(func(gust quantity.Speed, side scenario) float64 {
		return float64(r.air.onLimb(gust, share, height, side))
	})
	if err != nil {
		return err
	}
	h.stems, err = h.randomStems()
	return err
}

func (h *randomHang) stateInputs(e Exposure) error {
	in, p := &h.inputs, &h.places
	if err := h.rig.woodInputs(in, p); err != nil {
		return err
	}
	if err := h.rig.limbInputs(in, p); err != nil {
		return err
	}
	if err := h.rig.rideInputs(in, p, h.use, e); err != nil {
		return err
	}
	h.rig.rootsInput(in, p)
	return nil
}

// cutLimb takes over the sections of a limb with the moments of a swing at
// which they are worst.
func (h *randomHang) cutLimb(part *limbPart) {
	for i := range part.cuts {
		c := h.randomCut(part, &part.cuts[i])
		if i == 0 {
			c.form = h.rig.formFactor(part.on, unfavourable)
		}
		h.cuts = append(h.cuts, c)
	}
	bends := h.rig.bends(part)
	for i := range bends {
		c := h.randomCut(part, &bends[i].cut)
		c.bend = &bends[i]
		c.splits = h.worst(func(l loads) float64 { return -c.cut.forces(l, unfavourable).Moment.Dot(c.bend.normal) }, 0)
		h.bends = append(h.bends, c)
	}
}

func (h *randomHang) randomCut(part *limbPart, at *cut) randomCut {
	c := randomCut{cut: at, outline: h.rig.randomOutline(&h.places, part.on, at.along), member: h.places.member[part.on], form: 1}
	c.combineUnits(h.rig.heading)
	wind := 0.0
	if h.places.gust != none {
		wind = h.onLimb.at(float64(h.use.gust))
	}
	c.bends = h.worst(func(l loads) float64 { return at.stress(l, unfavourable) }, wind)
	c.shears = h.worst(func(l loads) float64 { return float64(at.outline(unfavourable).Shear(at.forces(l, unfavourable))) }, 0)
	return c
}

// worst finds the moment of a swing, as far as strength is checked, at which a
// measure is greatest.
func (h *randomHang) worst(measure func(loads) float64, wind float64) worstMoment {
	amplitude := angle(h.rig.rules.designAmplitude)
	p := h.rig.swings(h.use, amplitude, h.dynamic.at(float64(h.use.mass+h.riders.seat)), wind).greatest(measure, 0)
	w := worstMoment{share: float64(p.at / amplitude)}
	if wind != 0 {
		w.wind = p.loads.wind / wind
	}
	return w
}
