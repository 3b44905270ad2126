// Package source says where a figure comes from. Every number that reaches a
// user carries a Ref.
package source

import "fmt"

// Kind says how well a source is known to this project.
type Kind string

// The kinds of source. A figure of kind Memory shows as "from memory" wherever
// a user can open the reason behind a decision.
const (
	Read       Kind = "read"        // read in the source itself
	SecondHand Kind = "second-hand" // read in a text that quotes the source
	Computed   Kind = "computed"    // worked out here from sources of the kinds above
	Memory     Kind = "memory"      // from memory of the named source, not checked
	Practice   Kind = "practice"    // common practice, no published source
	House      Kind = "house"       // our own conservative choice, settable
)

// Source is one text, table or habit of the trade.
type Source struct {
	Key    string
	Author string
	Year   string
	Title  string
	Kind   Kind
}

// Ref points into a source: a table, a page, an equation.
type Ref struct {
	Source Source
	Where  string
}

// Citation words the reference in one line, its kind said wherever the source
// itself was not read.
func (r Ref) Citation() string {
	text := r.Source.Title
	if r.Source.Author != "" {
		text = fmt.Sprintf("%s, %s", r.Source.Author, text)
	}
	if r.Source.Year != "" {
		text = fmt.Sprintf("%s (%s)", text, r.Source.Year)
	}
	if r.Where != "" {
		text += ", " + r.Where
	}
	if note := r.Source.Kind.note(); note != "" {
		text += " [" + note + "]"
	}
	return text
}

func (k Kind) note() string {
	switch k {
	case Memory:
		return "from memory"
	case SecondHand:
		return "read second-hand"
	case Computed:
		return "computed here"
	case Practice:
		return "common practice, no published source"
	case House:
		return "house value"
	}
	return ""
}

// Fact is one number with its unit and its reference. Low and High bound it
// where the source gives a range; otherwise all three are equal.
type Fact struct {
	Value, Low, High float64
	Unit             string
	Ref              Ref
	Note             string
}
