package browsertest

import (
	"testing"

	"github.com/chromedp/cdproto/emulation"
)

// BenchmarkOnAPhone are times in the worker: a page when the engine has to be
// started, a page when it runs, and the margins after a number was typed; at full
// speed, and with the page at a quarter of it: Chromium slows pages down, no
// workers.
func BenchmarkOnAPhone(b *testing.B) {
	for _, slow := range []bool{false, true} {
		name := "full-speed"
		if slow {
			name = "page-at-a-quarter"
		}
		b.Run(name, func(b *testing.B) {
			server, _ := host(b)
			p, _ := open(b, b.TempDir(), server.URL+"/field/", phone)
			p.install()
			p.newSite("Copse")
			p.newTree()
			p.wholeLook()
			p.askForHang()
			if slow {
				p.do(emulation.SetCPUThrottlingRate(4))
			}
			outcome := value[string](p, `location.pathname`)[len("/field/"):]
			var cold, warm, typed float64
			for b.Loop() {
				p.goTo(outcome)
				warm += value[float64](p, `performance.getEntriesByType("navigation")[0].responseEnd`)
				p.goTo(outcome + "/edit")
				p.settle()
				typed += value[float64](p, typing)
				p.killWorker()
				p.goTo(outcome)
				cold += value[float64](p, `performance.getEntriesByType("navigation")[0].responseEnd`)
			}
			b.ReportMetric(cold/float64(b.N), "ms/cold-page")
			b.ReportMetric(warm/float64(b.N), "ms/warm-page")
			b.ReportMetric(typed/float64(b.N), "ms/margin")
		})
	}
}

// typing changes the line of a hang and returns the milliseconds until the
// margins on the page are others.
const typing = `(async () => {
	const live = document.getElementById("live"), field = document.querySelector("[name=line]");
	const changed = new Promise((done) => new MutationObserver(() => done(performance.now())).observe(live, { childList: true, subtree: true, characterData: true }));
	const from = performance.now();
	field.value = field.value === "3.2" ? "3.3" : "3.2";
	field.dispatchEvent(new Event("input", { bubbles: true }));
	return await changed - from;
})()`
