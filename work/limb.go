package work

import (
	"encoding/json"
	"math"

	"boughline/engine/frame"
	"boughline/quantity"
)

// limb is a frame read from its inputs, with what the results ask of it.
type limb struct {
	frame    *frame.Frame
	analysis *frame.Analysis
	model    frame.Model
	loads    frame.LoadCase
	statics  frame.Statics
	hang     *frame.Place // where the first load acts
}

func limbFigure(raw json.RawMessage) (any, error) {
	in, err := read[limbInputs](raw)
	if err != nil {
		return nil, err
	}
	l, err := newLimb(in)
	if err != nil {
		return nil, err
	}
	return l.results()
}

func newLimb(in limbInputs) (*limb, error) {
	model, err := in.model()
	if err != nil {
		return nil, err
	}
	l := &limb{model: model}
	if l.loads, err = in.loadCase(model); err != nil {
		return nil, err
	}
	if l.frame, err = frame.New(model); err != nil {
		return nil, err
	}
	if l.statics, err = l.frame.Statics(l.loads); err != nil {
		return nil, err
	}
	if l.analysis, err = l.frame.Analyse(frame.Options{ElementLength: l.elementLength()}); err != nil {
		return nil, err
	}
	if len(l.loads.Points) > 0 {
		l.hang = &l.loads.Points[0].At
	}
	return l, nil
}

// elementLength is fine enough for the sixth frequency to four digits.
func (l *limb) elementLength() quantity.Length {
	longest := quantity.Length(0)
	for i := range l.model.Members {
		longest = max(longest, l.frame.Length(i))
	}
	return longest / 60
}

// modeCount is how many frequencies the results list.
const modeCount = 6

func (l *limb) results() (map[string]any, error) {
	force, moment := l.statics.Reaction()
	displacement, sag, err := l.displacements()
	if err != nil {
		return nil, err
	}
	out := map[string]any{
		"displacement":   displacement,
		"sag_m":          sag,
		"root_reaction":  map[string]any{"F_N": components(force), "M_Nm": components(moment)},
		"section_forces": l.cuts(),
		"max_fibre":      l.greatestFibre(),
	}
	if err := l.addStiffness(out); err != nil {
		return nil, err
	}
	if err := l.addFrequencies(out); err != nil {
		return nil, err
	}
	l.addClosedForms(out)
	return out, nil
}

// displacements gives the motion of the tip, of the hang point and of the tip
// of every side limb, and how far the first two sink.
func (l *limb) displacements() (out, sag map[string]any, err error) {
	if err := l.analysis.Solve(l.loads); err != nil {
		return nil, nil, err
	}
	out, sag = map[string]any{}, map[string]any{}
	add := func(name string, at frame.Place) {
		u, theta := l.analysis.Motion(at)
		out[name] = map[string]any{"at": l.place(at), "u_m": components(u), "theta_rad": components(theta)}
		sag[name] = -u.Z
	}
	for i, m := range l.model.Members {
		name := "tip"
		if i > 0 {
			name = m.Name + "_tip"
		}
		add(name, frame.Place{Member: i, Along: l.frame.Length(i)})
	}
	if l.hang != nil {
		add("hang", *l.hang)
	}
	return out, sag, nil
}

func (l *limb) place(at frame.Place) map[string]any {
	return map[string]any{"member": l.model.Members[at.Member].Name, "s": float64(at.Along)}
}

func (l *limb) addStiffness(out map[string]any) error {
	if l.hang == nil {
		return nil
	}
	c, err := l.analysis.Flexibility(*l.hang)
	if err != nil {
		return err
	}
	k, err := l.analysis.Stiffness(*l.hang)
	if err != nil {
		return err
	}
	out["hang_flexibility_m_per_N"], out["hang_stiffness_N_per_m"] = c, k
	return nil
}

func (l *limb) addFrequencies(out map[string]any) error {
	if l.model.Material.Density <= 0 {
		return nil
	}
	modes, err := l.analysis.Modes(modeCount)
	if err != nil {
		return err
	}
	out["frequencies_Hz"] = frequencies(modes)
	axes := l.frame.Axes(frame.Place{}, frame.TipSide)
	for name, direction := range map[string]quantity.Vec3{"vertical_plane_Hz": axes.V, "horizontal_plane_Hz": axes.H} {
		if !l.straight() {
			continue
		}
		if modes, err = l.analysis.PlaneModes(3, direction); err != nil {
			return err
		}
		out[name] = frequencies(modes)
	}
	return nil
}

func frequencies(modes []frame.Mode) []float64 {
	out := make([]float64, len(modes))
	for i, m := range modes {
		out[i] = float64(m.Frequency)
	}
	return out
}

// straight says whether the limb is one member without a bend.
func (l *limb) straight() bool {
	stations := l.model.Members[0].Stations
	x := stations[1].Position.Sub(stations[0].Position).Unit()
	for i := 1; i < len(stations); i++ {
		if stations[i].Position.Sub(stations[i-1].Position).Unit().Sub(x).Norm() > 1e-9 {
			return false
		}
	}
	return len(l.model.Members) == 1
}

// greatestFibre names the cut and the point of the perimeter with the greatest
// stress along the grain.
func (l *limb) greatestFibre() map[string]any {
	p := l.statics.GreatestFibre()
	out := l.place(p.At)
	out["side"] = p.Side.String()
	out["sigma_Pa"], out["abs_Pa"] = float64(p.Stress), math.Abs(float64(p.Stress))
	out["y_v"], out["y_h"] = float64(p.Fibre.Upright), float64(p.Fibre.Across)
	return out
}
