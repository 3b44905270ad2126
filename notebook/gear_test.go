package notebook_test

import (
	"bytes"
	"errors"
	"fmt"
	"strings"
	"testing"

	"boughline/demo"
	"boughline/notebook"
	"boughline/register"
	"boughline/store"
	"boughline/survey"
)

func withGear(t *testing.T) *notebook.Notebook {
	t.Helper()
	n, _ := open(t)
	if err := n.ImportGear(t.Context(), demo.Register(), notebook.Edit{What: "demo"}); err != nil {
		t.Fatal(err)
	}
	return n
}

func gear(t *testing.T, n *notebook.Notebook) *notebook.Gear {
	t.Helper()
	g, err := n.Gear(t.Context())
	if err != nil {
		t.Fatal(err)
	}
	return g
}

func use(items ...string) func(register.Register) (register.Register, error) {
	return func(r register.Register) (register.Register, error) {
		on, _ := survey.ParseDate("2026-05-16")
		return r.Used(register.Use{Date: on, Items: items})
	}
}

func TestNoRegisterIsAnEmptyOne(t *testing.T) {
	n, _ := open(t)
	if g := gear(t, n); g.Revision != 0 || len(g.Items) != 0 {
		t.Errorf("%+v", g)
	}
}

func TestEveryChangeOfGearIsAVersion(t *testing.T) {
	n := withGear(t)
	edit := notebook.Edit{Form: "f1", What: "used"}
	if err := n.ChangeGear(t.Context(), edit, "", use("S1")); err != nil {
		t.Fatal(err)
	}
	var again *notebook.Again
	if err := n.ChangeGear(t.Context(), edit, "", use("S1")); !errors.As(err, &again) {
		t.Errorf("a form taken twice: %v", err)
	}
	if got := gear(t, n).DaysUsed("S1"); got != 4 {
		t.Errorf("%d days used", got)
	}
	if err := n.RestoreGear(t.Context(), 1, notebook.Edit{What: "back"}); err != nil {
		t.Fatal(err)
	}
	versions, err := n.GearVersions(t.Context())
	if err != nil || len(versions) != 3 || versions[0].What != "back" || versions[0].DaysUsed("S1") != 3 || versions[1].DaysUsed("S1") != 4 {
		t.Errorf("%d versions, %v", len(versions), err)
	}
}

func TestAnItemChangedMeanwhileIsAskedAbout(t *testing.T) {
	n := withGear(t)
	rename := func(id, name string) func(register.Register) (register.Register, error) {
		return func(r register.Register) (register.Register, error) {
			i, err := r.Item(id)
			if err != nil {
				return r, err
			}
			i.Name = name
			return r.Edited(id, i)
		}
	}
	if err := n.ChangeGear(t.Context(), notebook.Edit{Base: 1}, "S1", rename("S1", "blue sling")); err != nil {
		t.Fatal(err)
	}
	var conflict *store.Conflict
	if err := n.ChangeGear(t.Context(), notebook.Edit{Base: 1}, "S1", rename("S1", "red sling")); !errors.As(err, &conflict) {
		t.Errorf("the same item: %v", err)
	}
	if err := n.ChangeGear(t.Context(), notebook.Edit{Base: 1}, "C1", rename("C1", "link")); err != nil {
		t.Errorf("another item: %v", err)
	}
	if i, _ := gear(t, n).Item("S1"); i.Name != "blue sling" {
		t.Errorf("the first change is gone: %s", i.Name)
	}
}

func TestWrongGearIsRefused(t *testing.T) {
	n := withGear(t)
	var invalid *notebook.Invalid
	last := fmt.Sprintf("items[%d].name", len(gear(t, n).Items))
	err := n.ChangeGear(t.Context(), notebook.Edit{}, "", func(r register.Register) (register.Register, error) {
		return r.Added(register.Item{ID: "X", Kind: "sling", Material: "textile"})
	})
	if !errors.As(err, &invalid) || len(invalid.Problems) != 1 || invalid.Problems[0].Path != last {
		t.Errorf("an item without a name: %v", err)
	}
	if err := n.ImportGear(t.Context(), demo.Survey(), notebook.Edit{}); !errors.As(err, &invalid) {
		t.Errorf("a survey as a register: %v", err)
	}
	if err := n.ChangeGear(t.Context(), notebook.Edit{}, "", use("nothing of that name")); !errors.Is(err, register.ErrNoItem) {
		t.Error(err)
	}
	if g := gear(t, n); g.Revision != 1 {
		t.Errorf("revision %d after refused changes", g.Revision)
	}
}

func TestImportGearAddsToWhatIsKept(t *testing.T) {
	n := withGear(t)
	if err := n.ChangeGear(t.Context(), notebook.Edit{}, "", use("S1")); err != nil {
		t.Fatal(err)
	}
	file := strings.Replace(string(demo.Register()), `"id": "C1", "name": "screw link"`, `"id": "C1", "name": "screw link, red"`, 1)
	if err := n.ImportGear(t.Context(), []byte(file), notebook.Edit{What: "file"}); err != nil {
		t.Fatal(err)
	}
	g := gear(t, n)
	if i, _ := g.Item("C1"); i.Name != "screw link, red" || g.DaysUsed("S1") != 4 {
		t.Errorf("%s, %d days", i.Name, g.DaysUsed("S1"))
	}
	file = strings.Replace(file, `"kind": "swivel"`, `"kind": "seat"`, 1)
	var invalid *notebook.Invalid
	if err := n.ImportGear(t.Context(), []byte(file), notebook.Edit{}); !errors.As(err, &invalid) {
		t.Errorf("a swivel that became a seat: %v", err)
	}
}

func TestRenameChainTakesItsHangsAlong(t *testing.T) {
	n, _ := open(t)
	before := read(t, n)
	if err := n.RenameChain(t.Context(), site, "day-chain", "blue chain", notebook.Edit{Base: before.Revision, What: "renamed"}); err != nil {
		t.Fatal(err)
	}
	after := read(t, n)
	if after.Head.Chains[0].ID != "blue chain" {
		t.Errorf("the chain is %s", after.Head.Chains[0].ID)
	}
	for i := range after.Trees {
		for j, h := range after.Trees[i].Hangs {
			was := before.Trees[i].Hangs[j].Chain
			if (was == "day-chain") != (h.Chain == "blue chain") {
				t.Errorf("hang %s: %s became %s", h.ID, was, h.Chain)
			}
		}
	}
	var b bytes.Buffer
	if err := survey.Write(&b, after.Survey()); err != nil {
		t.Fatal(err)
	}
	if _, problems, _ := survey.Read(&b); len(problems) > 0 {
		t.Error(problems)
	}
	var invalid *notebook.Invalid
	var conflict *store.Conflict
	if err := n.RenameChain(t.Context(), site, "old-chain", "blue chain", notebook.Edit{}); !errors.As(err, &invalid) {
		t.Errorf("two chains of one name: %v", err)
	}
	if err := n.RenameChain(t.Context(), site, "old-chain", "x", notebook.Edit{Base: before.Revision}); !errors.As(err, &conflict) {
		t.Errorf("on an older site: %v", err)
	}
	if err := n.RenameChain(t.Context(), site, "no chain", "x", notebook.Edit{}); !errors.Is(err, notebook.ErrNoChain) {
		t.Error(err)
	}
}
