package assess

import (
	"fmt"
	"math"

	"boughline/engine/chance"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/source"
)

// RandomInput is one uncertain number of a hang with its law.
type RandomInput struct {
	Symbol string       `json:"symbol"`
	Name   string       `json:"name"`
	Law    string       `json:"law"`
	Middle float64      `json:"median"`
	Low    float64      `json:"low"`  // not reached by one in twenty
	High   float64      `json:"high"` // exceeded by one in twenty
	Unit   string       `json:"unit"`
	How    quantity.How `json:"how,omitempty"`
	Path   string       `json:"path,omitempty"`
	Refs   []source.Ref `json:"refs,omitempty"`
}

// randomInputs gathers the inputs of one hang with their laws; the place of an
// input in a draw is what add returns.
type randomInputs struct {
	list []RandomInput
	laws []chance.Law
	ties []chance.Correlation
}

// add appends an input; its median and 90 % band follow from the law.
func (in *randomInputs) add(i RandomInput, law chance.Law) int {
	i.Middle, i.Low, i.High = law.At(0), law.At(-quantity.Tail), law.At(quantity.Tail)
	in.list = append(in.list, i)
	in.laws = append(in.laws, law)
	return len(in.laws) - 1
}

// lognormal appends an input of that law.
func (in *randomInputs) lognormal(i RandomInput, mean, cov float64) (int, error) {
	law, err := chance.LognormalOf(mean, cov)
	if err != nil {
		return 0, err
	}
	i.Law = "lognormal"
	return in.add(i, law), nil
}

// none stands for an input that a hang does not have, or that is known for certain.
const none = -1

// deviation is the value of an input that counts from 0, 0 where there is none.
func deviation(x []float64, at int) float64 {
	if at == none {
		return 0
	}
	return x[at]
}

// randomPlaces says where in a draw each input of a hang stands.
type randomPlaces struct {
	clear, shear, across, model int
	stemStrength, roots         int
	ownMass, lasting, arm       int
	mass, amplitude             int
	slack, gust, drag           int
	member                      map[*shape]int
	bark                        map[*shape]int
	girth                       map[*shape][]int // by station
}

// woodInputs adds what is not known of the wood: clear wood, one factor for
// each limb, the stem as a whole, and the error of beam theory on a living limb.
func (r *rig) woodInputs(in *randomInputs, p *randomPlaces) error {
	wood, rules := r.species.wood, r.rules
	mean := func(symbol, name, unit string, refs ...source.Ref) RandomInput {
		return RandomInput{Symbol: symbol, Name: name, Unit: unit, Refs: refs}
	}
	var e errorsOf
	p.clear = e.of(in.lognormal(mean("f_clear", "bending strength of clear green wood", "Pa", wood.MOR.Ref, wood.CoV.Ref), wood.MOR.Value, wood.CoV.Value))
	p.shear = e.of(in.lognormal(mean("f_v", "shear strength of clear green wood", "Pa", wood.Shear.Ref, rules.shearCoV.Ref), wood.Shear.Value, rules.shearCoV.Value))
	p.model = e.of(in.lognormal(mean("e", "strength found over that by beam theory", "1", rules.modelMean.Ref, rules.modelCoV.Ref), rules.modelMean.Value, rules.modelCoV.Value))
	p.member = map[*shape]int{}
	for i := range r.limbs {
		s := r.limbs[i].on
		p.member[s] = e.of(in.lognormal(mean("k_m "+s.member.ID, "strength of limb "+s.member.ID+" by that of clear wood", "1", rules.memberFactor.Ref, rules.memberCoV.Ref),
			rules.memberFactor.Value, rules.memberCoV.Value))
	}
	limit := r.k.Parameter(r.byGroup(knowledge.AcrossGrainLimitBroadleaf, knowledge.AcrossGrainLimitConifer))
	scatter := r.k.Parameter(knowledge.TensionAcrossVariation)
	p.across = e.of(in.lognormal(mean("f_t90", "tension across the grain that wood bears", "Pa", limit.Ref, scatter.Ref), meanOfFractile(limit.Value, scatter.Value), scatter.Value))
	strength := r.species.strength
	p.stemStrength = e.of(in.lognormal(mean("f_stem", "bending strength of the stem", "Pa", wood.MOR.Ref, rules.memberFactor.Ref), float64(strength.Mean), strength.CoV))
	p.lasting = e.of(in.lognormal(mean("K", "what a passed test tells of the next ride", "1", rules.lastingCoV.Ref), 1, rules.lastingCoV.Value))
	return e.first
}

