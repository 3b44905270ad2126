//go:build js && wasm

package main

import (
	"bytes"
	"fmt"
	"net/http"
	"syscall/js"
)

// serve gives the worker's script a function that answers one request, and
// never returns.
func serve(h http.Handler) {
	answer := js.FuncOf(func(_ js.Value, args []js.Value) any {
		request, err := requestOf(args)
		return promise(func() (js.Value, error) {
			if err != nil {
				return js.Undefined(), err
			}
			a := &answer{head: http.Header{}, status: http.StatusOK}
			h.ServeHTTP(a, request)
			return a.response(), nil
		})
	})
	js.Global().Call("boughlineReady", answer)
	select {}
}

// requestOf takes method, address, headers in pairs and the body's bytes.
func requestOf(args []js.Value) (*http.Request, error) {
	body := []byte{}
	if !args[3].IsNull() {
		body = make([]byte, args[3].Get("length").Int())
		js.CopyBytesToGo(body, args[3])
	}
	r, err := http.NewRequest(args[0].String(), args[1].String(), bytes.NewReader(body))
	if err != nil {
		return nil, err
	}
	for i := 0; i+1 < args[2].Length(); i += 2 {
		r.Header.Add(args[2].Index(i).String(), args[2].Index(i+1).String())
	}
	r.Host = js.Global().Get("location").Get("host").String()
	return r, nil
}

// answer collects what a handler writes.
type answer struct {
	head   http.Header
	status int
	body   bytes.Buffer
	begun  bool
}

func (a *answer) Header() http.Header { return a.head }

func (a *answer) WriteHeader(status int) {
	if !a.begun {
		a.status, a.begun = status, true
	}
}

func (a *answer) Write(data []byte) (int, error) {
	a.begun = true
	return a.body.Write(data)
}

func (a *answer) response() js.Value {
	head := js.Global().Get("Headers").New()
	for name, values := range a.head {
		for _, v := range values {
			head.Call("append", name, v)
		}
	}
	options := js.Global().Get("Object").New()
	options.Set("status", a.status)
	options.Set("headers", head)
	body := js.Null() // some answers must not have one
	if a.body.Len() > 0 {
		body = js.Global().Get("Uint8Array").New(a.body.Len())
		js.CopyBytesToJS(body, a.body.Bytes())
	}
	return js.Global().Get("Response").New(body, options)
}

// promise runs work in a goroutine of its own: a callback of the browser must
// not wait.
func promise(work func() (js.Value, error)) js.Value {
	executor := js.FuncOf(func(_ js.Value, args []js.Value) any {
		resolve, reject := args[0], args[1]
		go func() {
			defer func() {
				if cause := recover(); cause != nil {
					reject.Invoke(js.Global().Get("Error").New(fmt.Sprint(cause)))
				}
			}()
			value, err := work()
			if err != nil {
				reject.Invoke(js.Global().Get("Error").New(err.Error()))
				return
			}
			resolve.Invoke(value)
		}()
		return nil
	})
	defer executor.Release() // the browser calls it at once
	return js.Global().Get("Promise").New(executor)
}
