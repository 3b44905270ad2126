package treelist

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"unicode"

	"boughline/quantity"
)

// numberForm is a number with what stands behind it.
var numberForm = regexp.MustCompile("^([+\\-\u2212]?)([0-9][0-9.,'\u2019 \u00a0\u202f]*|[.,][0-9]+)\\s*([a-zA-Z\"]*)\\.?$")

// cutUnit parts a cell into the number as written and its unit.
func cutUnit(cell string) (number, unit string, ok bool) {
	part := numberForm.FindStringSubmatch(strings.TrimSpace(cell))
	if part == nil {
		return "", "", false
	}
	return strings.Replace(part[1], "\u2212", "-", 1) + strings.TrimFunc(part[2], unicode.IsSpace), part[3], true // \u2212 is the minus of printers
}

// number reads a number with the decimal mark of the list. Marks between
// thousands are taken where they stand right.
func number(text, decimal string) (float64, error) {
	thousands := map[string]string{".": ",", ",": "."}[decimal]
	whole, fraction, _ := strings.Cut(text, decimal)
	for _, mark := range []string{thousands, "'", "\u2019", " ", "\u00a0", "\u202f"} { // apostrophes and spaces, also those that do not break
		groups := strings.Split(strings.TrimLeft(whole, "+-"), mark)
		if len(groups) == 1 {
			continue
		}
		if len(groups[0]) > 3 || groups[0] == "" || groups[0] == "0" || !allThree(groups[1:]) {
			return 0, fmt.Errorf("%q is no number with %q as decimal mark", text, decimal)
		}
		whole = strings.ReplaceAll(whole, mark, "")
	}
	x, err := strconv.ParseFloat(whole+"."+fraction, 64)
	if err != nil {
		return 0, fmt.Errorf("%q is no number with %q as decimal mark", text, decimal)
	}
	return x, nil
}

func allThree(groups []string) bool {
	for _, g := range groups {
		if len(g) != 3 {
			return false
		}
	}
	return true
}

// length reads a length; the unit of the cell goes before that of the column.
func length(cell, decimal string, c Column) (quantity.Length, error) {
	text, unit, ok := cutUnit(cell)
	if !ok {
		return 0, fmt.Errorf("%q is no number", cell)
	}
	if unit == `"` {
		unit = "in"
	}
	if unit == "" {
		unit = c.Unit
	}
	x, err := number(text, decimal)
	if err != nil {
		return 0, err
	}
	for _, u := range quantity.Length(0).Units() {
		if strings.EqualFold(u.Symbol, unit) {
			return quantity.Length(x * u.Factor), nil
		}
	}
	return 0, fmt.Errorf("%q has no unit that is known; expected m, cm, mm, ft or in", cell)
}

// How the numbers of a list speak for a decimal mark.
var (
	groupedPoint = regexp.MustCompile(`^[+-]?\d{1,3}(,\d{3})+\.\d+$`)
	groupedComma = regexp.MustCompile(`^[+-]?\d{1,3}(\.\d{3})+,\d+$`)
	onePoint     = regexp.MustCompile(`^[+-]?(\d*\.(\d|\d\d|\d{4,})|0?\.\d+|\d{4,}\.\d+|0\.\d+)$`)
	oneComma     = regexp.MustCompile(`^[+-]?(\d*,(\d|\d\d|\d{4,})|0?,\d+|\d{4,},\d+|0,\d+)$`)
)

// findDecimal is the mark that more numbers speak for, empty where numbers such
// as 1,234 can be read either way and nothing else tells.
func findDecimal(l *List, m Mapping) string {
	var points, commas, unclear int
	for i := range l.Header {
		if !m.Columns[i].Field.isNumber() {
			continue
		}
		for _, row := range l.Rows {
			if i >= len(row.Cells) {
				continue
			}
			text, _, _ := cutUnit(row.Cells[i])
			switch {
			case groupedPoint.MatchString(text) || onePoint.MatchString(text):
				points++
			case groupedComma.MatchString(text) || oneComma.MatchString(text):
				commas++
			case strings.ContainsAny(text, ".,"):
				unclear++
			}
		}
	}
	switch {
	case commas > points:
		return ","
	case points == 0 && unclear > 0:
		return ""
	}
	return "."
}

func everyCellHasUnit(l *List, heading string) bool {
	for i, h := range l.Header {
		if h != heading {
			continue
		}
		for _, row := range l.Rows {
			if i < len(row.Cells) && strings.TrimSpace(row.Cells[i]) != "" {
				if _, unit, ok := cutUnit(row.Cells[i]); ok && unit == "" {
					return false
				}
			}
		}
	}
	return true
}
