package measure

import (
	"encoding/json"
	"fmt"
	"math"

	"boughline/quantity"
)

// Picture is one picture with marked points, a known length in it and what is
// known of the camera. Everything marked lies in one upright plane, that of the
// limb: its depth follows from the references, every other length from its depth.
//
// The camera is a pinhole with square pixels, its axis near the middle of an
// uncropped picture, and a radial bend of at most Bend. It stands at the
// origin; Tilt, Roll and Turned place the plane before it.
type Picture struct {
	Width  float64 `json:"width_px"`
	Height float64 `json:"height_px"`
	// Focal is the focal length for a 36 mm by 24 mm frame with the same diagonal,
	// as cameras write it into their pictures; View, in its stead, the angle from
	// the left edge to the right. Neither known: a telephone, roughly.
	Focal Value `json:"focal_35mm,omitempty"`
	View  Value `json:"view,omitempty"`
	// Tilt is how far the camera looked above the horizontal, Roll how far it was
	// turned clockwise about its line of sight.
	Tilt Value `json:"tilt"`
	Roll Value `json:"roll,omitempty"`
	// Turned is how far the limb's plane is from standing square to the level line of sight:
	// positive if its right end is the farther one.
	Turned Value `json:"turned"`
	// MarkSd is the standard deviation of a mark, right and down, in pixels.
	MarkSd float64 `json:"mark_sd_px,omitempty"`
	// Bend bounds the radial term k1 of the lens, in r (1 + k1 r^2) with r in focal lengths.
	Bend *float64 `json:"bend,omitempty"`
	// Strays is how far single stations lie before or behind the plane.
	Strays     Value       `json:"strays,omitempty"`
	References []Reference `json:"references"`
	Limb       []Station   `json:"limb,omitempty"`
	Lengths    []Span      `json:"lengths,omitempty"`
	Angles     []Corner    `json:"angles,omitempty"`
}

// Value is a value as people write it, such as "20 deg ±1 deg clinometer"; "" if
// it is not known. The field that it stands in says which quantity it is.
type Value string

// Mark is a point of the picture in pixels, right and down from its top left
// corner.
type Mark [2]float64

// UnmarshalJSON reads two numbers, neither fewer nor more.
func (m *Mark) UnmarshalJSON(data []byte) error {
	var numbers []float64
	if err := json.Unmarshal(data, &numbers); err != nil || len(numbers) != 2 {
		return fmt.Errorf("a mark is %s; expected two numbers, [right, down] in px", data)
	}
	*m = Mark{numbers[0], numbers[1]}
	return nil
}

// Reference is a known length in a plane parallel to the limb's, such as two
// knots on a line that hangs from it; or, with At and Distance, the level
// distance from the camera to a marked point.
type Reference struct {
	From     *Mark `json:"from,omitempty"`
	To       *Mark `json:"to,omitempty"`
	Length   Value `json:"length,omitempty"`
	At       *Mark `json:"at,omitempty"`
	Distance Value `json:"distance,omitempty"`
	// Nearer is how much nearer to the camera than the limb's plane it is.
	Nearer Value `json:"nearer,omitempty"`
}

// Station is a place along the limb: its two edges, opposite each other, or a
// point of its middle line. Stations follow each other outwards.
type Station struct {
	Name  string `json:"name"`
	Edges []Mark `json:"edges,omitempty"` // two, or none
	At    *Mark  `json:"at,omitempty"`
}

// Span is a length between two marks in the plane.
type Span struct {
	Name string `json:"name"`
	From *Mark  `json:"from"`
	To   *Mark  `json:"to"`
}

// Corner is an angle in the plane, as between a limb and its parent.
type Corner struct {
	Name  string `json:"name"`
	At    *Mark  `json:"at"`
	One   *Mark  `json:"one"`
	Other *Mark  `json:"other"`
}

// What a picture takes where it states nothing (house).
const (
	markSd       = 2.0  // px
	bend         = 0.02 // bound of k1 after the telephone's own correction
	focalSd      = 0.03 // of the focal length or angle of view
	centreSd     = 0.005
	leastApart   = 3.0 // errors of a mark between two that are taken apart
	mostTurned   = 60 * degree
	leastGrazing = 10 * degree
)

// The fields of a picture that are values.
var (
	focalField    = standing(lengthField("", "focal length for a 36 mm frame", quantity.FromTable, 0.01, 0.6), "26 mm ±4 mm assumed")
	viewField     = angleField("", "angle of view across the picture", quantity.FromTable, 3*degree, 120*degree)
	tiltField     = angleField("", "how far the camera looked above the level", quantity.Clinometer, -70*degree, 70*degree)
	rollField     = standing(angleField("", "how far the camera was turned clockwise", quantity.Clinometer, -mostTurned, mostTurned), "0 deg ±2 deg assumed")
	turnedField   = angleField("", "how far the limb is turned from square to the line of sight, + if its right end is farther", quantity.Compass, -mostTurned, mostTurned)
	straysField   = standing(lengthField("", "how far single stations lie before or behind the limb's plane", quantity.Assumed, -100, 100), "0 m ±0.05 m assumed")
	lengthInView  = lengthField("", "known length between the two marks", quantity.Taped, 1e-3, mostDistance)
	distanceField = lengthField("", "level distance from the camera to the marked point", quantity.Taped, 0.1, mostDistance)
	nearerField   = standing(lengthField("", "how much nearer to you than the limb the reference is", quantity.ByEye, -100, 100), "0 m ±0.2 m assumed")
)

// Work gives the thickness at every station with edges, the distances along the limb from
// its first station, its slope, and the other lengths and angles that were marked.
//
// Errors of marks, camera, references and depth are carried to first order, with
// what the second derivatives add (a limb seen at a slant); Share says what each
// has in the result. Not covered: a limb that bends out of its plane by more than
// Strays, a cropped picture, marks on the wrong thing.
func (p Picture) Work(spread Spread) (Outcome, error) {
	v, err := p.view(spread)
	if err != nil {
		return Outcome{}, err
	}
	out := Outcome{Kind: "photo", Caution: photoCaution}
	if err := v.weigh(&out); err != nil {
		return Outcome{}, err
	}
	for i, c := range carry(v.all, v.readings) {
		first, share := c.sd(v.readings)
		sd := math.Hypot(first, c.bending(v.readings))
		r := Result{
			Output: v.gives[i], Value: c.value, Sd: sd, MeanShift: c.meanShift(v.readings), How: v.how,
			Gradient: map[string]float64{}, Share: map[string]float64{},
		}
		for j, name := range v.names {
			r.Share[name] += share[j]
			if name != marks && name != strays && name != centre {
				r.Gradient[name] += c.gradient[j]
			}
		}
		if !r.finite() {
			return Outcome{}, fmt.Errorf("%s: the marks do not give it; look whether two of them coincide", r.Label)
		}
		out.Results = append(out.Results, r)
	}
	return out, nil
}

const photoCaution = "all marks must lie in the limb's upright plane; a picture shows neither its far side nor what its bark hides"
