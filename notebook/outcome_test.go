package notebook_test

import (
	"encoding/json"
	"fmt"
	"slices"
	"strings"
	"testing"

	"boughline/assess"
	"boughline/demo"
	"boughline/knowledge"
	"boughline/notebook"
	"boughline/quantity"
	"boughline/survey"
)

// What follows for a tree in a notebook is what follows for it among all trees
// of its site: the wood and the swings of its neighbours count.
func TestOutcomesAreThoseOfTheWholeSite(t *testing.T) {
	n, _ := open(t)
	move(t, n, "T2", 6) // into the swing of the first tree
	s := read(t, n)
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	whole := s.Head
	whole.Trees = nil
	for i := range s.Trees {
		whole.Trees = append(whole.Trees, s.Trees[i].Tree)
	}
	want, err := assess.Assess(&whole, k)
	if err != nil {
		t.Fatal(err)
	}
	for i := range s.Trees {
		got, err := n.Outcomes(s, &s.Trees[i])
		if err != nil {
			t.Fatal(err)
		}
		for _, h := range got.Hangs {
			j := slices.IndexFunc(want.Hangs, func(w assess.Hang) bool { return w.ID == h.ID })
			if a, b := written(h), written(want.Hangs[j]); a != b {
				t.Errorf("%s: the notebook says\n%.300s\nthe whole site\n%.300s", h.ID, a, b)
			}
		}
	}
	first, err := n.Outcomes(s, &s.Trees[0])
	if err != nil || !strings.Contains(fmt.Sprint(reasonsOf(first.Hangs[0])), string(assess.NotTogether)) {
		t.Errorf("the swing of a tree 6 m off goes unsaid: %v, %v", reasonsOf(first.Hangs[0]), err)
	}
}

// written is the hang as JSON, but for the places in the document, which count
// the trees at hand.
func written(h assess.Hang) string {
	text, err := json.Marshal(h)
	if err != nil {
		panic(err)
	}
	for i := range len(demo.Survey()) / 1000 {
		text = []byte(strings.ReplaceAll(string(text), fmt.Sprintf("trees[%d]", i), "trees[]"))
	}
	return string(text)
}

func reasonsOf(h assess.Hang) (codes []assess.Code) {
	for _, r := range h.Reasons {
		codes = append(codes, r.Code)
	}
	return codes
}

// move puts a tree east of the first one.
func move(t *testing.T, n *notebook.Notebook, id string, east quantity.Length) {
	t.Helper()
	first := tree(t, n, "T1")
	here := tree(t, n, id)
	err := n.ChangeTree(t.Context(), site, id, notebook.Edit{What: "moved", Base: here.Revision}, func(tree *notebook.Tree) error {
		tree.East = &survey.MeasuredLength{Value: first.East.Value + east, How: quantity.Taped}
		tree.North = &survey.MeasuredLength{Value: first.North.Value, How: quantity.Taped}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
}
