package assess_test

import (
	"fmt"
	"sync"
	"testing"

	"boughline/assess"
	"boughline/quantity"
	"boughline/survey"
)

// At the use that limits state every check of strength holds, and the hang is
// rideable when just that use is asked for. Where limits name a lesser mass
// than was asked for, 2 % more breaks a check.
func TestLimitsAreTheGreatestUse(t *testing.T) {
	var mu sync.Mutex
	var asked, lesser, broken int
	fault := func(format string, values ...any) {
		if broken++; broken <= 5 {
			t.Errorf(format, values...)
		}
	}
	each(sites(), func(n int) {
		h := baseline()[n]
		if h.Limits == nil {
			return
		}
		s := siteOf(n)
		if !askFor(s, h, 1) {
			return
		}
		again := judge(s)
		mu.Lock()
		asked++
		if !again.Outcome.Rideable() {
			fault("site %d: %v at its own limits %+v: %s", n, again.Outcome, h.Limits.Use, firstCode(again))
		}
		if short := shortOf(again, 1e-6); len(short) > 0 {
			fault("site %d: at its own limits %+v: %v", n, h.Limits.Use, short)
		}
		mu.Unlock()
		if h.Limits.Mass > 0.98*h.Asked.Mass {
			return
		}
		s = siteOf(n)
		askFor(s, h, 1.02)
		more := judge(s)
		mu.Lock()
		defer mu.Unlock()
		lesser++
		if len(shortOf(more, 1e-6)) == 0 {
			fault("site %d: limits say %v kg of %v, yet 2 %% more holds", n, h.Limits.Mass, h.Asked.Mass)
		}
	})
	t.Logf("%d limits asked for again, %d of them with a lesser mass, %d broken", asked, lesser, broken)
	if asked < sites()/4 || lesser < sites()/50 {
		t.Errorf("%d and %d of %d sites, want at least %d and %d", asked, lesser, sites(), sites()/4, sites()/50)
	}
}

// askFor rewrites a site so that it asks for the limits of its hang, the mass
// by a factor. It reports false where a survey cannot say that: for groups
// whose scatter is not that of one mass, and for gusts below the least stop
// rule.
func askFor(s *survey.Survey, h assess.Hang, factor float64) bool {
	r := &s.Riders[0]
	if r.Each == nil {
		return false
	}
	r.Each.Value *= h.Limits.Mass / h.Asked.Mass * quantity.Mass(factor)
	hang(s).Amplitude.Value, hang(s).Line.Value = h.Limits.Amplitude, h.Limits.Line
	if h.Limits.Gust < h.Asked.Gust {
		return calmer(s, h)
	}
	return true
}

// calmer lowers the stop rule to the force whose gust stays below the limit:
// gusts go with the tabled mean at the top of a force.
func calmer(s *survey.Survey, h assess.Hang) bool {
	stop := min(5, *s.Wind.StopBeaufort) // the house stops at 5
	top, _ := tables().Beaufort(stop)
	for ; stop >= 3; stop-- {
		b, ok := tables().Beaufort(stop)
		if ok && float64(h.Asked.Gust)*b.Mean.High/top.Mean.High <= float64(h.Limits.Gust) {
			s.Wind.StopBeaufort = &stop
			return true
		}
	}
	return false
}

// shortOf lists the checks that fall short, those of space left out: they are
// judged at their full angle first.
func shortOf(h assess.Hang, by float64) (short []string) {
	for _, c := range checksOf(h, codes(ofWood, ofShear, ofWind, ofChance, ofGear)...) {
		if c.Margin < 1-by {
			short = append(short, fmt.Sprintf("%s: margin %.9g", key(c), c.Margin))
		}
	}
	return short
}
