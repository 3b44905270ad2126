package assess

import (
	"slices"

	"boughline/engine/signs"
	"boughline/engine/space"
	"boughline/survey"
)

// findingReasons judges every finding on the tree by where it stands.
func (r *rig) findingReasons(people space.People) []Reason {
	var list []Reason
	for i := range r.s.Findings {
		f := &r.s.Findings[i]
		sign, ok := r.k.Sign(f.Sign)
		if !ok { // Problems has refused it
			continue
		}
		placement := r.placementOf(f, sign, people)
		path := element(r.path+".findings", i)
		list = append(list, r.signReason(f, sign, placement, path))
		if f.Fungus != "" {
			list = append(list, r.fungusReason(f, sign, placement, path))
		}
	}
	return list
}

func (t *tree) signReason(f *survey.Finding, sign signs.Sign, placement signs.Placement, path string) Reason {
	judged := signs.Judge(sign, placement, t.stateOf(f))
	outcome, remark := outcomeOf(judged.Effect)
	return Reason{
		Code: SignFound, Outcome: outcome, Remark: remark, Sign: &sign, SignID: sign.ID, Finding: f.ID,
		Placement: placement, Why: judged.Why, Effect: judged.Effect, Zone: string(sign.Zone), Path: path, Refs: sign.Refs, Text: f.Note,
		Change: changeOf(judged.Effect, sign, placement),
	}
}

// stateOf is what was done about a finding by the day that is judged: what is
// dated later has not been done, and a closer look lapses like any look.
func (t *tree) stateOf(f *survey.Finding) signs.State {
	day := t.survey.Day
	switch {
	case f.Cleared != nil && !f.Cleared.On.After(day):
		return signs.Cleared
	case f.Closer == nil || f.Closer.On.After(day) || t.tooOld(f.Closer.On):
		return signs.Open
	}
	switch f.Closer.Result {
	case survey.CloserClear:
		return signs.LookClear
	case survey.CloserWorse:
		return signs.LookWorse
	}
	return signs.LookUnclear
}

// outcomeOf is the outcome that an effect leads to; effects below a closer
// look are remarks.
func outcomeOf(e signs.Effect) (o Outcome, remark bool) {
	switch {
	case e >= signs.BarsUntilCleared:
		return Leave, false
	case e == signs.Arborist:
		return AskArborist, false
	case e == signs.CloserLook:
		return Unfinished, false
	case e == signs.Limit:
		return WithinLimits, false
	}
	return MayHang, true
}

// changeOf is what would lift a judgement: what only hangs above people may be
// cleared away, a weak limb leaves the other limbs.
func changeOf(e signs.Effect, sign signs.Sign, p signs.Placement) Change {
	switch e {
	case signs.BarsUntilCleared:
		return Change{Code: ChangeClear}
	case signs.Bars:
		switch {
		case sign.Scope == signs.Tree:
			return Change{Code: ChangeOtherTree}
		case sign.Scope == signs.Place || !p.OnLoadPath:
			return Change{Code: ChangeClear}
		}
		return Change{Code: ChangeOtherLimb}
	case signs.Arborist:
		return Change{Code: ChangeArborist}
	case signs.CloserLook:
		return Change{Code: ChangeCloserLook}
	case signs.Limit:
		return Change{Code: ChangeOtherDay}
	}
	return Change{}
}

// fungusReason tells what a named fungus means. One that weakens what the
// finding stands on is judged as its table row says, wherever the sign alone
// would have been milder.
func (r *rig) fungusReason(f *survey.Finding, sign signs.Sign, placement signs.Placement, path string) Reason {
	reason := Reason{Code: FungusFound, Remark: true, SignID: sign.ID, Finding: f.ID, Placement: placement, Zone: string(sign.Zone), Path: path, Text: f.Fungus}
	if f.Fungus == unknownFungus {
		return r.unknownFungusReason(reason, f, sign)
	}
	fungus, ok := r.k.Fungus(f.Fungus)
	if !ok {
		return reason
	}
	reason.Refs, reason.Text, reason.Fungus = fungus.Refs, fungus.Name, fungus.MeaningForPeople
	whole := slices.Contains(fungus.PartsLosingStrength, "root_plate") || slices.Contains(fungus.PartsLosingStrength, "butt")
	counts := whole || sign.Scope != signs.Member || placement.OnLoadPath || placement.AbovePeople
	if fungus.NoPeople && counts {
		reason.Outcome, reason.Remark, reason.Change = Leave, false, Change{Code: ChangeOtherTree}
	}
	return reason
}
