package figure

import (
	"fmt"
	"math"
	"strings"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/quantity"
)

// unbroken keeps a number and its unit on one line.
const unbroken = "\u00a0"

// value writes a figure of the catalogue so that it keeps to one line.
func value(v float64, unit string) string {
	return strings.ReplaceAll(wording.Quantity(v, unit), " ", unbroken)
}

// metres writes a length as the pages do, but never finer than a centimetre.
func metres(l quantity.Length) string { return value(math.Round(float64(l)*100)/100+0, "m") }

func millimetres(l quantity.Length) string { return fmt.Sprintf("%.0f"+unbroken+"mm", float64(l)*1000) }

func degrees(a quantity.Angle) string {
	return fmt.Sprintf("%.0f"+unbroken+"deg", a.Degrees())
}

// compass writes a direction; a full turn is 0.
func compass(a quantity.Angle) string {
	turn := math.Mod(math.Round(a.Degrees()), 360)
	if turn < 0 {
		turn += 360
	}
	return fmt.Sprintf("%.0f"+unbroken+"deg", turn)
}

// nameOf is what people call a tree.
func nameOf(t assess.TreeFigure) string {
	if t.Survey.Name != "" {
		return t.Survey.Name
	}
	return t.Survey.ID
}

func capital(text string) string {
	if text == "" {
		return text
	}
	return strings.ToUpper(text[:1]) + text[1:]
}

// treeSentence describes a tree as a whole.
func treeSentence(t assess.TreeFigure) string {
	text := fmt.Sprintf("%s (%s), %s tall", capital(nameOf(t)), t.Survey.Species, metres(t.Height))
	if t.CrownWidth > 0 {
		text += fmt.Sprintf(", crown %s wide", metres(t.CrownWidth))
	}
	if t.CrownBase > 0 {
		text += fmt.Sprintf(", lowest foliage at %s", metres(t.CrownBase))
	}
	return text + "."
}

// memberSentence describes the shape of a member.
func memberSentence(m assess.MemberFigure) string {
	foot, tip := m.Axis[0], m.Axis[len(m.Axis)-1]
	if m.Parent == "" {
		return fmt.Sprintf("The stem (%s) is %s long and %s thick at the foot over bark.", m.ID, metres(tip.Along), millimetres(foot.Upright))
	}
	text := fmt.Sprintf("Limb %s leaves %s at %s above the ground towards %s: %s long, %s thick at the foot and %s at the tip over bark",
		m.ID, m.Parent, metres(quantity.Length(foot.Position.Z)), compass(headingOf(m)), metres(tip.Along), millimetres(foot.Upright), millimetres(tip.Upright))
	if !m.Measured {
		text += "; its shape is assumed, not measured"
	}
	return text + "."
}

// headingOf is the direction in plan from foot to tip.
func headingOf(m assess.MemberFigure) quantity.Angle {
	way := m.Axis[len(m.Axis)-1].Position.Sub(m.Axis[0].Position)
	return quantity.Angle(math.Atan2(way.X, way.Y))
}

// FindingPlace says where a finding is.
func FindingPlace(f assess.FindingFigure) string {
	s := f.Survey
	switch {
	case s.Member != "" && s.At != nil:
		return fmt.Sprintf("%s along %s", metres(s.At.Value), s.Member)
	case s.Member != "":
		return fmt.Sprintf("somewhere on %s", s.Member)
	}
	text := "in the zone " + strings.ReplaceAll(string(f.Sign.Zone), "_", " ")
	if s.Height != nil {
		text += ", " + metres(s.Height.Value) + " up"
	}
	if s.Distance != nil {
		text += ", " + metres(s.Distance.Value) + " from the stem"
	}
	if s.Side != nil {
		return text + ", towards " + compass(s.Side.Value)
	}
	return text + ", side not stated"
}

// judgement is what one finding does to a hang: the worst of its reasons.
func judgement(h assess.Hang, finding string) (worst assess.Reason, found bool) {
	for _, r := range h.Reasons {
		if r.Finding == finding && r.OnTree == "" && (!found || r.Outcome > worst.Outcome) {
			worst, found = r, true
		}
	}
	return worst, found
}

// outcomeSentence says what follows for a hang.
func outcomeSentence(h assess.Hang) string {
	return hangSentence(h.ID, h.Member, h.Outcome)
}

func hangSentence(id, member string, o assess.Outcome) string {
	return fmt.Sprintf("Hang %s on limb %s: %s.", id, member, wording.Brief(o))
}
