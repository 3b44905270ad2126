package register_test

import (
	"bytes"
	"fmt"
	"slices"
	"testing"

	"boughline/register"
	"boughline/survey"

	"pgregory.net/rapid"
)

var ids = []string{"S1", "C1", "R1", "S2", "C2", "R0"}

func drawDay(t *rapid.T) survey.Date {
	return day("2025-01-01").AddMonths(rapid.IntRange(0, 40).Draw(t, "month"))
}

func drawUse(t *rapid.T) register.Use {
	return register.Use{Date: drawDay(t), Items: rapid.SliceOfN(rapid.SampledFrom(ids), 1, 4).Draw(t, "items"),
		Shock: rapid.Bool().Draw(t, "shock"), Wet: rapid.Bool().Draw(t, "wet"), Cycles: rapid.IntRange(0, 500).Draw(t, "cycles")}
}

// step makes one change; what is refused leaves the register as it is.
func step(t *rapid.T, r register.Register) register.Register {
	id := rapid.SampledFrom(ids).Draw(t, "id")
	var err error
	switch rapid.IntRange(0, 2).Draw(t, "change") {
	case 0:
		r, err = r.Used(drawUse(t))
	case 1:
		r, err = r.Examined(id, register.Examination{On: drawDay(t), By: "A", Found: rapid.SampledFrom([]string{register.Fit, register.Unfit}).Draw(t, "found")})
	default:
		if i, _ := r.Item(id); i.Retired == nil {
			r, err = r.Retire(id, drawDay(t), "worn")
		}
	}
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// Recording never lowers the days used or the rides counted, never brings a
// retired item back, never touches the register before it, and keeps the
// document right.
func TestChangesOnlyAdd(t *testing.T) {
	start := demoRegister(t)
	rapid.Check(t, func(t *rapid.T) {
		r := start
		for range rapid.IntRange(1, 8).Draw(t, "steps") {
			before := write(t, r)
			next := step(t, r)
			if !bytes.Equal(before, write(t, r)) {
				t.Fatal("the earlier register was changed")
			}
			for _, id := range ids {
				if next.DaysUsed(id) < r.DaysUsed(id) || next.Cycles(id) < r.Cycles(id) {
					t.Fatalf("%s was used less after a change", id)
				}
				was, _ := r.Item(id)
				is, _ := next.Item(id)
				if was.Retired != nil && (is.Retired == nil || *is.Retired != *was.Retired) {
					t.Fatalf("%s came back", id)
				}
			}
			r = next
		}
		if problems := r.Validate(); len(problems) > 0 {
			t.Fatal(problems)
		}
	})
}

// What stands against an item is never lifted by another use.
func TestAUseLiftsNoBar(t *testing.T) {
	start := demoRegister(t)
	rapid.Check(t, func(t *rapid.T) {
		r, on := start, drawDay(t)
		u := drawUse(t)
		if u.Date.After(on) {
			u.Date = on
		}
		next, err := r.Used(u)
		if err != nil {
			t.Fatal(err)
		}
		for _, id := range ids {
			after := next.Bars(id, on)
			for _, b := range r.Bars(id, on) {
				if !slices.ContainsFunc(after, func(a register.Bar) bool { return a.Code == b.Code }) {
					t.Fatalf("%s on %s: %s was lifted by a use", id, on, b)
				}
			}
		}
	})
}

// A retired item stays barred on every later day.
func TestRetiredStaysRetired(t *testing.T) {
	start := demoRegister(t)
	rapid.Check(t, func(t *rapid.T) {
		r := start
		on := drawDay(t)
		r, err := r.Retire("S1", on, "cut")
		if err != nil {
			t.Fatal(err)
		}
		for range rapid.IntRange(0, 6).Draw(t, "steps") {
			r = step(t, r)
		}
		later := on.AddMonths(rapid.IntRange(0, 60).Draw(t, "later"))
		if bars := r.Bars("S1", later); len(bars) != 1 || bars[0].Code != register.IsRetired {
			t.Fatalf("on %s: %v", later, bars)
		}
		if i, _ := r.Item("S1"); len(r.Deadlines(i, later)) > 0 {
			t.Fatal("something is due for a retired item")
		}
	})
}

// The later the day, the more stands against an item that nobody touches.
func TestBarsGrowWithTime(t *testing.T) {
	r := demoRegister(t)
	rapid.Check(t, func(t *rapid.T) {
		id := rapid.SampledFrom(ids[:5]).Draw(t, "id")
		early := day("2026-06-01").AddMonths(rapid.IntRange(0, 60).Draw(t, "early"))
		late := early.AddMonths(rapid.IntRange(0, 60).Draw(t, "late"))
		if a, b := len(r.Bars(id, early)), len(r.Bars(id, late)); b < a {
			t.Fatalf("%s: %d bars on %s, %d on %s", id, a, early, b, late)
		}
	})
}

func TestRefusedChanges(t *testing.T) {
	r := demoRegister(t)
	for name, change := range map[string]func() (register.Register, error){
		"use without a day": func() (register.Register, error) { return r.Used(register.Use{Items: []string{"S1"}}) },
		"use of nothing":    func() (register.Register, error) { return r.Used(register.Use{Date: day("2026-05-16")}) },
		"use of something unknown": func() (register.Register, error) {
			return r.Used(register.Use{Date: day("2026-05-16"), Items: []string{"X"}})
		},
		"fewer than no rides": func() (register.Register, error) {
			return r.Used(register.Use{Date: day("2026-05-16"), Items: []string{"S1"}, Cycles: -1})
		},
		"retired without a reason": func() (register.Register, error) { return r.Retire("S1", day("2026-05-16"), "") },
		"retired on no day":        func() (register.Register, error) { return r.Retire("S1", survey.Date{}, "cut") },
		"retired twice":            func() (register.Register, error) { return r.Retire("R0", day("2026-05-16"), "cut") },
		"examined by nobody": func() (register.Register, error) {
			return r.Examined("S1", register.Examination{On: day("2026-05-16"), Found: "fit"})
		},
		"examined without a finding": func() (register.Register, error) {
			return r.Examined("S1", register.Examination{On: day("2026-05-16"), By: "A"})
		},
		"examined on no day": func() (register.Register, error) {
			return r.Examined("S1", register.Examination{By: "A", Found: "fit"})
		},
		"examined and not there": func() (register.Register, error) {
			return r.Examined("X", register.Examination{On: day("2026-05-16"), By: "A", Found: "fit"})
		},
	} {
		if after, err := change(); err == nil || fmt.Sprint(after) != fmt.Sprint(r) {
			t.Errorf("%s: %v", name, err)
		}
	}
}
