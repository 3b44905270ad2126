package rigging

import (
	"fmt"

	"boughline/assess"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

// Format is the version of the JSON form. It may gain fields; readers ignore
// those they do not know.
const Format = 1

// Options are what the rigger wants; left out, the hang and the house say.
type Options struct {
	// Seat is the height wanted of the seat over the ground, at rest under its riders.
	Seat *quantity.Length
	// Stand is the distance of the thrower from the plumb line of the hang point.
	Stand *quantity.Length
	// Hours is how long it is ridden in the day.
	Hours *float64
}

// Rigging is how one hang is rigged.
type Rigging struct {
	Format  int            `json:"rigging"`
	Hang    string         `json:"hang"`
	Tree    string         `json:"tree"`
	Limb    string         `json:"limb"`
	Outcome assess.Outcome `json:"outcome"`
	Chain   Chain          `json:"chain"`
	Line    Line           `json:"line"`
	Throw   Throw          `json:"throw"`
	Creep   Creep          `json:"creep"`
	Freeing []Freeing      `json:"freeing"`
	Fresh   Fresh          `json:"fresh_point"`
	Knots   []Knot         `json:"knots"`
	Bark    Bark           `json:"bark"`
}

// rigger is one hang with what the answers share.
type rigger struct {
	k      *knowledge.Base
	o      Options
	hang   assess.HangFigure
	figure assess.RiggingFigure
}

// Of works out how a hang is rigged. The error says that there is no such hang,
// what of it cannot be computed, or which option is out of range.
func Of(s *survey.Survey, k *knowledge.Base, hang string, o Options) (Rigging, error) {
	if err := o.check(); err != nil {
		return Rigging{}, err
	}
	figures, err := assess.NewFigures(s, k)
	if err != nil {
		return Rigging{}, err
	}
	h, err := figures.Hang(hang)
	if err != nil {
		return Rigging{}, err
	}
	f, err := h.Rigging()
	if err != nil {
		return Rigging{}, err
	}
	return rigger{k, o, h, f}.answer()
}

// OptionError is the error of an option out of its range.
type OptionError struct{ Option, Says string }

func (e OptionError) Error() string { return e.Option + ": " + e.Says }

func (o Options) check() error {
	switch {
	case o.Seat != nil && !(*o.Seat > 0 && *o.Seat < 20):
		return OptionError{"seat", fmt.Sprintf("%.4g m; expected a height of the seat above 0 and under 20 m", float64(*o.Seat))}
	case o.Stand != nil && !(*o.Stand > 0 && *o.Stand < 50):
		return OptionError{"stand", fmt.Sprintf("%.4g m; expected a distance from the plumb line above 0 and under 50 m", float64(*o.Stand))}
	case o.Hours != nil && !(*o.Hours > 0 && *o.Hours <= 24):
		return OptionError{"hours", fmt.Sprintf("%.4g; expected above 0 and at most 24", *o.Hours)}
	}
	return nil
}

func (r rigger) answer() (Rigging, error) {
	judged := r.hang.Judged()
	out := Rigging{Format: Format, Hang: r.hang.Survey().ID, Tree: r.hang.Tree.Survey.ID, Limb: r.hang.Survey().Member, Outcome: judged.Outcome}
	var err error
	if out.Chain, err = r.chain(); err != nil {
		return out, err
	}
	out.Line = r.line()
	if out.Throw, err = r.throw(); err != nil {
		return out, err
	}
	out.Creep, out.Freeing, out.Knots = r.creep(), r.freeing(), r.knots()
	out.Fresh = r.fresh(judged)
	out.Bark, err = r.bark()
	return out, err
}

// term is a number of the reference tables.
func (r rigger) term(symbol, name, key string) assess.Term {
	f := r.k.Parameter(key)
	return assess.Term{Symbol: symbol, Name: name, Value: f.Value, Unit: f.Unit, Note: f.Note, Refs: refs(f.Ref)}
}

func (r rigger) value(key string) float64 { return r.k.Parameter(key).Value }

// holding is the part that goes round the limb, nil for none.
func (r rigger) holding() *assess.PartFigure {
	for i := range r.figure.Parts {
		p := r.figure.Parts[i].Part
		if p.Hitch != "straight" && (p.Hitch != "" || p.Kind == "sling") {
			return &r.figure.Parts[i]
		}
	}
	return nil
}

// rope is the line that is cut, nil where the chain has none.
func (r rigger) rope() *assess.PartFigure {
	for i := range r.figure.Parts {
		if r.figure.Parts[i].Part.Kind == "rope" {
			return &r.figure.Parts[i]
		}
	}
	return nil
}

// radius of the limb over bark at the hang point.
func (r rigger) radius() quantity.Measured[quantity.Length] {
	u, a := r.figure.Upright, r.figure.Across
	return quantity.Measured[quantity.Length]{Value: (u.Value + a.Value) / 4, Sd: (u.Sd + a.Sd) / 4, SdStated: true, How: u.How}
}
