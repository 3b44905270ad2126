package assess

import (
	"math"
	"testing"

	"boughline/survey"
)

func hangFigure(t *testing.T, s *survey.Survey) HangFigure {
	t.Helper()
	figures, err := NewFigures(s, base(t))
	if err != nil {
		t.Fatal(err)
	}
	f, err := figures.Hang("oak-swing")
	if err != nil {
		t.Fatal(err)
	}
	return f
}

// Moved to where it is, a hang is what it was; farther out its limb bears less.
func TestMovedToItsOwnPlaceAHangIsTheSame(t *testing.T) {
	f := hangFigure(t, oak(t))
	at := f.Survey().At.Value
	here, err := f.Moved(at)
	if err != nil {
		t.Fatal(err)
	}
	before := f.Judged()
	if here.Outcome != before.Outcome || len(here.Reasons) != len(before.Reasons) || math.Abs(here.Checks[0].Margin-before.Checks[0].Margin) > 1e-12 {
		t.Errorf("moved to its own place: %v with %d reasons; before %v with %d", here.Outcome, len(here.Reasons), before.Outcome, len(before.Reasons))
	}
	bending := func(h Hang) float64 {
		for _, c := range h.Checks {
			if c.Code == UnionBending {
				return c.Margin
			}
		}
		return 0
	}
	out, err := f.Moved(at + 0.3)
	if err != nil || bending(out) >= bending(before) {
		t.Errorf("0.3 m farther out the union has %.3f, before %.3f; %v", bending(out), bending(before), err)
	}
	if f.Survey().At.Value != at {
		t.Error("the hang itself was moved")
	}
}

// What is left after the last reduction is the strength that is checked, and the
// choker of 40 kN at 125 degrees keeps 0.75 by hand: 30 kN.
func TestStrengthStepByStep(t *testing.T) {
	links, err := hangFigure(t, oak(t)).Rig()
	if err != nil {
		t.Fatal(err)
	}
	for _, l := range links {
		left := l.Marked.Value
		for _, s := range l.Steps {
			if left = s.Left; s.Ref.Source.Title == "" {
				t.Errorf("%s: %s has no source", l.Part.Name, s.Cause)
			}
		}
		if math.Abs(float64(left-l.Strength)) > 1e-6 {
			t.Errorf("%s: %v left after its steps, %v checked", l.Part.Name, left, l.Strength)
		}
	}
	if sling := links[0]; math.Abs(float64(sling.Strength)-30000) > 1e-6 || len(sling.Steps) != 2 {
		t.Errorf("sling: %+v", sling)
	}
}

// The contact and the sag handed out are those of the checks.
func TestRiggingFigureIsWhatTheChecksUse(t *testing.T) {
	f := hangFigure(t, oak(t))
	r, err := f.Rigging()
	if err != nil {
		t.Fatal(err)
	}
	if math.Abs(float64(r.Resting)-9.80665*(47.84+3.14805)) > 0.01 || math.Abs(float64(r.Pull/r.Resting)-(3-2*math.Cos(80*math.Pi/180))) > 1e-9 {
		t.Errorf("resting %v, pull %v", r.Resting, r.Pull)
	}
	if !(r.SagLow < r.Sag && r.Sag < r.SagHigh) || !r.HeightMeasured || len(r.Parts) != 5 || r.Contact.Leg != r.Pull || r.Month != 5 {
		t.Errorf("%+v", r)
	}
}
