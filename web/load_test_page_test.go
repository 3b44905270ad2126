package web_test

import (
	"fmt"
	"html"
	"math"
	"net/http"
	"strings"
	"testing"

	"boughline/assess"
	"boughline/knowledge"
	"boughline/notebook"
	"boughline/survey"
)

// oak is a hang of the demo that may be put up within limits.
const oak = "/site/demo/tree/T1/hang/oak-swing"

// planned is the load test that the command line would print too.
func (d *desk) planned(hang string) assess.LoadTestPlan {
	d.t.Helper()
	k, err := knowledge.Load()
	if err != nil {
		d.t.Fatal(err)
	}
	s, err := d.notebook.Site(d.t.Context(), "demo")
	if err != nil {
		d.t.Fatal(err)
	}
	plan, err := assess.PlanLoadTest(s.Survey(), k, hang)
	if err != nil {
		d.t.Fatal(err)
	}
	return plan
}

// stood is a form for a test that went as planned.
func stood(plan assess.LoadTestPlan, more ...string) []string {
	form := []string{"form", "f" + fmt.Sprint(len(more)), "revision", "1", "tested_on", "2026-05-16", "tested_by", "Ann", "set", "0", "set_how", "taped"}
	for i, step := range plan.Steps {
		form = append(form, fmt.Sprintf("load_%d", i), fmt.Sprintf("%.1f", float64(step.Mass)+1), fmt.Sprintf("load_%d_how", i), "weighed",
			fmt.Sprintf("sag_%d", i), fmt.Sprintf("%.1f", 1000*float64(step.Sag)), fmt.Sprintf("sag_%d_how", i), "taped")
	}
	return append(form, more...)
}

func TestAPassedLoadTestCountsTodayAndLiftsNothing(t *testing.T) {
	d := open(t)
	_, page := d.get(oak + "/test")
	for _, want := range []string{"Where to stand", "a creak or a crack heard", "lapses at the end of the day", "lifts no finding", "No load test of this hang is on record"} {
		if !strings.Contains(page, want) {
			t.Errorf("the plan lacks %q", want)
		}
	}
	status, page := d.post(oak+"/test/new", stood(d.planned("oak-swing"))...)
	if status != http.StatusOK || !strings.Contains(page, "has stood the load test of today") || !strings.Contains(page, "by Ann") {
		t.Fatalf("status %d\n%s", status, page)
	}
	tests := d.tree("T1").LoadTests
	if len(tests) != 1 || len(tests[0].Signs) != 0 || tests[0].Set == nil || tests[0].By != "Ann" {
		t.Fatalf("kept %+v", tests)
	}
	// On the next day it no longer counts.
	if status, _ := d.post("/site/demo/edit", "form", "day", "site", "Demo", "day", "2026-05-17"); status != http.StatusOK {
		t.Fatal(status)
	}
	if _, page = d.get(oak + "/test"); strings.Contains(page, "has stood the load test of today") || strings.Contains(page, "given this test") {
		t.Error("a test counts beyond its day")
	}
}

func TestAStoppedLoadTestBarsTheLimbForGood(t *testing.T) {
	d := open(t)
	form := []string{"form", "f", "revision", "1", "tested_on", "2026-05-16", "load_0", "400 N", "sag_0", "0.4", "sag_0_how", "taped", "load_1", "", "sign_crack", "yes"}
	status, page := d.post(oak+"/test/new", form...)
	if status != http.StatusOK || !strings.Contains(page, "was stopped at this limb") {
		t.Fatalf("status %d\n%s", status, page)
	}
	test := d.tree("T1").LoadTests[0]
	if test.Steps[0].Pull == nil || test.Steps[0].Pull.Value != 400 || test.Signs[0] != survey.TestCrack {
		t.Errorf("kept %+v", test)
	}
	passed := stood(d.planned("oak-swing"))
	passed[3] = "2"
	if status, page := d.post(oak+"/test/new", passed...); status != http.StatusOK || !strings.Contains(page, "was stopped at this limb") {
		t.Errorf("a later test lifts it: %d", status)
	}
	if _, page := d.get(oak); !strings.Contains(page, "was stopped at this limb") {
		t.Error("the outcome does not say so")
	}
}

