package sheet_test

import (
	"errors"
	"regexp"
	"strings"
	"testing"

	"boughline/sheet"
	"boughline/sheet/html"
	"boughline/sheet/sheettest"
	"boughline/survey"
)

// allWords is every word of a sheet, in reading order.
func allWords(s *sheet.Sheet) string {
	var b strings.Builder
	put := func(list ...string) { b.WriteString(strings.Join(list, "\n") + "\n") }
	put(s.Title, s.Subtitle)
	for _, block := range s.Blocks {
		switch block := block.(type) {
		case *sheet.Heading:
			put(block.Words)
		case *sheet.Paragraph:
			put(block.Words)
		case *sheet.List:
			put(block.Items...)
		case *sheet.Checklist:
			put(block.Items...)
		case *sheet.Cautions:
			put(block.Items...)
		case *sheet.Signatures:
			put(block.Who...)
		case *sheet.Table:
			put(block.Caption)
			for _, c := range block.Columns {
				put(c.Title)
			}
			for _, row := range block.Rows {
				put(row...)
			}
		case *sheet.Figures:
			for _, scene := range block.Scenes {
				put(append([]string{scene.Title}, scene.Says...)...)
			}
		case *sheet.Photos:
			for _, p := range block.List {
				put(p.Words())
			}
		case *sheet.Lines:
			for _, f := range block.Fields {
				put(f.Label)
			}
		}
	}
	put(s.Foot...)
	return b.String()
}

func TestEveryKindIsWhole(t *testing.T) {
	never := regexp.MustCompile(`(?i)\b(un)?safe(ly|r|ty)?\b|\bgood to go\b|\bapproved\b`)
	for _, k := range sheet.Kinds() {
		for _, tree := range []string{"T1", "T5", "T6"} {
			s := sheettest.Make(t, k.Name, sheet.Input{Tree: tree, Working: tree == "T6"})
			cautions, signatures := 0, 0
			for _, b := range s.Blocks {
				switch b := b.(type) {
				case *sheet.Cautions:
					cautions += len(b.Items)
				case *sheet.Signatures:
					signatures += len(b.Who)
				case *sheet.Table:
					for _, row := range b.Rows {
						if len(row) != len(b.Columns) {
							t.Errorf("%s of %s, %s: %d cells in %d columns", k.Name, tree, b.Caption, len(row), len(b.Columns))
						}
					}
				}
			}
			if cautions == 0 || signatures == 0 || s.Title == "" || s.Language == "" || s.Day == "" || k.Says == "" {
				t.Errorf("%s of %s: cautions, signatures, title, language or day are missing", k.Name, tree)
			}
			if foot := strings.Join(s.Foot, " "); !strings.Contains(foot, sheettest.Made.Program) || !strings.Contains(foot, sheettest.Made.Knowledge) {
				t.Errorf("%s: the foot %q does not say what made it", k.Name, foot)
			}
			text := allWords(s)
			if bad := never.FindString(text); bad != "" {
				t.Errorf("%s of %s says %q", k.Name, tree, bad)
			}
			if strings.Contains(text, "%!") || strings.Contains(text, "%s") {
				t.Errorf("%s of %s: a word was not filled in", k.Name, tree)
			}
		}
	}
}

// A letter in doubt says what was seen and claims nothing beyond it: no
// outcome, no margin, no meaning of a sign.
func TestTheLetterInDoubtClaimsNothing(t *testing.T) {
	text := allWords(sheettest.Make(t, "arborist", sheet.Input{Tree: "T3"}))
	for _, wanted := range []string{"brittle crust in the crevices", "thought to be Kretzschmaria deusta", "in the zone base", "2026-05-09", "L1"} {
		if !strings.Contains(text, wanted) {
			t.Errorf("the letter does not say %q", wanted)
		}
	}
	for _, claimed := range []string{"Leave it", "nothing is hung here", "argin", "brittle rot", "reliability"} {
		if strings.Contains(text, claimed) {
			t.Errorf("the letter claims %q", claimed)
		}
	}
}

func TestAnAssessmentOpensWithOutcomeAndFindings(t *testing.T) {
	s := sheettest.Make(t, "assessment", sheet.Input{Tree: "T5"})
	opens := allWords(&sheet.Sheet{Blocks: s.Blocks[:5]})
	for _, wanted := range []string{"ash-swing", "Leave it: nothing is hung here.", "Wasps, hornets or bees in a tree", "hung-up branch", "People can be hurt."} {
		if !strings.Contains(opens, wanted) {
			t.Errorf("the first part does not say %q:\n%s", wanted, opens)
		}
	}
}

