package cli

import (
	"testing"

	"boughline/knowledge"
	"boughline/sketch"
)

// TestEverySignIsDrawn and no drawing is of something else.
func TestEverySignIsDrawn(t *testing.T) {
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	for _, s := range k.Signs() {
		if _, ok := sketch.Of(s.ID); !ok {
			t.Errorf("%s (%s) has no drawing", s.ID, s.Name)
		}
	}
	for _, id := range sketch.Signs() {
		if _, ok := k.Sign(id); !ok {
			t.Errorf("%s is drawn and is no sign", id)
		}
	}
}