func TestARefusedLoadTestKeepsWhatWasTypedAndChangesNothing(t *testing.T) {
	d := open(t)
	before := d.tree("T1").Revision
	for name, form := range map[string][]string{
		"no load":     {"load_0", "", "sag_0", "1.25", "tested_by", "Ann"},
		"no number":   {"load_0", "forty", "sag_0", "1.25", "tested_by", "Ann"},
		"fewer loads": {"load_0", "80", "sag_0", "1.25", "load_1", "40", "tested_by", "Ann"},
		"no day":      {"load_0", "80", "sag_0", "1.25", "tested_on", "", "tested_by", "Ann"},
		"not a day":   {"load_0", "80", "sag_0", "1.25", "tested_on", "soon", "tested_by", "Ann"},
	} {
		status, page := d.post(oak+"/test/new", append([]string{"form", "f", "revision", "1", "tested_on", "2026-05-16"}, form...)...)
		if status != http.StatusUnprocessableEntity || !strings.Contains(page, `value="1.25"`) || !strings.Contains(page, `value="Ann"`) {
			t.Errorf("%s: %d", name, status)
		}
	}
	if now := d.tree("T1"); now.Revision != before || len(now.LoadTests) != 0 {
		t.Errorf("something was kept: %+v", now.LoadTests)
	}
}

func TestALoadTestAfterTheDayThatIsJudgedSaysSo(t *testing.T) {
	d := open(t)
	status, page := d.post(oak+"/test/new", "form", "f", "revision", "1", "tested_on", "2026-05-17", "load_0", "40", "sign_sound", "yes")
	if status != http.StatusOK || !strings.Contains(page, "after the day that the site is judged for") {
		t.Errorf("status %d\n%s", status, page)
	}
}

func TestALoadTestSentTwiceIsOneRecord(t *testing.T) {
	d := open(t)
	form := stood(d.planned("oak-swing"))
	for range 2 {
		if status, _ := d.post(oak+"/test/new", form...); status != http.StatusOK {
			t.Fatal(status)
		}
	}
	if n := len(d.tree("T1").LoadTests); n != 1 {
		t.Errorf("%d records", n)
	}
}

func TestALoadTestIsNeverMarkup(t *testing.T) {
	d := open(t)
	bad := `<script>alert(1)</script>"'><img src=x onerror=alert(1)>`
	for _, form := range [][]string{stood(d.planned("oak-swing"), "tested_by", bad, "note", bad), {"form", "g", "tested_by", bad, "load_0", bad}} {
		_, page := d.post(oak+"/test/new", form...)
		if strings.Contains(page, "<script>alert") || strings.Contains(page, "<img src=x") || !strings.Contains(html.UnescapeString(page), bad) {
			t.Errorf("what was typed is markup or lost")
		}
	}
}

// Two people who write a test down at the same time are asked, and neither
// record is lost.
func TestTwoLoadTestsAtOnce(t *testing.T) {
	d := open(t)
	step := []string{"tested_on", "2026-05-16", "load_0", "40", "revision", "1"}
	if status, _ := d.post(oak+"/test/new", append(step, "form", "one", "tested_by", "Ann")...); status != http.StatusOK {
		t.Fatal(status)
	}
	status, page := d.post(oak+"/test/new", append(step, "form", "two", "tested_by", "Ben", "sign_sound", "yes")...)
	if status != http.StatusConflict || !strings.Contains(page, "Ben") || !strings.Contains(page, `name="sign_sound" value="yes"`) {
		t.Fatalf("status %d\n%s", status, page)
	}
	step[5] = "2"
	if status, _ := d.post(oak+"/test/new", append(step, "form", "three", "tested_by", "Ben", "sign_sound", "yes")...); status != http.StatusOK {
		t.Fatal(status)
	}
	if tests := d.tree("T1").LoadTests; len(tests) != 2 || tests[0].By != "Ann" || tests[1].Signs[0] != survey.TestSound {
		t.Errorf("kept %+v", tests)
	}
}

func TestALoadTestInFeetAndPounds(t *testing.T) {
	d := open(t)
	if err := d.notebook.ChangeSettings(t.Context(), notebook.Settings{Units: "feet"}); err != nil {
		t.Fatal(err)
	}
	if status, page := d.post(oak+"/test/new", "form", "f", "revision", "1", "tested_on", "2026-05-16", "load_0", "100", "load_0_how", "weighed", "sag_0", "0.1", "set", "0"); status != http.StatusOK {
		t.Fatalf("status %d\n%s", status, page)
	}
	step := d.tree("T1").LoadTests[0].Steps[0]
	// The avoirdupois pound is 0.45359237 kg, the inch 25.4 mm (NIST SP 811, appendix B.8).
	if math.Abs(float64(step.Mass.Value)-45.359237) > 1e-9 || math.Abs(float64(step.Sag.Value)-0.00254) > 1e-12 {
		t.Errorf("kept %v kg, %v m", step.Mass.Value, step.Sag.Value)
	}
}
