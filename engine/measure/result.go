package measure

import (
	"math"
	"strconv"

	"boughline/quantity"
)

// Outcome is what one kind of measuring came to.
type Outcome struct {
	Kind     string     `json:"kind"`
	Results  []Result   `json:"results"`
	Repeated []Repeated `json:"repeated,omitempty"` // fields read more than once
	Caution  string     `json:"caution,omitempty"`
}

// Repeated is a field that was read more than once, with its readings combined.
type Repeated struct {
	Field     string    `json:"field"`
	Dimension Dimension `json:"dimension"`
	Combined
}

// Apart writes how far the readings lie apart at most.
func (r Repeated) Apart() string { return Field{Dimension: r.Dimension}.text(r.Spread) }

// Result is one value worked out, in SI units, with its error.
type Result struct {
	Output
	Value     float64            `json:"value"`
	Sd        float64            `json:"sd"`
	Gradient  map[string]float64 `json:"gradient"`       // derivative by each field
	Share     map[string]float64 `json:"variance_share"` // of each field in the variance
	MeanShift float64            `json:"second_order_mean_shift"`
	How       quantity.How       `json:"how,omitempty"`
}

// finite reports whether the result is a number with all that belongs to it.
func (r Result) finite() bool {
	sum := r.Value + r.Sd + r.MeanShift
	for name, g := range r.Gradient {
		sum += g + r.Share[name]
	}
	return !math.IsNaN(sum) && !math.IsInf(sum, 0)
}

// coverage95 is the two-sided 95 % deviate of the normal distribution (tables).
const coverage95 = 1.959964

// Interval returns the bounds that hold the truth 95 times in 100, if the
// readings err as stated and nothing else does.
func (r Result) Interval() (low, high float64) {
	return r.Value - coverage95*r.Sd, r.Value + coverage95*r.Sd
}

// coarse is the share of the standard deviation by which the mean may shift
// before first order is no longer believed (house).
const coarse = 0.25

// TooCoarse reports whether the readings are so unsure that the formula bends
// within their error: the interval is then not to be trusted.
func (r Result) TooCoarse() bool { return math.Abs(r.MeanShift) > coarse*r.Sd }

// Text writes the result as a survey takes it, for example
// "0.31 m ±0.02 m angular width": the error to two digits (JCGM 100 (GUM)
// 7.2.6, from memory), the value to the same place.
func (r Result) Text() string { return r.TextIn(r.Dimension.usual()) }

// TextIn is Text in a unit of the reader's choice, which must be one of the
// result's dimension.
func (r Result) TextIn(u quantity.Unit) string {
	text := r.shown(r.Value, u) + " ±" + r.shown(r.Sd, u)
	if r.How != quantity.NotStated {
		text += " " + string(r.How)
	}
	return text
}

// Bounds writes the interval.
func (r Result) Bounds() (low, high string) { return r.BoundsIn(r.Dimension.usual()) }

// BoundsIn is Bounds in a unit of the reader's choice, as in TextIn.
func (r Result) BoundsIn(u quantity.Unit) (low, high string) {
	l, h := r.Interval()
	return r.shown(l, u), r.shown(h, u)
}

// usual is the unit in which results of the dimension are written.
func (d Dimension) usual() quantity.Unit {
	switch d {
	case Angle:
		return quantity.Unit{Symbol: "deg", Factor: degree}
	case Modulus:
		return quantity.Unit{Symbol: "cm3", Factor: 1e-6}
	}
	return quantity.Unit{Symbol: d.Unit(), Factor: 1}
}

// shown writes a value in a unit, to the place that the error shows.
func (r Result) shown(value float64, u quantity.Unit) string {
	return fixed(value/u.Factor, decimals(r.Value/u.Factor, r.Sd/u.Factor)) + " " + u.Symbol
}

// mostDecimals keeps a result without error from being written with noise.
const mostDecimals = 6

// decimals returns the places that show an error to two digits. Without an
// error it shows the value to six.
func decimals(value, sd float64) int {
	lead, digits := sd, 2
	if sd == 0 {
		lead, digits = math.Abs(value), 6
	}
	if lead == 0 {
		return 0
	}
	return min(mostDecimals, max(0, digits-1-int(math.Floor(math.Log10(lead)))))
}

func fixed(x float64, places int) string {
	if text := strconv.FormatFloat(x, 'f', places, 64); text != "-"+strconv.FormatFloat(0, 'f', places, 64) {
		return text
	}
	return strconv.FormatFloat(0, 'f', places, 64)
}
