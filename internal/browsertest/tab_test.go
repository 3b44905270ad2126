package browsertest

import (
	"context"
	"fmt"
	"net/url"
	"os"
	"os/exec"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
)

// Sizes of screens.
var (
	phone = screen{"phone", 390, 844, true}
	desk  = screen{"desk", 1280, 900, false}
	paper = screen{"paper", 718, 1047, false} // A4 within margins of 10 mm, at 96 dots an inch
)

type screen struct {
	name          string
	width, height int64
	touch         bool
}

// patience is how long any wait may take before a test fails.
const patience = 90 * time.Second

// browserPath finds a browser. Where none is installed a test is skipped,
// except where BOUGHLINE_BROWSER=must says that there has to be one.
func browserPath(t testing.TB) string {
	t.Helper()
	for _, name := range []string{"chromium", "chromium-browser", "google-chrome"} {
		if path, err := exec.LookPath(name); err == nil {
			return path
		}
	}
	if os.Getenv("BOUGHLINE_BROWSER") == "must" {
		t.Fatal("no Chromium is installed")
	}
	t.Skip("no Chromium is installed; apt-get install chromium, then make browser")
	return ""
}

// tab is one page of a browser.
type tab struct {
	t    testing.TB
	ctx  context.Context
	base string // address of the app
	// asked holds the hosts that requests went to.
	asked map[string]bool
	// touches counts clicks and typed values.
	touches int
}

// open starts a browser on a profile folder.
func open(t testing.TB, profile, base string, s screen) (*tab, func()) {
	t.Helper()
	options := append(chromedp.DefaultExecAllocatorOptions[:],
		chromedp.ExecPath(browserPath(t)), chromedp.NoSandbox, chromedp.UserDataDir(profile), chromedp.WSURLReadTimeout(patience),
		chromedp.Flag("disable-features", "Translate,MediaRouter,OptimizationHints"), chromedp.Flag("disable-dev-shm-usage", true))
	alloc, stopAlloc := chromedp.NewExecAllocator(context.Background(), options...)
	ctx, stop := chromedp.NewContext(alloc)
	tb := &tab{t: t, ctx: ctx, base: base, asked: map[string]bool{}}
	chromedp.ListenTarget(ctx, func(event any) {
		switch e := event.(type) {
		case *network.EventRequestWillBeSent:
			if u, err := url.Parse(e.Request.URL); err == nil && u.Host != "" && strings.HasPrefix(u.Scheme, "http") {
				tb.asked[u.Host] = true
			}
		case *runtime.EventExceptionThrown:
			t.Errorf("the page's script failed: %v", e.ExceptionDetails.Error())
		}
	})
	tb.do(network.Enable(), chromedp.EmulateViewport(s.width, s.height), emulation.SetTouchEmulationEnabled(s.touch))
	closed := false
	done := func() {
		if !closed {
			closed = true
			if err := chromedp.Cancel(ctx); err != nil {
				t.Logf("closing the browser: %v", err)
			}
			stop()
			stopAlloc()
		}
	}
	t.Cleanup(done)
	return tb, done
}

func (b *tab) do(actions ...chromedp.Action) {
	b.t.Helper()
	ctx, cancel := context.WithTimeout(b.ctx, patience)
	defer cancel()
	if b.asked != nil && len(actions) == 0 {
		return
	}
	// The first Run of a context must not be under a timeout of its own.
	if err := chromedp.Run(b.ctx); err != nil {
		b.t.Fatal(err)
	}
	if err := chromedp.Run(ctx, actions...); err != nil {
		b.t.Fatalf("%v\n%s", err, b.text())
	}
}

// text is what the page shows, for messages.
func (b *tab) text() string {
	ctx, cancel := context.WithTimeout(b.ctx, 5*time.Second)
	defer cancel()
	var text string
	if err := chromedp.Run(ctx, chromedp.Evaluate(`location.href + "\n" + (document.body ? document.body.innerText : "")`, &text)); err != nil {
		return err.Error()
	}
	return text
}

