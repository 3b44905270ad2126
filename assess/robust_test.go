package assess_test

import (
	"encoding/json"
	"fmt"
	"reflect"
	"strings"
	"sync"
	"testing"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/survey"
	"boughline/survey/surveytest"
)

// anySite is site number n of those that are only just surveys: whatever
// survey.Validate accepts.
func anySite(n int) *survey.Survey { return surveytest.Site().Example(n) }

// assessAny assesses such a site and returns a panic as an error.
func assessAny(s *survey.Survey) (a assess.Assessment, err error) {
	defer func() {
		if p := recover(); p != nil {
			err = fmt.Errorf("panic: %v", p)
		}
	}()
	return assess.Assess(s, tables())
}

// anyAssessments is what follows for those sites; what cannot be assessed is
// left out, with its error.
var anyAssessments = sync.OnceValues(func() ([]assess.Assessment, []error) {
	list, errs := make([]assess.Assessment, sites()), make([]error, sites())
	each(sites(), func(n int) { list[n], errs[n] = assessAny(anySite(n)) })
	return list, errs
})

// Whatever a survey holds, it can be assessed, and a zone that nobody looked
// at never ends better than unfinished.
func TestAnySurveyIsAssessed(t *testing.T) {
	list, errs := anyAssessments()
	hangs, missing := 0, 0
	for n, a := range list {
		if errs[n] != nil {
			t.Errorf("site %d: %v", n, errs[n])
			continue
		}
		s := anySite(n)
		for _, h := range a.Hangs {
			hangs++
			if !lacksLook(s, h.Tree) {
				continue
			}
			missing++
			if h.Outcome < assess.Unfinished {
				t.Errorf("site %d, %s: %v, though a look is missing", n, h.ID, h.Outcome)
			}
		}
	}
	t.Logf("%d sites, %d hangs, %d of them on trees with a look missing", sites(), hangs, missing)
	if missing < sites()/4 {
		t.Errorf("%d hangs on trees with a look missing, want at least %d", missing, sites()/4)
	}
}

// lacksLook reports whether nobody looked at some zone of a tree at all.
func lacksLook(s *survey.Survey, tree string) bool {
	for _, t := range s.Trees {
		if t.ID != tree {
			continue
		}
		looked := map[string]bool{}
		for _, l := range t.Looks {
			looked[l.Zone] = looked[l.Zone] || l.State == survey.LookDone
		}
		return len(looked) < len(survey.Zones)
	}
	return false
}

// eachHang goes through the hangs of all drawn sites of both kinds.
func eachHang(do func(where string, h assess.Hang)) {
	for n, h := range baseline() {
		do(fmt.Sprintf("site %d", n), h)
	}
	list, _ := anyAssessments()
	for n, a := range list {
		for _, h := range a.Hangs {
			do(fmt.Sprintf("any site %d, %s", n, h.ID), h)
		}
	}
}

// What is written as JSON reads back the same, but for what is not written.
func TestAssessmentsReadBack(t *testing.T) {
	faults := 0
	eachHang(func(where string, h assess.Hang) {
		if err := readBack(h); err != nil {
			if faults++; faults <= 3 {
				t.Errorf("%s: %v", where, err)
			}
		}
	})
	if faults > 0 {
		t.Errorf("%d hangs do not read back", faults)
	}
}

func readBack(h assess.Hang) error {
	data, err := json.Marshal(h)
	if err != nil {
		return err
	}
	var back assess.Hang
	if err := json.Unmarshal(data, &back); err != nil {
		return err
	}
	for i := range back.Reasons {
		a, b := &h.Reasons[i], &back.Reasons[i]
		b.Sign, b.Effect, b.Others, b.StandIns, b.Rule, b.Hazard = a.Sign, a.Effect, a.Others, a.StandIns, a.Rule, a.Hazard
	}
	if !reflect.DeepEqual(h, back) {
		return fmt.Errorf("%s reads back differently", data)
	}
	return nil
}

