package signs

import "testing"

func TestEffectCodesReadBack(t *testing.T) {
	for i, e := range Effects() {
		if int(e) != i {
			t.Errorf("effect %v stands at %d, not in its order", e, i)
		}
		if got, err := ParseEffect(e.String()); err != nil || got != e {
			t.Errorf("%q reads back as %v, %v", e, got, err)
		}
	}
	if _, err := ParseEffect("fine"); err == nil {
		t.Error("a word that is no effect was taken")
	}
	if got := Effect(99).String(); got != "effect(99)" {
		t.Errorf("an effect out of range prints %q", got)
	}
}

func TestWiden(t *testing.T) {
	e := ByPlacement{OnLoadPath: Remark, AbovePeople: Bars, Elsewhere: Remark}
	if got := e.Widen(Member); got != e {
		t.Errorf("a sign of a member changed: %v", got)
	}
	for _, scope := range []Scope{Tree, Place} {
		if got := e.Widen(scope).Elsewhere; got != Bars {
			t.Errorf("%s: elsewhere %v, want bars", scope, got)
		}
	}
}
