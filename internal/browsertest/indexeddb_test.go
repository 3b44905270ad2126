package browsertest

import (
	"net/http"
	"net/http/httptest"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// suitePage runs a test program of Go in a page and keeps what it prints.
const suitePage = `<!DOCTYPE html><script src="wasm_exec.js"></script><script>
window.printed = "";
const decoder = new TextDecoder();
globalThis.fs.writeSync = (file, bytes) => { window.printed += decoder.decode(bytes); return bytes.length; };
const go = new Go();
go.argv = ["suite", "-test.v"];
go.exit = (code) => { window.code = code; };
WebAssembly.instantiateStreaming(fetch("suite.wasm"), go.importObject).then((w) => go.run(w.instance));
</script>`

// The suite of package store, on the database of a real browser.
func TestIndexedDBKeepsToTheSuite(t *testing.T) {
	browserPath(t)
	folder := t.TempDir()
	build := exec.Command("go", "test", "-c", "-o", filepath.Join(folder, "suite.wasm"), "boughline/store/indexeddb")
	build.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm")
	if out, err := build.CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	root, err := exec.Command("go", "env", "GOROOT").Output()
	if err != nil {
		t.Fatal(err)
	}
	script, err := os.ReadFile(filepath.Join(strings.TrimSpace(string(root)), "lib", "wasm", "wasm_exec.js"))
	if err != nil {
		t.Fatal(err)
	}
	mux := http.NewServeMux()
	mux.Handle("/suite.wasm", http.FileServer(http.Dir(folder)))
	mux.HandleFunc("/wasm_exec.js", func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/javascript")
		w.Write(script)
	})
	mux.HandleFunc("/{$}", func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/html")
		w.Write([]byte(suitePage))
	})
	server := httptest.NewServer(mux)
	t.Cleanup(server.Close)
	b, _ := open(t, t.TempDir(), server.URL+"/", desk)
	b.do(chromedp.Navigate(b.base))
	b.until(`window.code !== undefined`)
	printed := value[string](b, `window.printed`)
	if code := value[int](b, `window.code`); code != 0 || strings.Count(printed, "--- PASS") < 12 {
		t.Errorf("code %d\n%s", code, printed)
	}
}
