package rigging

import (
	"boughline/assess"
	"boughline/engine/gear"
	"boughline/quantity"
	"boughline/source"
)

// Chain is the gear in order, from the limb down.
type Chain struct {
	Links   []Link `json:"links"`
	Weakest string `json:"weakest,omitempty"` // of those known
	// Unknown lists the links whose strength nobody knows: any of them may be the
	// weakest.
	Unknown []string `json:"unknown,omitempty"`
}

// Link is one part of the chain.
type Link struct {
	Name     string         `json:"name"`
	Kind     string         `json:"kind"`
	Ends     []string       `json:"ends,omitempty"` // knots, splices and eyes
	Hitch    string         `json:"hitch,omitempty"`
	Known    bool           `json:"strength_known"`
	MarkKind string         `json:"mark,omitempty"` // breaking or working limit
	Marked   quantity.Force `json:"marked_n,omitempty"`
	MarkFrom []source.Ref   `json:"mark_from,omitempty"` // a standard in place of a mark
	Steps    []Step         `json:"reductions"`
	Strength quantity.Force `json:"strength_n,omitempty"`
	Required quantity.Force `json:"required_n,omitempty"`
	Rule     string         `json:"governed_by,omitempty"`
	Margin   float64        `json:"margin,omitempty"`
	PartPull float64        `json:"pull_in_each_part,omitempty"`
	Weakest  bool           `json:"weakest,omitempty"`
	Path     string         `json:"path"`
}

// Step is one cause for which a part keeps only a share of its strength.
type Step struct {
	Cause string         `json:"cause"`
	Share float64        `json:"share"`
	Left  quantity.Force `json:"left_n,omitempty"`
	Refs  []source.Ref   `json:"refs,omitempty"`
}

func (r rigger) chain() (Chain, error) {
	links, err := r.hang.Rig()
	if err != nil {
		return Chain{}, err
	}
	var c Chain
	for _, l := range links {
		c.Links = append(c.Links, linkOf(l))
		switch {
		case !l.Known:
			c.Unknown = append(c.Unknown, l.Part.Name)
		case l.Weakest:
			c.Weakest = l.Part.Name
		}
	}
	return c, nil
}

func linkOf(l assess.LinkFigure) Link {
	out := Link{
		Name: l.Part.Name, Kind: l.Part.Kind, Ends: l.Part.Ends, Hitch: l.Part.Hitch, Known: l.Known, Marked: l.Marked.Value,
		Strength: l.Strength, Required: l.Required, Rule: string(l.Rule), Margin: l.Margin, PartPull: l.PartPull, Weakest: l.Weakest && l.Known, Path: l.Path,
	}
	switch l.Marked.Kind {
	case gear.Breaking:
		out.MarkKind = "breaking"
	case gear.WorkingLimit:
		out.MarkKind = "working limit"
	}
	if l.MarkRef != nil {
		out.MarkFrom = refs(*l.MarkRef)
	}
	for _, s := range l.Steps {
		out.Steps = append(out.Steps, Step{s.Cause, float64(s.Share), s.Left, refs(s.Ref)})
	}
	return out
}

func refs(list ...source.Ref) []source.Ref { return list }
