// Package storetest is what every backend of package store must do.
package storetest

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"slices"
	"sync"
	"testing"
	"time"

	"boughline/store"
)

// Open opens the place under test, again with all that was written to it.
type Open func(t *testing.T) store.Backend

// Run runs the suite. fresh returns an Open of a place of its own for each
// test.
func Run(t *testing.T, fresh func(t *testing.T) Open) {
	for _, c := range []struct {
		name string
		test func(*testing.T, Open)
	}{
		{"what is written reads back", readsBack},
		{"what was never written is not found", notFound},
		{"lists keep the order of keys", ordered},
		{"a batch is taken whole or not at all", wholeOrNothing},
		{"a write on an older revision is refused", refusesOlder},
		{"a key twice in one batch counts up", twiceInBatch},
		{"every version stays", versionsStay},
		{"deleting is a version", deletingIsAVersion},
		{"what is written stays after closing", staysAfterClosing},
		{"many writers lose nothing", manyWriters},
		{"large bytes", largeBytes},
		{"a cancelled call writes nothing", cancelled},
	} {
		t.Run(c.name, func(t *testing.T) { c.test(t, fresh(t)) })
	}
}

var (
	ctx = context.Background()
	day = time.Date(2026, 5, 16, 9, 30, 0, 123e6, time.UTC)
)

func write(key string, revision int, text string) store.Write {
	return store.Write{Object: store.Object{Key: key, Revision: revision, At: day, What: "what of " + text, Data: []byte(text)}}
}

func apply(t *testing.T, b store.Backend, batch ...store.Write) {
	t.Helper()
	if err := b.Apply(ctx, batch); err != nil {
		t.Fatal(err)
	}
}

func same(a, b store.Object) bool {
	return a.Key == b.Key && a.Revision == b.Revision && a.At.Equal(b.At) && a.What == b.What && a.Gone == b.Gone && bytes.Equal(a.Data, b.Data)
}

func readsBack(t *testing.T, open Open) {
	b := open(t)
	want := write("a/b", 1, "text with \x00, é and \"quotes\"")
	apply(t, b, want)
	got, err := b.Get(ctx, "a/b")
	if err != nil || !same(got, want.Object) {
		t.Errorf("got %+v, %v; want %+v", got, err, want.Object)
	}
	empty := store.Write{Object: store.Object{Key: "empty", Revision: 1, At: day, Gone: true}}
	apply(t, b, empty)
	if got, err := b.Get(ctx, "empty"); err != nil || !same(got, empty.Object) {
		t.Errorf("got %+v, %v; want %+v", got, err, empty.Object)
	}
}

func notFound(t *testing.T, open Open) {
	b := open(t)
	if o, err := b.Get(ctx, "never"); !errors.Is(err, store.ErrNotFound) || o.Revision != 0 {
		t.Errorf("got %+v, %v", o, err)
	}
	if list, err := b.List(ctx, "never"); err != nil || len(list) != 0 {
		t.Errorf("got %v, %v", list, err)
	}
}

func ordered(t *testing.T, open Open) {
	b := open(t)
	keys := []string{"b/~", "b/a", "b", "a/z", "b/A", "b/_", "c/a", "b/0", "b/a/b"}
	for _, key := range keys {
		apply(t, b, write(key, 1, key))
	}
	list, err := b.List(ctx, "b/")
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, o := range list {
		got = append(got, o.Key)
	}
	if want := []string{"b/0", "b/A", "b/_", "b/a", "b/a/b", "b/~"}; !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
	if all, err := b.List(ctx, ""); err != nil || len(all) != len(keys) {
		t.Errorf("an empty prefix lists %d of %d, %v", len(all), len(keys), err)
	}
}

func wholeOrNothing(t *testing.T, open Open) {
	b := open(t)
	apply(t, b, write("taken", 1, "first"))
	err := b.Apply(ctx, []store.Write{write("new", 1, "x"), write("taken", 1, "second")})
	var conflict *store.Conflict
	if !errors.As(err, &conflict) || conflict.Key != "taken" || conflict.Rests != 0 || conflict.Found != 1 {
		t.Errorf("got %v", err)
	}
	if _, err := b.Get(ctx, "new"); !errors.Is(err, store.ErrNotFound) {
		t.Errorf("half a batch was written: %v", err)
	}
	if o, _ := b.Get(ctx, "taken"); string(o.Data) != "first" {
		t.Errorf("got %q", o.Data)
	}
}

func refusesOlder(t *testing.T, open Open) {
	b := open(t)
	apply(t, b, write("k", 1, "1"))
	apply(t, b, write("k", 2, "2"))
	for _, revision := range []int{1, 2, 4} {
		var conflict *store.Conflict
		if err := b.Apply(ctx, []store.Write{write("k", revision, "late")}); !errors.As(err, &conflict) {
			t.Errorf("revision %d on revision 2: %v", revision, err)
		}
	}
}

