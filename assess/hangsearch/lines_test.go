package hangsearch

import (
	"testing"

	"boughline/assess"

	"pgregory.net/rapid"
)

// windowed is a spot at which lines from one length to another serve: longer
// ones meet the ground, shorter ones fall from too high.
func windowed(from, to centimetres) lines {
	return lines{shortest: 200, longest: 600, try: func(line centimetres) assess.Short {
		switch {
		case line > to:
			return assess.Short{Code: assess.FootClearance, Margin: 1 - float64(line-to)/1000}
		case line < from:
			return assess.Short{Code: assess.FallHeight, Margin: 1 - float64(from-line)/1000}
		}
		return assess.Short{Margin: 1.5}
	}}
}

// Whatever the window, down to a single centimetre, it is found whole, with
// the checks that bound it.
func TestAnyWindowIsFound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		from := centimetres(rapid.IntRange(150, 650).Draw(t, "from"))
		to := from + centimetres(rapid.IntRange(0, 200).Draw(t, "wide"))
		runs, bind, at := windowed(from, to).runs()
		if from > 600 || to < 200 {
			if len(runs) > 0 || bind.Holds() || at == 0 {
				t.Fatalf("nothing serves, found %v with %v at %d", runs, bind, at)
			}
			return
		}
		if len(runs) != 1 || runs[0].from != max(from, 200) || runs[0].to != min(to, 600) {
			t.Fatalf("lines from %d to %d serve, found %v", from, to, runs)
		}
		if r := runs[0]; (r.longer == nil) != (to >= 600) || r.longer != nil && r.longer.Code != assess.FootClearance {
			t.Fatalf("beyond %d cm: %v", r.to, r.longer)
		}
		if r := runs[0]; (r.shorter == nil) != (from <= 200) || r.shorter != nil && r.shorter.Code != assess.FallHeight {
			t.Fatalf("below %d cm: %v", r.from, r.shorter)
		}
	})
}
