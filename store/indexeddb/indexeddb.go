//go:build js && wasm

// Package indexeddb keeps objects in the database of a browser.
package indexeddb

import (
	"context"
	"fmt"
	"sync"
	"syscall/js"
	"time"

	"boughline/store"
)

// One object store at version 1: what changes has its version inside records.
const (
	version   = 1
	storeName = "object"
)

// Store is one database. A browser may close it whenever the app is in the
// background, so it is opened anew where that happened.
type Store struct {
	name string

	mu sync.Mutex
	db js.Value // undefined while it is closed
}

// New returns the database of that name, which is opened by its first use.
func New(name string) *Store { return &Store{name: name, db: js.Undefined()} }

// Close implements store.Backend.
func (s *Store) Close() error {
	s.mu.Lock()
	defer s.mu.Unlock()
	if !s.db.IsUndefined() {
		s.db.Call("close")
		s.db = js.Undefined()
	}
	return nil
}

func (s *Store) open() (js.Value, error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	if !s.db.IsUndefined() {
		return s.db, nil
	}
	request := js.Global().Get("indexedDB").Call("open", s.name, version)
	upgrade := js.FuncOf(func(js.Value, []js.Value) any {
		request.Get("result").Call("createObjectStore", storeName)
		return nil
	})
	defer upgrade.Release()
	request.Set("onupgradeneeded", upgrade)
	db, err := wait(request)
	if err != nil {
		return js.Undefined(), fmt.Errorf("opening the database of the browser: %w", err)
	}
	s.db = db
	db.Set("onclose", s.whenClosed(db))
	return db, nil
}

// whenClosed forgets a connection that the browser closed.
func (s *Store) whenClosed(db js.Value) js.Func {
	return js.FuncOf(func(js.Value, []js.Value) any {
		go func() {
			s.mu.Lock()
			defer s.mu.Unlock()
			if s.db.Equal(db) {
				s.db = js.Undefined()
			}
		}()
		return nil
	})
}

// begin starts a transaction, on a new connection where the old one was
// dropped without a word.
func (s *Store) begin(mode string) (js.Value, error) {
	db, err := s.open()
	if err != nil {
		return js.Undefined(), err
	}
	tx, err := transaction(db, mode)
	if err == nil {
		return tx, nil
	}
	if err := s.Close(); err != nil {
		return js.Undefined(), err
	}
	if db, err = s.open(); err != nil {
		return js.Undefined(), err
	}
	return transaction(db, mode)
}

func transaction(db js.Value, mode string) (tx js.Value, err error) {
	defer catch(&err)
	options := js.Global().Get("Object").New()
	options.Set("durability", "strict")
	return db.Call("transaction", storeName, mode, options), nil
}

// Get implements store.Backend.
func (s *Store) Get(ctx context.Context, key string) (store.Object, error) {
	if err := ctx.Err(); err != nil {
		return store.Object{}, err
	}
	tx, err := s.begin("readonly")
	if err != nil {
		return store.Object{}, err
	}
	value, err := wait(tx.Call("objectStore", storeName).Call("get", key))
	if err != nil {
		return store.Object{}, fmt.Errorf("reading %s: %w", key, err)
	}
	if value.IsUndefined() {
		return store.Object{}, fmt.Errorf("%s: %w", key, store.ErrNotFound)
	}
	return objectOf(value), nil
}

// List implements store.Backend.
func (s *Store) List(ctx context.Context, prefix string) ([]store.Object, error) {
	if err := ctx.Err(); err != nil {
		return nil, err
	}
	tx, err := s.begin("readonly")
	if err != nil {
		return nil, err
	}
	span := js.Global().Get("IDBKeyRange").Call("bound", prefix, store.After(prefix), false, true)
	values, err := wait(tx.Call("objectStore", storeName).Call("getAll", span))
	if err != nil {
		return nil, fmt.Errorf("listing %s: %w", prefix, err)
	}
	list := make([]store.Object, values.Length())
	for i := range list {
		list[i] = objectOf(values.Index(i))
	}
	return list, nil
}

func objectOf(value js.Value) store.Object {
	data := make([]byte, value.Get("data").Get("length").Int())
	js.CopyBytesToGo(data, value.Get("data"))
	return store.Object{
		Key: value.Get("key").String(), Revision: value.Get("revision").Int(), At: time.UnixMilli(int64(value.Get("at").Float())).UTC(),
		What: value.Get("what").String(), Gone: value.Get("gone").Bool(), Data: data,
	}
}

func valueOf(o store.Object) js.Value {
	data := js.Global().Get("Uint8Array").New(len(o.Data))
	js.CopyBytesToJS(data, o.Data)
	value := js.Global().Get("Object").New()
	value.Set("key", o.Key)
	value.Set("revision", o.Revision)
	value.Set("at", float64(o.At.UnixMilli()))
	value.Set("what", o.What)
	value.Set("gone", o.Gone)
	value.Set("data", data)
	return value
}