// until waits for an expression to be true, over changes of the page.
func (b *tab) until(expression string) {
	b.t.Helper()
	ctx, cancel := context.WithTimeout(b.ctx, patience)
	defer cancel()
	for {
		err := chromedp.Run(ctx, chromedp.Poll(expression, nil, chromedp.WithPollingTimeout(patience)))
		if err == nil {
			return
		}
		if ctx.Err() != nil {
			b.t.Fatalf("waited in vain for %s: %v\n%s", expression, err, b.text())
		}
	}
}

// leave does something that leads to another page and waits for that. A press
// that a busy browser lets go by is made again, as a finger would.
func (b *tab) leave(action chromedp.Action) {
	b.t.Helper()
	const left = `!window.leaving && document.readyState === "complete"`
	b.do(chromedp.Evaluate(`window.leaving = true`, nil), action)
	if !b.soon(left) && value[bool](b, `window.leaving === true`) {
		b.t.Log("a press went by and is made again")
		b.do(action)
	}
	b.until(left)
}

// soon waits a shorter while and reports whether the expression became true.
func (b *tab) soon(expression string) bool {
	ctx, cancel := context.WithTimeout(b.ctx, patience/3)
	defer cancel()
	for ctx.Err() == nil {
		if chromedp.Run(ctx, chromedp.Poll(expression, nil, chromedp.WithPollingTimeout(patience/3))) == nil {
			return true
		}
	}
	return false
}

// goTo opens an address of the app.
func (b *tab) goTo(path string) {
	b.t.Helper()
	b.do(chromedp.Navigate(b.base + path))
	b.until(`document.readyState === "complete"`)
}

// middle finds an element by a selector or an XPath, brings it into sight and
// returns the middle of its first box.
const middle = `((what) => {
	const e = what.startsWith("(") ? document.evaluate(what, document, null, 9, null).singleNodeValue : document.querySelector(what);
	if (!e) return [];
	e.scrollIntoView({ block: "center", behavior: "instant" });
	const box = e.getClientRects()[0];
	return [box.left + box.width / 2, box.top + box.height / 2];
})`

// click presses the place where an element is, as a finger does.
func (b *tab) click(what string) chromedp.Action {
	return chromedp.ActionFunc(func(ctx context.Context) error {
		var at []float64
		if err := chromedp.Evaluate(fmt.Sprintf("%s(%q)", middle, what), &at).Do(ctx); err != nil {
			return err
		}
		if len(at) != 2 {
			return fmt.Errorf("there is no %s", what)
		}
		return chromedp.MouseClickXY(at[0], at[1]).Do(ctx)
	})
}

// press clicks what a selector finds and waits for the next page.
func (b *tab) press(selector string) {
	b.t.Helper()
	b.touches++
	b.leave(b.click(selector))
}

// pressText follows a link or presses a button with a text.
func (b *tab) pressText(text string) {
	b.t.Helper()
	b.touches++
	b.leave(b.click(fmt.Sprintf(`(//main//a[contains(normalize-space(.), '%[1]s')] | //main//button[contains(normalize-space(.), '%[1]s')])[1]`, text)))
}

// fill types into the field with a name.
func (b *tab) fill(name, text string) {
	b.t.Helper()
	b.touches++
	set := fmt.Sprintf(`(() => { const f = document.querySelector('[name="%s"]'); f.value = %q; f.dispatchEvent(new Event("input", { bubbles: true })); return f.value === %q })()`, name, text, text)
	if !value[bool](b, set) {
		b.t.Errorf("the field %s does not take %q", name, text)
	}
}

// value evaluates an expression, or the promise it returns.
func value[T any](b *tab, expression string) T {
	b.t.Helper()
	var result T
	b.do(chromedp.Evaluate(expression, &result, func(p *runtime.EvaluateParams) *runtime.EvaluateParams { return p.WithAwaitPromise(true) }))
	return result
}

func (b *tab) has(text string) {
	b.t.Helper()
	if !value[bool](b, fmt.Sprintf(`document.body.innerText.includes(%q)`, text)) {
		b.t.Errorf("the page does not say %q:\n%s", text, b.text())
	}
}
