package web_test

import (
	"net/http"
	"slices"
	"strconv"
	"strings"
	"testing"

	"boughline/survey"
)

func (d *desk) chain(id string) survey.Chain {
	d.t.Helper()
	s, err := d.notebook.Site(d.t.Context(), "demo")
	if err != nil {
		d.t.Fatal(err)
	}
	for _, c := range s.Head.Chains {
		if c.ID == id {
			return c
		}
	}
	d.t.Fatalf("there is no chain %s", id)
	return survey.Chain{}
}

func (d *desk) revision() string {
	d.t.Helper()
	s, err := d.notebook.Site(d.t.Context(), "demo")
	if err != nil {
		d.t.Fatal(err)
	}
	return strconv.Itoa(s.Revision)
}

func namesOf(c survey.Chain) string {
	var names []string
	for _, p := range c.Parts {
		names = append(names, p.Name)
	}
	return strings.Join(names, ", ")
}

func TestAChainShowsWhatStandsAgainstItsParts(t *testing.T) {
	d := withGear(t)
	_, page := d.get("/site/demo/chains")
	shows(t, page, "day-chain", "5 parts", "anchor sling, screw link, swing line, swivel, seat", "old-chain")
	_, page = d.get("/site/demo/chain/old-chain")
	shows(t, page, "round sling", "Item S2", "Shock-loaded on 2026-03-28", "found shackle", "What it bears is not known", "Add a part from the register", "S1 anchor sling", "Hangs that are put up with it", "Lifting Operations")
	if status, _ := d.get("/site/demo/chain/none"); status != http.StatusNotFound {
		t.Error(status)
	}
}

func TestAPartGoesInFromTheRegister(t *testing.T) {
	d := withGear(t)
	_, page := d.get("/site/demo/chain/day-chain/part/new?item=R2")
	shows(t, page, "those of the register", `value="swing line"`, "Shock-loaded on 2026-03-28", "goes into the chain only for a reason")
	if strings.Contains(page, `name="mark"`) {
		t.Error("the mark of an item can be typed")
	}
	form := []string{"form", "f1", "revision", d.revision(), "item", "R2", "position", "3", "knot_0", "bowline", "condition", "good", "mark", "90 kN", "mark_kind", "breaking"}
	status, page := d.post("/site/demo/chain/day-chain/part/new", form...)
	if status != http.StatusUnprocessableEntity || len(d.chain("day-chain").Parts) != 5 {
		t.Fatalf("an item that was shock-loaded went in without a reason: %d", status)
	}
	shows(t, page, "write down why it is used all the same", "shock-loaded on 2026-03-28")
	form[1] = "f2"
	_, page = d.post("/site/demo/chain/day-chain/part/new", append(form, "despite", "spare, for the teaching rig")...)
	shows(t, page, "Used all the same, because:", "spare, for the teaching rig")
	p := d.chain("day-chain").Parts[3]
	if p.Item != "R2" || p.Despite == "" || p.Mark != nil || p.Standard != "EN 1891 A" || p.Kind != "rope" || p.Condition != "good" || !slices.Equal(p.Ends, []string{"bowline"}) || p.Thickness == nil {
		t.Errorf("%+v", p)
	}
}

func TestARetiredItemStaysRetiredInAChain(t *testing.T) {
	d := withGear(t)
	d.post("/site/demo/chain/day-chain/part/new", "form", "f1", "revision", d.revision(), "item", "R0", "position", "0", "condition", "good", "despite", "to show why not")
	if p := d.chain("day-chain").Parts[0]; p.Item != "R0" || p.Condition != "retired" {
		t.Errorf("%+v", p)
	}
	status, page := d.get("/site/demo/tree/T1/hang/oak-swing")
	if status != http.StatusOK {
		t.Fatal(status)
	}
	shows(t, page, "is retired")
	shows(t, page, "to show why not")
}

