package figure

import (
	"boughline/assess"
	"boughline/draw"
)

// mark draws what a finding does to a hang, as a shape that reads in black and
// white: a barred block for what bars, a ring with a question for an arborist,
// a broken square for what is not known yet, half a square for what limits,
// and an open ring for what is only noted.
func mark(o assess.Outcome) func(draw.Point) []draw.Item {
	const r = 2.1
	switch o {
	case assess.Leave:
		return func(c draw.Point) []draw.Item {
			return []draw.Item{
				&draw.Polygon{Points: square(c, r), Pen: draw.Fine, Fill: draw.Ink},
				&draw.Polygon{Points: draw.Rectangle(draw.BoxAt(c.Add(-1.5, -0.45), 3, 0.9)), Fill: draw.Paper},
			}
		}
	case assess.AskArborist:
		return func(c draw.Point) []draw.Item {
			return []draw.Item{
				&draw.Circle{Centre: c, Radius: r, Pen: draw.Fine, Fill: draw.Paper},
				&draw.Line{Points: []draw.Point{c.Add(-0.8, -0.5), c.Add(-0.5, -1.1), c.Add(0.2, -1.3), c.Add(0.8, -0.8), c.Add(0.5, -0.1), c.Add(0, 0.3), c.Add(0, 0.6)}, Pen: draw.Fine},
				&draw.Circle{Centre: c.Add(0, 1.25), Radius: 0.3, Fill: draw.Ink},
			}
		}
	case assess.Unfinished:
		return func(c draw.Point) []draw.Item {
			return []draw.Item{
				&draw.Polygon{Points: square(c, r), Fill: draw.Paper},
				&draw.Line{Points: append(square(c, r), c.Add(-r, -r)), Pen: draw.Dashed},
			}
		}
	case assess.WithinLimits:
		return func(c draw.Point) []draw.Item {
			return []draw.Item{
				&draw.Polygon{Points: square(c, r), Pen: draw.Fine, Fill: draw.Paper},
				&draw.Polygon{Points: []draw.Point{c.Add(-r, r), c.Add(r, r), c.Add(r, -r)}, Fill: draw.Ink},
			}
		}
	}
	return func(c draw.Point) []draw.Item {
		return []draw.Item{&draw.Circle{Centre: c, Radius: r, Pen: draw.Fine, Fill: draw.Paper}}
	}
}

// unjudged is the mark of a finding that no hang is judged by.
func unjudged(c draw.Point) []draw.Item {
	return []draw.Item{&draw.Polygon{Points: []draw.Point{c.Add(0, -2), c.Add(2.1, 1.7), c.Add(-2.1, 1.7)}, Pen: draw.Fine, Fill: draw.Paper}}
}

// meaning says in a few words what a mark stands for.
func meaning(o assess.Outcome) string {
	switch o {
	case assess.Leave:
		return "bars this hang"
	case assess.AskArborist:
		return "for an arborist"
	case assess.Unfinished:
		return "not decided yet"
	case assess.WithinLimits:
		return "limits the use"
	}
	return "noted"
}

func square(c draw.Point, r float64) []draw.Point {
	return draw.Rectangle(draw.BoxAt(c.Add(-r, -r), 2*r, 2*r))
}

// patch is a sample of a fill for the key.
func patch(pen draw.Pen, fill draw.Fill) func(draw.Point) []draw.Item {
	return func(c draw.Point) []draw.Item {
		return []draw.Item{&draw.Polygon{Points: square(c, 2.2), Pen: pen, Fill: fill}}
	}
}

// stroke is a sample of a pen for the key.
func stroke(pen draw.Pen) func(draw.Point) []draw.Item {
	return func(c draw.Point) []draw.Item {
		return []draw.Item{&draw.Line{Points: []draw.Point{c.Add(-2.4, 0), c.Add(2.4, 0)}, Pen: pen}}
	}
}