// meanOfFractile is the mean of a lognormal law by its lower 5 % fractile.
func meanOfFractile(fractile, cov float64) float64 {
	variance := math.Log1p(cov * cov)
	return fractile * math.Exp(quantity.Tail*math.Sqrt(variance)+variance/2)
}

// errorsOf keeps the first error of several places.
type errorsOf struct{ first error }

func (e *errorsOf) of(at int, err error) int {
	if e.first == nil {
		e.first = err
	}
	return at
}

// limbInputs adds what was measured: diameters along each member, tied to one
// another, bark, the weight of the limb, and the place of the hang.
func (r *rig) limbInputs(in *randomInputs, p *randomPlaces) error {
	p.girth, p.bark = map[*shape][]int{}, map[*shape]int{}
	for i := range r.limbs {
		if err := r.memberInputs(in, p, r.limbs[i].on, r.limbs[i].until); err != nil {
			return err
		}
	}
	stem := r.on.stem()
	if err := r.memberInputs(in, p, stem, r.top()); err != nil {
		return err
	}
	ref := r.rules.ownMassCoV.Ref
	if !r.girthsAlong() {
		ref = r.rules.ownMassLogError.Ref
	}
	var err error
	p.ownMass, err = in.lognormal(RandomInput{Symbol: "k_S", Name: "own weight over that by its girths", Unit: "1", Refs: []source.Ref{ref}}, 1, r.ownMassCoV())
	if err != nil {
		return err
	}
	p.arm = none
	if near, far := r.armEnds(); far > near {
		p.arm = in.add(RandomInput{Symbol: "l", Name: "arm from the face of the parent to the hang point", Law: "normal", Unit: "m", How: r.arm.How, Path: r.at + ".at"},
			chance.Normal{Mean: float64(r.arm.Value), SD: float64(r.arm.Sd)})
	}
	return nil
}

// memberInputs adds the deviation of each measured diameter up to where the
// load comes in, as a share of it, and the bark's thickness as a factor.
func (r *rig) memberInputs(in *randomInputs, p *randomPlaces, s *shape, until float64) error {
	places := make([]int, len(s.girths))
	for i, g := range s.girths {
		places[i] = none
		beyond := i > 0 && s.girths[i-1].at >= until
		if cov := g.relativeSd(); cov > 0 && !beyond {
			places[i] = in.add(RandomInput{Symbol: "d " + s.member.ID, Name: "deviation of the diameter of " + s.member.ID + " at " + fmt.Sprintf("%.2f m", g.at), Law: "normal", Unit: "1",
				How: g.upright.How, Path: g.path}, chance.Normal{SD: cov})
			r.tieDiameters(in, places[:i+1])
		}
	}
	p.girth[s] = places
	bark, row := r.barkOf(s, (s.girths[0].upright.Value+s.girths[0].across.Value)/2)
	p.bark[s] = none
	if !(bark.Value > 0 && bark.Sd > 0) {
		return nil
	}
	var err error
	input := RandomInput{Symbol: "b " + s.member.ID, Name: "bark of " + s.member.ID + " over its thickness as stated", Unit: "1", How: bark.How, Path: s.path + ".bark"}
	if s.member.Bark == nil {
		input.Path, input.Refs = "", []source.Ref{row.Ref}
	}
	p.bark[s], err = in.lognormal(input, 1, float64(bark.Sd/bark.Value))
	return err
}

// tieDiameters ties the newest of the stations to all before it.
func (r *rig) tieDiameters(in *randomInputs, places []int) {
	newest := places[len(places)-1]
	for _, at := range places[:len(places)-1] {
		if at != none {
			in.ties = append(in.ties, chance.Correlation{First: at, Second: newest, Rho: r.rules.diameterCorrelation.Value})
		}
	}
}

// relativeSd is the standard deviation of a diameter as a share of it, the
// greater of the two across.
func (t thickness) relativeSd() float64 {
	return math.Max(t.upright.RelativeSd(), t.across.RelativeSd())
}
