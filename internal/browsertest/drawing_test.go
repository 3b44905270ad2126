package browsertest

import (
	"testing"

	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// seen is how wide the part of the first drawing is that is seen, and where it begins.
func (b *tab) seen() (x, width float64) {
	b.t.Helper()
	view := value[[]float64](b, `document.querySelector("[data-drawing] svg").getAttribute("viewBox").split(" ").map(Number)`)
	return view[0], view[2]
}

// A drawing is enlarged by buttons, keys and two fingers, and a limb of it is
// reached and followed with the keyboard alone.
func TestADrawingIsEnlarged(t *testing.T) {
	server, _ := host(t)
	b, _ := open(t, t.TempDir(), server.URL+"/", phone)
	b.goTo("site/demo/tree/T1")
	b.until(`document.querySelector("[data-drawing=wired]")`)
	press := func(step string) { b.do(b.click(`[data-drawing] [data-step="` + step + `"]`)) }
	_, whole := b.seen()
	press("in")
	press("in")
	from, large := b.seen()
	if large >= whole/2 {
		t.Errorf("two steps lead from %v to %v", whole, large)
	}
	b.do(chromedp.KeyEvent(kb.ArrowRight))
	if to, width := b.seen(); to <= from || width != large {
		t.Errorf("the arrow moves from %v to %v", from, to)
	}
	press("fit")
	if x, width := b.seen(); x != 0 || width != whole {
		t.Errorf("fit shows %v from %v on", width, x)
	}
	b.pinch()
	if _, width := b.seen(); width >= whole*0.75 {
		t.Errorf("two fingers lead from %v to %v", whole, width)
	}
	press("fit")
	b.do(chromedp.Evaluate(`document.querySelector("[data-drawing] svg a").focus()`, nil))
	name := value[string](b, `document.activeElement.getAttribute("aria-label")`)
	b.leave(chromedp.KeyEvent(kb.Enter))
	if path := value[string](b, `location.pathname`); name == "" || path == "/site/demo/tree/T1" {
		t.Errorf("the part %q leads to %s", name, path)
	}
}

// pinch spreads two fingers over the first drawing.
func (b *tab) pinch() {
	b.t.Helper()
	at := value[[]float64](b, middle+`("[data-drawing] svg")`)
	fingers := func(apart float64) []*input.TouchPoint {
		return []*input.TouchPoint{{X: at[0] - apart/2, Y: at[1], ID: 1}, {X: at[0] + apart/2, Y: at[1], ID: 2}}
	}
	b.do(input.DispatchTouchEvent(input.TouchStart, fingers(60)), input.DispatchTouchEvent(input.TouchMove, fingers(90)),
		input.DispatchTouchEvent(input.TouchMove, fingers(130)), input.DispatchTouchEvent(input.TouchEnd, nil))
}
