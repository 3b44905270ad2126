package fungi

import (
	"maps"
	"slices"

	"boughline/quantity"
)

// Seen is a colour and the part it was seen on.
type Seen struct {
	Field  Field
	Colour string
}

// Evidence is what was answered. The zero value of each field says that it was
// left out; an answer "cannot tell" is left out as well. Several names of one
// attribute are all true, or the person wavered between them. Their order does
// not matter.
type Evidence struct {
	Host       string // a genus, or a group of hosts
	Positions  []string
	Month      int
	Forms      []string
	Undersides []string
	NotForms   []string
	NotUnder   []string
	Size       quantity.Length
	Colours    []Seen
	Marks      map[string]bool // seen, or looked for and not there
	Unread     []string        // what could not be understood, as it was said
}

// Answers counts the attributes that were answered.
func (e Evidence) Answers() int {
	n := len(e.Colours) + len(e.Marks)
	for _, given := range []bool{e.Host != "", len(e.Positions) > 0, e.Month > 0, len(e.Forms)+len(e.NotForms) > 0,
		len(e.Undersides)+len(e.NotUnder) > 0, e.Size > 0} {
		if given {
			n++
		}
	}
	return n
}

// looks counts the answers that tell what it looks like.
func (e Evidence) looks() int {
	n := len(e.Colours) + len(e.Marks)
	for _, list := range [][]string{e.Forms, e.NotForms, e.Undersides, e.NotUnder} {
		n += min(len(list), 1)
	}
	return n
}

// With returns a copy that holds one answer more: a name of the attribute, or
// Yes or No for a mark.
func (e Evidence) With(attribute, answer string) Evidence {
	switch attribute {
	case AskHost:
		e.Host = answer
	case AskPosition:
		e.Positions = sorted(append(slices.Clone(e.Positions), answer))
	case AskForm:
		e.Forms = sorted(append(slices.Clone(e.Forms), answer))
	case AskUnderside:
		e.Undersides = sorted(append(slices.Clone(e.Undersides), answer))
	default:
		return e.withLook(attribute, answer)
	}
	return e
}

func (e Evidence) withLook(attribute, answer string) Evidence {
	if f, ok := ColourAsked(attribute); ok {
		if s := (Seen{f, answer}); !slices.Contains(e.Colours, s) {
			e.Colours = append(slices.Clone(e.Colours), s)
		}
		return e
	}
	marks := map[string]bool{}
	maps.Copy(marks, e.Marks)
	marks[attribute] = answer == Yes
	e.Marks = marks
	return e
}

// Names lists what the evidence holds of an attribute; of a colour, whatever
// part it was told of.
func (e Evidence) Names(attribute string) []string {
	switch attribute {
	case AskHost:
		return nonEmpty(e.Host)
	case AskPosition:
		return e.Positions
	case AskForm:
		return e.Forms
	case AskUnderside:
		return e.Undersides
	}
	var names []string
	if _, ok := ColourAsked(attribute); ok {
		for _, s := range e.Colours {
			names = append(names, s.Colour)
		}
		return sorted(names)
	}
	if there, ok := e.Marks[attribute]; ok && there {
		return []string{Yes}
	} else if ok {
		return []string{No}
	}
	return nil
}

func nonEmpty(name string) []string {
	if name == "" {
		return nil
	}
	return []string{name}
}
