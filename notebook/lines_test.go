package notebook_test

import (
	"slices"
	"testing"

	"boughline/assess"
	"boughline/notebook"
	"boughline/survey"
)

// The lines of a site stay with its head, are worked out from their own trees,
// and come back with a tree that was deleted.
func TestLinesOfASite(t *testing.T) {
	n, _ := open(t)
	lines := func() []survey.Line { return read(t, n).Survey().Lines }
	if len(lines()) != 2 {
		t.Fatalf("%d lines; expected the two of the demo", len(lines()))
	}
	l, err := n.Line(read(t, n), "lime-climb")
	if err != nil || l.Outcome != assess.WithinLimits {
		t.Fatalf("%v %v", l.Outcome, err)
	}
	if err := n.DeleteTree(t.Context(), site, "T9", notebook.Edit{What: "deleted"}); err != nil {
		t.Fatal(err)
	}
	if got := lines(); len(got) != 1 || got[0].ID != "lime-climb" {
		t.Errorf("with a tree gone: %v", got)
	}
	if err := n.ChangeSite(t.Context(), site, notebook.Edit{What: "note"}, func(s *survey.Survey) error { s.Note = "x"; return nil }); err != nil {
		t.Fatal(err)
	}
	if err := n.ChangeTree(t.Context(), site, "T7", notebook.Edit{What: "note"}, func(t *notebook.Tree) error { t.Note = "x"; return nil }); err != nil {
		t.Fatal(err)
	}
	if err := n.ChangeTree(t.Context(), site, "T2", notebook.Edit{What: "cut"}, func(t *notebook.Tree) error {
		t.Members = slices.DeleteFunc(t.Members, func(m survey.Member) bool { return m.Parent != "" })
		t.Unions, t.Hangs, t.Findings, t.Looks = nil, nil, nil, nil
		return nil
	}); err == nil {
		t.Error("the limb that a line hangs from was taken away")
	}
	if !slices.ContainsFunc(read(t, n).Head.Lines, func(l survey.Line) bool { return l.ID == "chestnut-traverse" }) {
		t.Error("a line is lost while its tree is deleted")
	}
}
