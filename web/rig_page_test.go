package web_test

import (
	"net/http"
	"strings"
	"testing"
)

// Every hang of the demo says how it is rigged, with its sources, and the outcome
// leads there.
func TestEveryHangHasARigPage(t *testing.T) {
	d := open(t)
	s, err := d.notebook.Site(t.Context(), "demo")
	if err != nil {
		t.Fatal(err)
	}
	for _, tree := range s.Trees {
		for _, h := range tree.Hangs {
			at := "/site/demo/tree/" + tree.ID + "/hang/" + h.ID
			status, page := d.get(at + "/rig")
			if status != http.StatusOK || promise.MatchString(page) || strings.Count(page, "<svg") != 1 {
				t.Errorf("%s/rig: %d, or it promises, or it has no drawing", at, status)
			}
			for _, want := range []string{"The chain, link by link", "Line to cut", "from the ground", "creep along the limb", "down again from below", "fresh point", "Knots and what each", "does to the bark", "weakest", "common practice, no published source", "house"} {
				if !strings.Contains(page, want) {
					t.Errorf("%s/rig does not say %q", at, want)
				}
			}
			if first, chain := strings.Index(page, "<svg"), strings.Index(page, `id="chain"`); first < 0 || chain < first {
				t.Errorf("%s/rig: the drawing does not come first", at)
			}
			if _, page := d.get(at); !strings.Contains(page, `href="`+at+`/rig"`) {
				t.Errorf("%s does not lead to how it is rigged", at)
			}
		}
	}
}

// Wishes change the answer, and one that cannot be taken is kept and named.
func TestRigWishes(t *testing.T) {
	d := open(t)
	at := "/site/demo/tree/T1/hang/oak-swing/rig"
	if _, page := d.get(at + "?seat=1%2C2&stand=6&hours=1"); !strings.Contains(page, "Cut 4.36 m") || !strings.Contains(page, "Stand 6.00 m") || !strings.Contains(page, "for an hour of riding") || !strings.Contains(page, `value="1,2"`) {
		t.Error("the wishes do not count")
	}
	for query, want := range map[string]string{"seat=%3Cb%3Ehigh": "&lt;b&gt;high", "stand=80": "expected a distance", "hours=many": "hours such as 4", "hours=-1": "expected above 0"} {
		status, page := d.get(at + "?" + query)
		if status != http.StatusUnprocessableEntity || !strings.Contains(page, want) || strings.Contains(page, "<b>high") {
			t.Errorf("%s: %d, without %q", query, status, want)
		}
	}
	if status, _ := d.get("/site/demo/tree/T1/hang/no-swing/rig"); status != http.StatusNotFound {
		t.Errorf("a hang that is not there: %d", status)
	}
}
