package browsertest

import (
	"testing"

	"github.com/chromedp/chromedp"
)

// What was typed and not yet saved is there again after the battery died.
func TestADraftOutlivesTheBrowser(t *testing.T) {
	server, _ := host(t)
	profile := t.TempDir()
	b, quit := open(t, profile, server.URL+"/field/", phone)
	b.install()
	b.newSite("Copse")
	b.pressText("New tree")
	b.fill("species", "beech")
	b.fill("stem_girth", "231")
	address := value[string](b, `location.href`)
	quit()
	again, _ := open(t, profile, server.URL+"/field/", phone)
	again.goTo(address[len(again.base):])
	again.until(`document.querySelector("[name=stem_girth]").value === "231"`)
	if got := value[string](again, `document.querySelector("[name=species]").value`); got != "beech" {
		t.Errorf("species %q", got)
	}
}

// noRoom makes the database of the worker refuse what it is given, as a
// browser does whose share of the disk is used up.
const noRoom = `IDBObjectStore.prototype.put = () => { throw new DOMException("no room", "QuotaExceededError"); }; true`

// inWorker evaluates an expression in the worker.
func (b *tab) inWorker(expression string) {
	b.t.Helper()
	targets, err := chromedp.Targets(b.ctx)
	if err != nil {
		b.t.Fatal(err)
	}
	for _, found := range targets {
		if found.Type == "service_worker" {
			ctx, cancel := chromedp.NewContext(b.ctx, chromedp.WithTargetID(found.TargetID))
			b.t.Cleanup(cancel) // it ends the worker
			if err := chromedp.Run(ctx, chromedp.Evaluate(expression, nil)); err != nil {
				b.t.Fatal(err)
			}
			return
		}
	}
	b.t.Fatal("no worker is running")
}

// A device without room says so, and keeps what it had.
func TestNoRoomLeftInTheBrowser(t *testing.T) {
	server, _ := host(t)
	b, _ := open(t, t.TempDir(), server.URL+"/field/", phone)
	b.install()
	b.newSite("Copse")
	b.newTree()
	b.inWorker(noRoom)
	value[bool](b, photo)
	b.until(`document.querySelector("[data-status]").textContent.includes("no room left")`)
	b.killWorker()
	b.goTo("")
	b.has("Copse")
	b.pressText("Copse")
	b.pressText("T1")
	b.takePhoto()
}
