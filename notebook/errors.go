package notebook

import (
	"errors"
	"fmt"

	"boughline/survey"
)

// ErrNoSite, ErrNoTree and ErrNoChain say that a record does not exist.
var (
	ErrNoSite = errors.New("there is no such site")
	ErrNoTree = errors.New("there is no such tree")

	ErrNoChain = errors.New("there is no such chain")
)

// Again says that a form was taken before: what it asks for is done.
type Again struct{ To string } // the page that the form led to

// Error implements error.
func (e *Again) Error() string { return "this was saved before" }

// Invalid is a change after which the survey would not be right.
type Invalid struct{ Problems []survey.Problem }

// Error implements error.
func (e *Invalid) Error() string {
	return fmt.Sprintf("%d problems, the first: %s", len(e.Problems), e.Problems[0])
}

// Changed says that somebody else changed the same part since it was opened.
type Changed struct {
	// Before is the tree as it was opened, Now as it is kept.
	Before, Now Tree
}

// Error implements error.
func (e *Changed) Error() string {
	return fmt.Sprintf("tree %s: the same part was changed since revision %d, now it is revision %d", e.Now.ID, e.Before.Revision, e.Now.Revision)
}

// Damaged is a record that cannot be read. Its earlier versions may be.
type Damaged struct {
	Key      string
	Tree     string // id of the tree, as far as the key tells it
	Revision int
	Cause    error
}

// Error implements error.
func (e *Damaged) Error() string {
	return fmt.Sprintf("%s, revision %d: %v", e.Key, e.Revision, e.Cause)
}

// Unwrap returns the cause.
func (e *Damaged) Unwrap() error { return e.Cause }
