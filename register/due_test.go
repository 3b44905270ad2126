package register_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"boughline/quantity"
	"boughline/register"
	"boughline/source"
	"boughline/survey"
)

func day(text string) survey.Date {
	d, err := survey.ParseDate(text)
	if err != nil {
		panic(err)
	}
	return d
}

func years(n int) *int    { return &n }
func said(yes bool) *bool { return &yes }

func mark(kind string) *survey.Mark {
	force, err := quantity.ParseChosen[quantity.Force]("22 kN")
	if err != nil {
		panic(err)
	}
	return &survey.Mark{Strength: force, Kind: kind}
}

// connector is an item against which nothing stands until 2026-07-10.
func connector() register.Item {
	return register.Item{ID: "C", Name: "link", Kind: register.Connector, Material: register.Metal, Mark: mark(survey.MarkBreaking),
		InServiceSince: day("2024-05-01"), Examinations: []register.Examination{{On: day("2026-01-10"), By: "A", Found: register.Fit}}}
}

// sling is the same of textile, with the life that its maker gives it.
func sling() register.Item {
	i := connector()
	i.Kind, i.Material, i.LifeYears = register.Sling, register.Textile, years(10)
	return i
}

func barsOf(r register.Register, on string) string {
	var list []string
	for _, b := range r.Bars("C", day(on)) {
		list = append(list, string(b.Code))
	}
	return strings.Join(list, " ")
}

// TestBars holds the intervals of LOLER 1998, reg. 9(3)(a) (six months for gear
// that lifts people, second-hand), a maker's life from first use, ten years
// from making for textiles (makers' limit, from memory), and makers'
// instructions on marks, histories and shock loads.
func TestBars(t *testing.T) {
	shock := func(on string) func(*register.Register) {
		return func(r *register.Register) {
			r.Uses = []register.Use{{Date: day(on), Items: []string{"C"}, Shock: true}}
		}
	}
	item := func(change func(*register.Item)) func(*register.Register) {
		return func(r *register.Register) { change(&r.Items[0]) }
	}
	for _, row := range []struct {
		name   string
		of     register.Item
		change func(*register.Register)
		on     string
		want   string
	}{
		{"nothing", connector(), nil, "2026-07-09", ""},
		{"the day has come", connector(), nil, "2026-07-10", "examination-due"},
		{"LOLER does not apply", connector(), func(r *register.Register) { r.LOLER = said(false) }, "2027-07-10", ""},
		{"nobody said whether LOLER applies", connector(), func(r *register.Register) { r.LOLER = nil }, "2026-07-10", "examination-due"},
		{"the examiner wants it sooner", connector(), item(func(i *register.Item) { i.Examinations[0].Next = day("2026-03-01") }), "2026-03-01", "examination-due"},
		{"a later wish lengthens nothing", connector(), item(func(i *register.Item) { i.Examinations[0].Next = day("2027-03-01") }), "2026-07-10", "examination-due"},
		{"the examiner's wish holds without LOLER", connector(), func(r *register.Register) {
			r.LOLER, r.Items[0].Examinations[0].Next = said(false), day("2026-03-01")
		}, "2026-03-01", "examination-due"},
		{"end of a short month", connector(), item(func(i *register.Item) { i.Examinations[0].On = day("2025-08-31") }), "2026-02-28", "examination-due"},
		{"never examined", connector(), item(func(i *register.Item) { i.Examinations = nil }), "2024-11-01", "never-examined"},
		{"not yet to be examined", connector(), item(func(i *register.Item) { i.Examinations = nil }), "2024-10-31", ""},
		{"never examined, no first day", connector(), item(func(i *register.Item) { i.Examinations, i.InServiceSince = nil, survey.Date{} }), "2026-05-16", "never-examined"},
		{"an examination to come does not count", connector(), nil, "2026-01-09", "never-examined"},
		{"a sleeve carries nobody", connector(), item(func(i *register.Item) { i.Kind = register.Sleeve }), "2026-12-01", ""},
		{"found unfit", connector(), item(func(i *register.Item) { i.Examinations[0].Found = register.Unfit }), "2026-05-16", "found-unfit"},
		{"found fit since", connector(), item(func(i *register.Item) {
			i.Examinations = append([]register.Examination{{On: day("2026-03-01"), By: "A", Found: register.Fit}}, register.Examination{On: day("2026-02-01"), By: "A", Found: register.Unfit})
		}), "2026-05-16", ""},
		{"shock-loaded", connector(), shock("2026-05-01"), "2026-05-16", "shock-loaded"},
		{"shock-loaded on the day of the examination", connector(), shock("2026-01-10"), "2026-05-16", "shock-loaded"},
		{"shock-loaded before the examination", connector(), shock("2026-01-09"), "2026-05-16", ""},
		{"shock-loaded later", connector(), shock("2026-05-17"), "2026-05-16", ""},
		{"mark unknown", connector(), item(func(i *register.Item) { i.Mark.Kind = survey.MarkUnknown }), "2026-05-16", "mark-unknown"},
		{"no mark", connector(), item(func(i *register.Item) { i.Mark = nil }), "2026-05-16", "mark-unknown"},
		{"a standard for a mark", connector(), item(func(i *register.Item) { i.Mark, i.Standard = nil, "EN 362" }), "2026-05-16", ""},
		{"textile", sling(), nil, "2026-05-16", ""},
		{"life over", sling(), item(func(i *register.Item) { i.LifeYears = years(2) }), "2026-05-01", "life-over"},
		{"life not yet over", sling(), item(func(i *register.Item) { i.LifeYears = years(2) }), "2026-04-30", ""},
		{"last day of use", sling(), item(func(i *register.Item) { i.UseBy = day("2026-05-16") }), "2026-05-16", "use-by-over"},
		{"ten years old", sling(), item(func(i *register.Item) { i.LifeYears, i.Made = nil, day("2016-05-16") }), "2026-05-16", "textile-age"},
		{"not ten years old", sling(), item(func(i *register.Item) { i.LifeYears, i.Made = nil, day("2016-05-17") }), "2026-05-16", ""},
		{"metal has no such age", connector(), item(func(i *register.Item) { i.Made = day("1999-01-01") }), "2026-05-16", ""},
		{"no history", sling(), item(func(i *register.Item) { i.InServiceSince = survey.Date{} }), "2026-05-16", "history-unknown"},
		{"metal with a life and no history", connector(), item(func(i *register.Item) { i.LifeYears, i.InServiceSince = years(9), survey.Date{} }), "2026-05-16", "history-unknown"},
		{"a use that is recorded may not be the first", connector(), func(r *register.Register) {
			r.Items[0].Examinations, r.Items[0].InServiceSince = nil, survey.Date{}
			r.Uses = []register.Use{{Date: day("2026-05-01"), Items: []string{"C"}}}
		}, "2026-05-16", "never-examined"},
		{"retired", sling(), item(func(i *register.Item) { i.Retired = &register.Retirement{On: day("2026-05-16"), Why: "cut"} }), "2026-05-16", "retired"},
		{"retired later", sling(), item(func(i *register.Item) { i.Retired = &register.Retirement{On: day("2026-05-17"), Why: "cut"} }), "2026-05-16", ""},
		{"not there", sling(), item(func(i *register.Item) { i.ID = "D" }), "2026-05-16", "not-registered"},
	} {
		r := register.Register{Version: register.Version, Owner: "a", LOLER: said(true), Items: []register.Item{row.of}}
		if row.change != nil {
			row.change(&r)
		}
		if got := barsOf(r, row.on); got != row.want {
			t.Errorf("%s: %q, want %q", row.name, got, row.want)
		}
	}
}

