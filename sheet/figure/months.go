package figure

import (
	"fmt"

	"boughline/draw"
)

// MonthsInput is what happened month by month, the earliest first.
type MonthsInput struct {
	Key, Title string
	Months     []Month
}

// Month is one month: how many outings it had and how many rides were counted.
type Month struct {
	Words          string // 2026-03
	Outings, Rides int
}

// Months draws the rides of each month as bars, with its outings in words.
func Months(in MonthsInput) *draw.Scene {
	const tall = 11.5
	p := newPage("months "+in.Key, in.Title, tall*float64(len(in.Months))+6)
	left, wide := p.area.Min.X+1, innerWidth-20.0
	most := 1
	for _, m := range in.Months {
		most = max(most, m.Rides)
	}
	for i, m := range in.Months {
		y := p.area.Min.Y + 2 + tall*float64(i)
		long := wide * float64(m.Rides) / float64(most)
		p.add(&draw.Text{At: draw.Point{X: left, Y: y + 4.6}, Words: monthWords(m), Size: draw.LabelSize})
		p.add(&draw.Polygon{Points: draw.Rectangle(draw.BoxAt(draw.Point{X: left, Y: y + 6.2}, max(long, 0.3), 3)), Pen: draw.Fine, Fill: draw.Ink})
		p.add(&draw.Text{At: draw.Point{X: left + long + 1.2, Y: y + 9}, Words: fmt.Sprint(m.Rides), Size: draw.LabelSize, Strong: true})
	}
	says := []string{in.Title + ". Bars are the rides that were counted."}
	for _, m := range in.Months {
		says = append(says, fmt.Sprintf("%s, %d rides.", monthWords(m), m.Rides))
	}
	return p.finish(says)
}

func monthWords(m Month) string {
	if m.Outings == 1 {
		return m.Words + ": 1 outing"
	}
	return fmt.Sprintf("%s: %d outings", m.Words, m.Outings)
}
