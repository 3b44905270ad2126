package assess

import (
	"testing"

	"boughline/knowledge"
	"boughline/survey"
)

// An unknown fungus at the foot or on the load path counts as the worst of
// what remains; on the far side of the tree it is a remark. (The worst on oak
// is a brittle rot of foot and roots: UMass, Kretzschmaria deusta.)
func TestUnknownFungusCountsAsTheWorst(t *testing.T) {
	spoilOneByOne(t, map[string]spoiled{
		"at the foot":      {Leave, FungusFound, withFinding(survey.Finding{Sign: "base-04", Fungus: unknownFungus})},
		"over the roots":   {Leave, FungusFound, withFinding(survey.Finding{Sign: "root_plate-09", Fungus: unknownFungus})},
		"on the limb":      {AskArborist, FungusFound, withFinding(survey.Finding{Sign: "limb-10", Fungus: unknownFungus, Member: "L1", At: metres(t, "1 m taped")})},
		"described better": {AskArborist, FungusFound, withFinding(survey.Finding{Sign: "base-04", Fungus: unknownFungus, Note: "red tongue like raw meat, red juice when squeezed"})},
	})
}

func TestUnknownFungusOnTheFarSideIsARemark(t *testing.T) {
	s := oak(t)
	withFinding(survey.Finding{Sign: "limb-10", Fungus: unknownFungus, Member: "L2", At: metres(t, "1 m taped")})(&s.Trees[0], nil)
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	if problems := Problems(s, k); len(problems) > 0 {
		t.Fatalf("unknown is refused: %v", problems)
	}
	found := false
	for _, r := range assessFirst(t, s).Reasons {
		if r.Code == FungusFound {
			found = true
			if !r.Remark || r.Fungus == "" {
				t.Errorf("%+v", r)
			}
		}
	}
	if !found {
		t.Error("the fungus is not told of")
	}
}

// What describes it better never weighs more than knowing nothing of it.
func TestADescriptionNeverWeighsMoreThanNone(t *testing.T) {
	at := func(note string) Outcome {
		s := oak(t)
		withFinding(survey.Finding{Sign: "base-04", Fungus: unknownFungus, Note: note})(&s.Trees[0], nil)
		return assessFirst(t, s).Outcome
	}
	blank := at("")
	for _, note := range []string{"black crust, crumbles", "honey-coloured toadstools in tufts, white sheets under the bark", "red tongue like raw meat", "orange powder that rubs off", "something"} {
		if o := at(note); o > blank {
			t.Errorf("%q: %v, with no note %v", note, o, blank)
		}
	}
}
