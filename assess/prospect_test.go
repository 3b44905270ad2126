package assess

import (
	"testing"

	"boughline/quantity"
	"boughline/survey"
)

// A limb that failed its load test is barred for every hang that is tried on
// it, though the hang that was tested is not one of them.
func TestProspectRemembersLoadTests(t *testing.T) {
	s := oak(t)
	h := s.Trees[0].Hangs[0]
	if got := judgedAnew(t, s, h); !got.Outcome.Rideable() {
		t.Fatalf("before the test: %v", got.Outcome)
	}
	load := survey.MeasuredMass{Value: 80, How: quantity.Weighed}
	s.Trees[0].LoadTests = []survey.LoadTest{{Hang: h.ID, On: s.Day, Steps: []survey.LoadStep{{Mass: &load}}, Signs: []string{"crack"}}}
	if got := judgedAnew(t, s, h); got.Outcome != Leave || !hasReason(got, TestStopped) {
		t.Errorf("after a test that was stopped: %v", got.Outcome)
	}
}

// judgedAnew tries the swing of a hang as if nobody had asked for it.
func judgedAnew(t *testing.T, s *survey.Survey, h survey.Hang) Hang {
	t.Helper()
	prospects, err := Prospects(s, rigOf(t, s).k)
	if err != nil {
		t.Fatal(err)
	}
	point, err := prospects[0].At(h.Member, h.At.Value)
	if err != nil {
		t.Fatal(err)
	}
	direction, err := point.Turned(point.Azimuth())
	if err != nil {
		t.Fatal(err)
	}
	w, err := direction.With(h.Riders, h.Chain)
	if err != nil {
		t.Fatal(err)
	}
	asked := w.Asked("new", 3.4, h.Amplitude.Value)
	return w.Judge(&asked)
}
