package hangsearch

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"strings"
	"testing"

	"boughline/quantity"
	"boughline/survey"
)

// grove is three oaks: the second so near to the first that their
// swings need the same ground, the third far off.
func grove(t testing.TB) *survey.Survey {
	s := oak(t)
	first := s.Trees[0]
	first.Members, first.Unions = first.Members[:3], first.Unions[:1]
	s.Trees = nil
	for i, at := range [][2]float64{{0, 0}, {3, 8.5}, {90, 0}} { // the second along the swing line
		tree := first
		tree.ID = fmt.Sprintf("T%d", i+1)
		east, north := measured(at[0]), measured(at[1])
		tree.East, tree.North = &east, &north
		s.Trees = append(s.Trees, tree)
	}
	return s
}

func TestTreesThatNeedTheSameGround(t *testing.T) {
	r := search(t, grove(t), Options{Groups: []string{"small"}})
	told := map[string][]string{}
	for i := range r.Trees {
		if r.Trees[i].Best() == nil {
			t.Fatalf("nothing hangs on %s: %+v", r.Trees[i].ID, r.Trees[i].Places[0].Miss)
		}
		told[r.Trees[i].ID] = r.Trees[i].Overlaps
	}
	if got := strings.Join(append(told["T1"], told["T2"]...), " "); got != "T1" && got != "T2" {
		t.Errorf("of the two near trees %q is named; expected the one that comes first, by the other", got)
	}
	if len(told["T3"]) > 0 {
		t.Errorf("the far tree overlaps with %v", told["T3"])
	}
	for i := 1; i < len(r.Trees); i++ {
		if a, b := r.Trees[i-1].Places[0], r.Trees[i].Places[0]; b.compare(a, r.Aim) < 0 {
			t.Errorf("tree %s comes before the better %s", r.Trees[i-1].ID, r.Trees[i].ID)
		}
	}
}

// Trees are searched side by side; what is found does not depend on it.
func TestSearchIsRepeatable(t *testing.T) {
	s := grove(t)
	var told []string
	for range 2 {
		calls := 0
		r := search(t, s, Options{Groups: []string{"small"}, Progress: func(done, of int) {
			if calls++; done != calls || of != 6 {
				t.Errorf("call %d tells %d of %d", calls, done, of)
			}
		}})
		text, err := json.Marshal(r)
		if err != nil {
			t.Fatal(err)
		}
		told = append(told, string(text))
	}
	if told[0] != told[1] {
		t.Error("two searches of one site differ")
	}
}

func TestSearchStopsWhenToldTo(t *testing.T) {
	ctx, stop := context.WithCancel(context.Background())
	stop()
	if _, err := Search(ctx, grove(t), tables(), Options{}); !errors.Is(err, context.Canceled) {
		t.Errorf("got %v", err)
	}
}

// Where nothing serves, the nearest miss says what would: the mass that it
// names holds, one in fifty more does not.
func TestTheMassOfANearestMissHolds(t *testing.T) {
	s := grove(t)
	s.Trees = s.Trees[2:]
	for i := range s.Riders {
		if s.Riders[i].ID == "two-small" {
			heavy := survey.MeasuredMass{Value: 70, How: quantity.Weighed}
			s.Riders[i].Each = &heavy
		}
	}
	tried := 0
	for _, place := range search(t, s, Options{Groups: []string{"two-small"}, Amplitudes: []quantity.Angle{30 * quantity.Degree}}).Trees[0].Places {
		if place.Miss == nil || place.Miss.Changes[0].Code != "lighter" {
			continue
		}
		tried++
		mass := quantity.Mass(place.Miss.Changes[0].Value)
		for factor, holds := range map[quantity.Mass]bool{1: true, 1.02: false} {
			h := survey.Hang{ID: "h", Member: place.Limb, At: survey.MeasuredLength{Value: place.Miss.Along, How: quantity.Laser},
				Line: survey.ChosenLength{Value: max(place.Miss.Line, 2)}, Amplitude: survey.ChosenAngle{Value: 30 * quantity.Degree},
				SwingAzimuth: &survey.ChosenAngle{Value: place.Miss.Azimuth}, Riders: "two-small", Chain: chainFor(s)}
			lighter := *s
			lighter.Riders = append([]survey.Riders(nil), s.Riders...)
			for i := range lighter.Riders {
				if lighter.Riders[i].ID == "two-small" {
					each := survey.MeasuredMass{Value: mass / 2 * factor, SdStated: true, How: quantity.Weighed}
					lighter.Riders[i].Each = &each
				}
			}
			for _, c := range with(&lighter, h).Checks {
				if c.Code == place.Miss.Bind.Code && c.Where.Part == place.Miss.Bind.Part && (c.Margin >= 1-1e-3) != holds {
					t.Errorf("%s: %s has a margin of %v at %v times the mass that was named", place.Limb, c.Code, c.Margin, factor)
				}
			}
		}
	}
	if tried == 0 {
		t.Error("no miss names a mass")
	}
}
