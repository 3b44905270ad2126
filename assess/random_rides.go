package assess

import (
	"math"

	"boughline/engine/chance"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/source"

	"gonum.org/v1/gonum/stat/distuv"
)

// rideInputs adds what the riders do: mass, amplitude and slack, each at its
// largest over the rides, and the strongest gust. All come together in one ride, which is
// on the heavy side.
func (r *rig) rideInputs(in *randomInputs, p *randomPlaces, u trial, e Exposure) error {
	for _, add := range []func(*randomInputs, *randomPlaces, trial, Exposure) error{r.massInput, r.amplitudeInput, r.slackInput, r.gustInput, r.dragInput} {
		if err := add(in, p, u, e); err != nil {
			return err
		}
	}
	return nil
}

func (r *rig) massInput(in *randomInputs, p *randomPlaces, u trial, e Exposure) error {
	law, err := chance.LognormalOf(float64(r.riders.mean*u.mass/r.riders.design), math.Max(r.riders.cov, r.rules.weighedCoV.Value))
	if err != nil {
		return err
	}
	i := RandomInput{Symbol: "m", Name: "riders", Law: "lognormal", Unit: "kg", Path: r.riders.path, Refs: refsOf(r.riders.terms)}
	p.mass, err = in.largest(i, law, e.Groups)
	return err
}

func refsOf(terms []Term) []source.Ref {
	var refs []source.Ref
	for _, t := range terms {
		refs = append(refs, t.Refs...)
	}
	return refs
}

// largest appends the greatest of n draws of a law.
func (in *randomInputs) largest(i RandomInput, law chance.Law, n int) (int, error) {
	if n == 1 {
		return in.add(i, law), nil
	}
	i.Law += ", largest"
	largest, err := chance.LargestOf(law, n)
	if err != nil {
		return none, err
	}
	return in.add(i, largest), nil
}

// amplitudeInput takes a beta law on 0 to 90 degrees about what is declared, or
// the amplitude that strength is checked at.
func (r *rig) amplitudeInput(in *randomInputs, p *randomPlaces, u trial, e Exposure) error {
	i := RandomInput{Symbol: "a", Name: "amplitude reached", Law: "beta on 0 to 90 deg", Unit: "rad", Path: r.at + ".amplitude", Refs: []source.Ref{r.rules.amplitudeSd.Ref}}
	if e.AtDesign {
		i.Law, i.Refs = "fixed", []source.Ref{r.rules.designAmplitude.Ref}
		p.amplitude = in.add(i, chance.Normal{Mean: r.rules.designAmplitude.Value})
		return nil
	}
	law, err := chance.TabledOf(betaOn(float64(u.amplitude), r.rules.amplitudeSd.Value))
	if err != nil {
		return err
	}
	p.amplitude, err = in.largest(i, law, e.Rides)
	return err
}

// betaOn is the beta law on 0 to a right angle with a mean and deviation, rad.
// A mean nearer than 10 degrees to an end is moved there, where such a law still exists.
func betaOn(mean, sd float64) chance.Law {
	const right, nearest = math.Pi / 2, math.Pi / 18
	m := math.Min(right-nearest, math.Max(nearest, mean)) / right
	v := sd / right * sd / right
	both := m*(1-m)/v - 1
	return scaled{chance.Other(distuv.Beta{Alpha: m * both, Beta: (1 - m) * both}), right}
}

// scaled is a law times a factor.
type scaled struct {
	law chance.Law
	by  float64
}

func (s scaled) At(z float64) float64      { return s.by * s.law.At(z) }
func (s scaled) Deviate(x float64) float64 { return s.law.Deviate(x / s.by) }

func (r *rig) slackInput(in *randomInputs, p *randomPlaces, u trial, e Exposure) error {
	i := RandomInput{Symbol: "s", Name: "slack at mounting", Law: "exponential", Unit: "m", Path: r.at + ".slack", Refs: []source.Ref{r.rules.slackMean.Ref}}
	law := exponential{r.rules.slackMean.Value}
	var err error
	p.slack, err = in.largest(i, law, e.Rides)
	return err
}

// exponential is the exponential law by its mean. It has its own quantile: that
// of a chance near 1 would be rounded in the tail that counts.
type exponential struct{ mean float64 }

