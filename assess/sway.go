package assess

import (
	"fmt"
	"math"

	"boughline/engine/frame"
	"boughline/engine/swing"
	"boughline/knowledge"
	"boughline/quantity"
)

// treeSway is the whole tree as one frame: its lowest mode, what swings make of
// it, and its own weight.
type treeSway struct {
	lowest  quantity.Frequency
	self    frame.Statics // under its own weight
	index   map[*shape]int
	factors map[quantity.Length]float64 // dynamic factor by length of line
}

// swayElement is the element length of the whole tree, m.
const swayElement = 2

// treeSway finds the lowest mode of stem and limbs together, the roots rigid.
func (t *tree) treeSway() (*treeSway, error) {
	if t.sway != nil {
		return t.sway, nil
	}
	whole, index, err := t.frameFrom(t.order[0].stem())
	if err != nil {
		return nil, fmt.Errorf("whole tree: %w", err)
	}
	analysis, err := whole.Analyse(frame.Options{ElementLength: swayElement})
	if err != nil {
		return nil, fmt.Errorf("whole tree: %w", err)
	}
	lowest, err := analysis.LowestFrequency()
	if err != nil {
		return nil, fmt.Errorf("whole tree: %w", err)
	}
	self, err := whole.Statics(frame.LoadCase{Gravity: quantity.Vec3{Z: -quantity.StandardGravity}})
	if err != nil {
		return nil, fmt.Errorf("whole tree: %w", err)
	}
	t.sway = &treeSway{lowest: lowest, self: self, index: index, factors: map[quantity.Length]float64{}}
	return t.sway, nil
}

// swayFactor is by how much a swing that goes on and on raises its moment on
// stem and root plate: that of the part of the pull which drives the lowest
// mode the more.
func (r *rig) swayFactor(line quantity.Length) float64 {
	if r.anchor != nil { // it does not come back in time with the tree
		return 1
	}
	if f, ok := r.sway.factors[line]; ok {
		return f
	}
	damping := quantity.Proportion(r.k.Parameter(knowledge.StemDamping).Value)
	f := 1.0
	for _, direction := range []swing.PullDirection{swing.HorizontalPull, swing.VerticalPull} {
		factor, err := swing.SwayFactor(line, angle(r.rules.designAmplitude), r.sway.lowest, damping, direction)
		if err != nil { // a line and a mode are positive by construction
			factor = slackFactor
		}
		f = math.Max(f, float64(factor))
	}
	r.sway.factors[line] = f
	return f
}

// swayReasons tells the person in charge to watch the stem where the swing
// repeats near the tree's own sway.
func (r *rig) swayReasons() []Reason {
	if r.anchor != nil {
		return nil
	}
	resonance, err := swing.NearestResonance(r.asked.line, angle(r.rules.designAmplitude), r.sway.lowest)
	if err != nil || !resonance.Near {
		return nil
	}
	return []Reason{{Code: StemSways, Remark: true, Path: r.at + ".line", Terms: r.swayTerms(r.asked)}}
}

func (r *rig) swayTerms(u trial) []Term {
	if r.anchor != nil {
		return nil
	}
	return []Term{
		{Symbol: "D_s", Name: "dynamic factor of the tree that sways with the swing", Value: r.swayFactor(u.line), Unit: "1"},
		{Symbol: "f_t", Name: "lowest frequency of the whole tree, roots rigid", Value: float64(r.sway.lowest), Unit: "Hz"},
		factTerm("zeta", "damping ratio of the sway", r.k.Parameter(knowledge.StemDamping)),
	}
}
