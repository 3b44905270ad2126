package assess

import "testing"

// TestASymbolStandsForOneThing: within a check no two terms share a symbol, or
// its formula could not be followed.
func TestASymbolStandsForOneThing(t *testing.T) {
	for _, h := range assessAll(t, demoSite(t)) {
		for _, c := range h.Checks {
			seen := map[string]string{}
			for _, term := range c.Terms {
				if other, twice := seen[term.Symbol]; twice {
					t.Errorf("%s, %s %s: %s is %q and %q", h.ID, c.Code, c.Where.Part, term.Symbol, other, term.Name)
				}
				seen[term.Symbol] = term.Name
			}
		}
	}
}
