package assess_test

import (
	"fmt"
	"runtime"
	"sync"
	"testing"

	"boughline/assess"
	"boughline/knowledge"
	"boughline/survey"
)

var tables = sync.OnceValue(func() *knowledge.Base {
	k, err := knowledge.Load()
	if err != nil {
		panic(err)
	}
	return k
})

// baseline is what follows for every drawn site as it is.
var baseline = sync.OnceValue(func() []assess.Hang {
	list := make([]assess.Hang, sites())
	each(sites(), func(n int) { list[n] = judge(siteOf(n)) })
	return list
})

// each runs a function for 0 to n-1 on all processors.
func each(n int, f func(int)) {
	var wg sync.WaitGroup
	workers := runtime.GOMAXPROCS(0)
	for w := range workers {
		wg.Go(func() {
			for i := w; i < n; i += workers {
				f(i)
			}
		})
	}
	wg.Wait()
}

// judge assesses a drawn site and returns its one hang.
func judge(s *survey.Survey) assess.Hang {
	a, err := assess.Assess(s, tables())
	if err != nil {
		panic(err)
	}
	return a.Hangs[0]
}

// pair is a site before and after a change; site is the one after it.
type pair struct {
	before, after assess.Hang
	site          *survey.Survey
}

// changed compares every drawn site with the same site after a change.
func changed(change func(draw, *survey.Survey)) func(int) pair {
	return func(n int) pair {
		s := siteOf(n)
		change(drawOf(2, n), s)
		return pair{baseline()[n], judge(s), s}
	}
}

// hold makes a pair of every site and reports where a property does not hold.
// It logs the share of pairs with different outcomes and fails where that is
// less than asked: a change that hardly ever matters tests nothing.
func hold(t *testing.T, leastChanged float64, pairOf func(int) pair, property func(pair) []string) {
	t.Helper()
	baseline()
	var mu sync.Mutex
	var different, broken int
	each(sites(), func(n int) {
		p := pairOf(n)
		faults := property(p)
		mu.Lock()
		defer mu.Unlock()
		if p.before.Outcome != p.after.Outcome {
			different++
		}
		if len(faults) > 0 {
			if broken++; broken <= 5 {
				t.Errorf("site %d: %v", n, faults)
			}
		}
	})
	t.Logf("%d pairs, %d with different outcomes, %d broken", sites(), different, broken)
	if !testing.Short() && float64(different) < leastChanged*float64(sites()) {
		t.Errorf("%d of %d pairs have different outcomes, want at least %.0f", different, sites(), leastChanged*float64(sites()))
	}
}

// rounding is by how much a margin may rise: the swing angle that governs is
// found to 0.0002 degrees only.
const rounding = 1e-6

// key names a check of a hang. Where the weakest part governs, the part is no
// part of the name.
func key(c assess.Check) string {
	if c.Code == assess.GearLink || c.Code == assess.LimbJerk {
		return string(c.Code)
	}
	return string(c.Code) + " " + c.Where.Part
}

// checksOf are the checks of a hang with one of the codes, all of them without.
func checksOf(h assess.Hang, codes ...assess.Code) map[string]assess.Check {
	list := map[string]assess.Check{}
	for _, c := range h.Checks {
		if len(codes) == 0 || contains(codes, c.Code) {
			list[key(c)] = c
		}
	}
	return list
}

func contains(codes []assess.Code, code assess.Code) bool {
	for _, c := range codes {
		if c == code {
			return true
		}
	}
	return false
}

// noBetter says which checks have a greater margin after a change, or lead to
// a better outcome by themselves.
func noBetter(codes ...assess.Code) func(pair) []string {
	return func(p pair) (faults []string) {
		after := checksOf(p.after, codes...)
		for name, before := range checksOf(p.before, codes...) {
			c, ok := after[name]
			switch {
			case !ok:
				faults = append(faults, name+" is gone")
			case c.Margin > before.Margin*(1+rounding):
				faults = append(faults, fmt.Sprintf("%s: margin from %.6g to %.6g", name, before.Margin, c.Margin))
			case c.Alone < before.Alone:
				faults = append(faults, fmt.Sprintf("%s: alone from %v to %v", name, before.Alone, c.Alone))
			}
		}
		return faults
	}
}

// noBetterOutcome says whether the hang has a better outcome after a change.
func noBetterOutcome(p pair) []string {
	if p.after.Outcome < p.before.Outcome {
		return []string{fmt.Sprintf("outcome from %v (%s) to %v (%s)", p.before.Outcome, p.before.Reasons[0].Code, p.after.Outcome, firstCode(p.after))}
	}
	return nil
}

func firstCode(h assess.Hang) assess.Code {
	if len(h.Reasons) == 0 {
		return ""
	}
	return h.Reasons[0].Code
}

func both(properties ...func(pair) []string) func(pair) []string {
	return func(p pair) (faults []string) {
		for _, property := range properties {
			faults = append(faults, property(p)...)
		}
		return faults
	}
}

// TestDrawnSitesReachEveryOutcome holds the generator itself: its sites are
// surveys that Read takes, and enough of them are near the good end.
func TestDrawnSitesReachEveryOutcome(t *testing.T) {
	count := map[assess.Outcome]int{}
	for n, h := range baseline() {
		count[h.Outcome]++
		s := siteOf(n)
		if problems := append(survey.Validate(s), assess.Problems(s, tables())...); len(problems) > 0 {
			t.Fatalf("site %d: %v", n, problems)
		}
	}
	t.Logf("of %d sites: %v", sites(), count)
	for _, o := range assess.Outcomes() {
		least := 0.02
		if o.Rideable() {
			least = 0.2
		}
		if !testing.Short() && float64(count[o]) < least*float64(sites()) {
			t.Errorf("%v: %d of %d sites, want at least %.0f", o, count[o], sites(), least*float64(sites()))
		}
	}
}
