package storetest

import (
	"testing"

	"boughline/store"
)

func TestMemory(t *testing.T) {
	Run(t, func(*testing.T) Open {
		m := NewMemory()
		return func(*testing.T) store.Backend { return m }
	})
}
