package figure

import (
	"fmt"
	"strings"

	"boughline/draw"
)

// Layout of every drawing, in mm.
const (
	paperWidth = 120.0
	margin     = 3.0
	innerWidth = paperWidth - 2*margin
)

// page lays out one drawing: a heading, the drawing itself, and rows below it.
// Labels wait until everything else is drawn, then find room in their order.
type page struct {
	scene  *draw.Scene
	area   draw.Box
	placer *draw.Placer
	stacks []stack
	labels []label
	rows   []row
	// backed puts paper behind labels, for drawings full of hatching.
	backed bool
	// crowded leaves labels out that find no room beside their places.
	crowded bool
	leftOut int
}

// nameOfKey begins the key of a label that names what another group draws.
const nameOfKey = "name of "

// Named returns the key of what a group draws or names.
func Named(key string) string { return strings.TrimPrefix(key, nameOfKey) }

// label is words that belong to a place, with a mark before them or none.
type label struct {
	at     draw.Point
	words  string
	strong bool
	// mark draws a shape about a centre, and group names what the label is.
	mark  func(centre draw.Point) []draw.Item
	group draw.Group
	// least is how wide and high its room is at least, for a finger.
	least float64
}

// row is a line of the key below a drawing.
type row struct {
	mark  func(centre draw.Point) []draw.Item
	words string
	group draw.Group
}

// newPage begins a drawing of a height under a heading.
func newPage(key, title string, height float64) *page {
	p := &page{scene: &draw.Scene{Key: key, Title: title, Width: paperWidth}}
	y := margin
	for _, line := range draw.Wrap(title, draw.HeadingSize, true, innerWidth) {
		y += draw.LineHeight(draw.HeadingSize)
		p.add(&draw.Text{At: draw.Point{X: margin, Y: y - 1.2}, Words: line, Size: draw.HeadingSize, Strong: true})
	}
	p.area = draw.BoxAt(draw.Point{X: margin, Y: y + 1.5}, innerWidth, height)
	p.placer = draw.NewPlacer(p.area)
	return p
}

func (p *page) add(items ...draw.Item) {
	for _, i := range items {
		if i != nil {
			p.scene.Items = append(p.scene.Items, i)
		}
	}
}

// line draws a line that labels had better not cover.
func (p *page) line(pen draw.Pen, points ...draw.Point) {
	p.add(&draw.Line{Points: points, Pen: pen})
	p.placer.Avoid(points...)
}

// wall draws a line that no label may cover.
func (p *page) wall(pen draw.Pen, points ...draw.Point) {
	p.add(&draw.Line{Points: points, Pen: pen})
	p.placer.Forbid(points...)
}

// fixed writes words at a place of its own that nothing else may take.
func (p *page) fixed(t *draw.Text) {
	p.add(t)
	p.placer.Take(t.Box())
}

// fixedItem draws an item that takes a box.
func (p *page) fixedItem(item draw.Item, box draw.Box) {
	p.add(item)
	p.placer.Take(box.Grown(0.8))
}

func (p *page) label(at draw.Point, words string) {
	p.labels = append(p.labels, label{at: at, words: words})
}

// dimension draws a dimension line with its figure beside it.
func (p *page) dimension(from, to draw.Point, words string) {
	p.add(draw.Dimension(from, to)...)
	p.placer.Avoid(from, to)
	p.label(draw.Point{X: (from.X + to.X) / 2, Y: (from.Y + to.Y) / 2}, words)
}

// finish places the labels and the rows and closes the drawing.
func (p *page) finish(says []string) *draw.Scene {
	for _, s := range p.stacks {
		if !p.placeStack(s) {
			p.labels = append(p.labels, s...)
		}
	}
	for _, l := range p.labels {
		switch {
		case p.place(l):
		case p.crowded:
			p.leftOut++
		default:
			p.rows = append(p.rows, row{l.mark, l.words, l.group})
		}
	}
	if p.leftOut > 0 {
		p.rows = append(p.rows, row{words: fmt.Sprintf("No room here for the names of %d trees.", p.leftOut)})
	}
	y := p.area.Max.Y + 2
	for _, r := range p.rows {
		y = p.row(r, y)
	}
	p.scene.Height = y + margin
	p.scene.Says = says
	return p.scene
}

