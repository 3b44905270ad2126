package assess

import (
	"fmt"

	"boughline/engine/frame"
	"boughline/engine/swing"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/source"
)

// springs is the limb as the swing meets it at the hang point.
type springs struct {
	limb     swing.LimbAtHang
	vertical quantity.Stiffness
	lowest   quantity.Frequency // of the limb with all that it carries
	factors  map[quantity.Length]float64
}

// elementLength is that of the finite elements of a limb, m. Elements are
// exact for linear taper, so few are enough.
const elementLength = 0.5

// modeChange leaves the frequencies right to about a tenth of a per cent: far
// better than any stiffness of living wood is known.
const modeChange = 2e-3

// springsAtHang works the limb out as finite elements, with the wood inside
// the bark as measured. The stem counts as rigid.
func (r *rig) springsAtHang() (springs, error) {
	analysis, err := r.bough.frame.Analyse(frame.Options{ElementLength: elementLength, ModeChange: modeChange})
	if err != nil {
		return springs{}, err
	}
	at := r.bough.armAt(r.arm.Value)
	stiffness, err := analysis.Stiffness(at)
	if err != nil {
		return springs{}, err
	}
	vertical, err := analysis.StiffnessAlong(at, quantity.Vec3{Z: 1})
	if err != nil {
		return springs{}, err
	}
	modes, err := analysis.Modes(1)
	if err != nil {
		return springs{}, fmt.Errorf("modes: %w", err)
	}
	lowest := modes[0].Frequency
	return springs{
		vertical: vertical, lowest: lowest, factors: map[quantity.Length]float64{},
		limb: swing.LimbAtHang{
			StiffnessNewtonPerMetre: stiffness, MovingMass: swing.MovingMass(vertical, lowest),
			DampingRatio: quantity.Proportion(r.k.Parameter(knowledge.StemDamping).Value),
		},
	}, nil
}

// dynamicFactor is by how much the limb that gives way raises the greatest
// pull of the riders asked for, on a line of this length. Lighter riders take
// the same factor.
func (r *rig) dynamicFactor(line quantity.Length) float64 {
	if f, ok := r.springs.factors[line]; ok {
		return f
	}
	mass := r.riders.design + r.riders.seat
	given, err := swing.GiveWay(r.springs.limb, mass, line, angle(r.rules.designAmplitude), r.azimuth)
	f := float64(given.Factor)
	if err != nil || given.Slack {
		f = slackFactor
	}
	r.springs.factors[line] = f
	return f
}

// slackFactor is taken where the limb gives so much that the line goes slack
// and catches: a suddenly applied load, twice the static one (elementary).
const slackFactor = 2

func (r *rig) dynamicTerms(u trial) []Term {
	return []Term{
		{Symbol: "D", Name: "dynamic factor of the limb that gives way", Value: r.dynamicFactor(u.line), Unit: "1"},
		{Symbol: "f_1", Name: "lowest frequency of the limb", Value: float64(r.springs.lowest), Unit: "Hz"},
		{Symbol: "k_limb", Name: "stiffness of the limb at the hang point, up and down", Value: float64(r.springs.vertical), Unit: "N/m",
			Refs: []source.Ref{r.species.wood.MOE.Ref}},
	}
}
