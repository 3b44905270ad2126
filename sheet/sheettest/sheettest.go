// Package sheettest makes sheets of the demo for tests: of every kind, and of a
// tree with more and longer names than any paper was made for.
package sheettest

import (
	"bytes"
	"fmt"
	"image"
	"image/color"
	"image/jpeg"
	"strings"
	"sync"
	"testing"

	"boughline/assess"
	"boughline/demo"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/sheet"
	"boughline/survey"
)

// Made is what the sheets of a test say they were made by.
var Made = sheet.Made{Program: "boughline 0.0.0", Knowledge: "0123456789ab"}

// loaded reads the tables once: nothing changes them.
var loaded = sync.OnceValues(knowledge.Load)

// Base returns the tables.
func Base(t testing.TB) *knowledge.Base {
	t.Helper()
	k, err := loaded()
	if err != nil {
		t.Fatal(err)
	}
	return k
}

// Demo returns the survey of the demo.
func Demo(t testing.TB) *survey.Survey {
	t.Helper()
	s, problems, err := survey.Read(bytes.NewReader(demo.Survey()))
	if err != nil || len(problems) > 0 {
		t.Fatal(err, problems)
	}
	if problems := assess.Problems(s, Base(t)); len(problems) > 0 {
		t.Fatal(problems)
	}
	return s
}

// Make makes a sheet of the demo, or of the survey that is given. A kind that
// is about one tree takes T1 where none is named.
func Make(t testing.TB, kind string, in sheet.Input) *sheet.Sheet {
	t.Helper()
	k, err := sheet.KindOf(kind)
	if err != nil {
		t.Fatal(err)
	}
	switch {
	case k.Takes == sheet.TakesOuting && in.Outing == nil:
		in.Outing = Outing(t)
	case k.Takes == sheet.TakesRegister && in.Register == nil:
		in.Register, in.On = Register(t), Demo(t).Day
	}
	if in.Survey == nil {
		in.Survey = Demo(t)
	}
	if in.Tree == "" && in.Hang == "" && (k.NeedsTree || k.NeedsHang) {
		in.Tree = in.Survey.Trees[0].ID
	}
	in.Knowledge, in.Made = Base(t), Made
	s, err := sheet.Make(kind, in)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// Photos returns pictures of a tree, tall and wide ones, with captions up to a
// long one.
func Photos(t testing.TB, tree string, count int) []sheet.Photo {
	t.Helper()
	var list []sheet.Photo
	for i := range count {
		width, height := 60+20*(i%4), 120-20*(i%4)
		picture := image.NewGray(image.Rect(0, 0, width, height))
		for x := range width {
			picture.SetGray(x, i%height, color.Gray{Y: uint8(x)})
		}
		var b bytes.Buffer
		if err := jpeg.Encode(&b, picture, nil); err != nil {
			t.Fatal(err)
		}
		list = append(list, sheet.Photo{Tree: tree, Of: "L1", Caption: fmt.Sprintf("picture %d%s", i+1, strings.Repeat(" of the limb from below", i%7)), Taken: "2026-05-09", Data: b.Bytes(), Width: width, Height: height})
	}
	return list
}

// longName is the longest name of a place in Europe, in Wales; such names are
// one word.
const longName = "Llanfairpwllgwyngyllgogerychwyrndrobwllllantysiliogogogoch"

// Crowded returns the demo's first tree alone with a number of findings, long
// names and words without a space.
func Crowded(t testing.TB, findings int) *survey.Survey {
	t.Helper()
	s := Demo(t)
	s.Trees = s.Trees[:1]
	s.Site = longName + ", " + strings.Repeat("Žluťoučký kůň ", 8)
	s.Surveyor = "Wolfeschlegelsteinhausenbergerdorff " + longName
	tree := &s.Trees[0]
	tree.Name = "the oak behind " + longName + " 木"
	tree.Note = strings.Repeat("unbroken", 40)
	tree.Hangs[0].ID = "swing-" + strings.Repeat("over-the-stream-", 6)
	tree.LoadTests = nil
	tree.Findings = nil
	for i := range findings {
		tree.Findings = append(tree.Findings, survey.Finding{ID: fmt.Sprintf("finding-number-%d", i+1), Sign: "crown-06", Member: "L2",
			At:   &survey.MeasuredLength{Value: quantity.Length(0.2 + 0.2*float64(i)), How: quantity.Laser},
			Note: strings.Repeat("seen from the lower gate, ", i%5) + longName})
	}
	return s
}
