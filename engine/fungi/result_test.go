package fungi

import (
	"math"
	"slices"
	"testing"
)

func TestAnswers(t *testing.T) {
	k := toyKey(t)
	for name, c := range map[string]struct {
		e       Evidence
		answer  Answer
		advice  Advice
		shared  []string
		ruleOut string
	}{
		"nothing said":        {Evidence{}, NotEnoughSeen, NoPeople, nil, ""},
		"only where it grows": {Evidence{Host: "Fagus", Positions: []string{"butt"}, Month: 8}, NotEnoughSeen, NoPeople, nil, ""},
		"the root rotter": {Evidence{Host: "Fagus", Positions: []string{"butt"}, Forms: []string{"bracket"}, Undersides: []string{"pores"},
			Marks: map[string]bool{"dust": true}}, Named, NoPeople, []string{"butt", "root_plate"}, ""},
		"the stem rotter": {Evidence{Host: "Betula", Positions: []string{"stem"}, Forms: []string{"hoof"}, Undersides: []string{"pores"},
			Marks: map[string]bool{"hard": true}, Colours: []Seen{{Upper, "black"}}}, Named, MeasureFirst, []string{"stem"}, ""},
		"a film that rubs off": {Evidence{Positions: []string{"stem"}, Forms: []string{"film"}, Marks: map[string]bool{"rubs-off": true}}, PerhapsNone, Nothing, nil, ""},
		"on a twig":            {Evidence{Positions: []string{Twig}, Forms: []string{"bracket"}, Colours: []Seen{{AnyField, "white"}}}, HarmlessHere, Nothing, nil, ""},
		"on a twig and at the foot": {Evidence{Host: "Fagus", Positions: []string{Twig, "butt"}, Forms: []string{"bracket"}, Undersides: []string{"pores"},
			Marks: map[string]bool{"dust": true}}, Named, NoPeople, []string{"butt", "root_plate"}, ""},
	} {
		r, err := k.Identify(c.e)
		if err != nil {
			t.Fatal(err)
		}
		if r.Answer != c.answer || r.Meaning.Advice != c.advice || c.shared != nil && !slices.Equal(r.Meaning.Shared, c.shared) || c.ruleOut != "" && r.Meaning.RuleOut != c.ruleOut {
			t.Errorf("%s: %s %+v of %v", name, r.Answer, r.Meaning, r.Ranked)
		}
	}
}

// The worst of what remains counts, and a part is shared only if all that
// remain weaken it.
func TestMeaningTakesTheWorst(t *testing.T) {
	k := toyKey(t)
	m := k.join([]int{1, 0})
	if m.Advice != NoPeople || m.Worst != "Rootus bad" || m.Agreed || len(m.Shared) != 0 || m.Hiding != PartYear {
		t.Errorf("%+v", m)
	}
	if want := []string{"butt", "root_plate", "stem"}; !slices.Equal(m.Some, want) {
		t.Errorf("some weaken %v, want %v", m.Some, want)
	}
	if m := k.join([]int{1}); !m.Agreed || !slices.Equal(m.Shared, []string{"stem"}) || len(m.Some) != 0 {
		t.Errorf("%+v", m)
	}
}

// Two equally likely candidates and a mark noticed in 80 % and told astray in
// 20 % make a binary symmetric channel: 1 - H(0.2) = 0.278072 bits (Cover and
// Thomas, Elements of Information Theory, capacity of that channel; from memory).
func TestAskIsMutualInformation(t *testing.T) {
	trust := toyTrust()
	trust.DecayShare, trust.Shown, trust.LacksFactor = 1, 0.8, 1
	k, err := New(Vocabulary{Stray: map[string]float64{"m": 0.2}}, trust, []Candidate{
		{Name: "with", Kind: Decay, Commonness: 1, Marks: []string{"m"}}, {Name: "without", Kind: Decay, Commonness: 1},
	})
	if err != nil {
		t.Fatal(err)
	}
	want := 1 + 0.2*math.Log2(0.2) + 0.8*math.Log2(0.8)
	if q, ok := k.Ask(Evidence{}, []Askable{{"m", 1}}); !ok || math.Abs(q.Bits-want) > 1e-9 {
		t.Errorf("got %+v, want %.6f bits", q, want)
	}
	if _, ok := k.Ask(Evidence{Marks: map[string]bool{"m": true}}, []Askable{{"m", 1}}); ok {
		t.Error("what was answered is asked again")
	}
}

func TestAskPicksTheBest(t *testing.T) {
	k := toyKey(t)
	e := Evidence{Positions: []string{"stem"}, Forms: []string{"hoof"}}
	best, ok := k.Ask(e, toyQuestions())
	if !ok {
		t.Fatal("nothing to ask")
	}
	for _, q := range toyQuestions() {
		one, _ := k.Ask(e, []Askable{q})
		if one.Bits > best.Bits+1e-12 {
			t.Errorf("%s tells %g bits, %s only %g", q.Attribute, one.Bits, best.Attribute, best.Bits)
		}
	}
}

func TestSizeAndMonth(t *testing.T) {
	k := toyKey(t)
	share := func(e Evidence) float64 { return k.posterior(e)[0] }
	if in, out := share(Evidence{Size: 0.2}), share(Evidence{Size: 2}); in <= out {
		t.Errorf("a size of the table counts %g, one outside %g", in, out)
	}
	in, beside, out := share(Evidence{Month: 8}), share(Evidence{Month: 10}), share(Evidence{Month: 2})
	if in <= beside || beside <= out {
		t.Errorf("in season %g, a month late %g, half a year off %g", in, beside, out)
	}
	if conifer, pine := share(Evidence{Host: "conifer"}), share(Evidence{Host: "Pinus"}); math.Abs(conifer-pine) > 1e-12 {
		t.Errorf("the only conifer counts %g, as a group %g", pine, conifer)
	}
}
