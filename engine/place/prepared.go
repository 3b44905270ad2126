package place

import (
	"errors"

	"boughline/quantity"
)

// problem is a Problem on its grid: margins and aims are sampled.
type problem struct {
	axes
	margins []*sampled
	aims    []*sampled // nil for the least margin
	from    []int      // first row of each aim
	// Where a pair lies, as values to be greatest.
	nearer, farther, shorter, longer *sampled
}

func (p Problem) prepare() (*problem, error) {
	if err := p.validate(); err != nil {
		return nil, err
	}
	s := &problem{axes: axes{p.Grid.Along.Values(), p.Grid.Line.Values()}}
	s.measureAxes()
	for _, c := range p.Constraints {
		margin, err := sample(c.Margin, "constraint "+c.Name, s.axes)
		if err != nil {
			return nil, err
		}
		s.margins = append(s.margins, margin)
	}
	for _, aim := range p.Aims {
		value, err := s.sampleAim(aim)
		if err != nil {
			return nil, err
		}
		s.aims = append(s.aims, value)
		s.from = append(s.from, s.firstFrom(aim.LineFrom))
	}
	return s, nil
}

func (s *problem) sampleAim(aim Aim) (*sampled, error) {
	if aim.Value == nil {
		return nil, nil
	}
	return sample(*aim.Value, "aim "+aim.Name, s.axes)
}

func (s *problem) measureAxes() {
	s.nearer, s.farther = &sampled{axes: s.axes}, &sampled{axes: s.axes}
	for _, x := range s.along {
		s.farther.fromAlong = append(s.farther.fromAlong, float64(x))
		s.nearer.fromAlong = append(s.nearer.fromAlong, -float64(x))
	}
	s.shorter, s.longer = &sampled{axes: s.axes}, &sampled{axes: s.axes}
	for _, x := range s.line {
		s.longer.fromLine = append(s.longer.fromLine, float64(x))
		s.shorter.fromLine = append(s.shorter.fromLine, -float64(x))
	}
}

// firstFrom returns the first row with lines of a length or more.
func (a axes) firstFrom(line quantity.Length) int {
	j := 0
	for j < len(a.line) && a.line[j] < line-Slack {
		j++
	}
	return j
}

// fields lists everything sampled.
func (s *problem) fields() []*sampled {
	list := append([]*sampled{s.nearer, s.farther, s.shorter, s.longer}, s.margins...)
	for _, aim := range s.aims {
		if aim != nil {
			list = append(list, aim)
		}
	}
	return list
}

// notNumber tells what gave no number where one was needed.
func (s *problem) notNumber() error {
	var all []error
	for _, f := range s.fields() {
		all = append(all, f.notNumber)
	}
	return errors.Join(all...)
}

// shaped reports whether every part of two arguments comes with a shape.
func (s *problem) shaped() bool {
	for _, f := range s.fields() {
		if f.both != nil && f.shape == nil {
			return false
		}
	}
	return true
}

// broken reports whether a promised shape was seen not to hold.
func (s *problem) broken() bool {
	for _, f := range s.fields() {
		if f.bounds.broken {
			return true
		}
	}
	return false
}
