package signs

import (
	"testing"

	"pgregory.net/rapid"
)

var (
	onPath    = Placement{OnLoadPath: true}
	overhead  = Placement{AbovePeople: true}
	both      = Placement{OnLoadPath: true, AbovePeople: true}
	elsewhere = Placement{}
)

func sign(u Urgency, scope Scope, path, above, away Effect) Sign {
	return Sign{ID: "x", Urgency: u, Scope: scope, OnLoadPath: path, AbovePeople: above, Elsewhere: away}
}

// The wanted effects are common practice, no published source: work from the
// crown down, a sign on the far side may not matter, deadwood above people
// comes down first.
func TestJudge(t *testing.T) {
	crack := sign(Stop, Member, Bars, Bars, Remark)
	deadwood := sign(StopBelow, Member, Remark, BarsUntilCleared, Remark)
	heave := sign(Stop, Tree, Bars, Bars, Bars)
	nest := sign(Stop, Place, Bars, Bars, Bars)
	bulge := sign(LookCloser, Member, CloserLook, CloserLook, Remark)
	dieback := sign(LookCloser, Tree, CloserLook, CloserLook, CloserLook)
	ivy := sign(NotSeen, Member, CloserLook, CloserLook, Remark)
	for _, c := range []struct {
		name  string
		sign  Sign
		place Placement
		state State
		want  Judgement
	}{
		{"crack on the limb in use", crack, onPath, Open, Judgement{Bars, WhyOnLoadPath}},
		{"the same on the far side", crack, elsewhere, Open, Judgement{Remark, WhyElsewhere}},
		{"a crack is not cleared away", crack, onPath, Cleared, Judgement{Bars, WhyOnLoadPath}},
		{"the cracked limb above is taken down", crack, overhead, Cleared, Judgement{Remark, WhyCleared}},
		{"taking it down leaves the load path", crack, both, Cleared, Judgement{Bars, WhyOnLoadPath}},
		{"a closer look does not lift a stop", crack, onPath, LookClear, Judgement{Bars, WhyOnLoadPath}},
		{"deadwood above", deadwood, overhead, Open, Judgement{BarsUntilCleared, WhyAbovePeople}},
		{"deadwood taken down", deadwood, overhead, Cleared, Judgement{Remark, WhyCleared}},
		{"deadwood on the other side", deadwood, elsewhere, Open, Judgement{Remark, WhyElsewhere}},
		{"heave counts everywhere", heave, elsewhere, Open, Judgement{Bars, WhyCountsEverywhere}},
		{"heave is not cleared away", heave, overhead, Cleared, Judgement{Bars, WhyAbovePeople}},
		{"wasps", nest, elsewhere, Open, Judgement{Bars, WhyCountsForPlace}},
		{"the wasps are gone", nest, overhead, Cleared, Judgement{Remark, WhyCleared}},
		{"bulge", bulge, onPath, Open, Judgement{CloserLook, WhyOnLoadPath}},
		{"bulge sounded and clear", bulge, onPath, LookClear, Judgement{Remark, WhyLookClear}},
		{"bulge sounded and worse", bulge, onPath, LookWorse, Judgement{Arborist, WhyLookWorse}},
		{"bulge sounded, cannot tell", bulge, onPath, LookUnclear, Judgement{CloserLook, WhyLookUnclear}},
		{"die-back looked at and worse", dieback, elsewhere, LookWorse, Judgement{Arborist, WhyLookWorse}},
		{"ivy taken off is no look at the bark", ivy, overhead, Cleared, Judgement{CloserLook, WhyAbovePeople}},
		{"an unknown state counts as open", bulge, onPath, State("?"), Judgement{CloserLook, WhyOnLoadPath}},
	} {
		if got := Judge(c.sign, c.place, c.state); got != c.want {
			t.Errorf("%s: got %v, want %v", c.name, got, c.want)
		}
	}
}

func drawSign(t *rapid.T) Sign {
	scope := rapid.SampledFrom(Scopes()).Draw(t, "scope")
	path := rapid.SampledFrom(Effects()).Draw(t, "path")
	above := rapid.SampledFrom(Effects()).Draw(t, "above")
	away := min(path, above, rapid.SampledFrom(Effects()).Draw(t, "away"))
	e := ByPlacement{path, above, away}.Widen(scope)
	if !e.Ordered() { // where one placement weighs more, a wide scope lifts the other too
		e.OnLoadPath, e.AbovePeople = e.Elsewhere, e.Elsewhere
	}
	u := rapid.SampledFrom(Urgencies()).Draw(t, "urgency")
	return sign(u, scope, e.OnLoadPath, e.AbovePeople, e.Elsewhere)
}

func TestWorsePlacementNeverWeighsLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSign(t)
		state := rapid.SampledFrom(States()).Draw(t, "state")
		away := Judge(s, elsewhere, state).Effect
		path, above := Judge(s, onPath, state).Effect, Judge(s, overhead, state).Effect
		if path < away || above < away {
			t.Fatalf("elsewhere %v, on the load path %v, above the people %v", away, path, above)
		}
		if b := Judge(s, both, state).Effect; b != max(path, above) {
			t.Fatalf("both placements give %v, one alone %v and %v", b, path, above)
		}
	})
}

func TestStatesAreOrdered(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSign(t)
		p := rapid.SampledFrom([]Placement{onPath, overhead, both, elsewhere}).Draw(t, "placement")
		effect := func(state State) Effect { return Judge(s, p, state).Effect }
		if effect(Cleared) > effect(Open) || effect(LookClear) > effect(Open) {
			t.Fatalf("cleared %v, looked at and clear %v, open %v", effect(Cleared), effect(LookClear), effect(Open))
		}
		if effect(LookUnclear) != effect(Open) || effect(LookWorse) < effect(Open) {
			t.Fatalf("unclear %v, worse %v, open %v", effect(LookUnclear), effect(LookWorse), effect(Open))
		}
	})
}
