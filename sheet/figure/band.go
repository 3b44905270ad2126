package figure

import (
	"fmt"
	"math"

	"boughline/draw"
	"boughline/quantity"
)

// BandInput is where on a limb a hang serves, as plain data.
type BandInput struct {
	Key, Title string
	Limb       quantity.Length // length of the limb from the face of its parent
	Longest    quantity.Length // the longest line that was looked at
	Runs       []BandRun
	// At and Line are the hang that is asked for, or the best; Marked tells
	// whether there is one.
	At, Line quantity.Length
	Marked   bool
}

// BandRun is a stretch of the line's length at a station of the limb within
// which one check binds, or within which all hold.
type BandRun struct {
	From, To         quantity.Length // along the limb
	Shortest, Longer quantity.Length // of the line
	// Binding names the check that fails first beyond the edge of what serves, or
	// one that fails where nothing serves; empty where all hold. Words says it for
	// people.
	Binding, Words string
}

// Band draws the places of a limb and the lengths of the line that serve:
// where all checks hold the paper is left open within a bold edge, elsewhere
// it is hatched by the check that fails first beyond that edge.
func Band(in BandInput) *draw.Scene {
	p := newPage("band "+in.Key, in.Title, 86)
	p.backed = true
	c := chart{box: draw.BoxAt(draw.Point{X: p.area.Min.X + 11, Y: p.area.Min.Y + 10}, innerWidth-15, 64),
		right: math.Max(0.5, float64(in.Limb)), up: math.Max(0.5, float64(in.Longest))}
	codes := bindingCodes(in.Runs)
	for _, r := range in.Runs {
		p.add(runOf(c, r, codes))
	}
	p.openEdges(c, in.Runs)
	p.axes(c, "m along the limb", "line, m")
	p.rows = append(p.rows, row{mark: patch(draw.Bold, draw.Paper), words: "all checks hold"})
	for _, b := range codes {
		p.rows = append(p.rows, row{mark: patch(draw.Hair, b.fill), words: b.words})
	}
	if len(codes) > 0 {
		p.rows = append(p.rows, row{words: hatchedWords})
	}
	if in.Marked {
		at := c.at(float64(in.At), float64(in.Line))
		p.add(&draw.Circle{Centre: at, Radius: 1.4, Pen: draw.Accent, Fill: draw.Paper})
		p.placer.Take(draw.Box{Min: at.Add(-1.9, -1.9), Max: at.Add(1.9, 1.9)})
		p.label(at, fmt.Sprintf("%s out, line %s", metres(in.At), metres(in.Line)))
	}
	return p.finish(bandSays(in, codes))
}

// hatchedWords says what the hatching knows: the check just beyond the edge.
const hatchedWords = "Hatched places do not serve. The hatching names the check that fails first beyond the bold edge; farther off others may fail as well. Where no length of line serves it names one check that fails there or nearer the stem."

// binding is a check that binds somewhere, with its hatching.
type binding struct {
	code, words string
	fill        draw.Fill
}

// bindingCodes gives every binding check a hatching, in the order of their
// first place; beyond the hatchings that can be told apart they share the
// last, and the rows name them all.
func bindingCodes(runs []BandRun) []binding {
	fills := draw.Hatches()
	var list []binding
	seen := map[string]bool{}
	for _, r := range runs {
		if r.Binding == "" || seen[r.Binding] {
			continue
		}
		seen[r.Binding] = true
		words := r.Words
		if words == "" {
			words = r.Binding
		}
		list = append(list, binding{r.Binding, words, fills[min(len(list), len(fills)-1)]})
	}
	return list
}

// runOf draws one run.
func runOf(c chart, r BandRun, codes []binding) draw.Item {
	corners := []draw.Point{
		c.at(float64(r.From), float64(r.Shortest)), c.at(float64(r.To), float64(r.Shortest)),
		c.at(float64(r.To), float64(r.Longer)), c.at(float64(r.From), float64(r.Longer)),
	}
	fill := draw.Paper
	for _, b := range codes {
		if b.code == r.Binding {
			fill = b.fill
		}
	}
	return &draw.Polygon{Points: corners, Pen: draw.NoPen, Fill: fill}
}

// openEdges draws the edge of all places where every check holds: above and
// below each run, and beside it as far as the next one is not open there.
func (p *page) openEdges(c chart, runs []BandRun) {
	edge := func(x1, y1, x2, y2 quantity.Length) {
		p.wall(draw.Bold, c.at(float64(x1), float64(y1)), c.at(float64(x2), float64(y2)))
	}
	for _, r := range runs {
		if r.Binding != "" {
			continue
		}
		edge(r.From, r.Shortest, r.To, r.Shortest)
		edge(r.From, r.Longer, r.To, r.Longer)
		for _, left := range closed(r, runs, func(o BandRun) bool { return o.To == r.From }) {
			edge(r.From, left[0], r.From, left[1])
		}
		for _, right := range closed(r, runs, func(o BandRun) bool { return o.From == r.To }) {
			edge(r.To, right[0], r.To, right[1])
		}
	}
}

// closed returns the stretches of the line's length in which a run has no open
// run beside it.
func closed(r BandRun, runs []BandRun, beside func(BandRun) bool) [][2]quantity.Length {
	left := [][2]quantity.Length{{r.Shortest, r.Longer}}
	for _, o := range runs {
		if o.Binding != "" || !beside(o) {
			continue
		}
		var rest [][2]quantity.Length
		for _, l := range left {
			if low := min(l[1], o.Shortest); low > l[0] {
				rest = append(rest, [2]quantity.Length{l[0], low})
			}
			if high := max(l[0], o.Longer); high < l[1] {
				rest = append(rest, [2]quantity.Length{high, l[1]})
			}
		}
		left = rest
	}
	return left
}

func bandSays(in BandInput, codes []binding) []string {
	says := []string{fmt.Sprintf("%s: %s of limb, lines up to %s.", in.Title, metres(in.Limb), metres(in.Longest))}
	from, to, shortest, longest := math.Inf(1), math.Inf(-1), math.Inf(1), math.Inf(-1)
	for _, r := range in.Runs {
		if r.Binding == "" {
			from, to = math.Min(from, float64(r.From)), math.Max(to, float64(r.To))
			shortest, longest = math.Min(shortest, float64(r.Shortest)), math.Max(longest, float64(r.Longer))
		}
	}
	if to < from {
		says = append(says, "Nowhere do all checks hold.")
	} else {
		says = append(says, fmt.Sprintf("All checks hold somewhere between %s and %s along the limb, with lines of %s to %s.",
			metres(quantity.Length(from)), metres(quantity.Length(to)), metres(quantity.Length(shortest)), metres(quantity.Length(longest))))
	}
	if in.Marked {
		says = append(says, fmt.Sprintf("Marked: %s out with a line of %s.", metres(in.At), metres(in.Line)))
	}
	for _, b := range codes {
		says = append(says, "Just beyond the edge fails: "+b.words+".")
	}
	if len(codes) > 0 {
		says = append(says, hatchedWords)
	}
	return says
}
