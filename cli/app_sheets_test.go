package cli

import (
	"net/http"
	"strings"
	"testing"

	"boughline/sheet"
	"boughline/store/storetest"
)

// Every sheet that the app offers can be had, in every form, and others are no
// pages.
func TestTheAppPutsSheetsOnPaper(t *testing.T) {
	address, stop := running(t, storetest.NewMemory(), "--demo")
	defer stop()
	_, site := get(t, address+"site/demo")
	_, tree := get(t, address+"site/demo/tree/T1")
	for _, k := range sheet.Kinds() {
		if k.NeedsHang || k.Takes != sheet.TakesSurvey {
			continue
		}
		path, page := "site/demo/sheet/"+k.Name+"/", site
		query := ""
		if k.NeedsTree {
			page, query = tree, "?tree=T1"
		}
		for form, begins := range map[string]string{"a4": "%PDF-", "letter": "%PDF-", "page": "<!"} {
			if !strings.Contains(page, `href="/`+path+form+query+`"`) {
				t.Errorf("nothing leads to %s%s%s", path, form, query)
			}
			if status, got := get(t, address+path+form+query); status != http.StatusOK || !strings.HasPrefix(got, begins) {
				t.Errorf("%s%s%s: %d %.80s", path, form, query, status, got)
			}
		}
	}
	for _, path := range []string{"site/demo/sheet/assessment/a4", "site/demo/sheet/site/a3", "site/demo/sheet/poster/a4", "site/demo/sheet/working/page?tree=T99", "site/none/sheet/site/a4"} {
		if status, _ := get(t, address+path); status != http.StatusNotFound {
			t.Errorf("%s: %d", path, status)
		}
	}
}
