// Package sqlite keeps objects in one file of an SQLite database.
package sqlite

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"net/url"
	"time"

	"boughline/store"

	"modernc.org/sqlite"
	sqlite3 "modernc.org/sqlite/lib"
)

// version is that of the one table. Records carry versions of their own, so it
// does not change with them.
const version = 1

const table = `CREATE TABLE IF NOT EXISTS object (
	key      TEXT PRIMARY KEY,
	revision INTEGER NOT NULL,
	at       INTEGER NOT NULL, -- milliseconds since 1970
	what     TEXT NOT NULL,
	gone     INTEGER NOT NULL,
	data     BLOB NOT NULL
) STRICT`

// Store is a database file.
type Store struct{ db *sql.DB }

// Open opens the file, and makes it where it is missing. Writes are on the
// disk when Apply returns.
func Open(file string) (*Store, error) {
	address := url.URL{Scheme: "file", Opaque: (&url.URL{Path: file}).EscapedPath()}
	address.RawQuery = "_txlock=immediate&_pragma=busy_timeout(10000)&_pragma=journal_mode(wal)&_pragma=synchronous(full)"
	db, err := sql.Open("sqlite", address.String())
	if err != nil {
		return nil, fmt.Errorf("opening %s: %w", file, err)
	}
	if err := prepare(db); err != nil {
		db.Close()
		return nil, fmt.Errorf("opening %s: %w", file, err)
	}
	return &Store{db}, nil
}

func prepare(db *sql.DB) error {
	var found int
	if err := db.QueryRow("PRAGMA user_version").Scan(&found); err != nil {
		return err
	}
	if found > version {
		return fmt.Errorf("the file has version %d of the table; expected at most %d: open it with the program that wrote it, or a later one", found, version)
	}
	if _, err := db.Exec(table); err != nil {
		return err
	}
	_, err := db.Exec(fmt.Sprintf("PRAGMA user_version = %d", version))
	return err
}

// Close implements store.Backend.
func (s *Store) Close() error { return s.db.Close() }

const columns = "SELECT key, revision, at, what, gone, data FROM object"

type scanner interface{ Scan(...any) error }

func scan(row scanner) (store.Object, error) {
	var o store.Object
	var at int64
	err := row.Scan(&o.Key, &o.Revision, &at, &o.What, &o.Gone, &o.Data)
	o.At = time.UnixMilli(at).UTC()
	return o, err
}

// Get implements store.Backend.
func (s *Store) Get(ctx context.Context, key string) (store.Object, error) {
	o, err := scan(s.db.QueryRowContext(ctx, columns+" WHERE key = ?", key))
	if errors.Is(err, sql.ErrNoRows) {
		return store.Object{}, fmt.Errorf("%s: %w", key, store.ErrNotFound)
	}
	if err != nil {
		return store.Object{}, fmt.Errorf("reading %s: %w", key, err)
	}
	return o, nil
}

// List implements store.Backend.
func (s *Store) List(ctx context.Context, prefix string) ([]store.Object, error) {
	rows, err := s.db.QueryContext(ctx, columns+" WHERE key >= ? AND key < ? ORDER BY key", prefix, store.After(prefix))
	if err != nil {
		return nil, fmt.Errorf("listing %s: %w", prefix, err)
	}
	defer rows.Close()
	var list []store.Object
	for rows.Next() {
		o, err := scan(rows)
		if err != nil {
			return nil, fmt.Errorf("listing %s: %w", prefix, err)
		}
		list = append(list, o)
	}
	return list, rows.Err()
}

// Apply implements store.Backend.
func (s *Store) Apply(ctx context.Context, batch []store.Write) error {
	tx, err := s.db.BeginTx(ctx, nil)
	if err != nil {
		return fmt.Errorf("writing: %w", err)
	}
	defer tx.Rollback() // does nothing after Commit
	for _, w := range batch {
		if err := write(ctx, tx, w); err != nil {
			return err
		}
	}
	return full(tx.Commit())
}

func write(ctx context.Context, tx *sql.Tx, w store.Write) error {
	var found int
	err := tx.QueryRowContext(ctx, "SELECT revision FROM object WHERE key = ?", w.Key).Scan(&found)
	if err != nil && !errors.Is(err, sql.ErrNoRows) {
		return fmt.Errorf("writing %s: %w", w.Key, err)
	}
	if err := w.Check(found); err != nil {
		return err
	}
	data := w.Data
	if data == nil {
		data = []byte{}
	}
	_, err = tx.ExecContext(ctx, "INSERT OR REPLACE INTO object VALUES (?, ?, ?, ?, ?, ?)",
		w.Key, w.Revision, w.At.UnixMilli(), w.What, w.Gone, data)
	return full(err)
}

// full names a full disk by the error of package store.
func full(err error) error {
	var e *sqlite.Error
	if errors.As(err, &e) && e.Code()&0xff == sqlite3.SQLITE_FULL {
		return fmt.Errorf("%w (%v)", store.ErrFull, err)
	}
	return err
}
