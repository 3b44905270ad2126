package browsertest

import (
	"context"
	"fmt"
	"net/http"
	"strings"
	"testing"

	"boughline/survey"

	"github.com/chromedp/cdproto/serviceworker"
	"github.com/chromedp/chromedp"
)

// install opens the app for the phone for the first time and waits until the
// worker answers its pages.
func (b *tab) install() {
	b.t.Helper()
	b.do(chromedp.Navigate(b.base))
	b.until(`document.body && document.body.hasAttribute("data-field") && navigator.serviceWorker.controller`)
}

// killWorker ends the worker as a phone does that needs its memory.
func (b *tab) killWorker() {
	b.t.Helper()
	b.do(serviceworker.Enable(), chromedp.ActionFunc(func(ctx context.Context) error { return serviceworker.StopAllWorkers().Do(ctx) }))
}

// newSite and newTree write down a site and an oak with one taped limb.
func (b *tab) newSite(name string) {
	b.t.Helper()
	b.pressText("New site")
	b.fill("site", name)
	b.fill("terrain", "III")
	b.fill("in_leaf", "yes")
	b.pressText("Save")
}

func (b *tab) newTree() {
	b.t.Helper()
	b.pressText("New tree")
	for _, f := range [][2]string{
		{"species", "English oak"}, {"stem_girth", "267"}, {"rises_at", "4.6"}, {"azimuth", "110"}, {"inclination", "4"}, {"length", "8"},
		{"at_0", "0.3"}, {"girth_0", "132"}, {"at_1", "2.5"}, {"girth_1", "113"},
	} {
		b.fill(f[0], f[1])
	}
	b.pressText("Save")
}

// wholeLook looks over every zone: one dead branch on the far side,
// nothing else.
func (b *tab) wholeLook() {
	b.t.Helper()
	b.pressText("Look next at")
	b.touches++
	b.do(b.click(`#crown-06 button[value="seen"]`))
	b.until(`document.querySelector("#crown-06 button[value='seen']").getAttribute("aria-pressed") === "true"`)
	b.pressText("Say where it is")
	for _, f := range [][2]string{{"side", "290"}, {"spot_height", "11"}, {"distance", "5"}} {
		b.fill(f[0], f[1])
	}
	b.pressText("Save")
	for i := range survey.Zones {
		b.pressText("None of the others here was seen")
		b.has("looked at")
		if i+1 < len(survey.Zones) {
			b.pressText("Next zone")
		}
	}
	b.pressText("Back to the tree")
}

// askForHang asks for a low swing over level ground.
func (b *tab) askForHang() {
	b.t.Helper()
	b.pressText("Ask for a hang")
	for _, f := range [][2]string{
		{"hang_at", "2.6"}, {"line", "3.4"}, {"limb_height", "4.5"}, {"surface", "turf"}, {"slope_ahead", "0"}, {"slope_behind", "0"},
		{"waiting", "200"}, {"waiting_far", "9"}, {"way_in", "200"},
	} {
		b.fill(f[0], f[1])
	}
	b.pressText("Save")
}

// search writes down level ground about the tree, looks for the place of the
// longest line, and asks for the hang that is found.
func (b *tab) search() {
	b.t.Helper()
	b.pressText("Spot heights about the tree")
	for _, f := range [][2]string{{"even_out", "12"}, {"even_falls", "0"}, {"surface", "turf"}} {
		b.fill(f[0], f[1])
	}
	b.pressText("Save")
	b.press(`.trail li:last-child a`)
	b.pressText("Where could a swing hang?")
	b.touches++
	b.do(chromedp.Evaluate(`(() => { const f = document.querySelector("[name=riders]"); if (!f.value) f.selectedIndex = [...f.options].findIndex((o) => o.value); return true })()`, nil))
	b.pressText("Look for a place")
	b.has("Along the limb")
	b.pressText("Ask for this hang")
}

