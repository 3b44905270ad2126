package web_test

import (
	"net/http"
	"strings"
	"testing"

	"boughline/demo"
	"boughline/notebook"
)

// withGear is the desk with the register of the demo.
func withGear(t *testing.T) *desk {
	t.Helper()
	d := open(t)
	if err := d.notebook.ImportGear(t.Context(), demo.Register(), notebook.Edit{What: "demo"}); err != nil {
		t.Fatal(err)
	}
	return d
}

// shows wants all of the texts on a page, in their order, and none of the
// words that are never said.
func shows(t *testing.T, page string, texts ...string) {
	t.Helper()
	rest := page
	for _, text := range texts {
		_, after, found := strings.Cut(rest, text)
		if !found {
			t.Errorf("the page does not show %q there:\n%s", text, page)
			return
		}
		rest = after
	}
}

func (d *desk) gear() *notebook.Gear {
	d.t.Helper()
	g, err := d.notebook.Gear(d.t.Context())
	if err != nil {
		d.t.Fatal(err)
	}
	return g
}

func TestAnEmptyRegisterSaysHowToBegin(t *testing.T) {
	d := open(t)
	status, page := d.get("/gear")
	if status != http.StatusOK {
		t.Fatal(status)
	}
	shows(t, page, "Nobody is written down yet", "it counts as if it did", "Nothing is due", "No item is written down yet", "Write an item down")
	if status, _ := d.get("/gear/export"); status != http.StatusNotFound {
		t.Errorf("a file of nothing: %d", status)
	}
}

func TestWhatIsDueStandsOnTop(t *testing.T) {
	d := withGear(t)
	_, page := d.get("/gear")
	shows(t, page, "Pennow swings, an invented group. LOLER applies.", "First thorough examination due now", "S2 round sling", "Ten years old since 2025-05-30", "Thorough examination due since 2026-04-04",
		"D2 seat", "due on 2026-05-25", "<h2>Items</h2>", "S1 anchor sling", "3 days in use", "Shock-loaded on 2026-03-28", "<summary>Retired", "R0 first swing line", "Lifting Operations")
	_, page = d.get("/gear/item/S2")
	shows(t, page, "What stands against it", "Shock-loaded on 2026-03-28 and not found fit since", "Ten years old", "20 kN working limit", "2025-10-04, fit", "by M. Tregear", "took a shock load")
	if status, _ := d.get("/gear/item/nothing"); status != http.StatusNotFound {
		t.Errorf("an item that is not there: %d", status)
	}
}

func TestAnItemIsWrittenDownAndChanged(t *testing.T) {
	d := open(t)
	status, page := d.post("/gear/new", "form", "f1", "item_id", "C7", "item_kind", "connector", "item_material", "metal", "life_years", "x")
	if status != http.StatusUnprocessableEntity {
		t.Fatal(status)
	}
	shows(t, page, "What it is", `value="C7"`)
	fields := []string{"form", "f2", "item_id", "C7", "item_name", "<b>oval</b>", "item_kind", "connector", "item_material", "metal", "mark", "24 kN", "mark_kind", "breaking", "thickness", "12", "thickness_how", "calliper", "in_service_since", "2026-05-01"}
	_, page = d.post("/gear/new", fields...)
	shows(t, page, "C7 &lt;b&gt;oval", "24 kN breaking", "12 mm calliper", "2026-05-01")
	if g := d.gear(); len(g.Items) != 1 || g.Owner == "" || g.Items[0].Mark.Strength.Value != 24000 {
		t.Fatalf("%+v", g)
	}
	fields[1] = "f3"
	status, page = d.post("/gear/new", fields...)
	if status != http.StatusUnprocessableEntity {
		t.Errorf("a second item of one id: %d", status)
	}
	shows(t, page, "another item has")
	fields[1], fields[3], fields[5] = "f4", "C8", "oval link"
	_, page = d.post("/gear/item/C7/edit", append(fields, "revision", "1")...)
	shows(t, page, "C8 oval link")
	fields[1], fields[3], fields[5] = "f5", "C8", "other"
	d.post("/gear/item/C8/edit", append(fields, "revision", "2")...)
	fields[1], fields[5] = "f6", "late"
	status, page = d.post("/gear/item/C8/edit", append(fields, "revision", "2")...)
	if status != http.StatusUnprocessableEntity || d.gear().Items[0].Name != "other" {
		t.Errorf("a change on an older version: %d, %s", status, d.gear().Items[0].Name)
	}
	shows(t, page, `value="late"`)
}