// TestDueOfTheDemo goes through a register as it stands on the day of the demo.
func TestDueOfTheDemo(t *testing.T) {
	var got []string
	for _, d := range demoRegister(t).Due(day("2026-05-16")) {
		got = append(got, fmt.Sprintf("%s %s passed=%t", d.Item, d, d.Passed))
	}
	want := []string{
		"C2 first thorough examination due now: since when it is in service is not written down passed=true",
		"S2 ten years old since 2025-05-30, the maker's life is not written down passed=true",
		"S2 thorough examination due since 2026-04-04 passed=true",
		"D2 thorough examination due on 2026-05-25 passed=false",
	}
	if !slices.Equal(got, want) {
		t.Errorf("%s", strings.Join(got, "\n"))
	}
}

func TestDaysUsed(t *testing.T) {
	r := demoRegister(t)
	for id, want := range map[string]int{"S1": 3, "R1": 2, "R0": 1, "B1": 2, "C2": 0, "unheard of": 0} {
		if got := r.DaysUsed(id); got != want {
			t.Errorf("%s: %d days, want %d", id, got, want)
		}
	}
	r, err := r.Used(register.Use{Date: day("2026-04-18"), Items: []string{"S1"}, Cycles: 30})
	if err != nil || r.DaysUsed("S1") != 3 || r.Cycles("S1") != 410+360+520+30 {
		t.Errorf("two uses on one day: %d days, %d rides, %v", r.DaysUsed("S1"), r.Cycles("S1"), err)
	}
}

func TestEveryCodeHasWordsAndABasis(t *testing.T) {
	due := []register.Code{register.ExaminationDue, register.NeverExamined, register.LifeOver, register.UseByOver, register.TextileAge}
	bars := append([]register.Code{register.NotRegistered, register.IsRetired, register.FoundUnfit, register.ShockLoaded, register.MarkUnknown, register.HistoryUnknown}, due...)
	for _, c := range due {
		if text := (register.Reminder{Code: c}).String(); strings.Contains(text, string(c)) && c != register.TextileAge {
			t.Errorf("%s has no words", c)
		}
	}
	for _, c := range bars {
		if (register.Bar{Code: c}).String() == "" {
			t.Errorf("%s has no words", c)
		}
		if ref := register.Basis(c); ref.Source.Title == "" || ref.Source.Kind == source.Read {
			t.Errorf("%s: basis %v", c, ref)
		}
	}
}
