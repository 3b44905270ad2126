package exchange

import "fmt"

// Refusal says why a file is not taken in. Nothing of it was used.
type Refusal struct {
	File  string // within the archive, empty for the archive itself
	Fault string
	Do    string
}

// Error implements error.
func (r *Refusal) Error() string {
	if r.File == "" {
		return fmt.Sprintf("the archive %s; %s", r.Fault, r.Do)
	}
	return fmt.Sprintf("%q in the archive %s; %s", r.File, r.Fault, r.Do)
}

const (
	getAnew  = "get it anew from where it was made"
	makeAnew = "have it written anew by this program's export"
)
