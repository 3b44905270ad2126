package store_test

import (
	"strings"
	"testing"

	"boughline/store"

	"pgregory.net/rapid"
)

func TestKeysThatTwoBackendsMightReadDifferently(t *testing.T) {
	for _, key := range []string{"", "a b", "é", "a\x00", "a\n", strings.Repeat("a", store.MaxKey+1)} {
		if store.CheckKey(key) == nil {
			t.Errorf("%q was taken", key)
		}
	}
}

func TestSegmentsAreKeysOfTheirOwn(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := rapid.String().Draw(t, "a"), rapid.String().Draw(t, "b")
		x, y := store.Segment(a), store.Segment(b)
		if (a == b) != (x == y) {
			t.Fatalf("%q and %q give %q and %q", a, b, x, y)
		}
		if strings.ContainsAny(x, "/@") || len(x) > 0 && len(x) <= store.MaxKey && store.CheckKey(x) != nil {
			t.Fatalf("%q gives %q", a, x)
		}
	})
}
