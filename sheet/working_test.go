package sheet_test

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"boughline/assess"
	"boughline/sheet"
	"boughline/sheet/sheettest"

	"github.com/expr-lang/expr"
)

// calculator is what a pocket calculator offers, angles in degrees. The parser
// and the arithmetic are those of github.com/expr-lang/expr.
func calculator() map[string]any {
	one := func(f func(float64) float64) func(any) float64 { return func(x any) float64 { return f(number(x)) } }
	return map[string]any{
		"sqrt": one(math.Sqrt), "exp": one(math.Exp), "ln": one(math.Log),
		"sin": one(func(d float64) float64 { return math.Sin(d * math.Pi / 180) }),
		"cos": one(func(d float64) float64 { return math.Cos(d * math.Pi / 180) }),
		"Phi": one(func(x float64) float64 { return math.Erfc(-x/math.Sqrt2) / 2 }),
	}
}

func number(x any) float64 {
	switch x := x.(type) {
	case int:
		return float64(x)
	case float64:
		return x
	}
	return math.NaN()
}

func evaluate(t *testing.T, formula string, values map[string]float64) float64 {
	t.Helper()
	env := calculator()
	for symbol, v := range values {
		env[symbol] = v
	}
	result, err := expr.Eval(formula, env)
	if err != nil {
		t.Fatalf("%s: %v", formula, err)
	}
	return number(result)
}

// printed reads a printed value and by how much it may be off for its
// rounding.
func printed(t *testing.T, cell string) (value, off float64) {
	t.Helper()
	digits, _, _ := strings.Cut(cell, " ")
	value, err := strconv.ParseFloat(digits, 64)
	if err != nil {
		t.Fatalf("%q: %v", cell, err)
	}
	if value == 0 {
		return 0, 0
	}
	return value, 0.5 * math.Pow(10, math.Floor(math.Log10(math.Abs(value)))-5)
}

// symbolsOf lists the symbols of a formula that have a value.
func symbolsOf(formula string, values map[string]float64) []string {
	var list []string
	for _, name := range strings.FieldsFunc(formula, func(r rune) bool { return strings.ContainsRune(" +-*/^(),", r) }) {
		if _, ok := values[name]; ok {
			list = append(list, name)
		}
	}
	return list
}

// rounding is by how much a result may be off because its inputs are rounded.
func rounding(t *testing.T, formula string, values, offs map[string]float64) float64 {
	middle, sum := evaluate(t, formula, values), 0.0
	for _, s := range symbolsOf(formula, values) {
		kept, most := values[s], 0.0
		for _, sign := range []float64{-1, 1} {
			values[s] = kept + sign*offs[s]
			most = math.Max(most, math.Abs(evaluate(t, formula, values)-middle))
		}
		values[s] = kept
		sum += most
	}
	return sum
}

// TestWorkingCanBeFollowed takes the working of every hang of the demo as it is
// printed and works every step out again.
func TestWorkingCanBeFollowed(t *testing.T) {
	results, checks := 0, 0
	for _, tree := range sheettest.Demo(t).Trees {
		s := sheettest.Make(t, "working", sheet.Input{Tree: tree.ID})
		values, offs := map[string]float64{}, map[string]float64{}
		for _, b := range s.Blocks {
			table, ok := b.(*sheet.Table)
			if !ok || table.Columns[1].Title != "Symbol" {
				continue
			}
			checks++
			for _, row := range table.Rows {
				symbol, formula := row[1], row[3]
				value, off := printed(t, row[4])
				if !strings.HasPrefix(formula, "input") {
					results++
					got, room := evaluate(t, formula, values), off+rounding(t, formula, values, offs)+1e-12*math.Abs(value)
					if !(math.Abs(got-value) <= room) {
						t.Errorf("%s, %s, step %s: %s = %s gives %g, printed %s", tree.ID, table.Caption, row[0], symbol, formula, got, row[4])
					}
				}
				values[symbol], offs[symbol] = value, off
			}
		}
	}
	all, err := assess.Assess(sheettest.Demo(t), sheettest.Base(t))
	if err != nil {
		t.Fatal(err)
	}
	wanted := 0
	for _, h := range all.Hangs {
		wanted += len(h.Checks)
	}
	if checks != wanted || results < 8*checks {
		t.Errorf("%d checks with %d results were followed; the demo has %d checks", checks, results, wanted)
	}
}
