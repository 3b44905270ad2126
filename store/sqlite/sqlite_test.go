package sqlite_test

import (
	"database/sql"
	"errors"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"boughline/store"
	"boughline/store/sqlite"
	"boughline/store/storetest"
)

func open(t *testing.T, file string) *sqlite.Store {
	t.Helper()
	s, err := sqlite.Open(file)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { s.Close() })
	return s
}

func TestStore(t *testing.T) {
	storetest.Run(t, func(t *testing.T) storetest.Open {
		file := filepath.Join(t.TempDir(), "trees and #1?.db")
		return func(t *testing.T) store.Backend { return open(t, file) }
	})
}

func TestTwoProgramsOnOneFile(t *testing.T) {
	file := filepath.Join(t.TempDir(), "data.db")
	one, other := open(t, file), open(t, file)
	first := []store.Put{{Key: "k", Data: []byte("1")}}
	if err := store.Apply(t.Context(), one, time.Now(), first); err != nil {
		t.Fatal(err)
	}
	var conflict *store.Conflict
	if err := store.Apply(t.Context(), other, time.Now(), first); !errors.As(err, &conflict) {
		t.Errorf("got %v, want a conflict", err)
	}
}

func TestFullDisk(t *testing.T) {
	file := filepath.Join(t.TempDir(), "data.db")
	s := open(t, file)
	if err := sqlite.LimitPages(s, 20); err != nil {
		t.Fatal(err)
	}
	err := store.Apply(t.Context(), s, time.Now(), []store.Put{{Key: "k", Data: make([]byte, 1<<20)}})
	if !errors.Is(err, store.ErrFull) {
		t.Errorf("got %v, want %v", err, store.ErrFull)
	}
	if err := store.Apply(t.Context(), s, time.Now(), []store.Put{{Key: "k", Data: []byte("small")}}); err != nil {
		t.Errorf("after a full disk: %v", err)
	}
}

func TestNewerTableIsRefused(t *testing.T) {
	file := filepath.Join(t.TempDir(), "data.db")
	db, err := sql.Open("sqlite", file)
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	if _, err := db.Exec("PRAGMA user_version = 9"); err != nil {
		t.Fatal(err)
	}
	if _, err := sqlite.Open(file); err == nil || !strings.Contains(err.Error(), "version 9") {
		t.Errorf("got %v", err)
	}
}
