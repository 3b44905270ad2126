package web_test

import (
	"net/http"
	"regexp"
	"strings"
	"testing"
)

// undoOf is where the offer to undo on a page is sent, with its fields.
func undoOf(t *testing.T, page string) (string, []string) {
	t.Helper()
	notice := regexp.MustCompile(`(?s)<div class="notice">.*?</div>`).FindString(page)
	form := regexp.MustCompile(`action="([^"]+)"`).FindStringSubmatch(notice)
	if form == nil {
		t.Fatalf("no offer to undo in %q", notice)
	}
	var fields []string
	for _, f := range regexp.MustCompile(`name="([^"]+)" value="([^"]*)"`).FindAllStringSubmatch(notice, -1) {
		fields = append(fields, f[1], f[2])
	}
	return form[1], fields
}

func TestEachChangeOffersToUndoIt(t *testing.T) {
	d := open(t)
	_, form := d.get("/site/demo/edit")
	revision := regexp.MustCompile(`name="revision" value="([^"]+)"`).FindStringSubmatch(form)[1]
	status, page := d.post("/site/demo/edit", "form", "f1", "revision", revision, "site", "Another name", "day", "2026-05-16")
	if status != http.StatusOK || !strings.Contains(page, "Another name") {
		t.Fatal(status)
	}
	to, fields := undoOf(t, page)
	if status, page = d.post(to, fields...); status != http.StatusOK || strings.Contains(page, "<h1>Another name") {
		t.Errorf("status %d: the site kept its new name", status)
	}
}

func TestDeletedTreeIsBroughtBackByUndo(t *testing.T) {
	d := open(t)
	_, list := d.get("/site/demo")
	tree := regexp.MustCompile(`class="line" href="(/site/demo/tree/[^"]+)"`).FindStringSubmatch(list)[1]
	_, page := d.post(tree+"/delete", "form", "f2")
	if strings.Contains(page, `class="line" href="`+tree+`"`) {
		t.Fatal("the tree is still listed")
	}
	to, fields := undoOf(t, page)
	d.post(to, fields...)
	if _, list = d.get("/site/demo"); !strings.Contains(list, `class="line" href="`+tree+`"`) {
		t.Error("the tree was not brought back")
	}
}

func TestUndoOfASiteGivesWayToWhatCameSince(t *testing.T) {
	d := open(t)
	_, page := d.post("/site/demo/edit", "form", "f3", "site", "First", "day", "2026-05-16")
	to, fields := undoOf(t, page)
	d.post("/site/demo/edit", "form", "f4", "site", "Second", "day", "2026-05-16")
	d.post(to, fields...)
	if _, page = d.get("/site/demo"); !strings.Contains(page, "<h1>Second") {
		t.Error("what came since is lost")
	}
}

func TestTreesAreFoundByEnglishNameAndByWhatIsDue(t *testing.T) {
	d := open(t)
	for query, want := range map[string]string{"q=oak": "/site/demo/tree/T1\"", "only=due": "class=\"lines\""} {
		if status, page := d.get("/site/demo?" + query); status != http.StatusOK || !strings.Contains(page, want) {
			t.Errorf("%s: status %d, lacks %s", query, status, want)
		}
	}
	_, all := d.get("/site/demo")
	_, due := d.get("/site/demo?only=due")
	if count := strings.Count(due, `class="line"`); count >= strings.Count(all, `class="line"`) {
		t.Errorf("%d trees are due, as many as there are", count)
	}
}
