package sqlite

import "fmt"

// LimitPages stands in for a full disk.
func LimitPages(s *Store, pages int) error {
	s.db.SetMaxOpenConns(1)
	var got int
	return s.db.QueryRow(fmt.Sprintf("PRAGMA max_page_count = %d", pages)).Scan(&got)
}
