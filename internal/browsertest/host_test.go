package browsertest

import (
	"fmt"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"sync"
	"sync/atomic"
	"testing"
	"time"

	"boughline/demo"
	"boughline/knowledge"
	"boughline/notebook"
	"boughline/store/sqlite"
	"boughline/web"
	"boughline/web/worker"
)

// host is the program at a desk, on a database of its own.
func host(t testing.TB) (*httptest.Server, *notebook.Notebook) {
	t.Helper()
	server, n, _ := hostOn(t, filepath.Join(t.TempDir(), "desk.db"))
	return server, n
}

// hostOn is the same on a file, with the demo where the file is new, until it is
// closed.
func hostOn(t testing.TB, file string) (*httptest.Server, *notebook.Notebook, func()) {
	t.Helper()
	if _, err := worker.Files(); err != nil {
		if os.Getenv("BOUGHLINE_BROWSER") == "must" {
			t.Fatal(err)
		}
		t.Skip(err) // the engine is not built: `make browser` builds it and fails without
	}
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	kept, err := sqlite.Open(file)
	if err != nil {
		t.Fatal(err)
	}
	n := notebook.New(kept, k, time.Now)
	if sites, err := n.Sites(t.Context()); err != nil || len(sites) == 0 {
		if _, err := n.Import(t.Context(), demo.Survey(), "demo", notebook.Edit{What: "demo site"}); err != nil {
			t.Fatal(err)
		}
		if err := n.ImportGear(t.Context(), demo.Register(), notebook.Edit{What: "demo gear"}); err != nil {
			t.Fatal(err)
		}
	}
	var ids atomic.Int64
	mux := http.NewServeMux()
	mux.Handle("/", web.New(web.Config{
		Notebook: n, Base: "/", Today: func() string { return "2026-05-16" },
		NewID: func() string { return fmt.Sprintf("id%d-%d", time.Now().UnixNano(), ids.Add(1)) },
		Log:   func(err error) { t.Log(err) },
	}))
	mux.Handle("/field/", http.StripPrefix("/field", worker.Handler()))
	server := httptest.NewServer(mux)
	end := sync.OnceFunc(func() {
		server.Close()
		kept.Close()
	})
	t.Cleanup(end)
	return server, n, end
}
