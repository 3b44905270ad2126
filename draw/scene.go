package draw

// Point is a place on the paper.
type Point struct{ X, Y float64 }

// Add moves a point.
func (p Point) Add(dx, dy float64) Point { return Point{p.X + dx, p.Y + dy} }

// Scene is one drawing with its text equivalent.
type Scene struct {
	// Key names the drawing, unique among those of one page.
	Key   string
	Title string
	// Says is the text equivalent: sentences with the figures that the drawing
	// shows.
	Says          []string
	Width, Height float64
	Items         []Item
}

// Item is one thing drawn: *Line, *Polygon, *Arc, *Circle, *Text or *Group.
type Item interface{ item() }

// Line joins points with a pen.
type Line struct {
	Points []Point
	Pen    Pen
}

// Polygon is a closed outline with a pen and a fill.
type Polygon struct {
	Points []Point
	Pen    Pen
	Fill   Fill
}

// Arc is a part of a circle from one angle to another.
type Arc struct {
	Centre   Point
	Radius   float64
	From, To float64
	Pen      Pen
}

// Circle is a whole circle with a pen and a fill.
type Circle struct {
	Centre Point
	Radius float64
	Pen    Pen
	Fill   Fill
}

// Group is items that belong together: a finding, a tree, a link of the rig.
type Group struct {
	// Key says what it stands for, such as "finding F2"; empty for none.
	Key string
	// Title is what the group says when it is pointed at.
	Title string
	Items []Item
	// Touch is the room in which a finger meets the group, beyond what its items
	// cover; zero for none. No ink draws it.
	Touch Box
}

func (*Line) item()    {}
func (*Polygon) item() {}
func (*Arc) item()     {}
func (*Circle) item()  {}
func (*Text) item()    {}
func (*Group) item()   {}

// Each visits every item of the scene, groups before what is in them.
func (s *Scene) Each(visit func(Item)) { each(s.Items, visit) }

func each(items []Item, visit func(Item)) {
	for _, i := range items {
		visit(i)
		if g, ok := i.(*Group); ok {
			each(g.Items, visit)
		}
	}
}
