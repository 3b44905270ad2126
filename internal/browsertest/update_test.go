package browsertest

import (
	"bytes"
	"net/http"
	"net/http/httptest"
	"path"
	"strings"
	"sync/atomic"
	"testing"

	"boughline/web/worker"
)

// aging serves the files of the app for the phone, and later those of another
// version, whole or broken.
type aging struct {
	fresh  atomic.Bool
	broken atomic.Bool
}

// ServeHTTP implements http.Handler.
func (a *aging) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	name := path.Base(r.URL.Path)
	if name == "engine.wasm.gz" && a.broken.Load() {
		http.Error(w, "no engine here", http.StatusInternalServerError)
		return
	}
	if name != "worker.js" || !a.fresh.Load() {
		worker.Handler().ServeHTTP(w, r)
		return
	}
	kept := httptest.NewRecorder()
	worker.Handler().ServeHTTP(kept, httptest.NewRequest(http.MethodGet, "/worker.js", nil))
	for head, values := range kept.Header() {
		if head != "Content-Length" {
			w.Header()[head] = values
		}
	}
	w.Write(bytes.Replace(kept.Body.Bytes(), []byte(`const version = "`), []byte(`const version = "next `), 1))
}

// ask lets the browser look for a new version.
const ask = `navigator.serviceWorker.getRegistration().then((r) => r.update()).then(() => true, () => false)`

// A new version is offered and taken only when somebody presses; one that does
// not boot is not offered, and the old one goes on.
func TestANewVersionIsOffered(t *testing.T) {
	files := &aging{}
	host(t) // skips without an engine
	server := httptest.NewServer(http.StripPrefix("/field", files))
	t.Cleanup(server.Close)
	b, _ := open(t, t.TempDir(), server.URL+"/field/", phone)
	b.install()
	b.newSite("Before the update")

	files.fresh.Store(true)
	files.broken.Store(true)
	b.do()
	value[bool](b, `(async () => {
		const r = await navigator.serviceWorker.getRegistration();
		const gone = new Promise((done) => r.addEventListener("updatefound", () => {
			const w = r.installing;
			w.addEventListener("statechange", () => { if (w.state === "redundant") done(true); });
		}, { once: true }));
		r.update().catch(() => {});
		return await gone;
	})()`)
	if value[bool](b, `document.getElementById("update").hidden === false`) {
		t.Error("a version that does not boot is offered")
	}
	b.goTo("")
	b.has("Before the update")

	files.broken.Store(false)
	value[bool](b, ask)
	b.until(`document.getElementById("update").hidden === false`)
	b.has("A new version of the app is ready.")
	names := value[[]string](b, `caches.keys()`)
	if len(names) < 2 {
		t.Errorf("caches %q, want the old version beside the new one", names)
	}
	b.press("[data-update]")
	b.has("Before the update")
	b.until(`caches.keys().then((k) => k.length === 1)`)
	if names := value[[]string](b, `caches.keys()`); !strings.Contains(names[0], "next ") {
		t.Errorf("caches %q", names)
	}
}
