package wording

import (
	"go/ast"
	"go/parser"
	"go/token"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"boughline/assess"
	"boughline/engine/signs"
)

// codes reads the constants of assess/code.go: those of type Code, and the
// changes, which are plain strings.
func codes(t *testing.T) (all []assess.Code, changed []string) {
	t.Helper()
	file, err := parser.ParseFile(token.NewFileSet(), "../code.go", nil, 0)
	if err != nil {
		t.Fatal(err)
	}
	ast.Inspect(file, func(n ast.Node) bool {
		spec, ok := n.(*ast.ValueSpec)
		if !ok {
			return true
		}
		text, err := strconv.Unquote(spec.Values[0].(*ast.BasicLit).Value)
		if err != nil {
			t.Fatal(err)
		}
		if strings.HasPrefix(spec.Names[0].Name, "Change") {
			changed = append(changed, text)
		} else {
			all = append(all, assess.Code(text))
		}
		return true
	})
	return all, changed
}

// worded tells reasons made of more than their code.
func worded(code assess.Code) bool {
	return code == assess.SignFound || code == assess.FungusFound || inspection[code] != nil
}

func TestEveryCodeHasWords(t *testing.T) {
	all, changed := codes(t)
	if len(all) < 40 || len(changed) < 15 {
		t.Fatalf("%d codes and %d changes were read", len(all), len(changed))
	}
	for _, code := range all {
		_, isCheck := checks[code]
		_, isReason := reasons[code]
		if isCheck == isReason && !worded(code) {
			t.Errorf("%s: check %v, reason %v; expected one of them", code, isCheck, isReason)
		}
		if Basis(code) == "" {
			t.Errorf("%s has no basis", code)
		}
		if isCheck && (Formula(code) == "" || checks[code].title == "") {
			t.Errorf("%s has no title or no formula", code)
		}
	}
	for _, code := range changed {
		if Change(assess.Change{Code: code}) == "" {
			t.Errorf("change %s has no words", code)
		}
	}
	for _, o := range assess.Outcomes() {
		if Outcome(o) == "" || len(Shape(o)) != 6 {
			t.Errorf("%s: sentence %q, shape %q", o, Outcome(o), Shape(o))
		}
	}
}

// Every way to look, every effect and every need has words of its own.
func TestLooksHaveWords(t *testing.T) {
	seen := map[string]bool{"": true}
	is := func(what any, text string) {
		if seen[text] {
			t.Errorf("%v: %q is no text of its own", what, text)
		}
		seen[text] = true
	}
	for _, m := range signs.Methods() {
		is(m, Method(m))
	}
	for _, e := range signs.Effects() {
		is(e, Effect(e))
	}
	for _, q := range signs.Quantities() {
		is(q, Measured(q, 8))
	}
	for _, n := range signs.Needs() {
		is(n, Need(n))
		is(n, needs[string(n)])
	}
}

func TestNoWordsPromise(t *testing.T) {
	promise := regexp.MustCompile(`(?i)\bsafe`)
	var texts []string
	for _, text := range reasons {
		texts = append(texts, text)
	}
	for _, c := range checks {
		texts = append(texts, c.title, c.formula, c.basis)
	}
	for _, text := range changes {
		texts = append(texts, text)
	}
	for _, text := range bases {
		texts = append(texts, text)
	}
	for _, m := range signs.Methods() {
		texts = append(texts, Method(m))
	}
	for _, e := range signs.Effects() {
		texts = append(texts, Effect(e))
	}
	for _, text := range needs {
		texts = append(texts, text)
	}
	texts = append(texts, Cautions()...)
	for _, o := range assess.Outcomes() {
		texts = append(texts, Outcome(o))
	}
	for _, text := range texts {
		if promise.MatchString(text) {
			t.Errorf("%q", text)
		}
	}
}

func TestNumbers(t *testing.T) {
	for _, row := range []struct {
		value      float64
		unit, want string
	}{
		{17.0e6, "Pa", "17 MPa"}, {0.00586, "m3", "0.00586 m3"}, {1234, "N", "1.23 kN"}, {12345, "N m", "12.3 kN m"},
		{0, "m", "0 m"}, {3.14159 / 2, "rad", "90 deg"}, {1.3e-5, "1", "1.3e-05"}, {299.4, "kg", "299 kg"},
	} {
		if got := Quantity(row.value, row.unit); got != row.want {
			t.Errorf("%v %s: got %q, want %q", row.value, row.unit, got, row.want)
		}
	}
	for value, want := range map[float64]string{0.9999: "0.99", 1: "1.00", 1.2999: "1.29", 500: "over 100"} {
		if got := Margin(value); got != want {
			t.Errorf("margin %v: got %q, want %q", value, got, want)
		}
	}
	if got := AtMost(36.19, "kg"); got != "36.1 kg" {
		t.Errorf("a limit was rounded up: %q", got)
	}
}