func TestAPartGoesInByHandWithAllItsFields(t *testing.T) {
	d := open(t)
	status, _ := d.post("/site/demo/chain/day-chain/part/new", "form", "f1", "revision", d.revision(), "item_kind", "sling")
	if status != http.StatusUnprocessableEntity {
		t.Errorf("a part without a name: %d", status)
	}
	d.post("/site/demo/chain/day-chain/part/new", "form", "f2", "revision", d.revision(), "position", "0", "part_name", "spare sling", "item_kind", "sling", "item_material", "textile",
		"mark", "22 kN", "mark_kind", "working limit", "thickness", "5", "thickness_how", "calliper", "width", "40", "item_length", "2", "in_service_since", "2025-05-01", "hitch", "basket", "choke_angle", "120", "leg_angle", "60",
		"knot_0", "bowline", "knot_1", "double overhand", "bend_over", "12", "axial_stiffness", "40 kN", "condition", "good")
	p := d.chain("day-chain").Parts[0]
	if p.Name != "spare sling" || p.Mark == nil || p.Mark.Kind != survey.MarkWorking || p.Thickness.Value != 0.005 || p.Width.Value != 0.04 || p.Length.Value != 2 ||
		p.InServiceSince.String() != "2025-05-01" || p.Hitch != "basket" || p.ChokeAngle == nil || p.LegAngle == nil || len(p.Ends) != 2 || p.BendOver.Value != 0.012 ||
		p.AxialStiffness.Value != 40000 || p.Condition != "good" {
		t.Errorf("%+v", p)
	}
	// Saved again as it is shown, it stays as it is.
	_, page := d.get("/site/demo/chain/day-chain/part/0")
	shows(t, page, `value="spare sling"`, `value="22 kN"`, `value="40 kN"`)
	status, page = d.post("/site/demo/chain/day-chain/part/0", "form", "f3", "revision", d.revision(), "part_name", "spare sling", "item_kind", "sling", "item_material", "textile", "mark", "22 kN", "mark_kind", "breaking", "standard", "EN 566")
	if status != http.StatusUnprocessableEntity {
		t.Errorf("two strengths: %d", status)
	}
	shows(t, page, "a mark or a standard")
}

func TestPartsMoveAndGo(t *testing.T) {
	d := withGear(t)
	old := d.revision()
	d.post("/site/demo/chain/day-chain/part/1/up", "form", "f1", "revision", old)
	if got := namesOf(d.chain("day-chain")); got != "screw link, anchor sling, swing line, swivel, seat" {
		t.Error(got)
	}
	// The same button on an older page: what is kept is shown, nothing moves.
	if status, _ := d.post("/site/demo/chain/day-chain/part/1/up", "form", "f2", "revision", old); status != http.StatusOK {
		t.Error(status)
	}
	d.post("/site/demo/chain/day-chain/part/0/down", "form", "f3", "revision", d.revision())
	d.post("/site/demo/chain/day-chain/part/3/out", "form", "f4", "revision", d.revision())
	if got := namesOf(d.chain("day-chain")); got != "anchor sling, screw link, swing line, seat" {
		t.Error(got)
	}
	for _, path := range []string{"/site/demo/chain/day-chain/part/9/up", "/site/demo/chain/day-chain/part/0/sideways"} {
		if status, _ := d.post(path, "form", "f5"); status != http.StatusNotFound {
			t.Errorf("%s: %d", path, status)
		}
	}
}

func TestChainsAreBegunRenamedAndTakenApart(t *testing.T) {
	d := withGear(t)
	d.post("/site/demo/chains/new", "form", "f1", "revision", d.revision(), "chain_name", "spare", "like", "day-chain")
	spare := d.chain("spare")
	if len(spare.Parts) != 5 || spare.Parts[0].Condition != "unknown" || spare.Parts[0].Item != "S1" {
		t.Errorf("%+v", spare)
	}
	status, page := d.post("/site/demo/chains/new", "form", "f2", "revision", d.revision(), "chain_name", "old again", "like", "old-chain")
	if status != http.StatusUnprocessableEntity {
		t.Errorf("due items went into a new chain: %d", status)
	}
	shows(t, page, "shock-loaded")
	if status, _ := d.post("/site/demo/chains/new", "form", "f3", "revision", d.revision(), "chain_name", "spare"); status != http.StatusUnprocessableEntity {
		t.Errorf("two chains of one name: %d", status)
	}
	_, page = d.post("/site/demo/chain/day-chain/rename", "form", "f4", "revision", d.revision(), "chain_name", "blue <i>")
	shows(t, page, "blue &lt;i&gt;", "oak-swing")
	if d.tree("T1").Hangs[0].Chain != "blue <i>" {
		t.Error("the hang was left behind")
	}
	if status, _ := d.post("/site/demo/chain/old-chain/delete", "form", "f5", "revision", d.revision()); status != http.StatusUnprocessableEntity {
		t.Errorf("a chain that a hang is put up with was taken apart: %d", status)
	}
	_, page = d.post("/site/demo/chain/spare/delete", "form", "f6", "revision", d.revision())
	if strings.Contains(page, "/chain/spare\"") {
		t.Error("the chain is still there")
	}
}

func TestMarksOfItemsAreNotTypedIntoTheSite(t *testing.T) {
	d := withGear(t)
	_, page := d.get("/site/demo/gear")
	shows(t, page, "Put chains together", "day-chain: anchor sling (S1)", "40 kN breaking", "condition_0_0")
	if strings.Contains(page, "mark_0_0") {
		t.Error("the mark of an item can be typed")
	}
	d.post("/site/demo/gear", "form", "f1", "revision", d.revision(), "condition_0_0", "worn")
	if p := d.chain("day-chain").Parts[0]; p.Condition != "worn" || p.Mark == nil {
		t.Errorf("%+v", p)
	}
}
