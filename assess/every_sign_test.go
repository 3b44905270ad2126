package assess

import (
	"testing"

	"boughline/engine/signs"
	"boughline/knowledge"
	"boughline/survey"
)

// outcomeByEffect is the table of effects and outcomes, written out again: what
// bars leads to leave, and so on down to remarks, which leave an outcome alone.
var outcomeByEffect = map[string]Outcome{
	"bars": Leave, "bars-until-cleared": Leave, "ask-arborist": AskArborist, "closer-look": Unfinished, "limit": WithinLimits,
	"repeat": MayHang, "question": MayHang, "remark": MayHang, "none": MayHang,
}

// threeLimbs is the oak of the demo, which may be hung, with short limbs: L1
// carries the hang, L2 grows to the far side where nobody is, L3 above the
// place where people wait.
func threeLimbs(t *testing.T) *survey.Survey {
	s := oak(t)
	tree := &s.Trees[0]
	tree.Findings = nil
	tree.Members[1].Length, tree.Members[2].Length = metres(t, "6.5 m laser"), metres(t, "6.5 m laser")
	above := tree.Members[2]
	above.ID, above.Azimuth, above.RisesAt = "L3", degreesOf(t, "200 deg compass"), metres(t, "7 m laser")
	tree.Members = append(tree.Members, above)
	return s
}

// TestEverySignInEveryPlacement moves each sign of the table from the load path
// to above the people and to the far side of the tree: the outcome changes
// exactly as the row of the sign says, and not otherwise.
func TestEverySignInEveryPlacement(t *testing.T) {
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	if o := assessFirst(t, threeLimbs(t)).Outcome; o != MayHang {
		t.Fatalf("without a sign: %v, want hang", o)
	}
	moved := 0
	for _, sign := range k.Signs() {
		path, above, away := outcomeWith(t, k, sign, "L1", "1 m taped"), outcomeWith(t, k, sign, "L3", "5 m taped"), outcomeWith(t, k, sign, "L2", "4 m taped")
		// The limb in use is above the riders as well.
		if want := outcomeByEffect[max(sign.OnLoadPath, sign.AbovePeople).String()]; path != want {
			t.Errorf("%s on the load path: %v, want %v", sign.ID, path, want)
		}
		if want := outcomeByEffect[sign.AbovePeople.String()]; above != want {
			t.Errorf("%s above the people: %v, want %v", sign.ID, above, want)
		}
		if want := outcomeByEffect[sign.Elsewhere.String()]; away != want {
			t.Errorf("%s on the far side: %v, want %v", sign.ID, away, want)
		}
		if path != away {
			moved++
		}
	}
	if moved < 25 {
		t.Errorf("the far side changes the outcome of %d signs alone", moved)
	}
}

// outcomeWith is the outcome with one finding of a sign.
func outcomeWith(t *testing.T, k *knowledge.Base, sign signs.Sign, member, at string) Outcome {
	t.Helper()
	s := threeLimbs(t)
	s.Trees[0].Findings = []survey.Finding{{ID: "F", Sign: sign.ID, Member: member, At: metres(t, at), SeenOn: day(t, "2026-05-09")}}
	a, err := Assess(s, k)
	if err != nil {
		t.Fatal(err)
	}
	return a.Hangs[0].Outcome
}
