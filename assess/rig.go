package assess

import (
	"fmt"

	"boughline/quantity"
	"boughline/survey"
)

// rig is one hang with everything that its checks share.
type rig struct {
	*tree
	h       *survey.Hang
	at      string // path in the document
	on      *shape
	arm     quantity.Measured[quantity.Length]
	riders  group
	gear    *survey.Chain
	gearAt  string
	bough   *bough
	limbs   []limbPart // from the hang's limb down to the one on the stem
	springs springs
	heading quantity.Vec3 // swing direction
	azimuth quantity.Angle
	air     *crownWind // nil where crown or wind are not known
	stemCut []stemCut
	lie     *lie // nil where the ground is not known
	asked   trial
	// hasty lets checks stop at a margin of 1: whether they hold is all that
	// is asked for.
	hasty  bool
	around []timber // nil before it was looked for
	anchor *anchor  // of a line, which does not swing; nil for a hang
	// Worked out so far.
	cleared map[clearKey]clearLengths
	pulls   map[pullKey]peak
	drifts  map[quantity.Angle]quantity.Length // by amplitude, of a line of 1 m
	clear   clearances
	height  *hangHeight
	sag     *sagLaw
}

// inHaste makes the checks hasty until what it returns is called.
func (r *rig) inHaste() (end func()) {
	before := r.hasty
	r.hasty = true
	return func() { r.hasty = before }
}

// limbPart is one limb of the load path with its sections: the first lies at
// the union, the others beyond it up to where the load comes in.
type limbPart struct {
	on    *shape
	until float64
	cuts  []cut
}

// rig returns hang i with what its checks share. Where load tests of one hang
// may be asked about from another it is kept; elsewhere a large site would keep too much.
func (t *tree) rig(index int) (*rig, error) {
	if r, ok := t.rigs[index]; ok {
		return r, nil
	}
	r, err := t.newRig(index)
	if err == nil && len(t.s.LoadTests) > 0 {
		t.rigs[index] = r
	}
	return r, err
}

func (t *tree) newRig(index int) (*rig, error) {
	return t.rigOf(&t.hangs[index], element(t.path+".hangs", index))
}

// rigOf works out what the checks of a hang share; at is its path in the document.
func (t *tree) rigOf(h *survey.Hang, at string) (*rig, error) {
	r := t.emptyRig(h, at)
	r.findShared()
	if r.on.parent == nil {
		return nil, fmt.Errorf("%s.member: %q is the stem; a swing hangs from a limb", r.at, r.h.Member)
	}
	var err error
	if r.lie, err = r.findLie(); err != nil {
		return nil, err
	}
	return r, r.mechanics()
}

// emptyRig is a hang before anything of it was worked out.
func (t *tree) emptyRig(h *survey.Hang, at string) *rig {
	r := &rig{tree: t, h: h, at: at, on: t.shapes[h.Member], arm: resolve(t.k, h.At)}
	r.forget()
	if r.on != nil {
		r.azimuth = r.swingAzimuth()
		r.heading = quantity.Heading(r.azimuth, 0)
	}
	return r
}

// forget drops what was worked out for one swing direction.
func (r *rig) forget() {
	r.cleared = map[clearKey]clearLengths{}
	r.pulls = map[pullKey]peak{}
	r.drifts = map[quantity.Angle]quantity.Length{}
	r.springs.factors = map[factorKey]float64{}
	r.clear = clearances{}
	r.height = nil
}

// mechanics works out what the limb, the stem and the wind are to a swing from
// this hang point.
func (r *rig) mechanics() error {
	var err error
	if r.bough, err = r.newBough(r.on, r.arm); err != nil {
		return fmt.Errorf("%s: limb %q: %w", r.at, r.h.Member, err)
	}
	if r.springs, err = r.springsAtHang(); err != nil {
		return fmt.Errorf("%s: limb %q: %w", r.at, r.h.Member, err)
	}
	if _, err = r.treeSway(); err != nil {
		return fmt.Errorf("%s: %w", r.path, err)
	}
	r.cutLimbs()
	if r.air, err = r.crownWind(); err != nil {
		return fmt.Errorf("%s: %w", r.path, err)
	}
	r.cutStem()
	gust, err := r.askedGust()
	r.asked = trial{mass: r.riders.design, amplitude: r.h.Amplitude.Value, gust: gust, line: r.h.Line.Value}
	return err
}

// findShared looks up the riders and the chain that the hang names.
func (r *rig) findShared() {
	for i := range r.survey.Riders {
		if r.survey.Riders[i].ID == r.h.Riders {
			r.riders = groupOf(r.k, &r.survey.Riders[i], element("riders", i))
		}
	}
	for i := range r.survey.Chains {
		if r.survey.Chains[i].ID == r.h.Chain {
			r.gear, r.gearAt = &r.survey.Chains[i], element("chains", i)
		}
	}
}

// swingAzimuth is the direction asked for, or square to the limb.
func (r *rig) swingAzimuth() quantity.Angle {
	if r.h.SwingAzimuth != nil {
		return r.h.SwingAzimuth.Value
	}
	return azimuthOf(r.on.direction(float64(r.arm.Value))) + 90*quantity.Degree
}

// cutLimbs lists the sections of every limb between the hang and the stem.
func (r *rig) cutLimbs() {
	until := float64(r.arm.High())
	for _, s := range chain(r.on) {
		if s.parent == nil {
			return
		}
		r.limbs = append(r.limbs, limbPart{s, until, r.cutsOf(r.bough, s, until)})
		until = s.rises
	}
}

// swings is the swing case of a trial.
func (r *rig) swings(u trial, amplitude quantity.Angle, rideFactor, wind float64) swingCase {
	c := swingCase{mass: u.mass + r.riders.seat, amplitude: amplitude, heading: r.heading, ride: rideFactor, wind: wind}
	if r.anchor != nil {
		c.steady = r.anchor.pulls(c.mass)
	}
	return c
}

// top is how high up the stem the load path reaches.
func (r *rig) top() float64 {
	if len(r.limbs) == 0 { // an anchor on the stem itself
		return float64(r.arm.Value)
	}
	return r.limbs[len(r.limbs)-1].on.rises
}

// hangPoint is where the line leaves the limb, on its axis.
func (r *rig) hangPoint() quantity.Vec3 { return r.on.position(float64(r.arm.Value)) }

// place names a cut for a reader.
func place(c *cut, at quantity.Angle, code Code) Where {
	return Where{Part: c.on.member.ID, Along: quantity.Length(c.along), Case: string(code), AtRad: at}
}
