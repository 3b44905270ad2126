package assess

import (
	"reflect"
	"slices"
	"testing"
)

// TestAReasonForDueGearMovesNoMargin gives the reason why a part is used
// although something stands against it: the checks stay as they were, and the
// hang becomes a departure to be signed for.
func TestAReasonForDueGearMovesNoMargin(t *testing.T) {
	plain := assessFirst(t, oak(t))
	s := oak(t)
	s.Chains[0].Parts[0].Item, s.Chains[0].Parts[0].Despite = "S1", "examined on Monday, nothing found; the paper is to follow"
	h := assessFirst(t, s)
	if !reflect.DeepEqual(h.Checks, plain.Checks) {
		t.Error("the reason moved a check")
	}
	if !gives(h, GearDespite, WithinLimits) || h.Outcome < max(plain.Outcome, WithinLimits) {
		t.Errorf("outcome %s after %s:%s", h.Outcome, plain.Outcome, codesOf(h))
	}
	if h.Limits == nil || !slices.Contains(h.Limits.Departures, string(GearDespite)) {
		t.Error("the departure is not to be signed for")
	}
}
