package assess

import (
	"boughline/quantity"
	"boughline/survey"
)

// Line is what follows for one line.
type Line struct {
	ID      string    `json:"id"`
	Kind    string    `json:"kind"`
	Ends    []LineEnd `json:"ends"` // and the redirect of a climbing line, last
	Asked   LineUse   `json:"asked"`
	Outcome Outcome   `json:"outcome"`
	// Shape is nil where the line cannot be worked out.
	Shape   *LineShape  `json:"shape,omitempty"`
	Limits  *LineLimits `json:"limits,omitempty"` // for an outcome that lets people on
	Reasons []Reason    `json:"reasons"`          // the governing one first
	Checks  []Check     `json:"checks"`           // the least margin first
	LeftOut []LeftOut   `json:"leaves_out"`
}

// LineEnd is one anchor of a line, with the pull on it.
type LineEnd struct {
	Tree     string `json:"tree"`
	TreeName string `json:"tree_name,omitempty"`
	Species  string `json:"species"`
	Member   string `json:"member"`
	Redirect bool   `json:"redirect,omitempty"`
	// Height is that of the anchor above the ground below it, Thick the diameter
	// of the stem or limb there.
	Height quantity.Length `json:"height_m"`
	Thick  quantity.Length `json:"thickness_m"`
	// AtRest is the greatest pull with the riders at rest, Sudden that of the
	// same riders let go onto the line; Level and Down are the parts of AtRest.
	AtRest quantity.Force `json:"pull_at_rest_n"`
	Sudden quantity.Force `json:"pull_sudden_n"`
	Level  quantity.Force `json:"pull_level_n"`
	Down   quantity.Force `json:"pull_down_n"`
}

// LineUse is how a line is to be used.
type LineUse struct {
	Riders int            `json:"riders"`
	Mass   quantity.Mass  `json:"riders_kg"` // all together
	Gear   quantity.Mass  `json:"gear_kg"`
	Gust   quantity.Speed `json:"gust_m_s"` // 3 s, at 10 m in the open
}

// LineLimits is the greatest use at which every check holds.
type LineLimits struct {
	LineUse
	MassEach    quantity.Mass `json:"each_kg"`
	Beaufort    int           `json:"beaufort,omitempty"`
	SeenInTrees string        `json:"seen_in_trees,omitempty"`
	// TestMass hangs where the riders would be before anybody is on the line.
	TestMass   quantity.Mass `json:"load_test_kg"`
	Departures []string      `json:"departures,omitempty"`
}

// LineShape is the line with the riders asked for at rest in its middle, as
// tight as it may be; a climbing line has a redirect angle alone.
type LineShape struct {
	Span quantity.Length `json:"span_m,omitempty"`
	Rise quantity.Length `json:"rise_m,omitempty"`
	Sag  quantity.Length `json:"sag_m,omitempty"` // as wanted, or as it follows from the pretension
	// Unpulled is the length between the anchors before anything pulls on it.
	Unpulled quantity.Length `json:"length_without_pull_m,omitempty"`
	// SuddenFactor is what a load let go onto it counts for.
	SuddenFactor float64        `json:"sudden_factor"`
	Between      quantity.Angle `json:"redirect_angle_rad,omitempty"`
	// Loaded, Empty and Ground are its outline over the ground, from the first
	// anchor, heights from the ground below that; m.
	Loaded [][2]float64 `json:"loaded_m,omitempty"`
	Empty  [][2]float64 `json:"empty_m,omitempty"`
	Ground [][2]float64 `json:"ground_m,omitempty"`
}

// What is not worked out of a line.
const (
	LineBounce     LeftOut = "line-bounce"
	LineFalls      LeftOut = "line-falls"
	LineChance     LeftOut = "line-chance"
	LineFriction   LeftOut = "line-friction"
	LineTogether   LeftOut = "line-anchors-together"
	LineUneven     LeftOut = "line-uneven-body"
	LineTestUnused LeftOut = "line-load-test"
)

// leftOut lists what is not worked out of this kind of line.
func (l *line) leftOut() []LeftOut {
	list := []LeftOut{LineChance, LineTestUnused}
	switch l.s.Kind {
	case survey.HammockLine:
		list = append(list, LineUneven, LineBounce)
	case survey.TraverseLine:
		list = append(list, LineBounce)
	default:
		list = append(list, LineFalls, LineFriction)
	}
	if len(l.ends) == 2 && l.ends[0].s.ID == l.ends[1].s.ID {
		list = append(list, LineTogether)
	}
	return list
}

func (l *line) endFigures() []LineEnd {
	var list []LineEnd
	mass := l.riders.design + l.riders.seat
	for i, r := range l.ends {
		height, _ := r.anchorHeight()
		e := LineEnd{Tree: r.s.ID, TreeName: r.s.Name, Species: r.s.Species, Member: r.h.Member, Redirect: i > 0 && l.s.Redirect != nil,
			Height: height.Value, Thick: r.on.diameter(float64(r.arm.Value)).upright.Value, Sudden: r.anchor.greatest(mass)}
		for _, s := range r.anchor.pulls(mass) {
			if pull := quantity.Force(s.pull.Norm()); !s.sudden && pull > e.AtRest {
				e.AtRest, e.Level, e.Down = pull, quantity.Force(flatten(s.pull).Norm()), quantity.Force(-s.pull.Z)
			}
		}
		list = append(list, e)
	}
	return list
}

func (l *line) figure() *LineShape {
	f := &LineShape{SuddenFactor: l.sudden(), Between: l.between}
	if l.s.Kind == survey.ClimbingLine {
		return f
	}
	f.Span, f.Rise = l.span.Value, l.rise
	height, _ := l.ends[0].anchorHeight()
	add := func(list *[][2]float64, x, y quantity.Length) {
		*list = append(*list, [2]float64{float64(x), float64(height.Value + y)})
	}
	add(&f.Loaded, 0, 0)
	if l.s.Kind == survey.HammockLine {
		f.Sag = l.s.Sag.Value
		h := l.hammock(f.Sag, l.weight())
		f.Unpulled = h.LeftStrap + h.Body + h.RightStrap
		if got, err := h.Solve(); err == nil {
			add(&f.Loaded, got.LeftOfBody.X, got.LeftOfBody.Y)
			add(&f.Loaded, got.RightOfBody.X, got.RightOfBody.Y)
		}
	} else {
		f.SuddenFactor, f.Unpulled = l.suddenShare, l.tight.Length
		if got, err := l.tight.Under(l.weight(), 0.5); err == nil {
			f.Sag = got.Below
			add(&f.Loaded, got.Load.X, got.Load.Y)
		}
		add(&f.Empty, 0, 0)
		for _, s := range l.walk(l.tight, 0) {
			add(&f.Empty, s.X, s.Y)
		}
		add(&f.Empty, l.span.Value, l.rise)
	}
	add(&f.Loaded, l.span.Value, l.rise)
	if l.s.Ground != nil {
		for _, p := range l.profile(0).Stations {
			f.Ground = append(f.Ground, [2]float64{float64(p.Along), float64(p.Height)})
		}
	}
	return f
}
