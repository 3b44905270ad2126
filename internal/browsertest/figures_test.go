package browsertest

import (
	"os"
	"testing"
)

// took measures how long a fetch of the app takes, in ms, the median of some.
const took = `(async (path, times) => {
	const all = [];
	for (let i = 0; i < times; i++) {
		const begun = performance.now();
		await (await fetch(path)).text();
		all.push(performance.now() - begun);
	}
	return Math.round(all.sort((a, b) => a - b)[Math.floor(times / 2)]);
})`

// TestFigures prints how long things take; it judges nothing.
func TestFigures(t *testing.T) {
	if os.Getenv("BOUGHLINE_FIGURES") == "" {
		t.Skip("BOUGHLINE_FIGURES is not set") // timings judge nothing and take minutes
	}
	server, _ := host(t)
	b, _ := open(t, t.TempDir(), server.URL+"/field/", phone)
	b.install()
	b.newSite("Copse")
	b.newTree()
	b.askForHang()
	address := value[string](b, `location.pathname`)
	tree := value[string](b, `document.querySelectorAll(".trail a")[2].pathname`)
	b.goTo(tree[len("/field/"):] + "/member/L1")
	b.settle()
	margins := value[string](b, `document.querySelector("form[data-live]").dataset.liveFrom + "&" + new URLSearchParams(new FormData(document.querySelector("form[data-live]")))`)
	for _, f := range []struct {
		what, path string
		times      string
	}{{"list of sites", "/field/", "9"}, {"tree", tree, "9"}, {"outcome", address, "9"}, {"live margins of one hang", margins, "9"}} {
		t.Logf("%s in the worker: %d ms", f.what, value[int](b, took+`("`+f.path+`", `+f.times+`)`))
	}
	b.killWorker()
	t.Logf("first page after the worker was killed: %d ms", value[int](b, took+`("/field/", 1)`))
}
