package assess_test

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"boughline/assess"
	"boughline/quantity"
	"boughline/survey"
)

// Seen in a mirror, or with north elsewhere, a site is the same site.
func TestMirroredAndTurnedSitesAreTheSame(t *testing.T) {
	hold(t, 0, changed(func(d draw, s *survey.Survey) {
		if d.chance(0.5) {
			mirror(s)
		}
		turn(s, angle(d.between(0, 270)))
	}), func(p pair) (faults []string) {
		if a, b := reasonCodes(p.before), reasonCodes(p.after); !slices.Equal(a, b) {
			faults = append(faults, fmt.Sprintf("reasons from %v to %v", a, b))
		}
		if p.before.Outcome != p.after.Outcome {
			faults = append(faults, fmt.Sprintf("outcome from %v to %v", p.before.Outcome, p.after.Outcome))
		}
		after := checksOf(p.after)
		for name, c := range checksOf(p.before) {
			if a := after[name]; !near(a.Margin, c.Margin, exact(c.Code)) || !near(a.Best, c.Best, exact(c.Code)) || a.Alone != c.Alone {
				faults = append(faults, fmt.Sprintf("%s: margin from %.12g to %.12g, best from %.12g to %.12g", name, c.Margin, a.Margin, c.Best, a.Best))
			}
		}
		return append(faults, sameLimits(p.before.Limits, p.after.Limits)...)
	})
}

// exact is how well a check repeats in another frame, relative. Checks that go
// by the stiffness and the sway of limb or tree repeat as far as the finite
// elements are well conditioned.
func exact(code assess.Code) float64 {
	byStiffness := codes(ofWind, ofChance, []assess.Code{assess.LimbJerk, assess.SeatClearance, assess.FootClearance})
	if contains(byStiffness, code) {
		return 1e-6
	}
	return 1e-9
}

func near(a, b, relative float64) bool {
	return math.Abs(a-b) <= relative*math.Max(math.Abs(a), math.Abs(b))
}

// sameLimits compares limits to what halving an interval twenty times finds.
func sameLimits(a, b *assess.Limits) []string {
	if a == nil || b == nil {
		return nil // the outcomes tell
	}
	same := func(x, y float64) bool { return near(x, y, 1e-5) }
	if same(float64(a.Mass), float64(b.Mass)) && same(float64(a.Amplitude), float64(b.Amplitude)) && same(float64(a.Gust), float64(b.Gust)) &&
		a.Line == b.Line && same(float64(a.KeptClear), float64(b.KeptClear)) && same(float64(a.FallFrom), float64(b.FallFrom)) {
		return nil
	}
	return []string{fmt.Sprintf("limits from %+v to %+v", *a, *b)}
}

// reasonCodes lists what each reason says, in a fixed order.
func reasonCodes(h assess.Hang) []string {
	var list []string
	for _, r := range h.Reasons {
		list = append(list, fmt.Sprint(r.Code, r.Outcome, r.Zone, r.SignID, r.Placement, r.Why))
	}
	slices.Sort(list)
	return list
}

// turnAll applies a change of direction to every azimuth of a site, and one of
// position to every point.
func turnAll(s *survey.Survey, azimuth func(*quantity.Angle), position func(east, north *quantity.Length)) {
	t := &s.Trees[0]
	position(&t.East.Value, &t.North.Value)
	for i := range t.Members {
		m := &t.Members[i]
		if m.Azimuth != nil {
			azimuth(&m.Azimuth.Value)
		}
		for j := range m.Path {
			position(&m.Path[j].East.Value, &m.Path[j].North.Value)
		}
	}
	for i := range t.Findings {
		if side := t.Findings[i].Side; side != nil {
			azimuth(&side.Value)
		}
	}
	h := hang(s)
	if h.SwingAzimuth != nil {
		azimuth(&h.SwingAzimuth.Value)
	}
	for _, spots := range [][]survey.Spot{h.Waiting, h.WayIn} {
		for i := range spots {
			azimuth(&spots[i].Azimuth.Value)
		}
	}
	for i := range h.Obstacles {
		azimuth(&h.Obstacles[i].Azimuth.Value)
	}
}

func turn(s *survey.Survey, by quantity.Angle) {
	sin, cos := by.Sin(), by.Cos()
	turnAll(s, func(a *quantity.Angle) { *a += by }, func(east, north *quantity.Length) {
		e, n := float64(*east), float64(*north)
		*east, *north = quantity.Length(e*cos+n*sin), quantity.Length(n*cos-e*sin)
	})
}

// mirror exchanges east and west. A swing whose direction is left to the limb
// then swings the other way round: its ground is counted from the other end.
func mirror(s *survey.Survey) {
	turnAll(s, func(a *quantity.Angle) { *a = -*a }, func(east, _ *quantity.Length) { *east = -*east })
	if h := hang(s); h.SwingAzimuth == nil && h.Ground != nil {
		slices.Reverse(h.Ground.Along)
		for i := range h.Ground.Along {
			h.Ground.Along[i].At.Value *= -1
		}
	}
}
