package assess

import (
	"boughline/engine/fungi"
	"boughline/engine/signs"
	"boughline/knowledge"
	"boughline/survey"
)

// unknownFungus as the fungus of a finding says that one was seen and could not
// be named.
const unknownFungus = "unknown"

// unknownFungusReason asks the key what the fungus may be, by the kind of tree,
// the zone, the month and the note. At the foot, on the load path and above the
// people it counts as the worst of what remains; elsewhere it is a remark.
func (r *rig) unknownFungusReason(reason Reason, f *survey.Finding, sign signs.Sign) Reason {
	d := knowledge.Description{Host: r.s.Species, Positions: placesOfZone[sign.Zone], Words: []string{f.Note}}
	if !f.SeenOn.IsZero() {
		d.Month = f.SeenOn.Month()
	}
	id := r.k.IdentifyFungus(d)
	reason.Text, reason.Fungus, reason.Refs = "Unknown fungus", id.Says, id.Refs
	foot := sign.Zone == signs.Base || sign.Zone == signs.RootPlate
	if !foot && !reason.Placement.OnLoadPath && !reason.Placement.AbovePeople {
		return reason
	}
	switch id.Meaning.Advice {
	case fungi.NoPeople:
		reason.Outcome, reason.Remark, reason.Change = Leave, false, Change{Code: ChangeOtherTree}
	case fungi.MeasureFirst:
		reason.Outcome, reason.Remark, reason.Change = AskArborist, false, Change{Code: ChangeArborist}
	case fungi.NotThisPart:
		reason.Outcome, reason.Remark, reason.Change = Leave, false, Change{Code: ChangeOtherLimb}
	}
	return reason
}

// placesOfZone are the places of the key for the zones of a look.
var placesOfZone = map[signs.Zone][]string{
	signs.Crown: {"crown"}, signs.Limb: {"limb"}, signs.Union: {"wound"}, signs.Stem: {"stem"}, signs.Base: {"butt"}, signs.RootPlate: {"roots_away"},
}
