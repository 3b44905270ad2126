package assess

import (
	"math"
	"testing"

	"boughline/engine/space"
	"boughline/knowledge"
	"boughline/quantity"
)

// What is drawn is what is checked: every figure that a drawing shows is held
// against the check that shows it too, on every hang of the demo.
func TestFiguresAreThoseOfTheChecks(t *testing.T) {
	s, k := demoSite(t), tables(t)
	figures, err := NewFigures(s, k)
	if err != nil {
		t.Fatal(err)
	}
	a, err := Assess(s, k)
	if err != nil {
		t.Fatal(err)
	}
	for _, h := range a.Hangs {
		f, err := figures.Hang(h.ID)
		if err != nil {
			t.Errorf("%s: %v", h.ID, err)
			continue
		}
		holdBending(t, h, f)
		holdSpace(t, h, f)
		holdRig(t, h, f)
	}
}

func anyCheck(h Hang, code Code) *Check {
	for i := range h.Checks {
		if h.Checks[i].Code == code {
			return &h.Checks[i]
		}
	}
	return nil
}

// same compares a figure with that of a check.
func same(t *testing.T, hang, what string, drawn, checked float64) {
	t.Helper()
	if math.Abs(drawn-checked) > 1e-6*math.Abs(checked) {
		t.Errorf("%s: %s is drawn as %v, checked as %v", hang, what, drawn, checked)
	}
}

func holdBending(t *testing.T, h Hang, f HangFigure) {
	t.Helper()
	stations := f.Bending()[0] // the limb of the hang
	stress := 0.0
	for _, s := range stations[1:] {
		stress = math.Max(stress, float64(s.Stress))
	}
	same(t, h.ID, "greatest stress", stress, anyCheck(h, LimbBending).Demand)
	union := anyCheck(h, UnionBending)
	same(t, h.ID, "moment at the union", float64(stations[0].Moment), union.Demand)
	same(t, h.ID, "margin of the union", float64(stations[0].Strength/stations[0].Stress), union.Margin)
}

func holdSpace(t *testing.T, h Hang, f HangFigure) {
	t.Helper()
	drawn, err := f.Space()
	if err != nil {
		t.Errorf("%s: %v", h.ID, err)
		return
	}
	if c := anyCheck(h, SeatClearance); c != nil { // the ground is known
		same(t, h.ID, "room under the seat", float64(drawn.Seat.Clearance), c.Capacity)
		same(t, h.ID, "room under the feet", float64(drawn.Foot.Clearance), anyCheck(h, FootClearance).Capacity)
		same(t, h.ID, "height of fall", float64(drawn.Fall), anyCheck(h, FallHeight).Demand)
	}
	if h.Limits != nil {
		same(t, h.ID, "what the standard asks to be kept clear", float64(drawn.Standard), float64(h.Limits.StandardClear))
	}
	for _, flight := range []Flight{drawn.Ahead, drawn.Behind} {
		last := flight.Path[len(flight.Path)-1]
		if ground := groundAt(drawn, last.Along); math.Abs(float64(last.Height-ground)) > 1e-6 || math.Abs(float64(last.Along-flight.Landing)) > 1e-6 {
			t.Errorf("%s: a flight drawn to %v ends at %v m, the ground is at %v m", h.ID, last.Along, last.Height, ground)
		}
	}
}

func groundAt(f SpaceFigure, along quantity.Length) quantity.Length {
	if len(f.Ground) == 0 {
		return 0
	}
	return space.Ground{Stations: f.Ground}.At(along)
}

func holdRig(t *testing.T, h Hang, f HangFigure) {
	t.Helper()
	links, err := f.Rig()
	if err != nil {
		t.Errorf("%s: %v", h.ID, err)
		return
	}
	for _, l := range links {
		if c := anyCheck(h, GearLink); c != nil && l.Weakest {
			same(t, h.ID, "strength of the weakest link", float64(l.Strength), c.Capacity)
			same(t, h.ID, "demand on the weakest link", float64(l.Required), c.Demand)
		}
	}
}

// The load path leads from the hang point to the ground without a gap.
func TestLoadPathReachesTheGround(t *testing.T) {
	figures, err := NewFigures(demoSite(t), tables(t))
	if err != nil {
		t.Fatal(err)
	}
	f, err := figures.Hang("oak-swing")
	if err != nil {
		t.Fatal(err)
	}
	path := f.LoadPath()
	if len(path) != 2 || path[0].Member != "L1" || path[0].To != 2.6 || path[1].Member != "stem" || path[1].To != 4.6 || path[0].From != 0 || path[1].From != 0 {
		t.Errorf("the load path of the oak is %v", path)
	}
}

func tables(t testing.TB) *knowledge.Base {
	t.Helper()
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	return k
}

// A tree is drawn as it was measured, not at the ends of its 5 % values.
func TestTreeIsDrawnAsMeasured(t *testing.T) {
	s := oak(t)
	figures, err := NewFigures(s, tables(t))
	if err != nil {
		t.Fatal(err)
	}
	tree := figures.Trees()[0]
	if tree.Height != 19 || tree.CrownBase != 4 || tree.CrownWidth != 13 || !tree.Placed || tree.At != (quantity.Vec3{X: 12, Y: 30}) {
		t.Errorf("drawn %v m tall, crown from %v m, %v m wide, at %v", tree.Height, tree.CrownBase, tree.CrownWidth, tree.At)
	}
	for _, m := range tree.Members {
		tip := m.Axis[len(m.Axis)-1]
		if want := map[string]quantity.Length{"stem": 15, "L1": 9, "L2": 8}[m.ID]; math.Abs(float64(tip.Along-want)) > 1e-9 || !m.Measured {
			t.Errorf("%s is drawn %v m long, measured %v m", m.ID, tip.Along, want)
		}
	}
	limb, _ := tree.PointAt("L2", 5)
	if f := tree.Findings[0]; !f.Placed || f.Position.Sub(limb.Position).Norm() > 1e-9 {
		t.Errorf("finding %s is drawn at %v, 5 m along L2 is at %v", f.Survey.ID, f.Position, limb.Position)
	}
	// 97 cm of girth, taped 2.5 m out.
	if p, _ := tree.PointAt("L1", 2.5); math.Abs(float64(p.Upright)-0.97/math.Pi) > 1e-9 {
		t.Errorf("L1 is drawn %v m thick 2.5 m out", p.Upright)
	}
	s.Trees[0].Height = nil
	if figures, err = NewFigures(s, tables(t)); err != nil {
		t.Fatal(err)
	}
	if tree, err := figures.Tree("T1"); err != nil || math.Abs(float64(tree.Height)-15) > 1e-9 {
		t.Errorf("without a height it is drawn %v m tall, its stem is 15 m long: %v", tree.Height, err)
	}
}