func (e exponential) At(z float64) float64 { return -e.mean * math.Log(chance.Probability(z)) }

func (e exponential) Deviate(x float64) float64 {
	return chance.Beta(math.Exp(-math.Max(0, x) / e.mean))
}

// gustInput takes a Gumbel law of the strongest gust while people ride: the
// stop rule is passed with the house chance before riding has stopped.
func (r *rig) gustInput(in *randomInputs, p *randomPlaces, u trial, e Exposure) error {
	p.gust = none
	if r.air == nil {
		return nil
	}
	law := gumbelBeyond(float64(u.gust), r.rules.gustBeyond.Value, r.rules.gustCoV.Value)
	var err error
	p.gust, err = in.largest(RandomInput{Symbol: "U", Name: "strongest gust (3 s) at 10 m in the open while people ride", Law: "Gumbel", Unit: "m/s",
		Refs: []source.Ref{r.rules.gustBeyond.Ref}}, law, e.Outings)
	return err
}

// dragInput is the drag of the crown over the figure that checks take, which is
// at the upper end of what was measured: from the lowest to the highest figure lie nine cases
// in ten.
func (r *rig) dragInput(in *randomInputs, p *randomPlaces, u trial, e Exposure) error {
	p.drag = none
	if r.air == nil {
		return nil
	}
	drag := r.k.Parameter(r.byGroup(knowledge.CrownDragBroadleaf, knowledge.CrownDragConifer))
	mean := (drag.Low + drag.High) / 2
	var err error
	p.drag, err = in.lognormal(RandomInput{Symbol: "c", Name: "drag of the crown over that of the checks", Unit: "1", Refs: []source.Ref{drag.Ref}},
		mean/drag.Value, (drag.High-drag.Low)/2/quantity.Tail/mean)
	return err
}

// gumbel is the law of the greatest by its mode and scale.
type gumbel struct{ mode, scale float64 }

// gumbelBeyond is the Gumbel law that a value is passed with a given chance, by
// its coefficient of variation: mean mode + 0.5772 scale, deviation scale pi/sqrt(6).
func gumbelBeyond(value, beyond, cov float64) gumbel {
	const euler = 0.57721566490153286
	perMode := 1 / (math.Pi/math.Sqrt(6)/cov - euler) // scale over mode
	mode := value / (1 - perMode*math.Log(-math.Log1p(-beyond)))
	return gumbel{mode, perMode * mode}
}

func (g gumbel) At(z float64) float64 {
	return g.mode - g.scale*math.Log(-math.Log1p(-chance.Probability(z)))
}

func (g gumbel) Deviate(x float64) float64 {
	return chance.Beta(-math.Expm1(-math.Exp(-(x - g.mode) / g.scale)))
}

// rootsInput is what the root plate bears: by the mass of the stem, the mean of the
// conifers read where checks take the weakest, and above a gust that the tree has stood, worked out on its low side.
func (r *rig) rootsInput(in *randomInputs, p *randomPlaces) {
	p.roots = none
	if r.air == nil {
		return
	}
	slopes, scatter := r.readSlopesOfRoots()
	mean := 0.0
	for _, slope := range slopes {
		mean += slope.Value / float64(len(slopes))
	}
	law := chance.Lognormal{Mu: math.Log(float64(r.stemMass()) * mean), Sigma: scatter.Value}
	i := RandomInput{Symbol: "M_r", Name: "overturning moment that the root plate bears", Law: "lognormal", Unit: "N m", Refs: []source.Ref{slopes[0].Ref, scatter.Ref}}
	stood := r.strongestStood()
	if stood.moment == 0 {
		p.roots = in.add(i, law)
		return
	}
	i.Path = stood.path
	above := chance.Above{Lognormal: law, Load: float64(stood.moment)}
	if !(above.Survival() > leastStood) { // the mass says nothing here: what was stood is borne
		i.Law = "fixed, as stood"
		p.roots = in.add(i, chance.Normal{Mean: float64(stood.moment)})
		return
	}
	i.Law = "lognormal above what was stood"
	p.roots = in.add(i, above.Law())
}

// leastStood is the chance by the law of the mass below which it contradicts
// the gust that was stood.
const leastStood = 1e-9
