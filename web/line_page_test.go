package web_test

import (
	"net/http"
	"strings"
	"testing"

	"boughline/survey"
)

func (d *desk) lines() []survey.Line {
	d.t.Helper()
	s, err := d.notebook.Site(d.t.Context(), "demo")
	if err != nil {
		d.t.Fatal(err)
	}
	return s.Head.Lines
}

func TestLinesAreShown(t *testing.T) {
	d := open(t)
	for path, want := range map[string][]string{
		"/site/demo":                             {"/site/demo/lines"},
		"/site/demo/lines":                       {"chestnut-traverse", "lime-climb", "within the limits below", "Add a hammock"},
		"/site/demo/line/chestnut-traverse":      {"<svg", "Pull at", "kN level", "Not worked out", "bouncing", "Hold of the root plate, the elm on the slope"},
		"/site/demo/line/lime-climb":             {"trained climbers", "together at most"},
		"/site/demo/line/lime-climb/edit":        {"Led over", "doubled", "limb sling", "Take this line off"},
		"/site/demo/line/new?kind=hammock":       {"between its straps", "Second anchor"},
		"/site/demo/line/new?kind=traverse":      {"or pretension", "Span, level"},
		"/site/demo/line/new?kind=climbing":      {"Redirect over a second limb"},
		"/site/demo/tree/T7/hang/chestnut-swing": {"not in use at the same time as chestnut-traverse"},
	} {
		status, page := d.get(path)
		for _, text := range want {
			if status != http.StatusOK || !strings.Contains(page, text) {
				t.Errorf("%s: %d, no %q", path, status, text)
			}
		}
	}
	for _, path := range []string{"/site/demo/line/none", "/site/demo/line/new?kind=highline"} {
		if status, _ := d.get(path); status != http.StatusNotFound {
			t.Errorf("%s: %d", path, status)
		}
	}
}

// hammockForm is what a thumb types for a hammock between two stems.
func hammockForm(with ...string) []string {
	form := []string{"line_kind", "hammock", "line_with", "one-child", "line_gear", "traverse-gear", "sleeve", "pad",
		"place_0", "T7/stem", "anchor_at_0", "1.6", "anchor_at_0_how", "taped", "anchor_part_0", "tree strap",
		"place_1", "T9/stem", "anchor_at_1", "1.6", "anchor_at_1_how", "taped", "anchor_part_1", "tree strap",
		"sag", "3", "sag_how", "taped", "body", "2.6", "surface", "turf kept", "ground_middle", "-0.1", "ground_middle_how", "laser",
		"ground_far", "-0.2", "ground_far_how", "laser", "note", "<b>shade</b>"}
	return append(form, with...)
}

func TestALineIsAddedChangedAndTakenOff(t *testing.T) {
	d := open(t)
	status, page := d.post("/site/demo/line/new", hammockForm("form", "f1")...)
	if status != http.StatusOK || !strings.Contains(page, "Outcome") {
		t.Fatalf("%d\n%s", status, page)
	}
	lines := d.lines()
	l := lines[len(lines)-1]
	if len(lines) != 3 || l.ID != "hammock 1" || l.Ends[1].Tree != "T9" || l.Body.Value != 2.6 || l.Ground == nil || len(l.Ground.Along) != 3 || l.Note != "<b>shade</b>" {
		t.Fatalf("%+v", l)
	}
	if _, page = d.get("/site/demo/line/hammock%201/edit"); !strings.Contains(page, "&lt;b&gt;shade") || strings.Contains(page, "<b>shade") {
		t.Error("the note is not escaped")
	}
	if status, page = d.post("/site/demo/line/hammock%201/edit", hammockForm("form", "f2", "span", "21.6", "span_how", "taped")...); status != http.StatusOK {
		t.Fatalf("%d\n%s", status, page)
	}
	if l = d.lines()[2]; l.Span == nil || l.Span.Value != 21.6 {
		t.Errorf("%+v", l.Span)
	}
	if status, _ = d.post("/site/demo/line/hammock%201/delete", "form", "f3"); status != http.StatusOK || len(d.lines()) != 2 {
		t.Errorf("%d, %d lines", status, len(d.lines()))
	}
}

// What is refused says what is wrong and keeps what was typed.
func TestALineIsRefused(t *testing.T) {
	d := open(t)
	for name, c := range map[string]struct{ field, value, want string }{
		"no place":        {"place_1", "", "choose where it is made fast"},
		"no number":       {"sag", "a bit", "a bit"},
		"no body":         {"body", "", "length of its body"},
		"both":            {"pretension", "2", "does not go with a hammock"},
		"no such":         {"place_0", "T7/none", "there is no member"},
		"beyond it":       {"anchor_at_0", "40", "beyond the end"},
		"half the ground": {"ground_far", "", "both heights"},
	} {
		form := hammockForm()
		replaced := false
		for i := 0; i < len(form); i += 2 {
			if form[i] == c.field {
				form[i+1], replaced = c.value, true
			}
		}
		if !replaced {
			form = append(form, c.field, c.value)
		}
		status, page := d.post("/site/demo/line/new", append(form, "form", "r-"+name)...)
		if status != http.StatusUnprocessableEntity || !strings.Contains(page, c.want) || !strings.Contains(page, `value="2.6"`) && c.field != "body" {
			t.Errorf("%s: %d, no %q", name, status, c.want)
		}
	}
	if len(d.lines()) != 2 {
		t.Error("a refused line was kept")
	}
}
