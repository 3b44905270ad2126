package assess

import (
	"context"
	"errors"
	"fmt"
	"math"

	"boughline/engine/chance"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

// ChanceOptions says how a chance is sampled. The same seed gives the same
// figures on any number of processors.
type ChanceOptions struct {
	Samples int // for each exposure by importance sampling; as many again plain
	Seed    uint64
	// Progress is told after each round how many of all samples are done; nil to
	// tell nobody.
	Progress func(done, total int)
}

// HangChances is how likely the modelled parts of one hang fail, given that
// the limb carries its own weight and has passed the planned load test.
type HangChances struct {
	Format int    `json:"chances"`
	Hang   string `json:"hang"`
	// Outcome and Limits are those of the assessment; Use is what the chances are
	// for: the greatest use within the limits, or the use asked for where there are none.
	Outcome   Outcome       `json:"outcome"`
	Use       Use           `json:"use"`
	WithinUse bool          `json:"within_limits"`
	TestMass  quantity.Mass `json:"load_test_kg"`
	Target    float64       `json:"target_index"`
	Seed      uint64        `json:"seed"`
	Samples   int           `json:"samples"`
	// Deciding are the chance checks of the assessment at this use: the limb under
	// the season's hardest ride, in still air. The exposures add jerk, motion, wind, stem and
	// roots, and decide nothing.
	Deciding  []DecidingCheck  `json:"deciding"`
	Exposures []ExposureChance `json:"exposures"`
	LeftOut   []LeftOut        `json:"leaves_out"`
	// Figure draws the decisive check; nil where it cannot be drawn.
	Figure *ChanceFigure `json:"-"`
}

// ExposureChance is the chance for one exposure. The decision goes by FirstOrder
// and its bound; the samples are checks of it.
type ExposureChance struct {
	Exposure
	// FirstOrder is the likeliest way to fail, Bound the sum of all ways.
	FirstOrder chance.Figure `json:"first_order"`
	Bound      chance.Figure `json:"bound"`
	// Sampled is by samples about the design points, Plain by plain ones.
	Sampled *SampledChance `json:"sampled,omitempty"`
	Plain   *SampledChance `json:"plain,omitempty"`
	Ways    []WayToFail    `json:"ways"` // the likeliest first
	Lost    []string       `json:"no_design_point,omitempty"`
	Inputs  []RandomInput  `json:"inputs"`
}

// DecidingCheck is a chance check of the assessment.
type DecidingCheck struct {
	Code  Code    `json:"code"`
	Part  string  `json:"part"`
	Index float64 `json:"index"`
}

// decidingChecks works the chance checks out at a use.
func (r *rig) decidingChecks(u trial) []DecidingCheck {
	var list []DecidingCheck
	for _, c := range r.chanceCheckers() {
		f := c.try(u, unfavourable)
		list = append(list, DecidingCheck{Code: c.code, Part: f.where.Part, Index: f.capacity})
	}
	return list
}

// SampledChance is an estimate with its interval at 95 % confidence.
type SampledChance struct {
	Probability float64 `json:"probability"`
	Low         float64 `json:"low"`
	High        float64 `json:"high"`
	Samples     int     `json:"samples"`
}

// WayToFail is one check with its design point.
type WayToFail struct {
	Code  Code            `json:"code"`
	Part  string          `json:"part"`
	Along quantity.Length `json:"along_m"`
	chance.Figure
	At []DesignInput `json:"at"` // the most important first
}

// DesignInput is an input at a design point. Importance is below 0 for what is
// low at failure, above 0 for what is high; its squares add up to 1 with those left out.
type DesignInput struct {
	Symbol     string  `json:"symbol"`
	Name       string  `json:"name"`
	Value      float64 `json:"value"`
	Unit       string  `json:"unit"`
	Importance float64 `json:"importance"`
}

// ChanceOf works the chances of one hang out. It ends early with the error of
// the context when that is done.
func ChanceOf(ctx context.Context, s *survey.Survey, k *knowledge.Base, hang string, o ChanceOptions) (HangChances, error) {
	r, err := rigNamed(s, k, hang)
	if err != nil {
		return HangChances{}, err
	}
	judged := r.assess()
	use := r.usedWithin(judged)
	c := HangChances{
		Format: Format, Hang: hang, Outcome: judged.Outcome, WithinUse: judged.Limits != nil,
		Use:      Use{Riders: r.riders.count, Mass: use.mass, Seat: r.riders.seat, Amplitude: use.amplitude, Line: use.line, Gust: use.gust},
		TestMass: r.testMass(use, 1),
		Target:   r.rules.targetBeta.Value, Seed: o.Seed, Samples: o.Samples, LeftOut: leftOut(), Deciding: r.decidingChecks(use),
	}
	c.Figure = r.chanceFigure(use)
	exposures := r.exposures()
	for i, e := range exposures {
		step := o.step(ctx, i, len(exposures))
		one, err := r.exposureChance(use, e, o, step)
		if errors.Is(err, chance.ErrCannotHold) {
			return HangChances{}, fmt.Errorf("no chance can be given: by its laws the limb hardly bears the planned load test of %.0f kg", float64(c.TestMass))
		}
		if errors.Is(err, chance.ErrNoDesignPoint) {
			return HangChances{}, fmt.Errorf("no chance can be given: no likeliest failure was found; a diameter, a mass or the arm is too uncertain")
		}
		if err != nil {
			return HangChances{}, fmt.Errorf("%s: %w", e.Code, err)
		}
		c.Exposures = append(c.Exposures, one)
	}
	return c, nil
}

// step tells the progress of exposure i of n and ends the sampling with the context.
func (o ChanceOptions) step(ctx context.Context, i, n int) func(done int) error {
	return func(done int) error {
		if o.Progress != nil {
			o.Progress(min(o.Samples*i+done, o.Samples*n), o.Samples*n)
		}
		return ctx.Err()
	}
}

// usedWithin is the greatest use of a hang that may be put up, or what was
// asked for.
func (r *rig) usedWithin(h Hang) trial {
	if h.Limits == nil {
		return r.asked
	}
	return trial{mass: h.Limits.Mass, amplitude: h.Limits.Amplitude, gust: h.Limits.Gust, line: h.Limits.Line}
}

func (r *rig) exposureChance(u trial, e Exposure, o ChanceOptions, step func(int) error) (ExposureChance, error) {
	h, err := r.newRandomHang(u, e, r.testPull(u))
	if err != nil {
		return ExposureChance{}, err
	}
	given, keys, err := h.given()
	if err != nil {
		return ExposureChance{}, err
	}
	system, err := given.FirstOrder()
	if err != nil {
		return ExposureChance{}, err
	}
	c := ExposureChance{Exposure: e, FirstOrder: told(system.Figure), Bound: told(chance.FigureOf(system.High)), Inputs: h.inputs.list}
	c.Ways, c.Lost = h.waysToFail(system, keys)
	if o.Samples == 0 {
		return c, step(0)
	}
	c.Sampled, c.Plain, err = sampledChances(given, system, o, step)
	return c, err
}

// told holds an index to where the laws still say something, and to what JSON
// can carry.
func told(f chance.Figure) chance.Figure {
	f.Beta = math.Max(-greatestBeta, math.Min(greatestBeta, f.Beta))
	return f
}

// sampledChances checks the first order in both ways, half of the samples each.
func sampledChances(given chance.Given, system chance.System, o ChanceOptions, step func(int) error) (weighted, plain *SampledChance, err error) {
	half := max(1, o.Samples/2)
	s := chance.Sampling{Samples: half, Seed: o.Seed, Progress: step}
	about, err := given.ImportanceSampling(s, system.Centres()...)
	if err != nil {
		return nil, nil, err
	}
	s.Progress = func(done int) error { return step(half + done) }
	all, err := given.MonteCarlo(s)
	if err != nil {
		return nil, nil, err
	}
	return sampled(about), sampled(all), nil
}

func sampled(e chance.Estimate) *SampledChance {
	return &SampledChance{Probability: e.Probability, Low: e.Low, High: e.High, Samples: e.Samples}
}
