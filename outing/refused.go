package outing

import (
	"fmt"
	"strings"

	"boughline/assess"
)

// Cause is why no card is issued.
type Cause string

// The causes.
const (
	NotRideable Cause = "outcome"   // the outcome is not one that may be put up
	Lapsed      Cause = "lapsed"    // a look, or the day of the document, is too old
	NoSuchHang  Cause = "hang"      // the document has no such tree or hang
	NotSigned   Cause = "signed"    // nobody signs for it
	BadTime     Cause = "take-down" // take-down is not later on the same day
	GearDue     Cause = "gear"      // the register says something against a part of the chain
)

// NoCard says why no card is issued. Reasons are those of the outcome that stand
// in the way, the governing one first.
type NoCard struct {
	Cause   Cause
	Hang    string
	Outcome assess.Outcome
	Reasons []assess.Reason
	Detail  string
}

// Error implements error.
func (n *NoCard) Error() string {
	text := fmt.Sprintf("no day card for %q", n.Hang)
	if n.Cause == NotRideable || n.Cause == Lapsed && len(n.Reasons) > 0 {
		text += ": the outcome is " + n.Outcome.String()
	}
	if n.Detail != "" {
		text += ": " + n.Detail
	}
	var codes []string
	for _, r := range n.Reasons {
		code := string(r.Code)
		if r.Zone != "" {
			code += " " + r.Zone
		}
		codes = append(codes, code)
	}
	if len(codes) > 0 {
		text += " (" + strings.Join(codes, ", ") + ")"
	}
	return text
}

// Refused is an event that does not fit where the outing stands. The outing is
// left as it was.
type Refused struct {
	Kind  Kind
	Stage Stage
	Fault string // what is wrong
	Do    string // what to do instead
}

// Error implements error.
func (r *Refused) Error() string {
	return fmt.Sprintf("%s is refused while the swing is %s: %s; %s", r.Kind, r.Stage, r.Fault, r.Do)
}
