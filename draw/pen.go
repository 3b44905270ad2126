package draw

// Pen is one of the few pens that all drawings share.
type Pen int

// The pens.
const (
	NoPen  Pen = iota
	Hair       // hatching, leaders, dimension lines
	Fine       // outlines
	Bold       // what the drawing is about
	Dashed     // what moves or is thought
	Dotted     // limits of an area
	Accent     // the one accent: line and path of the riders
)

// Pens lists the pens that leave ink.
func Pens() []Pen { return []Pen{Hair, Fine, Bold, Dashed, Dotted, Accent} }

var penNames = [...]string{"", "hair", "fine", "bold", "dashed", "dotted", "accent"}

// String returns the name of the pen.
func (p Pen) String() string { return penNames[p] }

var penWidths = [...]float64{0, 0.22, 0.4, 0.9, 0.4, 0.5, 0.9}

// Width returns the width of the pen's line.
func (p Pen) Width() float64 { return penWidths[p] }

// Dashes returns the lengths of stroke and gap, nil for a whole line.
func (p Pen) Dashes() []float64 {
	switch p {
	case Dashed:
		return []float64{2, 1.4}
	case Dotted:
		return []float64{0.5, 1.3}
	}
	return nil
}

// Fill is what an outline is filled with. Hatching takes the place of colour:
// it reads in sunlight, in black and white and by anybody.
type Fill int

// The fills.
const (
	NoFill    Fill = iota
	Paper          // covers what lies below
	Ink            // solid
	Slant          // hatching that rises to the right
	BackSlant      // falls to the right
	Level          // level lines
	Upright        // upright lines
	Cross          // both slants
	Grid           // level and upright
	Wide           // slants far apart
)

var fillNames = [...]string{"none", "paper", "ink", "slant", "back-slant", "level", "upright", "cross", "grid", "wide"}

// String returns the name of the fill.
func (f Fill) String() string { return fillNames[f] }

// Hatches lists the fills that are hatching and can be told apart.
func Hatches() []Fill { return []Fill{Slant, BackSlant, Level, Upright, Cross, Grid, Wide} }
