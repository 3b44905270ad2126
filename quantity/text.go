package quantity

import (
	"errors"
	"fmt"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// TextError says what is wrong with a written value and what was expected.
type TextError struct{ Reason, Expected string }

// Error implements error.
func (e *TextError) Error() string { return e.Reason + "; expected " + e.Expected }

// Parse reads a value with its unit, and after it, in either order, how
// exactly it is known and how it was got: "72 cm", "72 cm taped",
// "4.2 m ±0.1 m clinometer", "4.2 m by eye +-2 %". What stands behind ± is
// one standard deviation. A number without a unit, a unit of another quantity,
// a decimal comma, a number that is not finite and a word that is no way of
// measuring are errors of type *TextError.
func Parse[Q Kind](text string) (Measured[Q], error) {
	var m Measured[Q]
	front, behind, stated := strings.Cut(plusMinus.Replace(text), "±")
	value, how, err := cutValue[Q](front)
	if err != nil {
		return m, err
	}
	m.Value, m.SdStated = value, stated
	if stated {
		var tail string
		if m.Sd, tail, err = cutSd(value, behind); err != nil {
			return Measured[Q]{}, err
		}
		how = strings.TrimSpace(how + " " + tail)
	}
	if m.How, err = parseHow(how); err != nil {
		return Measured[Q]{}, err
	}
	return m, nil
}

// plusMinus turns what a keyboard has for ± into ±.
var plusMinus = strings.NewReplacer("+/-", "±", "+-", "±")

// ParseChosen reads a value with its unit and refuses anything behind it.
func ParseChosen[Q Kind](text string) (Chosen[Q], error) {
	m, err := Parse[Q](text)
	if err != nil {
		return Chosen[Q]{}, err
	}
	if m.SdStated || m.How != NotStated {
		return Chosen[Q]{}, &TextError{"it is chosen, not measured", example[Q]() + " and nothing behind it"}
	}
	return Chosen[Q]{m.Value}, nil
}

// decimal is a decimal number at the front of a text.
var decimal = regexp.MustCompile(`^[+-]?(?:[0-9]+\.?[0-9]*|\.[0-9]+)(?:[eE][+-]?[0-9]+)?`)

// cutNumber takes a finite number off the front of text.
func cutNumber[Q Kind](text string) (x float64, rest string, err error) {
	text = strings.TrimSpace(text)
	number := decimal.FindString(text)
	rest = text[len(number):]
	switch {
	case text == "":
		return 0, "", &TextError{"the number is missing", example[Q]()}
	case number == "":
		return 0, "", &TextError{fmt.Sprintf("%q is not a number", firstWord(text)), example[Q]()}
	case strings.HasPrefix(rest, ","):
		return 0, "", &TextError{fmt.Sprintf("%q has a comma in the number", firstWord(text)), "a decimal point, as in " + example[Q]()}
	}
	x, err = strconv.ParseFloat(number, 64)
	if err != nil {
		return 0, "", tooLarge[Q](number)
	}
	return x, strings.TrimSpace(rest), nil
}

// cutValue takes a number and its unit off the front of text.
func cutValue[Q Kind](text string) (Q, string, error) {
	x, rest, err := cutNumber[Q](text)
	if err != nil {
		return 0, "", err
	}
	unit := firstWord(rest)
	factor, err := unitFactor[Q](unit)
	if err != nil {
		return 0, "", err
	}
	if math.IsInf(x*factor, 0) {
		return 0, "", tooLarge[Q](text)
	}
	return Q(x * factor), strings.TrimSpace(rest[len(unit):]), nil
}

// cutSd takes "0.1 m" or "2 %" off the front of text.
func cutSd[Q Kind](value Q, text string) (sd Q, rest string, err error) {
	if share, tail, err := cutNumber[Q](text); err == nil && firstWord(tail) == "%" {
		sd, rest = Q(math.Abs(float64(value))*(share/100)), strings.TrimSpace(tail[1:])
	} else if sd, rest, err = cutValue[Q](text); err != nil {
		return 0, "", behindPlusMinus(err)
	}
	switch {
	case math.IsInf(float64(sd), 0):
		return 0, "", behindPlusMinus(tooLarge[Q](text))
	case sd < 0:
		return 0, "", &TextError{"the standard deviation behind ± is negative", "0 or more"}
	}
	return sd, rest, nil
}

func behindPlusMinus(err error) error {
	var t *TextError
	if !errors.As(err, &t) {
		return err
	}
	return &TextError{"behind ±: " + t.Reason, t.Expected}
}

func tooLarge[Q Kind](number string) error {
	return &TextError{fmt.Sprintf("%q is too large a number", strings.TrimSpace(number)), example[Q]()}
}

func firstWord(text string) string {
	if words := strings.Fields(text); len(words) > 0 {
		return words[0]
	}
	return ""
}

func unitFactor[Q Kind](symbol string) (float64, error) {
	var q Q
	for _, u := range q.Units() {
		if u.Symbol == symbol {
			return u.Factor, nil
		}
	}
	if symbol == "" {
		return 0, &TextError{"it has no unit", example[Q]()}
	}
	return 0, &TextError{fmt.Sprintf("%q is no unit of %s", symbol, q.Name()), example[Q]()}
}

func parseHow(text string) (How, error) {
	how := How(strings.Join(strings.Fields(text), " "))
	if how == NotStated || slices.Contains(Hows(), how) {
		return how, nil
	}
	names := make([]string, 0, len(Hows()))
	for _, h := range Hows() {
		names = append(names, string(h))
	}
	return "", &TextError{fmt.Sprintf("%q is no way of measuring", how), "one of " + strings.Join(names, ", ")}
}

// example words what a value of Q looks like, with its units.
func example[Q Kind]() string {
	var q Q
	units := make([]string, 0, len(q.Units()))
	for _, u := range q.Units() {
		units = append(units, u.Symbol)
	}
	article := "a"
	if strings.ContainsRune("aeiou", rune(q.Name()[0])) {
		article = "an"
	}
	return fmt.Sprintf("%s %s with its unit (%s), for example %q", article, q.Name(), strings.Join(units, ", "), "1.5 "+units[0])
}

// Format writes the quantity in its first unit so that Parse gives the same
// value back.
func Format[Q Kind](q Q) string {
	u := q.Units()[0]
	x := inUnit(float64(q), u.Factor)
	// Radians seldom survive the way to degrees and back; write them as they are.
	if Q(x*u.Factor) != q {
		for _, other := range q.Units() {
			if other.Factor == 1 {
				u, x = other, float64(q)
			}
		}
	}
	return strconv.FormatFloat(x, 'g', -1, 64) + " " + u.Symbol
}

// inUnit divides by the factor; where 12 digits say the same they are enough:
// 80 deg rather than 79.99999999999999 deg.
func inUnit(si, factor float64) float64 {
	x := si / factor
	if factor == 1 {
		return x
	}
	round, err := strconv.ParseFloat(strconv.FormatFloat(x, 'g', 12, 64), 64)
	if err != nil || round*factor != si {
		return x
	}
	return round
}

// String writes m so that Parse gives the same value back.
func (m Measured[Q]) String() string {
	text := Format(m.Value)
	if m.SdStated {
		text += " ±" + Format(m.Sd)
	}
	if m.How != NotStated {
		text += " " + string(m.How)
	}
	return text
}
