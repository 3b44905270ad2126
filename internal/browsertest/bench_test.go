package browsertest

import (
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
)

// slowed runs page and worker at a quarter of the speed.
func (b *tab) slowed() {
	b.t.Helper()
	b.do(emulation.SetCPUThrottlingRate(4))
	b.onWorker(emulation.SetCPUThrottlingRate(4))
}

// BenchmarkOnAPhone are times in the worker: a page when the engine has to be
// started, a page when it runs, and the margins after a number was typed; at full
// speed and at a quarter of it.
func BenchmarkOnAPhone(b *testing.B) {
	for _, slow := range []bool{false, true} {
		name := "full"
		if slow {
			name = "quarter"
		}
		b.Run(name, func(b *testing.B) {
			server, _ := host(b)
			p, _ := open(b, b.TempDir(), server.URL+"/field/", phone)
			p.install()
			p.newSite("Copse")
			p.newTree()
			p.wholeLook()
			p.askForHang()
			outcome := value[string](p, `location.pathname`)[len("/field/"):]
			var cold, warm, typed float64
			for b.Loop() {
				if slow { // the worker that was killed had it
					p.slowed()
				}
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

// onWorker does something in the target of the worker.
func (b *tab) onWorker(action chromedp.Action) {
	b.t.Helper()
	targets, err := chromedp.Targets(b.ctx)
	if err != nil {
		b.t.Fatal(err)
	}
	for _, found := range targets {
		if found.Type != "service_worker" {
			continue
		}
		ctx, cancel := chromedp.NewContext(b.ctx, chromedp.WithTargetID(found.TargetID))
		b.t.Cleanup(cancel)
		if err := chromedp.Run(ctx, action); err != nil {
			b.t.Logf("the worker is not slowed: %v", err)
		}
		return
	}
	b.t.Log("no worker is running")
}
