package assess

import "fmt"

// Outcome is what follows for one hang. A greater outcome is a worse one.
type Outcome int

// The ladder of outcomes. Hang and WithinLimits both mean: may be put up and
// load-tested; riding needs the passed load test of the day.
const (
	MayHang Outcome = iota
	WithinLimits
	Unfinished
	AskArborist
	Leave
)

var outcomeCodes = [...]string{"hang", "hang-within-limits", "unfinished", "ask-arborist", "leave"}

// Outcomes lists the ladder from the best to the worst.
func Outcomes() []Outcome { return []Outcome{MayHang, WithinLimits, Unfinished, AskArborist, Leave} }

// String returns the code of the outcome, for example "hang-within-limits".
func (o Outcome) String() string { return outcomeCodes[o] }

// Rideable reports whether the hang may be put up and load-tested.
func (o Outcome) Rideable() bool { return o <= WithinLimits }

// MarshalText writes the code.
func (o Outcome) MarshalText() ([]byte, error) { return []byte(o.String()), nil }

// UnmarshalText reads the code.
func (o *Outcome) UnmarshalText(text []byte) error {
	for i, code := range outcomeCodes {
		if code == string(text) {
			*o = Outcome(i)
			return nil
		}
	}
	return fmt.Errorf("%q is no outcome; expected one of %v", text, outcomeCodes)
}
