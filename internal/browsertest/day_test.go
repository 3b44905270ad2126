package browsertest

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"testing"
	"time"

	"boughline/demo"
	"boughline/outing"

	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
)

// setClock gives the worker another time; a worker that starts anew has the
// time of the device again.
func (b *tab) setClock(at time.Time) {
	b.t.Helper()
	b.inWorker(fmt.Sprintf(`(() => {
		const real = self.realDate ?? Date;
		self.realDate = real;
		const shift = %d - real.now();
		self.Date = class extends real {
			constructor(...parts) { if (parts.length) { super(...parts); } else { super(real.now() + shift); } }
			static now() { return real.now() + shift; }
		};
		return true;
	})()`, at.UnixMilli()))
}

// killedAt kills the worker, wakes it with a page and sets its clock again.
func (b *tab) killedAt(at time.Time) {
	b.t.Helper()
	b.killWorker()
	b.goTo("")
	b.setClock(at)
	b.goTo("")
}

// choose sets a field of the form that a button belongs to.
func (b *tab) choose(selector, text string) {
	b.t.Helper()
	b.touches++
	if !value[bool](b, fmt.Sprintf(`(() => { const f = document.querySelector(%q); if (f.type === "checkbox") f.checked = true; else f.value = %q; return true })()`, selector, text)) {
		b.t.Errorf("there is no %s", selector)
	}
}

// passTheTest writes down a load test as the demo's plan wants it.
func (b *tab) passTheTest() {
	b.t.Helper()
	b.pressText("Write down the load test")
	for _, f := range [][2]string{{"load_0", "215"}, {"load_0_how", "weighed"}, {"sag_0", "4"}, {"sag_0_how", "taped"}, {"set", "0"}, {"set_how", "taped"}} {
		b.choose(`[name="`+f[0]+`"]`, f[1])
	}
	b.pressText("Save")
}

// The whole day on a phone without a network, with the worker killed twice and
// the clock moved past take-down.
func TestADayWithoutNetwork(t *testing.T) {
	server, _ := host(t)
	b, _ := open(t, t.TempDir(), server.URL+"/field/", phone)
	b.install()
	server.Close()
	morning := time.Date(2026, 5, 16, 9, 0, 0, 0, time.UTC)
	b.setClock(morning)
	taken := fmt.Sprintf(`fetch("import?form=demo", { method: "POST", body: %q, headers: { "Content-Type": "application/json" } }).then((r) => r.ok)`, string(demo.Survey()))
	if !value[bool](b, taken) {
		t.Fatal("the demo site was not taken in")
	}
	b.goTo("")
	b.pressText("Pennow Wood")
	b.until(`!document.querySelector("[data-waiting]")`)
	b.press(`a.hang`)
	b.pressText("Day card")
	b.touches = 0
	b.choose("#until", "12:00")
	b.choose("#signed", "Ann Rigger")
	b.pressText("Sign and issue the day card")
	for range outing.PutUp() {
		b.pressText("Confirmed")
	}
	b.has("Up now: oak-swing, down by 12:00")
	b.goTo(value[string](b, `document.querySelector('a[href$="/card"]').pathname`)[len("/field/"):])
	b.onOneSheet()

	b.killedAt(morning.Add(20 * time.Minute))
	b.has("Up now: oak-swing, down by 12:00")
	b.press(".still a")
	b.passTheTest()
	b.pressText("Looked over: nothing new")
	b.pressText("Riding begins")
	b.pressText("1 up to 23.9 kg")
	b.pressText("1 up to 23.9 kg")
	b.has("2 turns, 2 riders")
	b.pressText("STOP")
	b.pressText("A break")

	b.killedAt(morning.Add(40 * time.Minute))
	b.press(".still a")
	b.has("2 turns, 2 riders")
	b.pressText("Looked over: nothing new")
	b.pressText("Riding begins")

	b.setClock(morning.Add(3*time.Hour + time.Minute))
	b.goTo("signs")
	b.has("STILL UP: oak-swing was to be down by 12:00")
	b.press(".still a")
	b.has("The card has lapsed")
	b.pressText("STOP")
	b.pressText("End of riding")
	b.choose("#bark", "rubbed")
	b.choose("#gear_back", "yes")
	b.press(`.next form.huge button`)
	b.has("It is down")
	if value[bool](b, `document.body.innerText.includes("STILL UP")`) {
		t.Error("still loud after take-down")
	}
	t.Logf("%d touches and typed values from the card to the ground", b.touches)
	b.press(`.trail li:last-child a`)
	b.has("2 turns, 2 riders")
}

// onOneSheet wants the page to print on one sheet of A4, in inches.
func (b *tab) onOneSheet() {
	b.t.Helper()
	var printed []byte
	b.do(chromedp.ActionFunc(func(ctx context.Context) (err error) {
		printed, _, err = page.PrintToPDF().WithPaperWidth(8.27).WithPaperHeight(11.69).Do(ctx)
		return err
	}))
	if folder := os.Getenv("BOUGHLINE_SHOTS"); folder != "" {
		if err := os.WriteFile(filepath.Join(folder, "day-card.pdf"), printed, 0o600); err != nil {
			b.t.Fatal(err)
		}
	}
	if n := len(regexp.MustCompile(`/Type\s*/Page\b`).FindAll(printed, -1)); n != 1 {
		b.t.Errorf("the card prints on %d sheets, want 1", n)
	}
}
