package storetest

import (
	"context"
	"fmt"
	"maps"
	"slices"
	"strings"
	"sync"

	"boughline/store"
)

// Memory is a backend for tests of what stands above a store. It keeps to the
// suite like the real ones.
type Memory struct {
	mu      sync.Mutex
	objects map[string]store.Object
	// Fail is returned by the next writes while it is set.
	Fail error
}

// NewMemory returns an empty one.
func NewMemory() *Memory { return &Memory{objects: map[string]store.Object{}} }

// Get implements store.Backend.
func (m *Memory) Get(ctx context.Context, key string) (store.Object, error) {
	m.mu.Lock()
	defer m.mu.Unlock()
	o, ok := m.objects[key]
	if !ok {
		return store.Object{}, fmt.Errorf("%s: %w", key, store.ErrNotFound)
	}
	return o, ctx.Err()
}

// List implements store.Backend.
func (m *Memory) List(ctx context.Context, prefix string) ([]store.Object, error) {
	m.mu.Lock()
	defer m.mu.Unlock()
	var list []store.Object
	for _, key := range slices.Sorted(maps.Keys(m.objects)) {
		if strings.HasPrefix(key, prefix) {
			list = append(list, m.objects[key])
		}
	}
	return list, ctx.Err()
}

// Apply implements store.Backend.
func (m *Memory) Apply(ctx context.Context, batch []store.Write) error {
	m.mu.Lock()
	defer m.mu.Unlock()
	if err := ctx.Err(); err != nil {
		return err
	}
	if m.Fail != nil {
		return m.Fail
	}
	next := maps.Clone(m.objects)
	for _, w := range batch {
		if err := w.Check(next[w.Key].Revision); err != nil {
			return err
		}
		w.Data = slices.Clone(w.Data)
		next[w.Key] = w.Object
	}
	m.objects = next
	return nil
}

// Close implements store.Backend.
func (m *Memory) Close() error { return nil }
