//go:build js && wasm

package indexeddb_test

import (
	"crypto/rand"
	"testing"

	"boughline/store"
	"boughline/store/indexeddb"
	"boughline/store/storetest"
)

func TestStore(t *testing.T) {
	storetest.Run(t, func(t *testing.T) storetest.Open {
		name := "test " + rand.Text()
		return func(t *testing.T) store.Backend {
			s := indexeddb.New(name)
			t.Cleanup(func() { s.Close() })
			return s
		}
	})
}
