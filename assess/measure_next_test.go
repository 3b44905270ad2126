package assess

import (
	"testing"

	"boughline/quantity"
	"boughline/survey"
)

func next(t *testing.T, s *survey.Survey, hang string) NextSteps {
	t.Helper()
	n, err := MeasureNext(s, base(t), hang)
	if err != nil {
		t.Fatal(err)
	}
	return n
}

// The hornbeam's limb was measured by eye: taping it is what decides.
func TestTapingAGuessedLimbComesFirst(t *testing.T) {
	n := next(t, demoSite(t), "hornbeam-swing")
	if len(n.List) == 0 {
		t.Fatal("nothing is worth measuring")
	}
	first := n.List[0]
	if first.What != "limb-diameter" || first.Places != 2 || first.Likely.Outcome != WithinLimits || first.Likely.Mass == 0 {
		t.Errorf("first is %+v", first)
	}
	if n.Together.Outcome > first.Likely.Outcome {
		t.Errorf("all together %v, the first alone %v", n.Together.Outcome, first.Likely.Outcome)
	}
}

// What is taped all along leaves nothing to tape.
func TestWhatIsMeasuredIsNotAskedForAgain(t *testing.T) {
	if n := next(t, oak(t), "oak-swing"); len(n.List) != 0 {
		t.Errorf("asked for %+v", n.List)
	}
}

// A diameter by eye moves the index both ways, and better lies above worse.
func TestBetterLiesAboveWorse(t *testing.T) {
	for _, tree := range demoSite(t).Trees {
		for _, n := range next(t, demoSite(t), tree.Hangs[0].ID).List {
			if n.Better.Index < n.Worse.Index || n.Minutes <= 0 {
				t.Errorf("%s: %+v", tree.ID, n)
			}
		}
	}
}

func TestAMissingLookIsASmallThingToDo(t *testing.T) {
	s := oak(t)
	looks := &s.Trees[0].Looks
	for i := range *looks {
		if (*looks)[i].Zone == "stem" {
			(*looks)[i].State = survey.LookNotDone
		}
	}
	n := next(t, s, "oak-swing")
	if len(n.List) != 1 || n.List[0].What != "look-stem" || n.List[0].Likely.Outcome != MayHang || n.List[0].Worse.Outcome != Unfinished {
		t.Errorf("got %+v", n.List)
	}
}

// Readings as good as the method leave nothing to learn; a guess is always worth
// measuring, and by eye there is sqrt(15 %^2 - 1.5 %^2) to learn (elementary).
func TestWhatThereIsToLearn(t *testing.T) {
	k := base(t)
	taped := quantity.Measured[quantity.Length]{Value: 0.3, How: quantity.Taped}
	if got := learned(k, taped, quantity.Taped, 1); got.Value != 0.3 {
		t.Errorf("a tape read again gives %v", got)
	}
	byEye := quantity.Measured[quantity.Length]{Value: 0.3, How: quantity.ByEye}
	if got := learned(k, byEye, quantity.Taped, 1); got.Value < 0.3447 || got.Value > 0.3448 || got.How != quantity.Taped {
		t.Errorf("taped after a guess: %v", got)
	}
}
