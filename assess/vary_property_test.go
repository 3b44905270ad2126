package assess_test

import (
	"math"
	"slices"

	"boughline/engine/signs"
	"boughline/quantity"
	"boughline/survey"
)

// hang is the one hang of a drawn site.
func hang(s *survey.Survey) *survey.Hang { return &s.Trees[0].Hangs[0] }

func member(s *survey.Survey, id string) *survey.Member {
	members := s.Trees[0].Members
	return &members[slices.IndexFunc(members, func(m survey.Member) bool { return m.ID == id })]
}

func look(d draw, s *survey.Survey) *survey.Look {
	return &s.Trees[0].Looks[d.IntN(len(s.Trees[0].Looks))]
}

// lengthOf is the length of a limb along its axis.
func lengthOf(m *survey.Member) quantity.Length {
	if m.Length != nil {
		return m.Length.Value
	}
	long, from := 0.0, quantity.Vec3{}
	for _, p := range m.Path {
		to := quantity.Vec3{X: float64(p.East.Value), Y: float64(p.North.Value), Z: float64(p.Up.Value)}
		long, from = long+to.Sub(from).Norm(), to
	}
	return quantity.Length(long)
}

// heavier makes the riders heavier by about a factor: those weighed by just
// that, others older or one more of them.
func heavier(s *survey.Survey, factor float64) {
	r := &s.Riders[0]
	switch {
	case r.Each != nil:
		r.Each.Value = min(250, r.Each.Value*quantity.Mass(factor))
	case r.Standard:
		r.Count++
	case r.Ages != nil:
		r.Ages.To += max(1, int(math.Round(10*(factor-1))))
	default:
		r.Count++
	}
}

// scaleLimb changes every diameter of a limb by a factor. What its union says
// of the parent stays.
func scaleLimb(s *survey.Survey, id string, factor float64) {
	m := member(s, id)
	f := quantity.Length(factor)
	for i := range m.Stations {
		m.Stations[i].Girth.Value *= f
	}
	m.Tip.Value *= f
}

// guessLimb makes the diameters of a limb guesses.
func guessLimb(s *survey.Survey, id string) {
	m := member(s, id)
	for i := range m.Stations {
		m.Stations[i].Girth.How = quantity.ByEye
	}
}

// addFinding adds a sign: on a member near its foot or far out on it, or
// somewhere about the tree where none is named.
func addFinding(d draw, s *survey.Survey, sign, on string) *survey.Finding {
	t := &s.Trees[0]
	f := survey.Finding{ID: "found " + string(rune('A'+len(t.Findings))), Sign: sign, SeenOn: dayOf("2026-05-09")}
	if on != "" {
		f.Member, f.At = on, pointer(taped(d.between(0, 4)))
	} else {
		f.Side, f.Distance = pointer(angleBy(quantity.Compass, d.between(0, 360))), pointer(taped(d.between(0, 15)))
	}
	t.Findings = append(t.Findings, f)
	return &t.Findings[len(t.Findings)-1]
}

// hideSign adds a sign that could not show to a look.
func hideSign(d draw, l *survey.Look) {
	var list []string
	for _, s := range tables().Signs() {
		if string(s.Zone) == l.Zone && !slices.Contains(l.NotVisible, s.ID) && max(s.OnLoadPath, s.AbovePeople) >= signs.CloserLook {
			list = append(list, s.ID)
		}
	}
	l.NotVisible = append(l.NotVisible, pick(d, list...))
}
