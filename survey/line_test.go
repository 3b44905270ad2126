package survey_test

import (
	"os"
	"slices"
	"strings"
	"testing"

	"boughline/survey"
)

const (
	hammock  = `{"id": "h", "kind": "hammock", "ends": [{"tree": "oak", "member": "stem", "at": "1.6 m taped"}, {"tree": "oak", "member": "east limb", "at": "3 m taped"}], "sag": "0.9 m taped", "body": "2.6 m", "riders": "one child", "chain": "long rope"}`
	climbing = `{"id": "c", "kind": "climbing", "ends": [{"tree": "oak", "member": "east limb", "at": "1 m taped"}], "fixed": "doubled", "redirect": {"member": "east limb", "at": "3 m taped", "angle": "40 deg clinometer"}, "riders": "one child", "chain": "long rope"}`
)

// readLines puts lines into the meadow and returns what is wrong with it.
func readLines(t *testing.T, lines string) []survey.Problem {
	t.Helper()
	data, err := os.ReadFile("testdata/meadow.json")
	if err != nil {
		t.Fatal(err)
	}
	text := strings.Replace(string(data), `"trees": [`, `"lines": [`+lines+`], "trees": [`, 1)
	_, problems, err := survey.Read(strings.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	return problems
}

func TestLinesAreRead(t *testing.T) {
	if problems := readLines(t, hammock+", "+climbing); len(problems) > 0 {
		t.Fatal(problems)
	}
}

func TestFaultsOfLines(t *testing.T) {
	for _, f := range []struct{ name, line, old, new, code, path string }{
		{"a kind that is none", hammock, `"hammock"`, `"highline"`, survey.CodeNotInList, "lines[0].kind"},
		{"one end only", hammock, `, {"tree": "oak", "member": "east limb", "at": "3 m taped"}`, ``, survey.CodeLine, "lines[0].ends"},
		{"two ends of a climbing line", climbing, `[{"tree"`, `[{"tree": "oak", "member": "stem", "at": "1 m"}, {"tree"`, survey.CodeLine, "lines[0].ends"},
		{"a hammock without a body", hammock, `, "body": "2.6 m"`, ``, survey.CodeLine, "lines[0].body"},
		{"a hammock without a sag", hammock, `"sag": "0.9 m taped", `, ``, survey.CodeLine, "lines[0].sag"},
		{"a traverse of no sag", hammock, `"kind": "hammock"`, `"kind": "traverse"`, survey.CodeLine, "lines[0].body"},
		{"a traverse with both", hammock, `"kind": "hammock"`, `"kind": "traverse", "pretension": "2 kN"`, survey.CodeLine, "lines[0].sag"},
		{"a redirect of a hammock", hammock, `"body"`, `"redirect": {"member": "stem", "at": "2 m"}, "body"`, survey.CodeLine, "lines[0].redirect"},
		{"an unknown tree", hammock, `"tree": "oak", "member": "stem"`, `"tree": "oka", "member": "stem"`, survey.CodeReference, "lines[0].ends[0].tree"},
		{"an unknown member", hammock, `"member": "stem"`, `"member": "steam"`, survey.CodeReference, "lines[0].ends[0].member"},
		{"an unknown part", hammock, `"at": "1.6 m taped"`, `"at": "1.6 m taped", "anchor": "nail"`, survey.CodeReference, "lines[0].ends[0].anchor"},
		{"beyond the limb", hammock, `"at": "3 m taped"`, `"at": "30 m taped"`, survey.CodeBeyondEnd, "lines[0].ends[1].at"},
		{"an angle that is none", climbing, `"40 deg`, `"240 deg`, survey.CodeOutOfRange, "lines[0].redirect.angle"},
		{"unknown riders", climbing, `"one child"`, `"one chil"`, survey.CodeReference, "lines[0].riders"},
	} {
		t.Run(f.name, func(t *testing.T) {
			problems := readLines(t, strings.Replace(f.line, f.old, f.new, 1))
			if !slices.ContainsFunc(problems, func(p survey.Problem) bool { return p.Code == f.code && p.Path == f.path }) {
				t.Errorf("no %s at %s among %v", f.code, f.path, problems)
			}
		})
	}
}

// Two trees whose places are not known do not say which way the pull goes.
func TestALineNeedsADirection(t *testing.T) {
	s := &survey.Survey{Version: survey.Version, Lines: []survey.Line{{ID: "h", Kind: survey.HammockLine, Ends: []survey.LineEnd{{Tree: "a"}, {Tree: "b"}}}},
		Trees: []survey.Tree{{ID: "a"}, {ID: "b"}}}
	want := func(p survey.Problem) bool { return p.Code == survey.CodeLine && p.Path == "lines[0].azimuth" }
	if !slices.ContainsFunc(survey.Validate(s), want) {
		t.Error("no problem of a line without a direction")
	}
	s.Lines[0].Azimuth = &survey.ChosenAngle{}
	if slices.ContainsFunc(survey.Validate(s), want) {
		t.Error("a line with an azimuth has no direction")
	}
}
