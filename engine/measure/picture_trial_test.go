package measure

import (
	"math"
	"math/rand/v2"
	"testing"
)

// tally counts how one result fared over many trials.
type tally struct {
	bias   float64 // sum of the errors
	inside int
}

func (t *tally) take(r Result, truth, scale float64) {
	t.bias += (r.Value - truth) / scale
	if low, high := r.Interval(); low <= truth && truth <= high {
		t.inside++
	}
}

func (r Outcome) labelled(label string) Result {
	for _, one := range r.Results {
		if one.Label == label {
			return one
		}
	}
	return Result{Value: math.NaN()}
}

// Pictures of known limbs by random cameras, marked with errors of 2 px and with
// every other reading in error as stated: bias under 1 % (of the slope, of a radian), and the
// stated 95 % intervals hold the truth in 93 to 97 % of 2000 trials.
func TestPicturesOfKnownLimbs(t *testing.T) {
	const trials = 2000
	random := rand.New(rand.NewPCG(1, 2))
	var thickness, alone, along, slope tally
	for done := 0; done < trials; {
		s := randomScene(random)
		p := s.picture(1 + done%2)
		if !within(p) {
			continue
		}
		done++
		out, err := p.Work(nil)
		if err != nil {
			t.Fatalf("trial %d: %v", done, err)
		}
		trueThickness, trueAlong, trueSlope := s.bough.truth()
		thickness.take(out.labelled("thickness at station 2"), trueThickness, trueThickness)
		along.take(out.labelled("along the limb from station 1 to station 3"), trueAlong, trueAlong)
		slope.take(out.labelled("slope of the limb from station 2 to station 3"), trueSlope, 1)
		p.Limb = p.Limb[1:2]
		if out, err = p.Work(nil); err != nil {
			t.Fatalf("trial %d: %v", done, err)
		}
		alone.take(out.labelled("thickness at station 1"), trueThickness, trueThickness)
	}
	for name, got := range map[string]tally{"thickness": thickness, "thickness of a station alone": alone, "along the limb": along, "slope": slope} {
		bias, held := got.bias/trials, float64(got.inside)/trials
		t.Logf("%s: bias %.2f %%, truth held in %.1f %%", name, 100*bias, 100*held)
		if !(math.Abs(bias) < 0.01) {
			t.Errorf("%s: bias %.2f %%, expected less than 1 %%", name, 100*bias)
		}
		if held < 0.93 || held > 0.97 {
			t.Errorf("%s: the interval held the truth in %.1f %%, expected 93 to 97 %%", name, 100*held)
		}
	}
}

// truth returns thickness at the middle, length and slope of the outer half, all in space.
func (b bough) truth() (thickness, along, slope float64) {
	const steps = 200
	for i := range steps {
		along += b.axis(b.length * float64(i+1) / steps).Sub(b.axis(b.length * float64(i) / steps)).Norm()
	}
	outer := b.axis(b.length).Sub(b.axis(b.length / 2))
	return 2 * b.radiusAt(b.length/2), along, math.Atan2(outer.Z, math.Hypot(outer.X, outer.Y))
}
