package browsertest

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
)

// pages are all pages of the demo site, by the names of their pictures.
var pages = []struct{ name, path string }{
	{"sites", ""}, {"site", "site/demo"}, {"site-new", "site/new"}, {"site-edit", "site/demo/edit"}, {"riders", "site/demo/riders"}, {"gear", "site/demo/gear"}, {"chain", "site/demo/chain/old-chain"}, {"register", "gear"},
	{"tree", "site/demo/tree/T1"}, {"tree-new", "site/demo/tree/new"}, {"tree-edit", "site/demo/tree/T1/edit"}, {"limb", "site/demo/tree/T1/member/L1"},
	{"look", "site/demo/tree/T1/look/crown"}, {"finding", "site/demo/tree/T1/finding/F1"}, {"hang", "site/demo/tree/T1/hang/oak-swing/edit"},
	{"outcome", "site/demo/tree/T1/hang/oak-swing"}, {"rig", "site/demo/tree/T1/hang/oak-swing/rig"}, {"outcome-unfinished", "site/demo/tree/T6/hang/pine-swing"}, {"history", "site/demo/tree/T1/history"}, {"compare", "site/demo/tree/T1/history/1"},
	{"signs", "signs"}, {"fungi", "fungi"}, {"species", "species"}, {"wood", "wood"}, {"sources", "sources"}, {"settings", "settings"},
	{"import", "import"}, {"not-found", "nowhere"},
	{"tree-many-findings", "site/demo/tree/T7"}, {"drawing-alone", "site/demo/tree/T1?drawing=elevation+T1"}, {"look-stem", "site/demo/tree/T1/look/stem"},
	{"place", "site/demo/tree/T1/place?limb=L1"}, {"place-found", "site/demo/tree/T1/place?limb=L1&riders=small&aim=longest-line&to_each_side=40"},
	{"chance", "site/demo/tree/T1/hang/oak-swing/chance"}, {"load-test", "site/demo/tree/T1/hang/oak-swing/test"}, {"load-test-new", "site/demo/tree/T1/hang/oak-swing/test/new"},
	{"fungus-key", "fungi/key"}, {"fungus-finding", "site/demo/tree/T3/finding/F1/fungus"},
	{"measure", "measure"}, {"measure-height", "measure/height-by-tangents"}, {"measure-thickness", "measure/thickness-by-angular-width"}, {"measure-repeats", "measure/repeated-lengths"},
	{"workbench", "workbench"}, {"workbench-question", "workbench/gear-chain"}, {"spots", "site/demo/tree/T1/ground"}, {"places", "site/demo/tree/T1/hang/oak-swing/places"},
	{"lines", "site/demo/lines"}, {"traverse", "site/demo/line/chestnut-traverse"}, {"climb", "site/demo/line/lime-climb"}, {"line-new", "site/demo/line/new?kind=hammock"},
	{"item", "gear/item/R1"}, {"item-new", "gear/new"}, {"chains", "site/demo/chains"}, {"part-new", "site/demo/chain/day-chain/part/new"},
	{"day-ask", "site/demo/tree/T1/hang/oak-swing/day"}, {"day-refused", "site/demo/tree/T6/hang/pine-swing/day"},
}

// onPaper are the pages with drawings, as they come on paper.
var onPaper = []struct{ name, path string }{
	{"site", "site/demo"}, {"tree", "site/demo/tree/T1"}, {"outcome", "site/demo/tree/T1/hang/oak-swing"}, {"drawing-alone", "site/demo/tree/T1?drawing=elevation+T1"},
	{"chance", "site/demo/tree/T1/hang/oak-swing/chance"}, {"look", "site/demo/tree/T1/look/crown"},
}

// settle waits until nothing more arrives on a page.
func (b *tab) settle() {
	b.t.Helper()
	b.until(`!document.querySelector("[data-waiting]") && (!document.getElementById("live") || document.getElementById("live").dataset.shown)`)
}

func TestShots(t *testing.T) {
	folder := os.Getenv("BOUGHLINE_SHOTS")
	if folder == "" {
		t.Skip("BOUGHLINE_SHOTS names no folder; make shots does")
	}
	if err := os.MkdirAll(folder, 0o755); err != nil {
		t.Fatal(err)
	}
	server, _ := host(t)
	for _, s := range []screen{phone, desk} {
		for _, ink := range []string{"light", "dark"} {
			b, quit := open(t, t.TempDir(), server.URL+"/", s)
			b.goTo("settings")
			b.fill("ink", ink)
			b.pressText("Save")
			for _, p := range pages {
				b.goTo(p.path)
				b.settle()
				b.shoot(filepath.Join(folder, s.name+"-"+ink+"-"+p.name+".png"))
			}
			quit()
		}
	}
	// Paper is white, also for somebody who works with light ink on dark.
	b, _ := open(t, t.TempDir(), server.URL+"/", paper)
	b.goTo("settings")
	b.fill("ink", "dark")
	b.pressText("Save")
	b.do(emulation.SetEmulatedMedia().WithMedia("print"))
	for _, p := range onPaper {
		b.goTo(p.path)
		b.settle()
		b.shoot(filepath.Join(folder, "print-"+p.name+".png"))
	}
}

func (b *tab) shoot(file string) {
	b.t.Helper()
	// Pictures below the screen come when they are scrolled to; a shot shows all but those folded away.
	b.do(chromedp.Evaluate(`document.querySelectorAll("img[loading]").forEach((i) => { i.loading = "eager" })`, nil))
	b.until(`[...document.images].every((i) => i.complete)`)
	var picture []byte
	b.do(chromedp.FullScreenshot(&picture, 100))
	if err := os.WriteFile(file, picture, 0o644); err != nil {
		b.t.Fatal(err)
	}
}