func TestExaminedUsedAndRetired(t *testing.T) {
	d := withGear(t)
	status, page := d.post("/gear/item/R2/examine", "form", "f1", "examined_on", "2026-05-10", "examined_by", "M. Tregear", "note", "ok")
	if status != http.StatusUnprocessableEntity {
		t.Errorf("without a finding: %d", status)
	}
	shows(t, page, "Found", `value="M. Tregear"`)
	_, page = d.post("/gear/item/R2/examine", "form", "f1", "examined_on", "2026-05-10", "examined_by", "M. Tregear", "found", "fit")
	shows(t, page, "Nothing that is written down. That is no finding that it is sound", "2026-05-10, fit")

	status, _ = d.post("/gear/use", "form", "f2", "used_on", "2026-05-15")
	if status != http.StatusUnprocessableEntity {
		t.Errorf("a use of nothing: %d", status)
	}
	d.post("/gear/use", "form", "f3", "used_on", "2026-05-15", "used:R2", "yes", "shock_loaded", "yes", "cycles", "12")
	d.post("/gear/use", "form", "f3", "used_on", "2026-05-15", "used:R2", "yes", "shock_loaded", "yes", "cycles", "12")
	if got := d.gear().Cycles("R2"); got != 132 {
		t.Errorf("%d rides: a form was taken twice", got)
	}
	_, page = d.get("/gear/item/R2")
	shows(t, page, "Shock-loaded on 2026-05-15")

	status, _ = d.post("/gear/item/R2/retire", "form", "f4", "retired_on", "2026-05-16", "why", " ")
	if status != http.StatusUnprocessableEntity {
		t.Errorf("retired without a reason: %d", status)
	}
	_, page = d.post("/gear/item/R2/retire", "form", "f4", "retired_on", "2026-05-16", "why", "jumped on")
	shows(t, page, "Retired on 2026-05-16 (jumped on)")
	status, page = d.post("/gear/item/R2/retire", "form", "f5", "retired_on", "2026-05-16", "why", "again")
	if status != http.StatusUnprocessableEntity {
		t.Errorf("retired twice: %d", status)
	}
	shows(t, page, "retired on 2026-05-16")

	_, page = d.get("/gear/history")
	shows(t, page, "retired: R2 swing line", "use recorded", "examined: R2 swing line", "demo")
	d.post("/gear/history/3", "form", "f6")
	if i, err := d.gear().Item("R2"); err != nil || i.Retired != nil || d.gear().Revision != 5 {
		t.Errorf("going back: %+v, %v", i, err)
	}
}

func TestTheRegisterGoesOutAndComesIn(t *testing.T) {
	d := withGear(t)
	_, file := d.get("/gear/export")
	other := open(t)
	answer, err := http.Post(other.URL+"/gear/import?form=f1", "application/json", strings.NewReader(file))
	status, page := other.read(answer, err)
	if status != http.StatusOK {
		t.Fatal(status)
	}
	shows(t, page, "Pennow swings", "S1 anchor sling")
	if _, again := other.get("/gear/export"); again != file {
		t.Error("the file came out otherwise")
	}
	answer, err = http.Post(other.URL+"/gear/import?form=f2", "application/json", strings.NewReader(string(demo.Survey())))
	if status, page = other.read(answer, err); status != http.StatusUnprocessableEntity {
		t.Errorf("a survey as a register: %d", status)
	}
	shows(t, page, "register", "it is missing")
}

func TestWhoseGearItIs(t *testing.T) {
	d := withGear(t)
	_, page := d.get("/gear/owner")
	shows(t, page, "Pennow swings", "Lifting Operations")
	_, page = d.post("/gear/owner", "form", "f1", "owner", "Orchard bank", "loler", "no")
	shows(t, page, "Gear of Orchard bank. LOLER does not apply.")
	if status, _ := d.post("/gear/owner", "form", "f2", "owner", ""); status != http.StatusUnprocessableEntity {
		t.Errorf("nobody's gear: %d", status)
	}
}