// Room for a label.
const (
	markSize   = 5.0 // of the square that a mark takes
	labelWidth = 44.0
	mostLines  = 3
	// fingerSize is 24 pixels of a drawing that is 350 pixels wide, the least
	// that a finger is asked to meet (WCAG 2.2, criterion 2.5.8).
	fingerSize = 8.3
)

// place draws a label near its place; false where there is no room.
func (p *page) place(l label) bool {
	lines := draw.Wrap(l.words, draw.LabelSize, l.strong, labelWidth)
	if len(lines) > mostLines {
		lines = append(lines[:mostLines-1], draw.Fit(lines[mostLines-1]+" ...", draw.LabelSize, l.strong, labelWidth))
	}
	width, left := 0.0, 0.0
	if l.mark != nil {
		left = markSize + 0.4
	}
	for _, line := range lines {
		width = max(width, draw.TextWidth(line, draw.LabelSize, l.strong))
	}
	height := max(draw.LineHeight(draw.LabelSize)*float64(len(lines)), markSize)
	if l.mark == nil {
		height = draw.LineHeight(draw.LabelSize) * float64(len(lines))
	}
	height, width = max(height, l.least), max(width, l.least-left)
	find := p.placer.Place
	if p.crowded {
		find = p.placer.PlaceBeside
	}
	box, ok := find(l.at, left+width, height)
	if !ok {
		return false
	}
	if p.backed {
		p.add(&draw.Polygon{Points: draw.Rectangle(box), Fill: draw.Paper})
	}
	p.add(draw.Leader(l.at, box))
	group := l.group
	if l.mark != nil {
		group.Items = append(group.Items, l.mark(box.Min.Add(markSize/2, height/2))...)
	}
	group.Touch = box
	y := box.Min.Y + (height-draw.LineHeight(draw.LabelSize)*float64(len(lines)))/2
	for i, line := range lines {
		group.Items = append(group.Items, &draw.Text{At: draw.Point{X: box.Min.X + left, Y: y + baseline + float64(i)*draw.LineHeight(draw.LabelSize)}, Words: line, Size: draw.LabelSize, Strong: l.strong})
	}
	p.addGroup(&group)
	return true
}

// addGroup adds a group, or only its items where it stands for nothing.
func (p *page) addGroup(g *draw.Group) {
	if g.Key == "" && g.Title == "" {
		p.add(g.Items...)
		return
	}
	p.add(g)
}

// baseline is how far the letters of a label stand below the top of its line.
const baseline = 3.6

// row draws one row of the key and returns where the next begins.
func (p *page) row(r row, y float64) float64 {
	left, group := margin, r.group
	if r.mark != nil {
		left += markSize + 1
		group.Items = append(group.Items, r.mark(draw.Point{X: margin + markSize/2, Y: y + markSize/2})...)
	}
	lines := draw.Wrap(r.words, draw.LabelSize, false, paperWidth-margin-left)
	tall := max(markSize, float64(len(lines))*draw.LineHeight(draw.LabelSize))
	if group.Key != "" {
		tall = max(tall, fingerSize)
		group.Touch = draw.BoxAt(draw.Point{X: margin, Y: y}, innerWidth, tall)
	}
	for i, line := range lines {
		group.Items = append(group.Items, &draw.Text{At: draw.Point{X: left, Y: y + baseline + float64(i)*draw.LineHeight(draw.LabelSize)}, Words: line, Size: draw.LabelSize})
	}
	p.addGroup(&group)
	return y + tall + 0.6
}
