package signs

// Placement says where a finding stands, seen from one hang. A finding may be
// on the load path and above the people at once; with neither it is elsewhere.
type Placement struct {
	OnLoadPath  bool // limb from hang point to union, the union, the parent down to the ground, the root plate
	AbovePeople bool // it could fall into the swing, the let-go flight, the waiting place or the way in
}

// State says what was done about a finding.
type State string

const (
	// Open: nothing was done since it was seen.
	Open State = "open"
	// Cleared: what hung there was taken down, or the hazard of the place is gone.
	Cleared State = "cleared"
	// LookClear: the closer look was done and found nothing wrong.
	LookClear State = "look-clear"
	// LookWorse: the closer look was done and found it worse.
	LookWorse State = "look-worse"
	// LookUnclear: the closer look was done and could not tell.
	LookUnclear State = "look-unclear"
)

// States lists the states of a finding.
func States() []State { return []State{Open, Cleared, LookClear, LookWorse, LookUnclear} }

// Why is the code of the reason behind a judgement.
type Why string

// The reasons.
const (
	WhyOnLoadPath       Why = "on-load-path"
	WhyAbovePeople      Why = "above-people"
	WhyElsewhere        Why = "elsewhere"
	WhyCountsEverywhere Why = "counts-everywhere-on-tree"
	WhyCountsForPlace   Why = "counts-for-place"
	WhyCleared          Why = "cleared"
	WhyLookClear        Why = "closer-look-clear"
	WhyLookWorse        Why = "closer-look-worse"
	WhyLookUnclear      Why = "closer-look-unclear"
)

// Judgement is what one finding does to one hang, and why.
type Judgement struct {
	Effect Effect
	Why    Why
}

// Judge returns what the sign, found in this placement and state, does to the
// hang: the greatest effect over the placements it has. A sign of the tree or
// the place counts in every placement. An unknown state counts as Open.
//
// Clearing lifts only what can be taken away: what hangs above the people and
// hazards of the place, never a weakness on the load path or of the tree. A
// closer look settles only signs that ask for one; an unclear one leaves them
// as they were.
func Judge(s Sign, p Placement, state State) Judgement {
	removable := s.Urgency != NotSeen // what a cover hid is still to be looked at
	hazardOfPlace := removable && s.Scope == Place
	canFall := removable && s.Scope != Tree
	worst := settle(Judgement{s.Elsewhere, whyElsewhere(s.Scope)}, state, hazardOfPlace)
	if p.OnLoadPath {
		worst = heavier(worst, settle(Judgement{s.OnLoadPath, WhyOnLoadPath}, state, hazardOfPlace))
	}
	if p.AbovePeople {
		worst = heavier(worst, settle(Judgement{s.AbovePeople, WhyAbovePeople}, state, canFall))
	}
	return worst
}

func whyElsewhere(scope Scope) Why {
	switch scope {
	case Tree:
		return WhyCountsEverywhere
	case Place:
		return WhyCountsForPlace
	}
	return WhyElsewhere
}

// settle applies the state of the finding to its effect in one placement.
func settle(j Judgement, state State, clearable bool) Judgement {
	switch {
	case state == Cleared && clearable && j.Effect > Remark:
		return Judgement{Remark, WhyCleared}
	case j.Effect != CloserLook:
		return j
	case state == LookClear:
		return Judgement{Remark, WhyLookClear}
	case state == LookWorse:
		return Judgement{Arborist, WhyLookWorse}
	case state == LookUnclear:
		return Judgement{CloserLook, WhyLookUnclear}
	}
	return j
}

// heavier returns b where it weighs at least as much as a, so that the reason
// of a nearer placement wins a tie.
func heavier(a, b Judgement) Judgement {
	if b.Effect >= a.Effect {
		return b
	}
	return a
}
