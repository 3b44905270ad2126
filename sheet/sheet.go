package sheet

import "boughline/draw"

// Sheet is one document, before it is known on which paper or screen it will be.
type Sheet struct {
	Kind     string // the code of its kind, such as "assessment"
	Title    string
	Subtitle string
	Language string // of its words, BCP 47
	Day      string // for which the site is judged, ISO 8601
	Blocks   []Block
	// OnePage is for a sheet that hangs where it is read from afar: on paper in
	// the largest type that keeps it on one page, and large on a screen.
	OnePage bool
	// Foot stands at the foot of every page: what it is of, and what made it.
	Foot []string
}

// Block is one thing of a sheet, in reading order: *Heading, *Paragraph, *List,
// *Table, *Figures, *Photos, *Checklist, *Lines, *Signatures, *Cautions or
// *NewPage.
type Block interface{ block() }

// Heading opens a part. Level is 1 for a part of the sheet, 2 and 3 below it.
type Heading struct {
	Level int
	Words string
}

// Paragraph is running text; Strong for the one sentence that counts.
type Paragraph struct {
	Words  string
	Strong bool
}

// List is a list of sentences, numbered or not.
type List struct {
	Items    []string
	Numbered bool
}

// Table has a head row that is repeated where it breaks over pages.
type Table struct {
	Caption string
	Columns []Column
	Rows    [][]string
}

// Column is a column of a table. Wide is its share of the width beside the
// other columns; Number sets its cells to the right.
type Column struct {
	Title  string
	Wide   float64
	Number bool
}

// Figures are drawings, side by side where there is room; Wide ones as wide as
// the page. Each brings its own title and text equivalent.
type Figures struct {
	Scenes []*draw.Scene
	Wide   bool
}

// Photos are pictures with their captions.
type Photos struct{ List []Photo }

// Checklist is a list of things to tick off by hand.
type Checklist struct{ Items []string }

// Lines are fields to fill in by hand: each label has its number of empty
// lines beside or below it.
type Lines struct{ Fields []Field }

// Field is one field to fill in.
type Field struct {
	Label string
	Lines int
}

// Signatures are places to sign, each with name, day and signature.
type Signatures struct{ Who []string }

// Cautions are what must be read before anything is done.
type Cautions struct{ Items []string }

// NewPage begins a new page on paper.
type NewPage struct{}

func (*Heading) block()    {}
func (*Paragraph) block()  {}
func (*List) block()       {}
func (*Table) block()      {}
func (*Figures) block()    {}
func (*Photos) block()     {}
func (*Checklist) block()  {}
func (*Lines) block()      {}
func (*Signatures) block() {}
func (*Cautions) block()   {}
func (*NewPage) block()    {}

// add appends blocks; nil ones are left out.
func (s *Sheet) add(blocks ...Block) {
	for _, b := range blocks {
		if b != nil {
			s.Blocks = append(s.Blocks, b)
		}
	}
}

// heading opens a part.
func (s *Sheet) heading(level int, words string) { s.add(&Heading{level, words}) }

// say adds a paragraph; empty words are left out.
func (s *Sheet) say(words string) {
	if words != "" {
		s.add(&Paragraph{Words: words})
	}
}
