package assess

import (
	"fmt"

	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

// Figures is a site with its members placed in space, to be drawn. It is worked
// out on demand and by the same code as the checks.
type Figures struct{ site []*tree }

// NewFigures places the trees of a survey that Read and Problems found no
// fault in.
func NewFigures(s *survey.Survey, k *knowledge.Base) (*Figures, error) {
	site, err := newSite(k, rulesOf(k), s)
	if err != nil {
		return nil, err
	}
	return &Figures{site}, nil
}

// Survey returns the document that is drawn.
func (f *Figures) Survey() *survey.Survey {
	if len(f.site) == 0 {
		return &survey.Survey{}
	}
	return f.site[0].survey
}

// Trees returns every tree of the site.
func (f *Figures) Trees() []TreeFigure {
	list := make([]TreeFigure, len(f.site))
	for i, t := range f.site {
		list[i] = t.figure()
	}
	return list
}

// Tree returns the tree with an id.
func (f *Figures) Tree(id string) (TreeFigure, error) {
	for _, t := range f.site {
		if t.s.ID == id {
			return t.figure(), nil
		}
	}
	return TreeFigure{}, fmt.Errorf("%q is no tree of this survey", id)
}

// Hang returns the hang with an id. The error says that there is none, or why
// its mechanics cannot be worked out.
func (f *Figures) Hang(id string) (HangFigure, error) {
	for _, t := range f.site {
		for i := range t.s.Hangs {
			if t.s.Hangs[i].ID != id {
				continue
			}
			r, err := t.newRig(i)
			if err != nil {
				return HangFigure{}, err
			}
			return HangFigure{Tree: t.figure(), rig: r}, nil
		}
	}
	return HangFigure{}, fmt.Errorf("%q is no hang of this survey", id)
}

// HangFigure is one hang, to be drawn. Its methods work out what one drawing
// needs.
type HangFigure struct {
	Tree TreeFigure
	rig  *rig
}

// Survey returns the hang as asked for.
func (h HangFigure) Survey() *survey.Hang { return h.rig.h }

// Point returns where the line leaves the limb, on its axis, in the frame of
// the tree.
func (h HangFigure) Point() quantity.Vec3 { return h.rig.hangPoint() }

// SwingAzimuth returns the direction in which it swings, asked for or square
// to the limb.
func (h HangFigure) SwingAzimuth() quantity.Angle { return h.rig.azimuth }

// Obstacles lists the things on the ground that the hang alone names.
func (h HangFigure) Obstacles() []ObstacleFigure { return obstacleFigures(h.rig.h.Obstacles) }

// Stretch is a part of a member from one arc length to another.
type Stretch struct {
	Member   string
	From, To quantity.Length
}

// LoadPath lists what carries the hang, from the hang point to the ground.
func (h HangFigure) LoadPath() []Stretch {
	var list []Stretch
	until := quantity.Length(min(float64(h.rig.arm.Value), h.rig.on.length()))
	for _, s := range chain(h.rig.on) {
		list = append(list, Stretch{s.member.ID, 0, until})
		until = quantity.Length(s.rises)
	}
	return list
}
