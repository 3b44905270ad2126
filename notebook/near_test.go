package notebook_test

import (
	"bytes"
	"testing"

	"boughline/assess"
	"boughline/knowledge"
	"boughline/survey"
)

// What is worked out on demand rests on the same trees as the outcome: the
// swing of a neighbour does not drop out of it.
func TestNearHoldsTheTreesThatMatterToTheOutcome(t *testing.T) {
	n, _ := open(t)
	move(t, n, "T2", 6) // into the swing of the first tree
	s := read(t, n)
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	for i := range s.Trees {
		outcomes, err := n.Outcomes(s, &s.Trees[i])
		if err != nil {
			t.Fatal(err)
		}
		for _, h := range outcomes.Hangs {
			judged, err := assess.JudgeLoadTest(s.Near(&s.Trees[i]), k, h.ID)
			if err != nil || judged.Outcome != h.Outcome {
				t.Errorf("%s: %v here, %v there, %v", h.ID, judged.Outcome, h.Outcome, err)
			}
		}
	}
	alone := s.Head
	alone.Trees = append(alone.Trees, s.Trees[0].Tree)
	id := s.Trees[0].Hangs[0].ID
	without, errWithout := assess.JudgeLoadTest(&alone, k, id)
	with, errWith := assess.JudgeLoadTest(s.Near(&s.Trees[0]), k, id)
	if errWithout != nil || errWith != nil || without.Outcome >= with.Outcome {
		t.Errorf("the neighbour makes no difference: %v alone, %v with it", without.Outcome, with.Outcome)
	}
}

// A tree with those about it is a document by itself: lines stand in it with the
// trees that hold them.
func TestNearIsADocument(t *testing.T) {
	n, _ := open(t)
	s := read(t, n)
	for i := range s.Trees {
		var b bytes.Buffer
		if err := survey.Write(&b, s.Near(&s.Trees[i])); err != nil {
			t.Fatal(err)
		}
		if _, problems, err := survey.Read(&b); err != nil || len(problems) > 0 {
			t.Errorf("%s: %v, %v", s.Trees[i].ID, problems, err)
		}
	}
}
