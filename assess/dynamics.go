package assess

import (
	"math"

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
	factors  map[factorKey]float64
}

// springsAtHang works the limb out as finite elements, with the wood inside
// the bark as measured. The stem counts as rigid.
func (r *rig) springsAtHang() (springs, error) {
	at := r.bough.armAt(r.arm.Value)
	stiffness, err := r.bough.analysis.Stiffness(at)
	if err != nil {
		return springs{}, err
	}
	vertical, err := r.bough.analysis.StiffnessAlong(at, quantity.Vec3{Z: 1})
	if err != nil {
		return springs{}, err
	}
	return springs{
		vertical: vertical, lowest: r.bough.lowest, factors: map[factorKey]float64{},
		limb: swing.LimbAtHang{
			StiffnessNewtonPerMetre: stiffness, MovingMass: swing.MovingMass(vertical, r.bough.lowest),
			DampingRatio: quantity.Proportion(r.k.Parameter(knowledge.StemDamping).Value),
		},
	}, nil
}

// dynamicFactor is by how much the limb that gives way raises the greatest
// pull of riders on a line. It is worked out at fixed masses and straight
// between them, so that it does not depend on the riders asked for.
func (r *rig) dynamicFactor(mass quantity.Mass, line quantity.Length) float64 {
	if r.anchor != nil { // its pulls hold what a sudden load adds
		return 1
	}
	step := math.Log(float64(mass/firstMass)) / math.Log(massRatio)
	below := math.Floor(step)
	t := step - below
	return (1-t)*r.factorAt(int(below), line) + t*r.factorAt(int(below)+1, line)
}

// The fixed masses of riders and seat: firstMass times powers of massRatio, kg.
const (
	firstMass quantity.Mass = 20
	massRatio float64       = 3
)

// factorAt works out the factor at one of the fixed masses.
func (r *rig) factorAt(index int, line quantity.Length) float64 {
	key := factorKey{index, line}
	if f, ok := r.springs.factors[key]; ok {
		return f
	}
	mass := firstMass * quantity.Mass(math.Pow(massRatio, float64(index)))
	given, err := swing.GiveWay(r.springs.limb, mass, line, angle(r.rules.designAmplitude), r.azimuth)
	f := float64(given.Factor)
	if err != nil || given.Slack {
		f = slackFactor
	}
	r.springs.factors[key] = f
	return f
}

type factorKey struct {
	index int
	line  quantity.Length
}

// slackFactor is taken where the limb gives so much that the line goes slack
// and catches: a suddenly applied load, twice the static one (elementary).
const slackFactor = 2

func (r *rig) dynamicTerms(u trial) []Term {
	if r.anchor != nil {
		return nil
	}
	return []Term{
		{Symbol: "D", Name: "dynamic factor of the limb that gives way", Value: r.dynamicFactor(u.mass+r.riders.seat, u.line), Unit: "1"},
		{Symbol: "f_1", Name: "lowest frequency of the limb", Value: float64(r.springs.lowest), Unit: "Hz"},
		{Symbol: "k_limb", Name: "stiffness of the limb at the hang point, up and down", Value: float64(r.springs.vertical), Unit: "N/m",
			Refs: []source.Ref{r.species.wood.MOE.Ref}},
	}
}
