package knowledge

import (
	"slices"
	"strings"
	"testing"

	"boughline/engine/signs"
	"boughline/source"
)

// The defaults are house values: what an urgency does on the load path, above
// the people and elsewhere on the tree.
func TestDefaultEffects(t *testing.T) {
	b := base(t)
	for u, want := range map[signs.Urgency]signs.ByPlacement{
		signs.Stop:       {OnLoadPath: signs.Bars, AbovePeople: signs.Bars, Elsewhere: signs.Remark},
		signs.StopBelow:  {OnLoadPath: signs.Remark, AbovePeople: signs.BarsUntilCleared, Elsewhere: signs.Remark},
		signs.Expert:     {OnLoadPath: signs.Arborist, AbovePeople: signs.Arborist, Elsewhere: signs.Remark},
		signs.LookCloser: {OnLoadPath: signs.CloserLook, AbovePeople: signs.CloserLook, Elsewhere: signs.Remark},
		signs.NotSeen:    {OnLoadPath: signs.CloserLook, AbovePeople: signs.CloserLook, Elsewhere: signs.Remark},
		signs.LimitUse:   {OnLoadPath: signs.Limit, AbovePeople: signs.Limit, Elsewhere: signs.Remark},
		signs.Repeat:     {OnLoadPath: signs.Again, AbovePeople: signs.Again, Elsewhere: signs.Remark},
		signs.Ask:        {OnLoadPath: signs.Question, AbovePeople: signs.Question, Elsewhere: signs.Remark},
		signs.Note:       {OnLoadPath: signs.Remark, AbovePeople: signs.Remark, Elsewhere: signs.Remark},
		signs.GoodSign:   {OnLoadPath: signs.Remark, AbovePeople: signs.Remark, Elsewhere: signs.Remark},
	} {
		if got := b.DefaultEffects(u, signs.Member); got != want {
			t.Errorf("%s: %v, want %v", u, got, want)
		}
	}
}

func TestSignsFollowTheDefaultsOrSayWhyNot(t *testing.T) {
	b := base(t)
	if len(b.Signs()) < 70 {
		t.Errorf("only %d signs", len(b.Signs()))
	}
	for _, s := range b.Signs() {
		departs := s.Effects() != b.DefaultEffects(s.Urgency, s.Scope)
		if departs != (s.Departure != "") {
			t.Errorf("%s: departs is %v, the reason %q", s.ID, departs, s.Departure)
		}
		if !s.Effects().Ordered() {
			t.Errorf("%s: a worse placement weighs less: %v", s.ID, s.Effects())
		}
	}
}

func TestEverySignInEveryPlacement(t *testing.T) {
	for _, s := range base(t).Signs() {
		for placement, want := range map[signs.Placement]signs.Effect{
			{}:                                    s.Elsewhere,
			{OnLoadPath: true}:                    s.OnLoadPath,
			{AbovePeople: true}:                   s.AbovePeople,
			{OnLoadPath: true, AbovePeople: true}: max(s.OnLoadPath, s.AbovePeople),
		} {
			if got := signs.Judge(s, placement, signs.Open).Effect; got != want {
				t.Errorf("%s in %+v: %v, want %v", s.ID, placement, got, want)
			}
		}
	}
}