// plainLimb is a limb with a second station and a hang where one says.
const plainLimb = `{
 "boughline": 1, "site": "plain", "day": "2026-05-16",
 "riders": [{"id": "r", "count": 1, "each": "40 kg weighed"}],
 "chains": [{"id": "c", "parts": [{"name": "line", "kind": "rope", "material": "textile", "mark": {"strength": "60 kN", "kind": "breaking"}}]}],
 "trees": [{"id": "t", "species": "Quercus alba",
  "members": [
   {"id": "stem", "length": "12 m laser", "stations": [{"at": "1.3 m", "diameter": "600 mm taped"}]},
   {"id": "limb", "parent": "stem", "rises_at": "5 m laser", "azimuth": "90 deg compass", "inclination": "0 deg clinometer",
    "length": "8 m laser", "stations": [{"at": "0.3 m", "diameter": "300 mm taped"}, {"at": "%.8f m", "diameter": "250 mm taped"}]}],
  "hangs": [{"id": "h", "member": "limb", "at": "%v m taped", "line": "3 m", "amplitude": "45 deg", "riders": "r", "chain": "c"}]}]}`

func plainHang(t *testing.T, station, at float64) assess.Hang {
	t.Helper()
	s, problems, err := survey.Read(strings.NewReader(fmt.Sprintf(plainLimb, station, at)))
	if err != nil || len(problems) > 0 {
		t.Fatal(err, problems)
	}
	return judge(s)
}

// A hang at the very union, where the limb does not give, can be written.
func TestHangAtTheUnionIsWritten(t *testing.T) {
	if err := readBack(plainHang(t, 2.6, 0)); err != nil {
		t.Error(err)
	}
}

// Plausible trees can be worked out, forks too.
func TestPlausibleTreesAreComputed(t *testing.T) {
	failed := 0
	for n, h := range baseline() {
		for _, r := range h.Reasons {
			if r.Code != assess.NotComputed {
				continue
			}
			if failed++; failed <= 3 {
				t.Errorf("site %d: %s", n, r.Text)
			}
		}
	}
	if failed > 0 {
		t.Errorf("%d of %d sites cannot be worked out", failed, sites())
	}
}

// A station a hair's breadth to the side changes nothing: 2.5375 m along this
// limb is where a part of its own weight is put.
func TestStationsAHairApart(t *testing.T) {
	want := checksOf(plainHang(t, 2.5375-1e-3, 2.5), assess.LimbJerk)
	for _, apart := range []float64{1e-4, 1e-5, 1e-6, 1e-7, 1e-8} {
		h := plainHang(t, 2.5375+apart, 2.5)
		for _, r := range h.Reasons {
			if r.Code == assess.NotComputed {
				t.Errorf("%g m apart: %s", apart, r.Text)
			}
		}
		for name, c := range checksOf(h, assess.LimbJerk) {
			if !near(c.Margin, want[name].Margin, 1e-3) {
				t.Errorf("%g m apart: %s has a margin of %.5f, of %.5f a millimetre farther", apart, name, c.Margin, want[name].Margin)
			}
		}
	}
}

// Every code that occurs has words, and none of them promises anything.
func TestEveryCodeHasWords(t *testing.T) {
	said := map[string]bool{}
	say := func(where, code, text string) {
		said[code] = true
		if text == "" || strings.Contains(text, "%!") || strings.Contains(strings.ToLower(text), "safe") {
			t.Errorf("%s: %s says %q", where, code, text)
		}
	}
	eachHang(func(where string, h assess.Hang) {
		say(where, h.Outcome.String(), wording.Outcome(h.Outcome))
		for _, r := range h.Reasons {
			say(where, string(r.Code), wording.Reason(r))
			if r.Change.Code != "" {
				say(where, r.Change.Code, wording.Change(r.Change))
			}
		}
		for _, c := range h.Checks {
			say(where, string(c.Code), wording.Check(c))
			say(where, string(c.Code), wording.Formula(c.Code))
			say(where, string(c.Code), wording.Basis(c.Code))
		}
	})
	t.Logf("%d codes occur", len(said))
	const least = 60
	if len(said) < least {
		t.Errorf("%d codes occur, want at least %d", len(said), least)
	}
}
