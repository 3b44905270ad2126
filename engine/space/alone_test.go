package space

import (
	"testing"

	"pgregory.net/rapid"
)

// What is worked out alone is what TestExtremesCoverTheWholePath holds against
// a dense scan, and is refused as that is.
func TestFootAndFallAlone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g, s := randomGround(t), randomSwing(t)
		room, err := Clearances(g, s)
		if err != nil {
			t.Fatal(err)
		}
		fall, err := Fall(g, s)
		if err != nil {
			t.Fatal(err)
		}
		foot, err := FootClearance(g, s)
		if err != nil || foot != room.Foot {
			t.Fatalf("foot %+v, %v; want %+v", foot, err, room.Foot)
		}
		height, err := FallHeight(g, s)
		if err != nil || height != fall.Height {
			t.Fatalf("fall %v, %v; want %v", height, err, fall.Height)
		}
	})
	if _, err := FootClearance(Ground{}, Swing{}); err == nil {
		t.Error("FootClearance: no error without ground and line")
	}
	if _, err := FallHeight(Ground{}, Swing{}); err == nil {
		t.Error("FallHeight: no error without ground and line")
	}
}
