package hangsearch

import (
	"boughline/assess"
	"boughline/engine/space"
	"boughline/quantity"
	"boughline/survey"
)

// Place is what one limb offers to one group.
type Place struct {
	Limb   string `json:"limb"`
	Riders string `json:"riders"`
	// Best is the best hang by the aim, nil where none serves; then Miss says
	// what comes nearest.
	Best *Found `json:"best,omitempty"`
	Miss *Miss  `json:"miss,omitempty"`
	// Band maps the limb: the lines that serve at places along it, in the
	// direction of the best hang or of the nearest miss.
	Band Band `json:"band"`
}

// Found is a hang that serves, with what binds around it.
type Found struct {
	// Hang is written as a survey would ask for it.
	Hang    survey.Hang    `json:"hang"`
	Outcome assess.Outcome `json:"outcome"`
	// Judged is what Assess says of the hang where it is the only one.
	Judged *assess.Hang `json:"judged"`
	// Fall is the greatest height of fall, Least the least of all margins.
	Fall  quantity.Length `json:"fall_m"`
	Least Bind            `json:"least"`
	// Nearer and Farther are the first hang points along the limb that no
	// longer serve with this line, Shorter and Longer the first lines at this
	// hang point, each with the check that fails there. Nil where the limb or
	// the lines that are tried end.
	Nearer  *Edge `json:"nearer,omitempty"`
	Farther *Edge `json:"farther,omitempty"`
	Shorter *Edge `json:"shorter,omitempty"`
	Longer  *Edge `json:"longer,omitempty"`

	area space.Polygon // kept clear, in the frame of the tree
}

// Edge is the first place or line beyond those that serve.
type Edge struct {
	At   quantity.Length `json:"at_m"`
	Bind Bind            `json:"bind"`
}

// Bind is a check with its margin.
type Bind struct {
	Code   assess.Code `json:"code"`
	Part   string      `json:"part,omitempty"`
	Margin float64     `json:"margin"`
}

func bindOf(s assess.Short) Bind { return Bind{s.Code, s.Part, s.Margin} }

// Band is the map along a limb in one swing direction.
type Band struct {
	Azimuth   quantity.Angle  `json:"azimuth_rad"`
	Amplitude quantity.Angle  `json:"amplitude_rad"`
	Length    quantity.Length `json:"length_m"` // of the limb
	Rows      []Row           `json:"rows"`
}

// Row is one place along the limb. Lines are the lengths that serve there, none
// where Bind does not hold.
type Row struct {
	Along quantity.Length `json:"along_m"`
	Lines []Lines         `json:"lines,omitempty"`
	Bind  *Bind           `json:"bind,omitempty"`
}

// Lines are all line lengths from one to another, with the checks that fail
// 1 cm shorter and 1 cm longer; nil where the lines that are tried end.
type Lines struct {
	From    quantity.Length `json:"from_m"`
	To      quantity.Length `json:"to_m"`
	Shorter *Bind           `json:"shorter,omitempty"`
	Longer  *Bind           `json:"longer,omitempty"`
}

// Miss is what comes nearest where nothing serves.
type Miss struct {
	Along   quantity.Length `json:"along_m"`
	Line    quantity.Length `json:"line_m,omitempty"` // 0 where no line was reached
	Azimuth quantity.Angle  `json:"azimuth_rad"`
	Bind    Bind            `json:"bind"`
	// Changes are the changes that would help, the smallest first.
	Changes []assess.Change `json:"changes,omitempty"`
}
