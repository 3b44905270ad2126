package cli

import (
	"bytes"
	"context"
	"crypto/rand"
	"errors"
	"fmt"
	"io"
	"net"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"time"

	"boughline/demo"
	"boughline/knowledge"
	"boughline/notebook"
	"boughline/store"
	"boughline/web"
	"boughline/web/worker"
)

type appCommand struct {
	Listen string `help:"Address to listen on." default:"127.0.0.1:8080" placeholder:"ADDR"`
	Data   string `help:"File that keeps what is written down." default:"boughline.db" placeholder:"FILE" type:"path"`
	Demo   bool   `help:"Put the demo site and its gear in where the file keeps no site."`
}

// Run serves the app until the program is told to stop.
func (c appCommand) Run(env Env) error {
	k, err := knowledge.Load()
	if err != nil {
		return err
	}
	if err := os.MkdirAll(filepath.Dir(c.Data), 0o755); err != nil {
		return err
	}
	kept, err := env.OpenStore(c.Data)
	if err != nil {
		return err
	}
	defer kept.Close()
	handler, err := desk(kept, k, c.Demo, env.Stderr)
	if err != nil {
		return err
	}
	listener, err := net.Listen("tcp", c.Listen)
	if err != nil {
		return err
	}
	fmt.Fprintf(env.Stdout, "The app is at http://%s/ and keeps its records in %s.\nStop it with Ctrl-C.\n", listener.Addr(), c.Data)
	return serve(env.Context, listener, ownHost(listener.Addr(), handler))
}

// desk is the app at a desk with the files of the phone's app beside it.
func desk(kept store.Backend, k *knowledge.Base, withDemo bool, log io.Writer) (http.Handler, error) {
	n := notebook.New(kept, k, time.Now)
	if withDemo {
		if err := addDemo(n); err != nil {
			return nil, err
		}
	}
	mux := http.NewServeMux()
	mux.Handle("/", web.New(web.Config{
		Notebook: n, Base: "/", NewID: newID, Today: today,
		Forms: siteForms(k), Open: openArchive, Sheets: siteSheets(k),
		Log: func(err error) { fmt.Fprintln(log, "boughline:", err) },
	}))
	mux.Handle("/field/", http.StripPrefix("/field", worker.Handler()))
	return mux, nil
}

func addDemo(n *notebook.Notebook) error {
	sites, err := n.Sites(context.Background())
	if err != nil || len(sites) > 0 {
		return err
	}
	if _, err = n.Import(context.Background(), demo.Survey(), "demo", notebook.Edit{What: "demo site"}); err != nil {
		return err
	}
	gear, err := n.Gear(context.Background())
	if err != nil || gear.Revision > 0 {
		return err
	}
	return n.ImportGear(context.Background(), demo.Register(), notebook.Edit{What: "demo register"})
}

// ownHost refuses requests by another name where the program listens to this
// computer alone: a page from elsewhere may have its name point here.
func ownHost(address net.Addr, h http.Handler) http.Handler {
	tcp, ok := address.(*net.TCPAddr)
	if !ok || !tcp.IP.IsLoopback() {
		return h
	}
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		host, _, err := net.SplitHostPort(r.Host)
		if err != nil {
			host = r.Host
		}
		if ip := net.ParseIP(strings.Trim(host, "[]")); host != "localhost" && (ip == nil || !ip.IsLoopback()) {
			http.Error(w, "this program answers on localhost only", http.StatusForbidden)
			return
		}
		h.ServeHTTP(w, r)
	})
}

func newID() string { return strings.ToLower(rand.Text()) }

func today() string { return time.Now().Format(time.DateOnly) }

// serve answers until the context ends, then lets open requests finish.
func serve(ctx context.Context, listener net.Listener, h http.Handler) error {
	server := &http.Server{Handler: h, ReadHeaderTimeout: 10 * time.Second}
	stopped := make(chan error, 1)
	go func() {
		<-ctx.Done()
		grace, cancel := context.WithTimeout(context.Background(), 5*time.Second)
		defer cancel()
		stopped <- server.Shutdown(grace)
	}()
	if err := server.Serve(listener); !errors.Is(err, http.ErrServerClosed) {
		return err
	}
	return <-stopped
}

type fieldCommand struct {
	Dir string `arg:"" help:"Folder to write, served as it is by any web host." type:"path"`
}

// Run writes the app for the phone as a static folder.
func (c fieldCommand) Run(env Env) error {
	files, err := worker.Files()
	if err != nil {
		return refusal{err}
	}
	for name, data := range files {
		path := filepath.Join(c.Dir, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			return err
		}
		if err := os.WriteFile(path, data, 0o644); err != nil {
			return err
		}
	}
	_, err = io.Copy(env.Stdout, bytes.NewBufferString(fmt.Sprintf("%d files written to %s. Serve the folder over https under any path.\n", len(files), c.Dir)))
	return err
}
