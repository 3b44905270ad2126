package browsertest

import (
	"fmt"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
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
func host(t *testing.T) (*httptest.Server, *notebook.Notebook) {
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
	kept, err := sqlite.Open(filepath.Join(t.TempDir(), "desk.db"))
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { kept.Close() })
	n := notebook.New(kept, k, time.Now)
	if _, err := n.Import(t.Context(), demo.Survey(), "demo", notebook.Edit{What: "demo site"}); err != nil {
		t.Fatal(err)
	}
	ids := 0
	mux := http.NewServeMux()
	mux.Handle("/", web.New(web.Config{
		Notebook: n, Base: "/", Today: func() string { return "2026-05-16" },
		NewID: func() string { ids++; return fmt.Sprintf("id%d", ids) },
		Log:   func(err error) { t.Log(err) },
	}))
	mux.Handle("/field/", http.StripPrefix("/field", worker.Handler()))
	server := httptest.NewServer(mux)
	t.Cleanup(server.Close)
	return server, n
}
