package svg

import (
	"math"
	"strconv"
	"strings"

	"boughline/draw"
)

func path(points []draw.Point, closed bool) string {
	var b strings.Builder
	for i, p := range points {
		b.WriteString([...]string{"M", "L"}[min(i, 1)] + pair(p))
	}
	if closed {
		b.WriteString("Z")
	}
	return b.String()
}

func segments(lines [][2]draw.Point) string {
	var b strings.Builder
	for _, l := range lines {
		b.WriteString("M" + pair(l[0]) + "L" + pair(l[1]))
	}
	return b.String()
}

func arc(a *draw.Arc) string {
	at := func(angle float64) draw.Point {
		sin, cos := math.Sincos(angle)
		return a.Centre.Add(a.Radius*cos, a.Radius*sin)
	}
	large, sweep := "0", "1"
	if math.Abs(a.To-a.From) > math.Pi {
		large = "1"
	}
	if a.To < a.From {
		sweep = "0"
	}
	r := number(a.Radius)
	return "M" + pair(at(a.From)) + "A" + r + " " + r + " 0 " + large + " " + sweep + " " + pair(at(a.To))
}

func pair(p draw.Point) string { return number(p.X) + " " + number(p.Y) }

// number writes a length to a hundredth of a millimetre.
func number(x float64) string {
	text := strconv.FormatFloat(math.Round(x*100)/100, 'f', -1, 64)
	if text == "-0" {
		return "0"
	}
	return text
}
