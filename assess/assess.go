package assess

import (
	"cmp"
	"fmt"
	"slices"

	"boughline/engine/signs"
	"boughline/engine/space"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

// Assess works out what follows for every hang of a survey that Read and
// Problems found no fault in. An outcome written in a file is never read: it
// is worked out anew each time. Errors say which part of the survey cannot be
// computed and why.
func Assess(s *survey.Survey, k *knowledge.Base) (Assessment, error) {
	a := Assessment{Format: Format, Site: s.Site, Day: s.Day}
	site, err := newSite(k, rulesOf(k), s)
	if err != nil {
		return Assessment{}, err
	}
	for _, t := range site {
		a.Hangs = append(a.Hangs, t.assess()...)
	}
	a.Lines = assessLines(s, k, site)
	return a, nil
}

// AssessTree works out what follows for the hangs of one tree of a survey, among
// all others, as Assess does. It fails as well where the survey has no such tree.
func AssessTree(s *survey.Survey, k *knowledge.Base, id string) (Assessment, error) {
	site, err := newSite(k, rulesOf(k), s)
	if err != nil {
		return Assessment{}, err
	}
	for _, t := range site {
		if t.s.ID == id {
			return Assessment{Format: Format, Site: s.Site, Day: s.Day, Hangs: t.assess()}, nil
		}
	}
	return Assessment{}, fmt.Errorf("%q is no tree of this survey; expected the id of one of its trees", id)
}

// newSite places the members of every tree, so that each hang can be judged
// among its neighbours.
func newSite(k *knowledge.Base, rules rules, s *survey.Survey) ([]*tree, error) {
	site := make([]*tree, len(s.Trees))
	for i := range s.Trees {
		t, err := newTree(k, rules, s, i)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", element("trees", i), err)
		}
		site[i] = t
	}
	for _, t := range site {
		t.site = site
	}
	return site, nil
}

func (t *tree) assess() []Hang {
	var hangs []Hang
	for i := range t.s.Hangs {
		rig, err := t.rig(i)
		if err != nil {
			hangs = append(hangs, t.notComputed(i, err))
			continue
		}
		hangs = append(hangs, rig.assess())
	}
	return hangs
}

// notComputed is what follows for a hang whose mechanics can't be worked out:
// nothing is decided in its favour, and signs of the whole tree still count.
func (t *tree) notComputed(index int, cause error) Hang {
	h := &t.s.Hangs[index]
	result := Hang{ID: h.ID, Tree: t.s.ID, TreeName: t.s.Name, Species: t.s.Species, Member: h.Member, Outcome: Unfinished}
	result.Reasons = []Reason{{Code: NotComputed, Outcome: Unfinished, Path: element(t.path+".hangs", index), Text: cause.Error(), Change: Change{Code: ChangeMeasure}}}
	for i := range t.s.Findings {
		f := &t.s.Findings[i]
		if sign, ok := t.k.Sign(f.Sign); ok {
			reason := t.signReason(f, sign, signs.Placement{}, element(t.path+".findings", i))
			result.Reasons = append(result.Reasons, reason)
			result.Outcome = max(result.Outcome, reason.Outcome)
		}
	}
	slices.SortStableFunc(result.Reasons, moreSerious)
	return result
}

// assess judges one hang: every check, every finding, every look.
func (r *rig) assess() Hang {
	h := Hang{
		ID: r.h.ID, Tree: r.s.ID, TreeName: r.s.Name, Species: r.s.Species, Member: r.h.Member,
		Asked: Use{Riders: r.riders.count, Mass: r.asked.mass, Seat: r.riders.seat, Amplitude: r.asked.amplitude, Line: r.asked.line, Gust: r.asked.gust},
	}
	battery := r.battery()
	for _, c := range battery.all() {
		h.Checks = append(h.Checks, c.result(r.askedOf(c), r.alone))
	}
	slices.SortStableFunc(h.Checks, func(a, b Check) int { return cmp.Compare(a.Margin, b.Margin) })
	h.Chance = limbChances(h.Checks)
	h.Reasons = r.reasons(h.Checks)
	h.Outcome = r.ladder(&h, battery)
	slices.SortStableFunc(h.Reasons, moreSerious)
	return h
}

// reasons gathers what speaks against the hang as asked for, and the remarks.
func (r *rig) reasons(checks []Check) []Reason {
	var list []Reason
	for i := range checks {
		if c := &checks[i]; c.Alone > MayHang {
			list = append(list, Reason{Code: c.Code, Outcome: c.Alone, Check: c, Change: checkChange(c)})
		}
	}
	used := r.asked
	people := r.people(r.clearTrial(used))
	list = append(list, r.conditionReasons(r.clearTrial(used))...)
	list = append(list, r.unionReasons()...)
	list = append(list, r.gearReasons()...)
	list = append(list, r.testReasons()...)
	list = append(list, r.barkReasons()...)
	list = append(list, r.neighbourReasons(people)...)
	list = append(list, r.hazardReasons(people)...)
	list = append(list, r.togetherReasons(r.clearTrial(used))...)
	return append(list, r.inspectionReasons(people)...)
}

