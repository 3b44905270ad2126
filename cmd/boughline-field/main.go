//go:build js && wasm

// Command boughline-field is the app inside the service worker of a browser.
// The worker's script hands it requests and gets answers.
package main

import (
	"crypto/rand"
	"os"
	"strings"
	"time"

	"boughline/knowledge"
	"boughline/notebook"
	"boughline/store/indexeddb"
	"boughline/web"
)

func main() {
	k, err := knowledge.Load()
	if err != nil {
		panic(err) // built in, a fault of the build
	}
	serve(web.New(web.Config{
		Notebook: notebook.New(indexeddb.New("boughline"), k, time.Now),
		Base:     os.Getenv("BOUGHLINE_BASE"), Field: true,
		NewID: func() string { return strings.ToLower(rand.Text()) },
		Today: func() string { return time.Now().Format(time.DateOnly) },
		Log:   func(err error) { println("boughline: " + err.Error()) },
	}))
}
