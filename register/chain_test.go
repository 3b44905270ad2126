package register_test

import (
	"bytes"
	"fmt"
	"slices"
	"strings"
	"testing"

	"boughline/demo"
	"boughline/register"
	"boughline/survey"
)

func demoSurvey(t *testing.T) *survey.Survey {
	t.Helper()
	s, problems, err := survey.Read(bytes.NewReader(demo.Survey()))
	if err != nil || len(problems) > 0 {
		t.Fatal(err, problems)
	}
	return s
}

func doubtsOf(r register.Register, s *survey.Survey) []string {
	var list []string
	for _, d := range r.Doubts(s) {
		line := fmt.Sprintf("%s %s %s open=%t", d.Chain, d.Part, d.Item, d.Open())
		for _, b := range d.Bars {
			line += " " + string(b.Code)
		}
		list = append(list, strings.Join(append([]string{line}, d.Differs...), "; "))
	}
	return list
}

func TestDoubtsOfTheDemo(t *testing.T) {
	got := doubtsOf(demoRegister(t), demoSurvey(t))
	want := []string{
		"old-chain round sling S2 open=true shock-loaded examination-due textile-age",
		"old-chain found shackle C2 open=true mark-unknown never-examined",
		"old-chain swing line R2 open=true shock-loaded",
		"old-chain seat D2 open=true shock-loaded",
	}
	if !slices.Equal(got, want) {
		t.Errorf("%s", strings.Join(got, "\n"))
	}
}

func TestAPartThatClaimsMoreThanItsItem(t *testing.T) {
	s := demoSurvey(t)
	parts := s.Chains[0].Parts
	parts[0].Mark = &survey.Mark{Strength: mark("breaking").Strength, Kind: survey.MarkWorking}
	parts[1].Item = ""
	parts[2].Item = "R0"
	parts[2].Despite = "none other at hand"
	parts[3].Item = "S1"
	parts[4].Item = "X"
	s.Chains = s.Chains[:1]
	got := doubtsOf(demoRegister(t), s)
	want := []string{
		"day-chain anchor sling S1 open=true; mark: 22 kN working limit in the chain, 40 kN breaking in the register",
		"day-chain screw link  open=true",
		"day-chain swing line R0 open=true retired; condition: good in the chain, retired in the register",
		"day-chain swivel S1 open=true; kind: swivel in the chain, sling in the register; material: metal in the chain, textile in the register; mark: 30 kN breaking in the chain, 40 kN breaking in the register; the item stands twice in the chain",
		"day-chain seat X open=true not-registered",
	}
	if !slices.Equal(got, want) {
		t.Errorf("%s", strings.Join(got, "\n"))
	}
}

// A part made from an item agrees with it and claims no condition.
func TestPartsAgreeWithTheirItems(t *testing.T) {
	r, s := demoRegister(t), demoSurvey(t)
	for _, i := range r.Items {
		p, err := i.Part(s.Day)
		if i.Kind == register.Sleeve {
			if err == nil {
				t.Errorf("%s became part of a chain", i.ID)
			}
			continue
		}
		if err != nil || (p.Condition == "retired") != (i.Retired != nil) || (p.Condition != "" && i.Retired == nil) {
			t.Errorf("%s: condition %q, %v", i.ID, p.Condition, err)
		}
		one := *s
		one.Chains = []survey.Chain{{ID: "one", Parts: []survey.Part{p}}}
		if problems := survey.Validate(&survey.Survey{Version: survey.Version, Site: "s", Day: s.Day, Chains: one.Chains}); len(problems) > 0 {
			t.Errorf("%s: %v", i.ID, problems)
		}
		for _, d := range r.Doubts(&one) {
			if len(d.Differs) > 0 {
				t.Errorf("%s: %v", i.ID, d.Differs)
			}
		}
	}
}
