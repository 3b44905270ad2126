package register

import (
	"fmt"

	"boughline/survey"
)

// Doubt is what a part of a chain and the register say against one another.
type Doubt struct {
	Chain string `json:"chain"`
	Part  string `json:"part"`
	Item  string `json:"item,omitempty"`
	Bars  []Bar  `json:"bars,omitempty"`
	// Differs tells where the part and the item do not agree.
	Differs []string `json:"differs,omitempty"`
	// Despite is the reason that was written down for the bars.
	Despite string `json:"despite,omitempty"`
}

// Open reports whether something is left to be settled: a bar without a reason,
// no item, or a part that does not agree with its item.
func (d Doubt) Open() bool {
	return d.Item == "" || len(d.Differs) > 0 || (len(d.Bars) > 0 && d.Despite == "")
}

// Doubts holds every part of every chain of a survey against the register, on
// the day of the survey. Parts against which nothing stands are left out.
func (r Register) Doubts(s *survey.Survey) []Doubt {
	var list []Doubt
	for _, c := range s.Chains {
		in := map[string]bool{}
		for _, p := range c.Parts {
			d := r.doubt(c.ID, p, s.Day)
			if in[p.Item] && p.Item != "" {
				d.Differs = append(d.Differs, "the item stands twice in the chain")
			}
			in[p.Item] = true
			if d.Open() || len(d.Bars) > 0 {
				list = append(list, d)
			}
		}
	}
	return list
}

func (r Register) doubt(chain string, p survey.Part, on survey.Date) Doubt {
	d := Doubt{Chain: chain, Part: p.Name, Item: p.Item, Despite: p.Despite}
	if p.Item == "" {
		return d
	}
	d.Bars = r.Bars(p.Item, on)
	if i, err := r.Item(p.Item); err == nil {
		d.Differs = differences(i, p, on)
	}
	return d
}

// differences tells where a part claims what its item does not say.
func differences(i Item, p survey.Part, on survey.Date) []string {
	var list []string
	differ := func(what, part, item string) {
		if part != item {
			list = append(list, fmt.Sprintf("%s: %s in the chain, %s in the register", what, orNone(part), orNone(item)))
		}
	}
	differ("kind", p.Kind, i.Kind)
	differ("material", p.Material, i.Material)
	if p.Mark != nil {
		differ("mark", markText(p.Mark), markText(i.Mark))
	}
	if p.Standard != "" {
		differ("standard", p.Standard, i.Standard)
	}
	if !p.InServiceSince.IsZero() {
		differ("in service since", p.InServiceSince.String(), i.InServiceSince.String())
	}
	if i.retiredOn(on) {
		differ("condition", p.Condition, "retired")
	}
	return list
}

func orNone(text string) string {
	if text == "" {
		return "none"
	}
	return text
}
