// Package worker holds what the app needs to run in the service worker of a
// browser: the worker's script, the page that installs it, and the engine,
// which is the same handler as at a desk, compiled for the browser.
package worker

import (
	"bytes"
	"crypto/sha256"
	"embed"
	"encoding/hex"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"mime"
	"net/http"
	"path"
	"slices"
	"sync"
	"time"
)

//go:embed files all:engine
var embedded embed.FS

// ErrNoEngine says that the program was built without the engine.
var ErrNoEngine = errors.New("this program was built without the engine of the phone's app; run make engine, then build it again")

// engineFiles are made by make engine.
var engineFiles = []string{"engine.wasm.gz", "wasm_exec.js"}

// scriptName is the script of the worker. It names the version, so that a
// browser sees that anything changed.
const scriptName = "worker.js"

// Files returns the files of the app for the phone by their names.
func Files() (map[string][]byte, error) { return gathered() }

var gathered = sync.OnceValues(gather)

func gather() (map[string][]byte, error) {
	files := map[string][]byte{}
	static, err := fs.ReadDir(embedded, "files")
	if err != nil {
		return nil, err
	}
	for _, entry := range static {
		if files[entry.Name()], err = embedded.ReadFile("files/" + entry.Name()); err != nil {
			return nil, err
		}
	}
	for _, name := range engineFiles {
		data, err := embedded.ReadFile("engine/" + name)
		if errors.Is(err, fs.ErrNotExist) {
			return nil, ErrNoEngine
		}
		if err != nil {
			return nil, err
		}
		files[name] = data
	}
	files[scriptName] = bytes.ReplaceAll(files[scriptName], []byte("VERSION"), []byte(version(files)))
	return files, nil
}

// version is a hash of all files.
func version(files map[string][]byte) string {
	sum := sha256.New()
	for _, name := range slices.Sorted(maps.Keys(files)) {
		fmt.Fprintf(sum, "%s %d\n", name, len(files[name]))
		sum.Write(files[name])
	}
	return hex.EncodeToString(sum.Sum(nil)[:8])
}

// policy is what a browser may do with the files before the worker answers.
// The worker's own script must be allowed to compile the engine.
const policy = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self'; connect-src 'self'; manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'"

// Handler serves the files; the program serves pages at the same path only
// through the worker, once that is installed.
func Handler() http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		files, err := Files()
		if err != nil {
			http.Error(w, err.Error(), http.StatusNotFound)
			return
		}
		name := path.Base(r.URL.Path)
		data, ok := files[name]
		if !ok { // any page of the app, before the worker is there
			name, data = "index.html", files["index.html"]
		}
		w.Header().Set("Content-Security-Policy", policy)
		w.Header().Set("X-Content-Type-Options", "nosniff")
		w.Header().Set("Cache-Control", "no-cache")
		w.Header().Set("Content-Type", kindOf(name))
		http.ServeContent(w, r, "", time.Time{}, bytes.NewReader(data))
	})
}

func kindOf(name string) string {
	switch path.Ext(name) {
	case ".gz":
		return "application/gzip"
	case ".webmanifest":
		return "application/manifest+json"
	}
	return mime.TypeByExtension(path.Ext(name))
}