// photo sends a picture that the page draws itself, twice as wide as any
// photo is kept.
const photo = `(async () => {
	const canvas = document.createElement("canvas");
	canvas.width = 3200; canvas.height = 2400;
	const ink = canvas.getContext("2d");
	ink.fillStyle = "#464"; ink.fillRect(0, 0, 3200, 2400);
	ink.fillStyle = "#531"; ink.fillRect(1500, 400, 200, 2000);
	const blob = await new Promise((done) => canvas.toBlob(done, "image/jpeg", 0.9));
	const carrier = new DataTransfer();
	carrier.items.add(new File([blob], "tree.jpg", { type: "image/jpeg" }));
	const field = document.querySelector("#photo");
	field.files = carrier.files;
	window.leaving = true;
	field.dispatchEvent(new Event("change", { bubbles: true }));
	return true;
})()`

func (b *tab) takePhoto() {
	b.t.Helper()
	before := value[int](b, `document.querySelectorAll(".photos img").length`)
	b.touches++
	value[bool](b, photo)
	b.until(fmt.Sprintf(`!window.leaving && document.querySelectorAll(".photos img").length === %d`, before+1))
	b.until(`[...document.querySelectorAll(".photos img")].every((i) => { i.loading = "eager"; return i.complete && i.naturalWidth > 0 })`)
	if width := value[int](b, `Math.max(...[...document.querySelectorAll(".photos img")].map((i) => i.naturalWidth))`); width != 1600 {
		b.t.Errorf("the photo was kept %d wide, want 1600", width)
	}
}

// The whole job without a network: the server is gone once the app is
// installed, the worker is killed, the browser is started again.
func TestFieldWithoutNetwork(t *testing.T) {
	server, _ := host(t)
	profile := t.TempDir()
	b, quit := open(t, profile, server.URL+"/field/", phone)
	b.install()
	b.has("On this device")
	server.Close()
	if _, err := http.Get(server.URL); err == nil {
		t.Fatal("the server still answers")
	}
	b.touches = 0
	b.goTo("")
	b.newSite("Foxholes & <b>Copse</b>")
	b.newTree()
	b.wholeLook()
	b.takePhoto()
	b.takePhoto()
	b.search()
	b.has("Dead branch thicker than a thumb, above the people")
	t.Logf("%d touches and typed values from nothing through a search to an outcome, with two photos", b.touches)

	b.killWorker()
	b.goTo("")
	b.has("Foxholes & <b>Copse</b>")
	b.pressText("Foxholes")
	b.has("Quercus robur")
	quit()

	again, _ := open(t, profile, server.URL+"/field/", phone)
	again.goTo("")
	again.pressText("Foxholes")
	again.until(`!document.querySelector("[data-waiting]")`)
	again.has("Leave it: nothing is hung here.")
	again.pressText("T1")
	again.has("Dead branch")
	if n := value[int](again, `document.querySelectorAll(".photos img").length`); n != 2 {
		t.Errorf("%d photos are left of 2", n)
	}
	file := value[string](again, `(async () => { const l = await fetch(document.querySelectorAll(".trail a")[1].href + "/export"); return await l.text() })()`)
	takeInAtDesk(t, file)
	for asked := range again.asked {
		if !strings.HasPrefix(asked, "127.0.0.1:") {
			t.Errorf("a request went to %s", asked)
		}
	}
}

// takeInAtDesk brings the file of a phone to a desk.
func takeInAtDesk(t *testing.T, file string) {
	t.Helper()
	server, n := host(t)
	answer, err := http.Post(server.URL+"/import?form=phone1", "application/json", strings.NewReader(file))
	if err != nil {
		t.Fatal(err)
	}
	defer answer.Body.Close()
	sites, err := n.Sites(t.Context())
	if err != nil || answer.StatusCode != http.StatusOK || len(sites) != 2 {
		t.Fatalf("status %d, sites %v, %v", answer.StatusCode, sites, err)
	}
	photos, err := n.Photos(t.Context(), sites[0].ID, "T1")
	if err != nil || len(photos) != 2 {
		t.Errorf("photos %v, %v", photos, err)
	}
}
