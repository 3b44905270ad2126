package browsertest

import (
	"os"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// axeRun lists what the accessibility rules of axe-core (WCAG 2.0 to 2.2, A
// and AA, and best practice) find serious or critical.
const axeRun = `(async () => {
	const found = await axe.run(document, { resultTypes: ["violations"] });
	return found.violations.filter((v) => v.impact === "serious" || v.impact === "critical")
		.map((v) => v.id + ": " + v.help + " " + v.nodes.map((n) => n.target.join(" ")).slice(0, 3).join(" | "));
})()`

// Every page, in every ink, at both sizes of screen. axe-core is by Deque
// Systems, MPL 2.0; make browser fetches it.
func TestNothingSeriousForAxe(t *testing.T) {
	file := os.Getenv("BOUGHLINE_AXE")
	if file == "" {
		t.Skip("BOUGHLINE_AXE names no copy of axe-core; make browser fetches one") // it comes from npm, which make test does without
	}
	script, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	server, _ := host(t)
	for _, s := range []screen{phone, desk} {
		for _, ink := range []string{"light", "dark", "sun"} {
			b, quit := open(t, t.TempDir(), server.URL+"/", s)
			b.goTo("settings")
			b.fill("ink", ink)
			b.pressText("Save")
			for _, p := range pages {
				b.goTo(p.path)
				b.settle()
				b.do(chromedp.Evaluate(string(script)+";true", nil))
				for _, fault := range value[[]string](b, axeRun) {
					t.Errorf("%s, %s, %s: %s", p.name, s.name, ink, fault)
				}
				if wide := value[int](b, `document.documentElement.scrollWidth - document.documentElement.clientWidth`); wide > 0 {
					t.Errorf("%s, %s: the page is %d px wider than the screen", p.name, s.name, wide)
				}
			}
			for asked := range b.asked {
				if asked != strings.TrimPrefix(server.URL, "http://") {
					t.Errorf("a request went to %s", asked)
				}
			}
			quit()
		}
	}
}