func TestPhotosStandWithTheirTree(t *testing.T) {
	in := sheet.Input{Tree: "T1", Photos: append(sheettest.Photos(t, "T1", 3), sheettest.Photos(t, "T2", 2)...), History: []sheet.Event{{On: "2026-05-09", By: "R. Tolland", What: "measured"}}}
	text := allWords(sheettest.Make(t, "assessment", in))
	if n := strings.Count(text, "T1 L1: picture"); n != 3 || strings.Contains(text, "T2 L1: picture") {
		t.Errorf("%d photos of T1, or one of T2 among them", n)
	}
	if !strings.Contains(text, "measured") {
		t.Error("the history was left out")
	}
}

func TestRisksNameHazardsAndFindings(t *testing.T) {
	text := allWords(sheettest.Make(t, "risks", sheet.Input{}))
	for _, wanted := range []string{"overhead power line", "ticks", "hung-up branch on the meadow ash", "52.73100, -2.91400"} {
		if !strings.Contains(text, wanted) {
			t.Errorf("the record does not name %q", wanted)
		}
	}
}

func TestPermissionLeavesOutTreesThatAreLeft(t *testing.T) {
	text := allWords(sheettest.Make(t, "permission", sheet.Input{}))
	if !strings.Contains(text, "the gate oak") || strings.Contains(text, "the beech at the bend (") {
		t.Error("it asks for a tree that is left alone, or not for one that may be used")
	}
}

func TestNamesThatAreNotThere(t *testing.T) {
	make := func(kind string, in sheet.Input) error {
		if in.Survey == nil {
			in.Survey = sheettest.Demo(t)
		}
		in.Knowledge = sheettest.Base(t)
		_, err := sheet.Make(kind, in)
		return err
	}
	var unknown sheet.Unknown
	var missing sheet.Missing
	if err := make("assessment", sheet.Input{Tree: "T99"}); !errors.As(err, &unknown) || unknown.What != "tree" {
		t.Error(err)
	}
	if err := make("assessment", sheet.Input{Tree: "T2", Hang: "oak-swing"}); !errors.As(err, &unknown) || unknown.What != "hang" {
		t.Error(err)
	}
	if err := make("arborist", sheet.Input{}); !errors.As(err, &missing) || missing.What != "tree" {
		t.Error(err)
	}
	if err := make("poster", sheet.Input{}); err == nil || !strings.Contains(err.Error(), "permission") {
		t.Errorf("%v; expected the kinds there are", err)
	}
	if err := make("site", sheet.Input{Survey: &survey.Survey{Site: "empty"}}); err != nil {
		t.Errorf("a site without trees: %v", err)
	}
}

// A tree without hangs, and one whose hang cannot be worked out, have sheets
// too.
func TestTreesWithLittleKnown(t *testing.T) {
	s := sheettest.Demo(t)
	s.Trees = s.Trees[:2]
	s.Trees[0].Hangs = nil
	for i := range s.Trees[1].Members {
		s.Trees[1].Members[i].Length = nil
	}
	s.Trees[1].Crown = nil
	for _, k := range sheet.Kinds() {
		if k.NeedsHang || k.Takes != sheet.TakesSurvey {
			continue
		}
		for _, tree := range []string{"T1", "T2"} {
			text := allWords(sheettest.Make(t, k.Name, sheet.Input{Survey: s, Tree: tree, Working: true}))
			if strings.Contains(text, "NaN") || strings.Contains(text, "Inf") {
				t.Errorf("%s of %s has a number that is none", k.Name, tree)
			}
		}
	}
}

// A hang of the name of another, in another tree, is not taken.
func TestOneHangAlone(t *testing.T) {
	text := allWords(sheettest.Make(t, "assessment", sheet.Input{Hang: "slope-swing"}))
	if !strings.Contains(text, "the elm on the slope") || strings.Contains(text, "oak-swing") {
		t.Error("not the hang that was asked for")
	}
}

func BenchmarkAssessment(b *testing.B) {
	s := sheettest.Demo(b)
	for range b.N {
		one := sheettest.Make(b, "assessment", sheet.Input{Survey: s, Tree: "T1", Working: true})
		if len(html.Text(one)) == 0 {
			b.Fatal("nothing")
		}
	}
}