// Common practice, no published source: these mean another tree or another
// limb, wherever they are or only where they bear on the hang.
func TestSignsOfTheTrade(t *testing.T) {
	b := base(t)
	onPath := signs.Placement{OnLoadPath: true}
	overhead := signs.Placement{AbovePeople: true}
	for _, c := range []struct {
		id    string
		place signs.Placement
		want  signs.Effect
	}{
		{"base-09", signs.Placement{}, signs.Bars},         // brittle crust at the base
		{"base-10", signs.Placement{}, signs.Bars},         // black laces under loose bark
		{"base-11", signs.Placement{}, signs.Bars},         // big brackets
		{"base-05", signs.Placement{}, signs.Bars},         // hollow knock at the base
		{"root_plate-09", signs.Placement{}, signs.Bars},   // toadstools in lines along roots
		{"root_plate-02", signs.Placement{}, signs.Bars},   // a lifted side
		{"root_plate-04", signs.Placement{}, signs.Bars},   // a hand's room under roots
		{"root_plate-05", signs.Placement{}, signs.Bars},   // severed roots
		{"ground-01b", signs.Placement{}, signs.Bars},      // paving over roots
		{"stem-22", signs.Placement{}, signs.Bars},         // movement in the lowest 1.2 m
		{"surroundings-04", signs.Placement{}, signs.Bars}, // power line
		{"crown-15", signs.Placement{}, signs.Bars},        // shaggy brackets high in an ash
		{"crown-16", overhead, signs.Remark},               // a bit of fungus on a dead twig
		{"crown-17", onPath, signs.Remark},                 // sway in the top
		{"limb-02", onPath, signs.Bars},                    // crack in the limb in use
		{"limb-02", signs.Placement{}, signs.Remark},       // the same on the far side
		{"limb-08", onPath, signs.Bars},                    // limb that turns sharply up
		{"limb-14", onPath, signs.Bars},                    // creaking
		{"limb-19", onPath, signs.Bars},                    // bulge on the limb in use
		{"limb-07", onPath, signs.Bars},                    // very long limb
		{"limb-20", overhead, signs.Bars},                  // pointed ridge above the people
		{"union-01", onPath, signs.Bars},                   // included bark is never loaded
		{"crown-06", overhead, signs.BarsUntilCleared},     // dead wood above people
		{"crown-13", overhead, signs.CloserLook},           // ivy hides what had to be seen
	} {
		s, ok := b.Sign(c.id)
		if !ok {
			t.Errorf("no sign %s", c.id)
			continue
		}
		if got := signs.Judge(s, c.place, signs.Open).Effect; got != c.want {
			t.Errorf("%s (%s) in %+v: %v, want %v", s.ID, s.Name, c.place, got, c.want)
		}
	}
	if _, ok := b.Sign("crown-99"); ok {
		t.Error("a sign that does not exist was found")
	}
}

func TestSignsAreComplete(t *testing.T) {
	b := base(t)
	concerns := []string{"load_path", "falling_from_above", "tree_health", "people_health", "law", "habitat"}
	zone := 0
	for _, s := range b.Signs() {
		for _, text := range []string{s.Name, s.LookFor, s.MayMean, s.WorseIf, s.CloserLook} {
			if strings.TrimSpace(text) == "" {
				t.Errorf("%s has an empty text", s.ID)
			}
		}
		for _, c := range s.Concerns {
			if !slices.Contains(concerns, c) {
				t.Errorf("%s: unknown concern %q", s.ID, c)
			}
		}
		if len(s.Methods) == 0 {
			t.Errorf("%s names no way to look closer", s.ID)
		}
		for _, id := range s.StandIns {
			if other, ok := b.Sign(id); !ok || other.Needs == s.Needs && s.Needs != signs.NeedsNothing {
				t.Errorf("%s: %s cannot stand in", s.ID, id)
			}
		}
		if s.Needs != signs.NeedsNothing && len(s.StandIns) == 0 && s.Instead == "" && s.Urgency != signs.GoodSign {
			t.Errorf("%s cannot always show and names no stand-in", s.ID)
		}
		if !strings.HasPrefix(s.ID, string(s.Zone)) {
			t.Errorf("%s stands in the zone %s", s.ID, s.Zone)
		}
		at := slices.Index(signs.Zones(), s.Zone)
		if at < zone {
			t.Errorf("%s breaks the order from the crown down", s.ID)
		}
		zone = at
	}
}

// A row from memory says so by the kind of its governing source.
func TestMemoryStaysMarked(t *testing.T) {
	for _, s := range base(t).Signs() {
		kind := s.Refs[0].Source.Kind
		unread := kind == source.Memory || kind == source.Practice || kind == source.House
		if s.FromMemory != unread && !s.PartlyFromMemory {
			t.Errorf("%s: from memory is %v, its source is of kind %s", s.ID, s.FromMemory, kind)
		}
	}
}
