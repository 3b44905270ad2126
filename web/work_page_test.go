package web_test

import (
	"html"
	"net/http"
	"net/url"
	"regexp"
	"strings"
	"testing"

	"boughline/work"
)

func TestWorkbenchListsEveryQuestion(t *testing.T) {
	d := open(t)
	_, page := d.get("/workbench")
	for _, q := range work.Questions() {
		if !strings.Contains(page, `href="/workbench/`+q.ID+`"`) {
			t.Errorf("%s is not listed", q.ID)
		}
	}
}

// Every question's page answers its example, with formula and source, and keeps
// what was typed.
func TestEveryQuestionHasAPageThatAnswers(t *testing.T) {
	d := open(t)
	for _, q := range work.Questions() {
		if q.ID == "limb-chance" {
			continue // samples for seconds
		}
		status, page := d.get("/workbench/" + q.ID + "?example=yes")
		plain := html.UnescapeString(page)
		if status != http.StatusOK || strings.Contains(page, `class="fault"`) || !strings.Contains(page, `class="figures"`) {
			t.Errorf("%s: status %d: %s", q.ID, status, regexp.MustCompile(`(?s)<p class="fault.*?</p>`).FindString(page))
		}
		for _, want := range []string{q.Formula, q.Source, q.Inputs[0].Label} {
			if !strings.Contains(plain, want) {
				t.Errorf("%s: page lacks %q", q.ID, want)
			}
		}
		if status, page := d.get("/workbench/" + q.ID); status != http.StatusOK || strings.Contains(page, `class="fault"`) {
			t.Errorf("%s, untouched: status %d", q.ID, status)
		}
	}
}

// 3 m and 45 degrees: a weight of (3 - 2 cos 45) = 1.5858 times itself at the lowest
// point, 1.0400 times the small period (pendulum; the ratio is tabled in textbooks as 1.0400).
func TestAQuestionIsAnsweredInItsUnits(t *testing.T) {
	d := open(t)
	_, page := d.get("/workbench/swing-time?" + url.Values{"L": {"3"}, "amplitude_deg": {"45"}}.Encode())
	for _, want := range []string{"1.5858", "3.6141 s", `value="45"`} {
		if !strings.Contains(page, want) {
			t.Errorf("lacks %q", want)
		}
	}
	_, feet := d.get("/workbench/swing-time?" + url.Values{"L": {"9.842519685 ft"}, "amplitude_deg": {"45"}}.Encode())
	if !strings.Contains(feet, "3.6141 s") {
		t.Error("feet are not taken")
	}
	status, wrong := d.get("/workbench/swing-time?" + url.Values{"L": {"<b>3"}, "amplitude_deg": {"45"}}.Encode())
	if status != http.StatusUnprocessableEntity || !strings.Contains(wrong, "&lt;b&gt;3") || strings.Contains(wrong, "<b>3") {
		t.Errorf("status %d; expected the form again, escaped", status)
	}
	if status, _ := d.get("/workbench/none"); status != http.StatusNotFound {
		t.Errorf("status %d", status)
	}
}
