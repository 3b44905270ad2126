package view

import "github.com/a-h/templ"

// Page is what every page has.
type Page struct {
	Title string
	Base  string // path of the app, ending in a slash
	Field bool   // which of the two hosts it is
	Ink   string // auto, light, dark or sun
	Trail []Link
	Asset Assets
	// Notice is a line about what was just done; empty for none.
	Notice string
	// Undo takes it back; nil for nothing to take back.
	Undo  *Button
	Still []Still // swings that hang from trees
}

// Assets are the addresses of the style sheet and the script, with the hash of
// their contents.
type Assets struct{ Style, Script string }

// Link leads somewhere.
type Link struct{ Text, To string }

func (p Page) at(path string) templ.SafeURL { return templ.SafeURL(p.Base + path) }

// Field is one field of a form.
type Field struct {
	Name, Label, Help string
	Kind              Kind
	Value             string
	Unit              string   // shown behind the field
	How               string   // chosen way of measuring
	Hows              []Choice // ways of measuring; none hides the choice
	Choices           []Choice
	Suggest           []string // for a field with suggestions
	Fault             string   // what is wrong with it
	Measure           string   // where it can be worked out from readings; empty for nowhere
	Need              bool
	Pair              bool // stands beside its neighbour
	First             bool // begins a row
}

// Kind is how a field is filled in.
type Kind int

// The kinds of field.
const (
	Text Kind = iota
	Number
	Date
	Select
	Tick
	Long
)

// Choice is one of several.
type Choice struct{ Value, Text string }

// Group is a part of a form with a legend.
type Group struct {
	Legend, Help string
	Fields       []Field
	Position     bool // its latitude and longitude can be taken from the device
}

// Form is a form on a page of its own.
type Form struct {
	Page
	Intro    string
	Action   string // where it is sent
	ID       string // its random id
	Revision int    // what it rests on
	Groups   []Group
	Problems []string
	Submit   string
	Back     string
	Live     string // where live margins come from; empty for none
	Extra    []Button
	Aside    *Link // to a page that helps to fill it in
	Drawings []Drawing
}

// Button is a form of one button.
type Button struct {
	Text, Action string
	Hidden       []Choice
}