// clearTrial is the trial at which ground and people are judged: the largest
// angle at which space is checked.
func (r *rig) clearTrial(u trial) trial {
	u.amplitude = r.fullSpaceAngle(min(u.amplitude, angle(r.rules.designAmplitude)-angle(r.rules.allowance)))
	return u
}

// ladder is the worst of the reasons; a rideable one needs a use at which all
// checks hold together, and states it.
func (r *rig) ladder(h *Hang, b battery) Outcome {
	outcome := MayHang
	for _, reason := range h.Reasons {
		outcome = max(outcome, reason.Outcome)
	}
	if !outcome.Rideable() {
		return outcome
	}
	u, ok := r.greatestUse(b, unfavourable)
	if !ok {
		none := Reason{Code: NoUseFits, Outcome: Leave, Path: r.at, Change: Change{Code: ChangeOtherLimb}}
		if _, could := r.greatestUse(b, favourable); could {
			none.Outcome, none.Change = Unfinished, Change{Code: ChangeMeasure}
		}
		h.Reasons = append(h.Reasons, none)
		return none.Outcome
	}
	h.Limits = r.limitsOf(u)
	return outcome
}

func (r *rig) limitsOf(u trial) *Limits {
	clear := u
	clear.amplitude = r.spaceAngle(u.amplitude)
	lengths := r.clearLengths(clear)
	letGo := max(lengths.letGoAhead, lengths.letGoBehind)
	height, _ := r.hangHeight()
	l := &Limits{
		Use:      Use{Riders: r.riders.count, Mass: u.mass, Seat: r.riders.seat, Amplitude: u.amplitude, Line: u.line, Gust: u.gust},
		MassEach: u.mass / quantity.Mass(r.riders.count), FallFrom: r.fallAt(clear),
		KeptClear: max(lengths.standard, letGo), StandardClear: lengths.standard, LetGo: letGo,
		StandardFall: space.StandardFallHeight(u.line, height.High()-u.line),
		TestMass:     r.testMass(u, 1),
	}
	for _, corner := range r.keptClearArea(clear) {
		l.KeptClearArea = append(l.KeptClearArea, [2]float64{corner.X, corner.Y})
	}
	if b, ok := r.beaufortOf(u.gust); ok {
		l.Beaufort, l.SeenInTrees = b.Number, b.What
	}
	for _, reason := range append(r.surfaceReasons(clear), r.despiteReasons()...) {
		l.Departures = append(l.Departures, string(reason.Code))
	}
	return l
}

// moreSerious puts the governing reason first: the worst outcome, checks by
// their margins, remarks last.
func moreSerious(a, b Reason) int {
	if c := cmp.Compare(b.Outcome, a.Outcome); c != 0 {
		return c
	}
	if a.Remark != b.Remark {
		if a.Remark {
			return 1
		}
		return -1
	}
	return cmp.Compare(marginOf(a), marginOf(b))
}

// marginOf ranks a reason among those of one outcome: a finding or a missing
// look before any check.
func marginOf(r Reason) float64 {
	if r.Check == nil {
		return -1
	}
	return r.Check.Margin
}

// checkChange is the smallest change that would alter the outcome of a check.
func checkChange(c *Check) Change {
	if c.Alone == Unfinished && c.Best < 1 {
		return Change{Code: ChangeLighterAndMeasure}
	} else if c.Alone == Unfinished {
		return Change{Code: ChangeMeasure}
	}
	switch c.Code {
	case GearLink:
		return Change{Code: ChangeGear}
	case LoadTested:
		return Change{Code: ChangeTest}
	case SeatClearance, FootClearance:
		return Change{Code: ChangeShorter}
	case FallHeight:
		if c.Alone == WithinLimits {
			return Change{Code: ChangeLower}
		}
		return Change{Code: ChangeLine}
	case StemClearance:
		return Change{Code: ChangeLine}
	case Obstructed, LimbInPath:
		return Change{Code: ChangeMoveThing}
	case LimbInWind, UnionInWind, StemBending, RootPlate:
		if c.Alone == WithinLimits {
			return Change{Code: ChangeLessWind}
		}
		if c.Code == StemBending || c.Code == RootPlate {
			return Change{Code: ChangeOtherTree}
		}
		return Change{Code: ChangeCloser}
	}
	if c.Alone == WithinLimits {
		return Change{Code: ChangeLighter}
	}
	return Change{Code: ChangeCloser}
}
