package survey

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
)

// Problem is one thing that is wrong with a document.
type Problem struct {
	Code string `json:"code"`
	// Path leads to the value, for example trees[2].members[0].stations[1].girth;
	// it is empty where the whole document is meant.
	Path string `json:"path"`
	// Line and Column say where the value stands in the text, counted from 1;
	// both are 0 where there was no text or the value is missing altogether.
	Line   int `json:"line,omitempty"`
	Column int `json:"column,omitempty"`
	// Value is what was found, as it is written, shortened.
	Value    string `json:"value,omitempty"`
	Fault    string `json:"fault"`    // what is wrong with it
	Expected string `json:"expected"` // what would be right
	Do       string `json:"do"`       // what to do about it

	offset int // place in the text, for the order of the list
}

// Codes of problems. The first group stops the reading; of the others all are
// found in one run.
const (
	CodeTooLarge = "too-large"
	CodeEncoding = "encoding"
	CodeSyntax   = "syntax"
	CodeNesting  = "nesting"
	CodeNewer    = "newer-version"

	CodeDuplicateField = "duplicate-field"
	CodeLostCharacter  = "lost-character"
	CodeUnknownField   = "unknown-field"
	CodeWrongType      = "wrong-type"
	CodeMissing        = "missing"
	CodeEmpty          = "empty"
	CodeNotInList      = "not-in-list"
	CodeBadQuantity    = "bad-quantity"
	CodeBadDate        = "bad-date"
	CodeVersion        = "version"
	CodeOutOfRange     = "out-of-range"
	CodeUncertain      = "too-uncertain"
	CodeDuplicateID    = "duplicate-id"
	CodeReference      = "unknown-reference"
	CodeStem           = "stem"
	CodeCycle          = "parent-cycle"
	CodeShape          = "shape"
	CodeThickness      = "thickness"
	CodeSamePlace      = "same-place"
	CodeBeyondEnd      = "beyond-end"
	CodeUnion          = "union"
	CodeFindingPlace   = "finding-place"
	CodeCrown          = "crown"
	CodeStrength       = "strength-twice"
	CodeAges           = "ages"
	CodeLoadStep       = "load-step"
	CodeDayOrder       = "day-order"
	CodeLine           = "line"
	CodeMisfit         = "misfit" // the schema let pass what the types cannot hold, a fault of the program
)

// String words the problem for a person, in one line.
func (p Problem) String() string {
	var b strings.Builder
	b.WriteString(cmp.Or(p.Path, "the document"))
	if p.Line > 0 {
		fmt.Fprintf(&b, " (line %d, column %d)", p.Line, p.Column)
	}
	if p.Value != "" {
		b.WriteString(" is " + p.Value)
	}
	fmt.Fprintf(&b, ": %s; expected %s; %s", p.Fault, p.Expected, p.Do)
	return b.String()
}

// sortProblems orders by the place in the text, then by path and code.
func sortProblems(problems []Problem) {
	slices.SortStableFunc(problems, func(a, b Problem) int {
		return cmp.Or(cmp.Compare(a.offset, b.offset), cmp.Compare(a.Path, b.Path), cmp.Compare(a.Code, b.Code))
	})
}

// shorten cuts text to 60 characters and keeps it on one line.
func shorten(text string) string {
	const most = 60
	text = strings.Join(strings.Fields(text), " ")
	runes := []rune(text[:min(len(text), 4*(most+1))])
	if len(runes) > most {
		return string(runes[:most]) + "..."
	}
	return text
}

// list words the first ten of names.
func list(names []string) string {
	const most = 10
	if len(names) > most {
		return strings.Join(names[:most], ", ") + fmt.Sprintf(" and %d more", len(names)-most)
	}
	return strings.Join(names, ", ")
}
