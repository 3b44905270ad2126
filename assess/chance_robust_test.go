package assess_test

import (
	"context"
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"boughline/assess"
	"boughline/knowledge"
	"boughline/survey"
)

// answers asks everything that can be asked of one hang, and tells a crash.
func answers(s *survey.Survey, k *knowledge.Base, hang string) (err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("crashed: %v", r)
		}
	}()
	chances, refused := assess.ChanceOf(context.Background(), s, k, hang, assess.ChanceOptions{Samples: 64, Seed: 1})
	next, err := assess.MeasureNext(s, k, hang)
	if err != nil {
		return err
	}
	plan, err := assess.PlanLoadTest(s, k, hang)
	if err != nil && !strings.Contains(err.Error(), "too uncertain") {
		return err
	}
	result, err := assess.JudgeLoadTest(s, k, hang)
	if err != nil {
		return err
	}
	if _, err := json.Marshal([]any{chances, next, plan, result}); err != nil {
		return err
	}
	if refused != nil && !strings.HasPrefix(refused.Error(), "no chance can be given: ") {
		return refused
	}
	return nil
}

// Whatever a survey holds, every hang that can be worked out at all has its
// answers in figures that can be written, or is refused in words.
func TestAnyHangHasItsChance(t *testing.T) {
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	asked := 0
	for n := range 20 {
		s := anySite(n)
		a, err := assessAny(s)
		if err != nil {
			continue
		}
		for _, h := range a.Hangs {
			if h.Chance == nil { // it cannot be worked out
				continue
			}
			asked++
			if err := answers(s, k, h.ID); err != nil {
				t.Errorf("survey %d, %s: %v", n, h.ID, err)
			}
		}
	}
	if asked < 10 {
		t.Errorf("%d hangs were asked of", asked)
	}
}
