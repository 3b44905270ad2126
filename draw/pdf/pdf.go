package pdf

import (
	"bytes"
	"io"
	"math"
	"time"

	"boughline/draw"

	"codeberg.org/go-pdf/fpdf"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
)

// Family is the typeface that Write embeds, under this name.
const Family = "Go"

// AddFonts embeds the regular and the bold face of Family in a document.
func AddFonts(doc *fpdf.Fpdf) {
	doc.AddUTF8FontFromBytes(Family, "", goregular.TTF)
	doc.AddUTF8FontFromBytes(Family, "B", gobold.TTF)
}

// Write draws a scene as a document of one page of its size. The same scene
// and day give the same bytes.
func Write(w io.Writer, s *draw.Scene, day time.Time) error {
	doc := fpdf.NewCustom(&fpdf.InitType{UnitStr: "mm", Size: fpdf.SizeType{Wd: s.Width, Ht: s.Height}})
	doc.SetCatalogSort(true)
	doc.SetCreationDate(day)
	doc.SetModificationDate(day)
	doc.SetTitle(s.Title, true)
	doc.SetLang("en")
	doc.SetMargins(0, 0, 0)
	doc.SetAutoPageBreak(false, 0)
	AddFonts(doc)
	doc.AddPageFormat("P", fpdf.SizeType{Wd: s.Width, Ht: s.Height})
	Draw(doc, s, Place{Scale: 1, Family: Family})
	var b bytes.Buffer
	if err := doc.Output(&b); err != nil {
		return err
	}
	_, err := w.Write(b.Bytes())
	return err
}

// Place is where on the page of a document a scene is drawn.
type Place struct {
	X, Y  float64 // mm, of the upper left corner
	Scale float64 // 1 for the scene's own size
	// Family is a typeface of the document with a regular and a bold face.
	Family string
}

// Draw draws a scene on the page of a document that counts in millimetres. It
// leaves pens, colours and font as it used them last.
func Draw(doc *fpdf.Fpdf, s *draw.Scene, at Place) {
	doc.SetLineCapStyle("round")
	doc.SetLineJoinStyle("round")
	doc.SetDrawColor(0, 0, 0)
	doc.SetTextColor(0, 0, 0)
	ink{doc, at}.items(s.Items)
	doc.SetDashPattern(nil, 0)
}

// ink draws on one page.
type ink struct {
	doc *fpdf.Fpdf
	at  Place
}

func (i ink) point(p draw.Point) fpdf.PointType {
	return fpdf.PointType{X: i.at.X + p.X*i.at.Scale, Y: i.at.Y + p.Y*i.at.Scale}
}

func (i ink) points(list []draw.Point) []fpdf.PointType {
	points := make([]fpdf.PointType, len(list))
	for k, p := range list {
		points[k] = i.point(p)
	}
	return points
}

func (i ink) items(list []draw.Item) {
	for _, item := range list {
		switch item := item.(type) {
		case *draw.Line:
			i.line(item.Points, item.Pen)
		case *draw.Polygon:
			i.filled(item.Points, item.Pen, item.Fill)
		case *draw.Circle:
			i.filled(draw.Round(item.Centre, item.Radius), item.Pen, item.Fill)
		case *draw.Arc:
			i.line(chords(item), item.Pen)
		case *draw.Text:
			i.text(item)
		case *draw.Group:
			i.items(item.Items)
		}
	}
}

// pen takes up a pen.
func (i ink) pen(p draw.Pen) {
	i.doc.SetLineWidth(p.Width() * i.at.Scale)
	dashes := p.Dashes()
	for k := range dashes {
		dashes[k] *= i.at.Scale
	}
	i.doc.SetDashPattern(dashes, 0)
}

func (i ink) line(list []draw.Point, p draw.Pen) {
	if p == draw.NoPen || len(list) < 2 {
		return
	}
	i.pen(p)
	for k, q := range i.points(list) {
		if k == 0 {
			i.doc.MoveTo(q.X, q.Y)
		} else {
			i.doc.LineTo(q.X, q.Y)
		}
	}
	i.doc.DrawPath("D")
}

func (i ink) filled(outline []draw.Point, p draw.Pen, f draw.Fill) {
	if f.IsHatch() {
		for _, l := range draw.Hatching(outline, f) {
			i.line(l[:], draw.Hair)
		}
	}
	style := ""
	if f == draw.Paper || f == draw.Ink {
		style = "F"
		shade := map[draw.Fill]int{draw.Paper: 255, draw.Ink: 0}[f]
		i.doc.SetFillColor(shade, shade, shade)
	}
	if p != draw.NoPen {
		style += "D"
		i.pen(p)
	}
	if style != "" {
		i.doc.Polygon(i.points(outline), style)
	}
}

// chords follows an arc closer than any printer does.
func chords(a *draw.Arc) []draw.Point {
	const step = math.Pi / 90
	n := max(1, int(math.Ceil(math.Abs(a.To-a.From)/step)))
	list := make([]draw.Point, n+1)
	for k := range list {
		sin, cos := math.Sincos(a.From + (a.To-a.From)*float64(k)/float64(n))
		list[k] = a.Centre.Add(a.Radius*cos, a.Radius*sin)
	}
	return list
}

func (i ink) text(t *draw.Text) {
	style := ""
	if t.Strong {
		style = "B"
	}
	i.doc.SetFont(i.at.Family, style, 0)
	i.doc.SetFontUnitSize(t.Size * i.at.Scale)
	words := Printable(t.Words)
	at := i.point(t.At)
	at.X -= i.doc.GetStringWidth(words) * [...]float64{0, 0.5, 1}[t.Anchor]
	i.doc.Text(at.X, at.Y, words)
}
