package pdf

import (
	"bytes"
	"testing"
	"time"

	"boughline/draw"

	"codeberg.org/go-pdf/fpdf"
)

func example() *draw.Scene {
	return &draw.Scene{Key: "example", Title: "A swing", Width: 120, Height: 60, Items: []draw.Item{
		&draw.Polygon{Points: draw.Rectangle(draw.BoxAt(draw.Point{X: 10, Y: 10}, 30, 20)), Pen: draw.Bold, Fill: draw.Slant},
		&draw.Line{Points: []draw.Point{{X: 5, Y: 40}, {X: 100, Y: 40}}, Pen: draw.Dashed},
		&draw.Arc{Centre: draw.Point{X: 80, Y: 10}, Radius: 20, From: 0.5, To: 2.6, Pen: draw.Accent},
		&draw.Circle{Centre: draw.Point{X: 80, Y: 10}, Radius: 2, Pen: draw.Fine, Fill: draw.Ink},
		&draw.Group{Key: "finding F1", Items: []draw.Item{&draw.Text{At: draw.Point{X: 60, Y: 55}, Words: "line 3.4\u00a0m", Size: draw.LabelSize, Anchor: draw.Middle, Strong: true}}},
	}}
}

func write(t *testing.T, s *draw.Scene) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := Write(&b, s, time.Date(2026, 5, 16, 0, 0, 0, 0, time.UTC)); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func TestTheSameSceneGivesTheSameBytes(t *testing.T) {
	first := write(t, example())
	if !bytes.Equal(first, write(t, example())) {
		t.Error("two runs differ")
	}
	if !bytes.HasPrefix(first, []byte("%PDF-")) || !bytes.Contains(first, []byte("/FontFile2")) {
		t.Error("it is no PDF with an embedded font")
	}
}

// The room that labels are given must hold them in the printed typeface too.
// The Go typeface is independent of the one that the widths were taken from.
func TestLabelsHaveRoomInTheEmbeddedTypeface(t *testing.T) {
	doc := fpdf.New("P", "mm", "A4", "")
	AddFonts(doc)
	for _, strong := range []bool{false, true} {
		doc.SetFont(Family, map[bool]string{false: "", true: "B"}[strong], 0)
		doc.SetFontUnitSize(draw.LabelSize)
		for _, words := range []string{"the quick brown fox jumps over 12 lazy dogs", "WARM WOOD", "0123456789", "let go, lands 5.49\u00a0m out", "Fällkerbe, 3 °", "iiiiillll"} {
			if got, room := doc.GetStringWidth(words), draw.TextWidth(words, draw.LabelSize, strong); got > room*1.001 {
				t.Errorf("%q takes %.2f mm, its room is %.2f mm", words, got, room)
			}
		}
	}
}
