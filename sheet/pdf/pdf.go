package pdf

import (
	"bytes"
	"fmt"
	"io"
	"time"

	drawing "boughline/draw/pdf"
	"boughline/sheet"

	"codeberg.org/go-pdf/fpdf"
)

// Paper is a size of paper, mm.
type Paper struct{ Width, Height float64 }

// The papers: ISO 216 A4, and US Letter of 8.5 by 11 inches.
var (
	A4     = Paper{210, 297}
	Letter = Paper{215.9, 279.4}
)

// Margins of a page, mm. Nothing but the foot is printed below Bottom.
const (
	Side   = 18.0
	Top    = 16.0
	Bottom = 22.0
)

// Write prints a sheet. The same sheet and paper give the same bytes.
func Write(w io.Writer, s *sheet.Sheet, paper Paper) error {
	day, err := time.Parse(time.DateOnly, s.Day)
	if err != nil {
		return fmt.Errorf("the day of the sheet: %w", err)
	}
	doc := fpdf.NewCustom(&fpdf.InitType{UnitStr: "mm", Size: fpdf.SizeType{Wd: paper.Width, Ht: paper.Height}})
	doc.SetCatalogSort(true)
	doc.SetCreationDate(day)
	doc.SetModificationDate(day)
	doc.SetTitle(drawing.Printable(s.Title), true)
	doc.SetSubject(drawing.Printable(s.Subtitle), true)
	doc.SetCreator(drawing.Printable(s.Foot[len(s.Foot)-1]), true)
	doc.SetLang(s.Language)
	doc.SetMargins(Side, Top, Side)
	doc.SetAutoPageBreak(false, 0)
	doc.SetCellMargin(0)
	drawing.AddFonts(doc)
	p := &printer{doc: doc, paper: paper, foot: s.Foot}
	p.set(s)
	p.pages()
	var b bytes.Buffer
	if err := doc.Output(&b); err != nil {
		return fmt.Errorf("cannot print the sheet: %w", err)
	}
	_, err = w.Write(b.Bytes())
	return err
}

// printer turns blocks into pieces.
type printer struct {
	doc    *fpdf.Fpdf
	paper  Paper
	foot   []string
	pieces []piece
	images int
	scale  float64 // of the type
	one    bool    // all on one page
}

// set turns a sheet into pieces: one for a single page in the largest type at
// which all of it stands on that page, and in the least where none does.
func (p *printer) set(s *sheet.Sheet) {
	p.scale, p.one = 1, s.OnePage
	if p.one {
		p.scale = largest
	}
	for {
		p.pieces = nil
		p.title(s)
		for _, b := range s.Blocks {
			p.block(b)
		}
		list := place(p.pieces, Top, p.paper.Height-Bottom)
		if !p.one || list[len(list)-1].page == 0 || p.scale <= least {
			return
		}
		p.scale -= 0.02
	}
}

// The type of a sheet for one page, beside that of others.
const largest, least = 1.5, 0.7

// width is that of the text.
func (p *printer) width() float64 { return p.paper.Width - 2*Side }

// room is the height of a page between its margins.
func (p *printer) room() float64 { return p.paper.Height - Top - Bottom }

func (p *printer) block(b sheet.Block) {
	switch b := b.(type) {
	case *sheet.Heading:
		p.heading(b)
	case *sheet.Paragraph:
		p.paragraph(b)
	case *sheet.List:
		p.list(b)
	case *sheet.Checklist:
		p.checklist(b.Items)
	case *sheet.Table:
		p.table(b)
	case *sheet.Figures:
		p.figures(b)
	case *sheet.Photos:
		p.photos(b.List)
	case *sheet.Lines:
		p.fields(b.Fields)
	case *sheet.Signatures:
		p.signatures(b.Who)
	case *sheet.Cautions:
		p.cautions(b.Items)
	case *sheet.NewPage:
		p.add(piece{newPage: true})
	}
}
