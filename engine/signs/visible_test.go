package signs

import (
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// Common practice, no published source: leaves tell nothing in winter, a still
// day shows no movement, toadstools stand in late summer and autumn.
func TestCouldShow(t *testing.T) {
	thin, broken := Sign{Needs: NeedsLeaves}, Sign{Needs: NeedsBareCrown}
	creak, tufts := Sign{Needs: NeedsWind}, Sign{Needs: NeedsToadstool}
	heave := Sign{HiddenBy: []Cover{Snow, Litter}}
	for _, c := range []struct {
		name string
		sign Sign
		in   Conditions
		want bool
	}{
		{"thin crown in leaf", thin, Conditions{Leaves: InLeaf}, true},
		{"thin crown in winter", thin, Conditions{Leaves: BareCrown}, false},
		{"thin crown while leaves come out", thin, Conditions{Leaves: PartLeaf}, false},
		{"thin crown, nobody says", thin, Conditions{}, false},
		{"broken ends in winter", broken, Conditions{Leaves: BareCrown}, true},
		{"broken ends in leaf", broken, Conditions{Leaves: InLeaf}, false},
		{"creaking in wind", creak, Conditions{Air: LimbsMove}, true},
		{"creaking in a breeze", creak, Conditions{Air: TwigsMove}, false},
		{"creaking on a still day", creak, Conditions{Air: StillAir}, false},
		{"creaking, nobody says", creak, Conditions{}, false},
		{"toadstools in October", tufts, Conditions{Toadstools: true}, true},
		{"toadstools in May", tufts, Conditions{}, false},
		{"heave", heave, Conditions{}, true},
		{"heave under snow", heave, Conditions{InTheWay: []Cover{Snow}}, false},
		{"heave beside ivy", heave, Conditions{InTheWay: []Cover{Ivy}}, true},
		{"a need that nobody knows", Sign{Needs: "moonlight"}, Conditions{Leaves: InLeaf, Air: LimbsMove, Toadstools: true}, false},
	} {
		if got := c.sign.CouldShow(c.in); got != c.want {
			t.Errorf("%s: could show %v, want %v", c.name, got, c.want)
		}
	}
}

// Knowing less, or having more in the way, never shows more.
func TestLessKnownShowsNoMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := Sign{Needs: rapid.SampledFrom(append(Needs(), NeedsNothing)).Draw(t, "needs"), HiddenBy: rapid.SliceOfDistinct(rapid.SampledFrom(Covers()), rapid.ID[Cover]).Draw(t, "hidden by")}
		c := Conditions{
			Leaves: rapid.SampledFrom([]Leaves{"", InLeaf, PartLeaf, BareCrown}).Draw(t, "leaves"), Air: rapid.SampledFrom([]Air{"", StillAir, TwigsMove, LimbsMove}).Draw(t, "air"),
			Toadstools: rapid.Bool().Draw(t, "toadstools"), InTheWay: rapid.SliceOfDistinct(rapid.SampledFrom(Covers()), rapid.ID[Cover]).Draw(t, "in the way"),
		}
		less := c
		switch rapid.IntRange(0, 3).Draw(t, "less") {
		case 0:
			less.Leaves = ""
		case 1:
			less.Air = ""
		case 2:
			less.Toadstools = false
		case 3:
			less.InTheWay = append(slices.Clone(c.InTheWay), rapid.SampledFrom(Covers()).Draw(t, "cover"))
		}
		if s.CouldShow(less) && !s.CouldShow(c) {
			t.Fatalf("%+v shows under %+v and not under %+v", s, less, c)
		}
	})
}

func TestGrowsOn(t *testing.T) {
	onAsh := Sign{Hosts: []string{"Fraxinus"}}
	for species, want := range map[string]bool{"Fraxinus excelsior": true, "Fraxinus": true, "": true, "Quercus robur": false, "Fraxinusx robur": false} {
		if got := onAsh.GrowsOn(species); got != want {
			t.Errorf("%q: %v, want %v", species, got, want)
		}
	}
	if !(Sign{}).GrowsOn("Quercus robur") {
		t.Error("a sign of any tree does not grow on oak")
	}
}

func TestMethodsKnowWhatIsBrought(t *testing.T) {
	for m, want := range map[Method]bool{Binoculars: true, Spade: true, OldPhoto: true, FourSides: false, WindyDay: false, ByArborist: false, "wand": false} {
		if m.Brought() != want {
			t.Errorf("%s: brought %v, want %v", m, m.Brought(), want)
		}
	}
}

func TestHazardAt(t *testing.T) {
	h := Hazard{Reach: 10, Near: Bars, Beyond: Question, From: 11, To: 2}
	if h.At(10, true) != Bars || h.At(10.1, true) != Question || h.At(99, false) != Bars || h.At(30, true) != Question || h.At(31, true) != None {
		t.Errorf("at 10 m %v, at 10.1 m %v, not known %v", h.At(10, true), h.At(10.1, true), h.At(99, false))
	}
	for month, want := range map[int]bool{10: false, 11: true, 12: true, 1: true, 2: true, 3: false} {
		if h.Expected(month) != want {
			t.Errorf("month %d: expected %v", month, h.Expected(month))
		}
	}
	if all := (Hazard{}); !all.Expected(7) {
		t.Error("a hazard of the whole year is not expected in July")
	}
	if summer := (Hazard{From: 4, To: 9}); summer.Expected(3) || !summer.Expected(4) || !summer.Expected(9) || summer.Expected(10) {
		t.Error("April to September is taken otherwise")
	}
}
