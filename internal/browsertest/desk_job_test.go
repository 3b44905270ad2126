package browsertest

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/chromedp/chromedp"
)

// The whole job at a desk, on a database: what was written is there after the
// program was ended and the browser closed, leaves as a file, and comes in at
// another desk.
func TestTheWholeJobAtADesk(t *testing.T) {
	kept := filepath.Join(t.TempDir(), "desk.db")
	server, _, end := hostOn(t, kept)
	b, quit := open(t, t.TempDir(), server.URL+"/", desk)
	b.goTo("")
	b.newSite("Foxholes & <b>Copse</b>")
	b.newTree()
	b.wholeLook()
	b.takePhoto()
	b.takePhoto()
	b.askForHang()
	b.has("Not decided")
	t.Logf("%d touches and typed values from nothing to an outcome, with two photos", b.touches)
	quit()
	end()

	server, _, _ = hostOn(t, kept)
	again, _ := open(t, t.TempDir(), server.URL+"/", desk)
	again.goTo("")
	again.pressText("Foxholes")
	again.until(`!document.querySelector("[data-waiting]")`)
	again.has("Not decided")
	again.pressText("T1")
	again.has("Dead branch")
	file := filepath.Join(t.TempDir(), "site.json")
	text := value[string](again, `(async () => { const l = await fetch(document.querySelectorAll(".trail a")[1].href + "/export"); return await l.text() })()`)
	if err := os.WriteFile(file, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}

	other, n := host(t)
	there, _ := open(t, t.TempDir(), other.URL+"/", desk)
	there.goTo("import")
	there.do(chromedp.SetUploadFiles("#file", []string{file}))
	there.press("main form button")
	there.has("Foxholes & <b>Copse</b>")
	sites, err := n.Sites(t.Context())
	if err != nil || len(sites) != 2 {
		t.Fatalf("sites %v, %v", sites, err)
	}
	for _, s := range sites {
		if s.ID == "demo" {
			continue
		}
		if photos, err := n.Photos(t.Context(), s.ID, "T1"); err != nil || len(photos) != 2 {
			t.Errorf("photos %v, %v", photos, err)
		}
	}
}