func twiceInBatch(t *testing.T, open Open) {
	b := open(t)
	apply(t, b, write("k", 1, "1"), write("k", 2, "2"))
	if o, err := b.Get(ctx, "k"); err != nil || o.Revision != 2 || string(o.Data) != "2" {
		t.Errorf("got %+v, %v", o, err)
	}
}

func put(key string, rests int, text string) store.Put {
	return store.Put{Key: key, Rests: rests, What: text, Data: []byte(text)}
}

func versionsStay(t *testing.T, open Open) {
	b := open(t)
	for i := range 12 {
		if err := store.Apply(ctx, b, day, []store.Put{put("tree/oak", i, fmt.Sprint(i+1)), put("tree/oak2", i, "other")}); err != nil {
			t.Fatal(err)
		}
	}
	list, err := store.Versions(ctx, b, "tree/oak")
	if err != nil || len(list) != 12 {
		t.Fatalf("%d versions, %v", len(list), err)
	}
	for i, o := range list {
		if o.Revision != 12-i || string(o.Data) != fmt.Sprint(12-i) || o.Key != "tree/oak" {
			t.Errorf("version %d: %+v", i, o)
		}
	}
	if o, err := store.Version(ctx, b, "tree/oak", 3); err != nil || string(o.Data) != "3" || o.Revision != 3 {
		t.Errorf("got %+v, %v", o, err)
	}
	if all, err := store.List(ctx, b, "tree/"); err != nil || len(all) != 2 {
		t.Errorf("the newest ones: %v, %v", all, err)
	}
}

func deletingIsAVersion(t *testing.T, open Open) {
	b := open(t)
	gone := store.Put{Key: "k", Rests: 1, What: "deleted", Gone: true}
	for _, batch := range [][]store.Put{{put("k", 0, "1")}, {gone}} {
		if err := store.Apply(ctx, b, day, batch); err != nil {
			t.Fatal(err)
		}
	}
	o, err := store.Get(ctx, b, "k")
	if !errors.Is(err, store.ErrNotFound) || o.Revision != 2 {
		t.Errorf("got %+v, %v", o, err)
	}
	if list, err := store.List(ctx, b, "k"); err != nil || len(list) != 0 {
		t.Errorf("got %v, %v", list, err)
	}
	if o, err := store.Version(ctx, b, "k", 1); err != nil || string(o.Data) != "1" {
		t.Errorf("got %+v, %v", o, err)
	}
	if err := store.Apply(ctx, b, day, []store.Put{put("k", 2, "back")}); err != nil {
		t.Error(err)
	}
}

func staysAfterClosing(t *testing.T, open Open) {
	b := open(t)
	apply(t, b, write("k", 1, "kept"))
	if err := b.Close(); err != nil {
		t.Fatal(err)
	}
	if o, err := open(t).Get(ctx, "k"); err != nil || string(o.Data) != "kept" {
		t.Errorf("got %+v, %v", o, err)
	}
}

func manyWriters(t *testing.T, open Open) {
	b := open(t)
	const writers, each = 4, 5
	var group sync.WaitGroup
	for range writers {
		group.Go(func() {
			for range each {
				if err := addOne(b); err != nil {
					t.Error(err)
				}
			}
		})
	}
	group.Wait()
	o, err := store.Get(ctx, b, "sum")
	if err != nil || len(o.Data) != writers*each || o.Revision != writers*each {
		t.Errorf("%d of %d writes are left, revision %d, %v", len(o.Data), writers*each, o.Revision, err)
	}
}

// addOne makes the text one longer, however often others come first.
func addOne(b store.Backend) error {
	for {
		err := store.Update(ctx, b, day, "sum", func(o store.Object) ([]store.Put, error) {
			return []store.Put{{Key: "sum", Rests: o.Revision, Data: append(slices.Clone(o.Data), 'x')}}, nil
		})
		var conflict *store.Conflict
		if !errors.As(err, &conflict) {
			return err
		}
	}
}

func largeBytes(t *testing.T, open Open) {
	b := open(t)
	data := make([]byte, 12<<20)
	for i := range data {
		data[i] = byte(i * 7)
	}
	if err := store.Apply(ctx, b, day, []store.Put{{Key: "bytes/1", Data: data, Once: true}}); err != nil {
		t.Fatal(err)
	}
	if o, err := b.Get(ctx, "bytes/1"); err != nil || !bytes.Equal(o.Data, data) {
		t.Errorf("%d bytes came back, %v", len(o.Data), err)
	}
	if list, err := store.Versions(ctx, b, "bytes/1"); err != nil || len(list) != 0 {
		t.Errorf("bytes written once have %d versions, %v", len(list), err)
	}
}

func cancelled(t *testing.T, open Open) {
	b := open(t)
	stopped, cancel := context.WithCancel(ctx)
	cancel()
	if err := b.Apply(stopped, []store.Write{write("k", 1, "x")}); !errors.Is(err, context.Canceled) {
		t.Errorf("got %v", err)
	}
	if _, err := b.Get(ctx, "k"); !errors.Is(err, store.ErrNotFound) {
		t.Errorf("got %v", err)
	}
}
