package web_test

import (
	"net/http"
	"net/url"
	"strings"
	"testing"
)

// askedAt is the address of a search on one limb of the demo site.
func askedAt(d *desk, tree string) (path string, form []string) {
	d.t.Helper()
	limb, riders := "", ""
	for _, m := range d.tree(tree).Members {
		if m.Parent != "" && limb == "" {
			limb = m.ID
		}
	}
	s, err := d.notebook.Site(d.t.Context(), "demo")
	if err != nil {
		d.t.Fatal(err)
	}
	riders = s.Head.Riders[0].ID
	form = []string{"limb", limb, "riders", riders, "aim", "longest-line", "to_each_side", ""}
	q := url.Values{}
	for i := 0; i < len(form); i += 2 {
		q.Set(form[i], form[i+1])
	}
	return "/site/demo/tree/" + tree + "/place?" + q.Encode(), form
}

func TestPlaceIsFoundAndAskedFor(t *testing.T) {
	d := open(t)
	path, form := askedAt(d, "T1")
	status, page := d.get(path)
	for _, want := range []string{"The best place", "Nearer to the union ends at", "A longer line ends at", "<svg", "Ask for this hang"} {
		if status != http.StatusOK || !strings.Contains(page, want) {
			t.Fatalf("%d, no %q", status, want)
		}
	}
	before := len(d.tree("T1").Hangs)
	if status, page := d.post("/site/demo/tree/T1/place", append(form, "form", "f1")...); status != http.StatusOK || !strings.Contains(page, "Outcome") {
		t.Fatalf("%d\n%s", status, page)
	}
	hangs := d.tree("T1").Hangs
	if len(hangs) != before+1 {
		t.Fatalf("%d hangs; expected %d", len(hangs), before+1)
	}
	if h := hangs[before]; h.ID != "T1 swing 1" || h.Member != form[1] || h.Riders != form[3] || len(h.Waiting) != 1 || h.Line.Value < 2 {
		t.Errorf("%+v", h)
	}
}

func TestPlaceRefusesWhatIsNotThere(t *testing.T) {
	d := open(t)
	for _, query := range []string{"limb=none&riders=x", "limb=%3Cb%3E&riders=x", "limb=" + url.QueryEscape(d.tree("T1").Members[1].ID) + "&riders=none&aim=longest-line", "limb=" + url.QueryEscape(d.tree("T1").Members[1].ID) + "&riders=x&to_each_side=900"} {
		status, page := d.get("/site/demo/tree/T1/place?" + query)
		if status != http.StatusUnprocessableEntity || !strings.Contains(page, "Look for a place") || strings.Contains(page, "<b>") {
			t.Errorf("%s: %d", query, status)
		}
	}
	if status, page := d.get("/site/demo/tree/T1/place"); status != http.StatusOK || strings.Contains(page, "The best place") {
		t.Errorf("before a search: %d", status)
	}
}

func TestPlaceWithoutGroundSaysWhatToMeasure(t *testing.T) {
	d := open(t)
	seen := false
	for _, id := range []string{"T2", "T3", "T4", "T5", "T6", "T7", "T8", "T9"} {
		if d.tree(id).Ground != nil {
			continue
		}
		path, form := askedAt(d, id)
		if form[1] == "" {
			continue
		}
		seen = true
		if status, page := d.get(path); status != http.StatusOK || !strings.Contains(page, "measure spot heights") || strings.Contains(page, "Ask for this hang") {
			t.Errorf("%s: %d", id, status)
		}
		break
	}
	if !seen {
		t.Fatal("every tree of the demo has spot heights")
	}
}

func TestPlaceThatServesNobodySaysWhatFallsShort(t *testing.T) {
	d := open(t)
	limb := d.tree("T1").Members[2].ID
	status, page := d.get("/site/demo/tree/T1/place?limb=" + url.QueryEscape(limb) + "&riders=adults&aim=lowest-fall&to_each_side=60")
	for _, want := range []string{"Nothing serves with these", "What comes nearest", "What falls short", "Lines that serve along limb " + limb} {
		if status != http.StatusOK || !strings.Contains(page, want) {
			t.Errorf("%d, no %q", status, want)
		}
	}
	if strings.Contains(page, "Ask for this hang") {
		t.Error("a place that does not serve can be asked for")
	}
}
