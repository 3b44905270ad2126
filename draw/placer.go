package draw

import "math"

// Placer finds room for labels on one drawing, in the order in which it is
// asked: the same questions give the same places.
type Placer struct {
	room  Box
	taken []Box
	lines [][2]Point // that labels had better not cover
	walls [][2]Point // that they must not
	leads [][2]Point // from places to their labels
}

// NewPlacer returns a placer for an area of the paper.
func NewPlacer(room Box) *Placer { return &Placer{room: room} }

// Take keeps labels away from a box.
func (p *Placer) Take(b Box) { p.taken = append(p.taken, b) }

// Avoid tells of lines that labels had better not cover.
func (p *Placer) Avoid(points ...Point) { p.lines = append(p.lines, pairs(points)...) }

// Forbid tells of lines that no label may cover.
func (p *Placer) Forbid(points ...Point) { p.walls = append(p.walls, pairs(points)...) }

func pairs(points []Point) [][2]Point {
	var list [][2]Point
	for i := 1; i < len(points); i++ {
		list = append(list, [2]Point{points[i-1], points[i]})
	}
	return list
}

// Free reports whether a box lies within the room, overlaps nothing taken and
// lies on no forbidden line.
func (p *Placer) Free(b Box) bool {
	if !p.room.Holds(b) {
		return false
	}
	for _, other := range p.taken {
		if b.Overlaps(other) {
			return false
		}
	}
	for _, w := range p.walls {
		if b.Grown(wallGap).crosses(w[0], w[1]) {
			return false
		}
	}
	return true
}

// wallGap is how far a label stays from a forbidden line.
const wallGap = 0.6

// Place takes the best free place for a box of a size near an anchor: near,
// on no line, with a leader that crosses no other label. It returns false
// where the drawing is full.
func (p *Placer) Place(anchor Point, width, height float64) (Box, bool) {
	best, least := Box{}, math.Inf(1)
	try := func(b Box) {
		if cost := Distance(anchor, b.Nearest(anchor)); cost < least && p.Free(b) {
			if cost += p.cost(anchor, b, least-cost); cost < least {
				best, least = b, cost
			}
		}
	}
	for _, gap := range [...]float64{1.2, 2.5, 4, 6, 9, 12, 16, 20, 26, 32, 40} {
		if gap >= least {
			break
		}
		p.around(anchor, width, height, gap, try)
	}
	if math.IsInf(least, 1) {
		p.anywhere(width, height, try)
	}
	if math.IsInf(least, 1) {
		return Box{}, false
	}
	p.Take(best)
	lead := [2]Point{anchor, best.Nearest(anchor)}
	p.leads, p.lines = append(p.leads, lead), append(p.lines, lead)
	return best, true
}

// PlaceBeside takes a free place right beside an anchor, in the order right,
// left, above, below and aslant; false where none is free. It is quick on drawings
// with hundreds of labels, of which it leaves some out.
func (p *Placer) PlaceBeside(anchor Point, width, height float64) (Box, bool) {
	const gap = 1.4
	for _, side := range [...]Point{{1, 0}, {-1, 0}, {0, -1}, {0, 1}, {1, -1}, {1, 1}, {-1, -1}, {-1, 1}} {
		centre := anchor.Add(side.X*(gap+width/2), side.Y*(gap+height/2))
		if b := BoxAt(centre.Add(-width/2, -height/2), width, height); p.Free(b) {
			p.Take(b)
			return b, true
		}
	}
	return Box{}, false
}

// around tries boxes whose near edge lies a gap from the anchor, to the right
// first, in sixteen directions.
func (p *Placer) around(anchor Point, width, height, gap float64, try func(Box)) {
	const directions = 16
	for i := range directions {
		turn := float64((i+1)/2) * 2 * math.Pi / directions
		if i%2 == 1 { // first above, then below
			turn = -turn
		}
		sin, cos := math.Sincos(turn)
		centre := anchor.Add(cos*(gap+width/2), sin*(gap+height/2))
		try(BoxAt(centre.Add(-width/2, -height/2), width, height))
	}
}

// anywhere tries a raster over the whole room.
func (p *Placer) anywhere(width, height float64, try func(Box)) {
	const step = 2
	for y := p.room.Min.Y; y+height <= p.room.Max.Y; y += step {
		for x := p.room.Min.X; x+width <= p.room.Max.X; x += step {
			try(BoxAt(Point{x, y}, width, height))
		}
	}
}

// cost counts what a place covers and what its leader crosses, in millimetres
// of distance that one would go to avoid it. Once past what it may cost, it
// counts no further.
func (p *Placer) cost(anchor Point, b Box, most float64) float64 {
	const onLine, overLabel, overLeader = 9, 22, 12
	sum := 0.0
	for _, l := range p.lines {
		if b.crosses(l[0], l[1]) {
			if sum += onLine; sum >= most {
				return sum
			}
		}
	}
	end := b.Nearest(anchor)
	for _, other := range p.taken {
		if other.crosses(anchor, end) {
			if sum += overLabel; sum >= most {
				return sum
			}
		}
	}
	for _, l := range p.leads {
		if cross(anchor, end, l[0], l[1]) {
			sum += overLeader
		}
	}
	return sum
}

// cross reports whether two segments cross.
func cross(a, b, c, d Point) bool {
	side := func(p, q, r Point) float64 { return (q.X-p.X)*(r.Y-p.Y) - (q.Y-p.Y)*(r.X-p.X) }
	return side(a, b, c)*side(a, b, d) < 0 && side(c, d, a)*side(c, d, b) < 0
}

// leaderFrom is the distance from which on a label needs a line to its place.
const leaderFrom = 2.2

// Leader returns the line from a place to its label, nil where the label
// stands beside it.
func Leader(anchor Point, label Box) Item {
	end := label.Nearest(anchor)
	if Distance(anchor, end) < leaderFrom {
		return nil
	}
	return &Line{Points: []Point{anchor, end}, Pen: Hair}
}
