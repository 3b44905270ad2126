package fungi

import (
	"fmt"
	"slices"
)

// Check returns the first fault of the candidates: a name that the vocabulary
// does not hold, a mark that stands twice, a weight or a size out of range.
func Check(v Vocabulary, candidates []Candidate) error {
	for _, c := range candidates {
		if err := v.candidate(c); err != nil {
			return fmt.Errorf("%s: %w", c.Name, err)
		}
	}
	return nil
}

func (v Vocabulary) candidate(c Candidate) error {
	e := Evidence{Positions: c.Positions, Forms: c.Forms, Undersides: c.Undersides, Marks: map[string]bool{}}
	for f, list := range c.Colours {
		for _, colour := range list {
			e.Colours = append(e.Colours, Seen{f, colour})
		}
	}
	for _, m := range append(slices.Clone(c.Marks), c.Lacks...) {
		if e.Marks[m] {
			return fmt.Errorf("mark %q stands twice", m)
		}
		e.Marks[m] = true
	}
	for _, h := range append(slices.Clone(c.Hosts), c.RareHosts...) {
		if !slices.ContainsFunc(v.Hosts, func(known Host) bool { return known.Genus == h }) {
			return fmt.Errorf("host %q is not in the table of hosts", h)
		}
	}
	if _, ok := v.genera(c.Wider); !ok && c.Wider != AnyHost && c.Wider != "" {
		return fmt.Errorf("wider hosts %q; expected %s or a group of hosts", c.Wider, AnyHost)
	}
	if !(c.Commonness > 0) || c.Smallest > c.Largest {
		return fmt.Errorf("commonness %g, sizes %g to %g m; expected a weight above 0 and sizes in order", c.Commonness, float64(c.Smallest), float64(c.Largest))
	}
	return v.evidence(e)
}

// evidence refuses names that the vocabulary does not hold.
func (v Vocabulary) evidence(e Evidence) error {
	if _, ok := v.genera(e.Host); e.Host != "" && !ok {
		return fmt.Errorf("host %q is neither a genus nor a group of hosts of the tables", e.Host)
	}
	if e.Month < 0 || e.Month > 12 {
		return fmt.Errorf("month %d; expected 1 to 12, or 0 for not known", e.Month)
	}
	if e.Size < 0 {
		return fmt.Errorf("size %g m; expected a positive length", float64(e.Size))
	}
	for _, list := range []struct {
		what         string
		given, known []string
	}{
		{"position", e.Positions, v.Positions}, {"form", e.Forms, v.Forms}, {"form", e.NotForms, v.Forms},
		{"underside", e.Undersides, v.Undersides}, {"underside", e.NotUnder, v.Undersides},
	} {
		for _, name := range list.given {
			if !slices.Contains(list.known, name) {
				return fmt.Errorf("%s %q; expected one of %v", list.what, name, list.known)
			}
		}
	}
	return v.look(e)
}

func (v Vocabulary) look(e Evidence) error {
	for _, s := range e.Colours {
		if !slices.Contains(v.Colours, s.Colour) {
			return fmt.Errorf("colour %q; expected one of %v", s.Colour, v.Colours)
		}
		if s.Field != AnyField && !slices.Contains(fields, s.Field) {
			return fmt.Errorf("colour of %q; expected one of %v or %s", s.Field, fields, AnyField)
		}
	}
	for m := range e.Marks {
		if _, ok := v.Stray[m]; !ok {
			return fmt.Errorf("mark %q is not in the tables", m)
		}
	}
	return nil
}

// genera lists the genera that the name of a genus or of a group stands for.
func (v Vocabulary) genera(host string) (genera []string, ok bool) {
	for _, h := range v.Hosts {
		if h.Genus == host || h.Group == host {
			genera = append(genera, h.Genus)
		}
	}
	return genera, len(genera) > 0
}
