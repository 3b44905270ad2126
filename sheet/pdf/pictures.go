package pdf

import (
	"bytes"
	"fmt"

	drawing "boughline/draw/pdf"
	"boughline/sheet"

	"codeberg.org/go-pdf/fpdf"
)

// mostTall is the greatest height of a drawing, so that a heading fits above, and
// on a sheet of one page the words.
func (p *printer) mostTall() float64 {
	if p.one {
		return p.room() / 5
	}
	return p.room() - 14
}

const gutter = 4.0 // between two pictures

// half is the width of a picture beside another.
func (p *printer) half() float64 { return (p.width() - gutter) / 2 }

// figures prints drawings two beside one another, or one alone where they are
// wide; one that is too tall for that is made smaller still.
func (p *printer) figures(f *sheet.Figures) {
	room, columns := p.half(), 2
	if f.Wide {
		room, columns = p.width(), 1
	}
	for i := 0; i < len(f.Scenes); i += columns {
		pair := f.Scenes[i:min(i+columns, len(f.Scenes))]
		tall := 0.0
		scales := make([]float64, len(pair))
		for k, s := range pair {
			scales[k] = min(room/s.Width, p.mostTall()/s.Height)
			tall = max(tall, s.Height*scales[k])
		}
		p.add(piece{height: tall, draw: func(y float64) {
			for k, s := range pair {
				drawing.Draw(p.doc, s, drawing.Place{X: Side + float64(k)*(p.half()+gutter), Y: y, Scale: scales[k], Family: drawing.Family})
			}
		}})
		p.space(3)
	}
}

// photoHeight is the greatest height of a photo, mm.
const photoHeight = 80.0

// photos prints pictures two beside one another with their captions below.
func (p *printer) photos(list []sheet.Photo) {
	for i := 0; i < len(list); i += 2 {
		pair := list[i:min(i+2, len(list))]
		tall := 0.0
		shown := make([]shownPhoto, len(pair))
		for k, photo := range pair {
			shown[k] = p.photo(photo, Side+float64(k)*(p.half()+gutter))
			tall = max(tall, shown[k].height+float64(len(shown[k].caption))*p.leading(cellSize)+2)
		}
		p.add(piece{height: min(tall, p.room()), draw: func(y float64) {
			for _, s := range shown {
				s.draw(p, y)
			}
		}})
		p.space(3)
	}
}

// shownPhoto is a photo with its place on the page.
type shownPhoto struct {
	name             string
	x, width, height float64
	caption          []string
}

func (p *printer) photo(photo sheet.Photo, x float64) shownPhoto {
	p.images++
	name := fmt.Sprintf("photo %d", p.images)
	p.doc.RegisterImageOptionsReader(name, fpdf.ImageOptions{ImageType: "JPEG"}, bytes.NewReader(photo.Data))
	width, height := p.half(), p.half()*float64(photo.Height)/float64(max(1, photo.Width))
	if height > photoHeight {
		width, height = width*photoHeight/height, photoHeight
	}
	p.face(cellSize, false)
	return shownPhoto{name: name, x: x, width: width, height: height, caption: p.lines(photo.Words(), p.half())}
}

func (s shownPhoto) draw(p *printer, y float64) {
	p.doc.ImageOptions(s.name, s.x, y, s.width, s.height, false, fpdf.ImageOptions{ImageType: "JPEG"}, 0, "")
	p.face(cellSize, false)
	for i, line := range s.caption {
		p.text(s.x, y+s.height+1+p.rise(cellSize)+float64(i)*p.leading(cellSize), line)
	}
}
