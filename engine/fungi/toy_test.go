package fungi

import "testing"

// toy is a small world of two hosts and a few looks.
func toyVocabulary() Vocabulary {
	return Vocabulary{
		Hosts:     []Host{{"Fagus", "broadleaf"}, {"Betula", "broadleaf"}, {"Pinus", "conifer"}},
		Positions: []string{"butt", "stem", "limb", Twig}, Forms: []string{"bracket", "hoof", "film"},
		Undersides: []string{"pores", "gills"}, Colours: []string{"white", "brown", "black"},
		FormsMixed: []Confusion{{"bracket", "hoof", 0.25}}, ColoursMixed: []Confusion{{"brown", "black", 0.2}},
		Stray: map[string]float64{"hard": 0.2, "dust": 0.05, "rubs-off": 0.05},
	}
}

func toyTrust() Trust {
	return Trust{
		HostFloor: 0.1, PositionFloor: 0.1, MonthFloor: 0.1, FormFloor: 0.1, UndersideFloor: 0.1, ColourFloor: 0.1, SizeFloor: 0.1,
		Wider: 0.3, Decline: 0.2, Shown: 0.8, LacksFactor: 0.5, Repetition: 0.6, DecayShare: 0.6, HarmlessShare: 0.1, NoneShare: 0.2,
		EnoughBits: 0.4, EnoughShare: 0.3, HarmlessFrom: 0.6, RemainingShare: 0.9, RemainingLeast: 0.04, RuleOutShare: 0.02, LeastGain: 0.01,
	}
}

func toyCandidates() []Candidate {
	return []Candidate{
		{Name: "Rootus bad", Kind: Decay, Commonness: 1, Hosts: []string{"Fagus"}, Positions: []string{"butt"}, Months: []int{8, 9}, Forms: []string{"bracket"},
			Undersides: []string{"pores"}, Colours: map[Field][]string{Upper: {"brown"}, Underside: {"white"}}, Marks: []string{"dust"}, Lacks: []string{"rubs-off"},
			Smallest: 0.1, Largest: 0.4, Weakens: []string{"butt", "root_plate"}, Advice: NoPeople, Hiding: PartYear},
		{Name: "Stemus hard", Kind: Decay, Commonness: 2, Hosts: []string{"Betula"}, RareHosts: []string{"Pinus"}, Wider: "broadleaf", Positions: []string{"stem", "limb"},
			Forms: []string{"hoof"}, Undersides: []string{"pores"}, Colours: map[Field][]string{Upper: {"black"}}, Marks: []string{"hard"},
			Weakens: []string{"stem"}, Advice: MeasureFirst},
		{Name: "Limbus soft", Kind: Decay, Commonness: 1, Wider: "conifer", Positions: []string{"limb"}, Forms: []string{"bracket"}, Undersides: []string{"gills"},
			Weakens: []string{"limb"}, Advice: NotThisPart},
		{Name: "twig cup", Kind: Harmless, Commonness: 1, Positions: []string{Twig}, Forms: []string{"bracket"}, Advice: Nothing},
		{Name: "film", Kind: NoFungus, Commonness: 1, Wider: AnyHost, Positions: []string{"stem"}, Forms: []string{"film"}, Marks: []string{"rubs-off"}, Advice: Nothing},
	}
}

func toyKey(t testing.TB) *Key {
	t.Helper()
	k, err := New(toyVocabulary(), toyTrust(), toyCandidates())
	if err != nil {
		t.Fatal(err)
	}
	return k
}

// questions are all that can be asked in the toy world.
func toyQuestions() []Askable {
	var all []Askable
	for _, a := range []string{AskHost, AskPosition, AskForm, AskUnderside, "upper", "underside colour", "flesh", "spores", "hard", "dust", "rubs-off"} {
		all = append(all, Askable{a, 1})
	}
	return all
}
