//go:build js && wasm

package indexeddb

import (
	"context"
	"fmt"
	"syscall/js"

	"boughline/store"
)

// Apply implements store.Backend. All of it happens in callbacks of the
// browser, one write after the other: a transaction ends as soon as nobody
// asks it anything.
func (s *Store) Apply(ctx context.Context, batch []store.Write) error {
	if err := ctx.Err(); err != nil {
		return err
	}
	if len(batch) == 0 {
		return nil
	}
	values := make([]js.Value, len(batch))
	for i, w := range batch {
		values[i] = valueOf(w.Object)
	}
	tx, err := s.begin("readwrite")
	if err != nil {
		return err
	}
	w := &writer{tx: tx, place: tx.Call("objectStore", storeName), batch: batch, values: values, done: make(chan error, 1)}
	defer w.listen()()
	w.next()
	return <-w.done
}

// writer goes through a batch inside one transaction.
type writer struct {
	tx, place js.Value
	batch     []store.Write
	values    []js.Value
	at        int
	request   js.Value
	found     js.Func
	err       error // why it was given up
	done      chan error
}

// listen waits for the end of the transaction; what it returns lets go of the
// callbacks.
func (w *writer) listen() func() {
	complete := js.FuncOf(func(js.Value, []js.Value) any { w.done <- nil; return nil })
	abort := js.FuncOf(func(js.Value, []js.Value) any {
		if w.err == nil {
			w.err = errorOf(w.tx.Get("error"))
		}
		w.done <- w.err
		return nil
	})
	w.found = js.FuncOf(func(js.Value, []js.Value) any { w.compare(); return nil })
	w.tx.Set("oncomplete", complete)
	w.tx.Set("onabort", abort)
	return func() {
		complete.Release()
		abort.Release()
		w.found.Release()
	}
}

// next asks what is kept under the key of the next write.
func (w *writer) next() {
	if w.at == len(w.batch) {
		return
	}
	w.request = w.place.Call("get", w.batch[w.at].Key)
	w.request.Set("onsuccess", w.found)
}

// compare writes where the revision is right, and gives all up where not.
func (w *writer) compare() {
	revision := 0
	if kept := w.request.Get("result"); !kept.IsUndefined() {
		revision = kept.Get("revision").Int()
	}
	if w.err = w.batch[w.at].Check(revision); w.err != nil {
		w.tx.Call("abort")
		return
	}
	if w.err = w.put(); w.err != nil {
		w.tx.Call("abort")
		return
	}
	w.at++
	w.next()
}

func (w *writer) put() (err error) {
	defer catch(&err)
	w.place.Call("put", w.values[w.at], w.batch[w.at].Key)
	return nil
}

// wait returns the result of a request.
func wait(request js.Value) (js.Value, error) {
	done := make(chan error, 1)
	success := js.FuncOf(func(js.Value, []js.Value) any { done <- nil; return nil })
	failure := js.FuncOf(func(js.Value, []js.Value) any { done <- errorOf(request.Get("error")); return nil })
	defer success.Release()
	defer failure.Release()
	request.Set("onsuccess", success)
	request.Set("onerror", failure)
	if err := <-done; err != nil {
		return js.Undefined(), err
	}
	return request.Get("result"), nil
}

// errorOf makes an error of one of the browser.
func errorOf(value js.Value) error {
	if value.IsNull() || value.IsUndefined() {
		return fmt.Errorf("the browser gave up without saying why")
	}
	name, message := value.Get("name").String(), value.Get("message").String()
	if name == "QuotaExceededError" {
		return fmt.Errorf("%w (%s)", store.ErrFull, message)
	}
	return fmt.Errorf("%s: %s", name, message)
}

// catch turns what the browser throws into an error.
func catch(err *error) {
	switch thrown := recover().(type) {
	case nil:
	case js.Error:
		*err = errorOf(thrown.Value)
	default:
		panic(thrown)
	}
}
