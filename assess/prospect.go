package assess

import (
	"fmt"
	"slices"

	"boughline/engine/space"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

// Prospect is a tree on which hangs are tried that nobody has asked for. Each
// is judged as Assess judges it where it is the only hang of the site.
type Prospect struct{ t *tree }

// Prospects makes every tree of a survey ready for trying hangs. What the
// hangs of the survey say of things on the ground and of the way in holds for
// the tree. Each prospect may be used by one goroutine at a time. Errors are
// those of Assess.
func Prospects(s *survey.Survey, k *knowledge.Base) ([]Prospect, error) {
	bare := *s
	bare.Trees = slices.Clone(s.Trees)
	for i := range bare.Trees {
		withoutHangs(&bare.Trees[i])
	}
	site, err := newSite(k, rulesOf(k), &bare)
	if err != nil {
		return nil, err
	}
	list := make([]Prospect, len(site))
	for i, t := range site {
		t.hangs = s.Trees[i].Hangs // a load test of one of them still speaks of its limb
		list[i] = Prospect{t}
	}
	return list, nil
}

// withoutHangs takes the hangs off a tree and keeps what they know of it.
func withoutHangs(t *survey.Tree) {
	t.Obstacles = slices.Clone(t.Obstacles)
	for _, h := range t.Hangs {
		t.Obstacles = append(t.Obstacles, h.Obstacles...)
		if len(t.WayIn) == 0 {
			t.WayIn = h.WayIn
		}
	}
	t.Hangs = nil
}

// Tree returns the surveyed tree.
func (p Prospect) Tree() *survey.Tree { return p.t.s }

// Limb is a member that may carry a swing.
type Limb struct {
	ID     string
	Length quantity.Length // along its axis
}

// Limbs lists the limbs of the tree in the order of the survey.
func (p Prospect) Limbs() []Limb {
	var list []Limb
	for i := range p.t.s.Members {
		if s := p.t.shapes[p.t.s.Members[i].ID]; s.parent != nil {
			list = append(list, Limb{s.member.ID, quantity.Length(s.length())})
		}
	}
	return list
}

// HangPoint is a place on a limb with what all swings from there share.
type HangPoint struct{ base *rig }

// At takes a place along a limb, from the face of its parent. The place counts
// as measured by laser: that is how it will be found again. Errors say which
// part of the tree can't be computed.
func (p Prospect) At(limb string, along quantity.Length) (HangPoint, error) {
	h := &survey.Hang{Member: limb, At: survey.MeasuredLength{Value: along, How: quantity.Laser}}
	r := p.t.emptyRig(h, p.t.path+".hangs[new]")
	if r.on == nil || r.on.parent == nil {
		return HangPoint{}, fmt.Errorf("%s: %q is no limb; expected one of its limbs", p.t.path, limb)
	}
	if err := r.mechanics(); err != nil {
		return HangPoint{}, err
	}
	// No line is longer than the hang is high: that is how far wood matters.
	r.asked.line = quantity.Length(max(1, r.hangPoint().Z))
	r.around = r.woodAround()
	return HangPoint{r}, nil
}

// Azimuth returns the direction square to the limb, one of the two in which a
// swing goes.
func (p HangPoint) Azimuth() quantity.Angle { return p.base.swingAzimuth() }

// Height returns the height of the limb's underside above the ground below it,
// by the shape of the tree where the ground is not known.
func (p HangPoint) Height() quantity.Length {
	h, _ := p.base.hangHeight()
	return h.Value
}

// Turned returns the swings from the point in a direction.
func (p HangPoint) Turned(azimuth quantity.Angle) (Direction, error) {
	r := *p.base
	h := *p.base.h
	h.SwingAzimuth = &survey.ChosenAngle{Value: azimuth}
	r.h = &h
	r.forget()
	r.azimuth, r.heading = azimuth, quantity.Heading(azimuth, 0)
	var err error
	r.lie, err = r.findLie()
	return Direction{&r}, err
}

// Direction is a swing direction from a hang point.
type Direction struct{ base *rig }

// GroundKnown reports whether the ground below the swing was surveyed.
func (d Direction) GroundKnown() bool { return d.base.lie != nil }

// With returns the swings of a group of riders on a chain of gear, told by
// their names in the survey. An empty chain is gear that nobody has described.
func (d Direction) With(riders, chain string) (Swing, error) {
	r := *d.base
	h := *r.h
	h.Riders, h.Chain = riders, chain
	r.h = &h
	r.findShared()
	if r.riders.s == nil {
		return Swing{}, fmt.Errorf("riders: there is no group %q in the survey", riders)
	}
	if r.gear == nil {
		r.gear, r.gearAt = &survey.Chain{}, "chains"
	}
	r.asked.mass = r.riders.design
	w := Swing{rig: &r}
	w.battery = r.battery()
	return w, nil
}

// Swing is a swing from a hang point in a direction with its riders, for lines
// and amplitudes to be tried.
type Swing struct {
	rig     *rig
	battery battery
}

// Short is a check that does not hold, or the least of those that do.
type Short struct {
	Code   Code
	Part   string
	Margin float64
}

// Holds reports whether the check holds.
func (s Short) Holds() bool { return holds(s.Margin) }

// inStillAir are the checks that no line changes.
func inStillAir(c Code) bool {
	switch c {
	case LimbBending, LimbShear, LimbRepeated, LimbAcrossGrain, UnionBending, GearLink:
		return true
	}
	return false
}

// Strength returns the first check that falls short among those that neither
// line nor amplitude change, or the least of them.
func (w Swing) Strength() Short {
	u := w.rig.asked
	return first(w.battery.lighter, func(c checker) (trial, bool) { return u, inStillAir(c.code) })
}

// Space returns the first check of space that falls short within limits at a
// line and a declared amplitude, or the least of them.
func (w Swing) Space(line quantity.Length, amplitude quantity.Angle) Short {
	u := w.spaceAt(line, amplitude)
	return first(w.battery.space, func(checker) (trial, bool) { return u, true })
}

// Fits is Space without the least margin, and quicker: margins above 1 may be
// short of the true ones.
func (w Swing) Fits(line quantity.Length, amplitude quantity.Angle) Short {
	w.rig.hasty = true
	defer func() { w.rig.hasty = false }()
	if short, falls := w.rig.onTheLine(w.spaceAt(line, amplitude)); falls {
		return short
	}
	return w.Space(line, amplitude)
}

func (w Swing) spaceAt(line quantity.Length, amplitude quantity.Angle) trial {
	u := w.rig.asked
	u.line, u.amplitude = line, w.rig.spaceAngle(amplitude)
	return u
}

// Line returns the first check that falls short among those of strength, chance
// and calm weather that the line changes, or the least of them.
func (w Swing) Line(line quantity.Length) Short {
	u := w.rig.asked
	u.line, u.gust = line, w.rig.calm()
	worst := first(w.battery.lighter, func(c checker) (trial, bool) { return u, !inStillAir(c.code) })
	if !worst.Holds() {
		return worst
	}
	return lesser(worst, first(w.battery.calm, func(checker) (trial, bool) { return u, true }))
}

// first tries the checks that are asked for in their order, up to the first
// that falls short.
func first(checks []checker, ask func(checker) (trial, bool)) Short {
	least := Short{Margin: greatestMargin}
	for _, c := range checks {
		u, asked := ask(c)
		if !asked {
			continue
		}
		f := c.try(u, unfavourable)
		least = lesser(least, Short{c.code, f.where.Part, f.margin()})
		if !least.Holds() {
			return least
		}
	}
	return least
}

func lesser(a, b Short) Short {
	if b.Margin < a.Margin {
		return b
	}
	return a
}

// Fall returns the greatest height of fall within limits.
func (w Swing) Fall(line quantity.Length, amplitude quantity.Angle) quantity.Length {
	u := w.rig.asked
	u.line, u.amplitude = line, w.rig.spaceAngle(amplitude)
	if w.rig.lie == nil {
		return 0
	}
	return w.rig.fallAt(u)
}

// Asked returns the hang as a survey would ask for it, with a waiting place
// beside the ground that is kept clear.
func (w Swing) Asked(id string, line quantity.Length, amplitude quantity.Angle) survey.Hang {
	h := w.asked(id, line, amplitude)
	r := w.rigFor(&h)
	h.Waiting = []survey.Spot{r.waitingPlace(r.clearTrial(r.asked))}
	return h
}

func (w Swing) asked(id string, line quantity.Length, amplitude quantity.Angle) survey.Hang {
	h := *w.rig.h
	h.ID = id
	h.Line, h.Amplitude = survey.ChosenLength{Value: line}, survey.ChosenAngle{Value: amplitude}
	return h
}

// Judge returns what follows for a hang of this swing, as Assess would say.
func (w Swing) Judge(h *survey.Hang) Hang { return w.rigFor(h).assess() }

// Area returns the ground that a hang of this swing keeps clear, in the frame of
// the tree.
func (w Swing) Area(h *survey.Hang) space.Polygon {
	r := w.rigFor(h)
	return r.keptClearArea(r.clearTrial(r.asked))
}

func (w Swing) rigFor(h *survey.Hang) *rig {
	r := *w.rig
	r.h = h
	r.asked.line, r.asked.amplitude = h.Line.Value, h.Amplitude.Value
	return &r
}

// Conditions returns what follows from all that is no check: findings, looks,
// unions, gear, ground, and what is above the riders. People who wait are left
// out: where they do is proposed last.
func (w Swing) Conditions(line quantity.Length, amplitude quantity.Angle) Outcome {
	h := w.asked("", line, amplitude)
	outcome := MayHang
	for _, reason := range w.rigFor(&h).reasons(nil) {
		if reason.Code != WaitingNotStated {
			outcome = max(outcome, reason.Outcome)
		}
	}
	return outcome
}
