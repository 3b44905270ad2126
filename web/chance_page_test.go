package web_test

import (
	"net/http"
	"strings"
	"testing"
)

// Each hang of the demo has a chance with what it leaves out, or a page that
// says why not; and a plan of a load test, or why not.
func TestEveryHangHasAChancePage(t *testing.T) {
	d := open(t)
	s, err := d.notebook.Site(t.Context(), "demo")
	if err != nil {
		t.Fatal(err)
	}
	given := 0
	for _, tree := range s.Trees {
		for _, h := range tree.Hangs {
			at := "/site/demo/tree/" + tree.ID + "/hang/" + h.ID
			status, page := d.get(at + "/chance")
			hasChance, hasNone := strings.Contains(page, "A season"), strings.Contains(page, "No chance can be given here")
			if status != http.StatusOK || hasChance == hasNone || hasChance != strings.Contains(page, "Left out: defects nobody saw") {
				t.Errorf("%s: %d, chance %v, none %v", at, status, hasChance, hasNone)
			}
			if promise.MatchString(page) || !strings.Contains(page, "Measure next") {
				t.Errorf("%s promises, or says nothing of what to measure", at)
			}
			if hasChance {
				given++
			}
			if status, page := d.get(at + "/test"); status != http.StatusOK || promise.MatchString(page) || !strings.Contains(page, "lapses at the end of the day") {
				t.Errorf("%s/test: %d", at, status)
			}
		}
	}
	if given < 5 {
		t.Errorf("only %d hangs have a chance", given)
	}
}

func TestChanceLeadsToWhereItIsMeasured(t *testing.T) {
	d := open(t)
	_, page := d.get("/site/demo/tree/T4/hang/fork-swing/chance")
	if !strings.Contains(page, `href="/site/demo/tree/T4/member/L1"`) {
		t.Error("nothing leads to the form of the limb")
	}
	if !strings.Contains(page, "<details") || !strings.Contains(page, "<svg") {
		t.Error("the ways to fail or the drawings are missing")
	}
}

func TestChanceIsSampledOnlyWhenAsked(t *testing.T) {
	d := open(t)
	at := "/site/demo/tree/T1/hang/oak-swing/chance"
	if _, page := d.get(at); strings.Contains(page, "By samples") || !strings.Contains(page, `value="20000"`) {
		t.Error("sampled without being asked, or nothing asks for it")
	}
	if status, page := d.get(at + "?samples=200"); status != http.StatusOK || !strings.Contains(page, "By samples") {
		t.Errorf("not sampled: %d", status)
	}
	for _, bad := range []string{"20001", "-1", "many"} {
		if status, _ := d.get(at + "?samples=" + bad); status != http.StatusNotFound {
			t.Errorf("%s samples: %d", bad, status)
		}
	}
}
