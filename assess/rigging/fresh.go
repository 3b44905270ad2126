package rigging

import (
	"math"

	"boughline/assess"
	"boughline/quantity"
)

// Fresh is where the hang may move when the bark is marked.
type Fresh struct {
	// Apart is the least distance from the marked place: the width of what bears on it.
	Apart quantity.Length `json:"at_least_apart_m"`
	From  quantity.Length `json:"from_m"` // along the limb
	// Searched is how far to either side ground, height and people still count as
	// known.
	Searched quantity.Length `json:"searched_m"`
	Spots    []Spot          `json:"spots"`           // the nearest on either side, the nearest first
	Fault    string          `json:"fault,omitempty"` // why none was looked for
}

// Spot is a place at which the hang still holds.
type Spot struct {
	Along   quantity.Length `json:"along_m"`
	Moved   quantity.Length `json:"moved_m"` // towards the tip above 0
	Outcome assess.Outcome  `json:"outcome"`
	Mass    quantity.Mass   `json:"riders_kg"` // the most that its limits allow
}

// Distances tried to either side, m; the first is the width of the anchor.
var steps = []quantity.Length{0.1, 0.2, 0.35, 0.6, 1}

func (r rigger) fresh(judged assess.Hang) Fresh {
	f := Fresh{Apart: r.bearingWidth(), From: r.hang.Survey().At.Value, Searched: steps[len(steps)-1]}
	if judged.Limits == nil {
		f.Fault = "nothing is hung here as things stand"
		return f
	}
	in, out := r.nearest(f, -1, judged), r.nearest(f, 1, judged)
	for _, s := range []*Spot{in, out} {
		if s != nil {
			f.Spots = append(f.Spots, *s)
		}
	}
	if len(f.Spots) == 2 && math.Abs(float64(f.Spots[1].Moved)) < math.Abs(float64(f.Spots[0].Moved)) {
		f.Spots[0], f.Spots[1] = f.Spots[1], f.Spots[0]
	}
	return f
}

// nearest tries places on one side, the nearest first, up to one whose outcome is
// no worse.
func (r rigger) nearest(f Fresh, side quantity.Length, judged assess.Hang) *Spot {
	for _, step := range append([]quantity.Length{f.Apart}, steps...) {
		along := f.From + side*step
		if step < f.Apart || along <= 0 {
			continue
		}
		moved, err := r.hang.Moved(along)
		if err != nil {
			return nil // beyond the limb
		}
		if moved.Limits != nil && moved.Outcome <= judged.Outcome {
			return &Spot{along, side * step, moved.Outcome, moved.Limits.Mass}
		}
	}
	return nil
}

// bearingWidth is the width of what bears on the bark, and no less than a thumb.
func (r rigger) bearingWidth() quantity.Length {
	width := quantity.Length(0.025)
	if p := r.holding(); p != nil {
		for _, m := range []*quantity.Measured[quantity.Length]{p.Width, p.Thickness} {
			if m != nil {
				width = max(width, m.High())
			}
		}
	}
	return quantity.Length(math.Ceil(100*float64(width)-1e-9) / 100)
}
