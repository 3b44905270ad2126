package work

import (
	"encoding/json"
	"fmt"
	"slices"

	"boughline/engine/frame"
	"boughline/quantity"
)

// limbInputs is a frame with its loads, SI units, as the conventions in
// testdata/cases/limb_*.json tell.
type limbInputs struct {
	Material struct {
		E, G, Density float64
	} `json:"material"`
	Gravity    [3]float64   `json:"g"`
	SelfWeight bool         `json:"self_weight"`
	Members    []limbMember `json:"members"`
	Loads      []struct {
		At    limbPlace  `json:"at"`
		Force [3]float64 `json:"F"`
	} `json:"loads"`
	Masses []struct {
		At   limbPlace `json:"at"`
		Mass float64   `json:"mass"`
	} `json:"lumped_masses"`
}

type limbMember struct {
	Name     string     `json:"name"`
	Parent   *limbPlace `json:"parent"`
	Stations []struct {
		Position [3]float64 `json:"xyz"`
		Upright  float64    `json:"d_v"`
		Across   float64    `json:"d_h"`
	} `json:"stations"`
	Hollows []struct {
		From        float64 `json:"s0"`
		To          float64 `json:"s1"`
		UprightFrom float64 `json:"di_v0"`
		AcrossFrom  float64 `json:"di_h0"`
		UprightTo   float64 `json:"di_v1"`
		AcrossTo    float64 `json:"di_h1"`
	} `json:"hollows"`
}

// limbPlace is a place on a named member: a number of metres from its first
// station, or "tip".
type limbPlace struct {
	Member string          `json:"member"`
	Along  json.RawMessage `json:"s"`
}

func (in limbInputs) model() (frame.Model, error) {
	m := frame.Model{Material: frame.Material{
		Young:   quantity.Stress(in.Material.E),
		Shear:   quantity.Stress(in.Material.G),
		Density: quantity.Density(in.Material.Density),
	}}
	for i, member := range in.Members {
		out, err := member.member(m, i)
		if err != nil {
			return m, fmt.Errorf("members[%d]: %w", i, err)
		}
		m.Members = append(m.Members, out)
	}
	for i, body := range in.Masses {
		at, err := body.At.place(m)
		if err != nil {
			return m, fmt.Errorf("lumped_masses[%d]: %w", i, err)
		}
		m.Masses = append(m.Masses, frame.Mass{At: at, Mass: quantity.Mass(body.Mass)})
	}
	return m, nil
}

func (lm limbMember) member(m frame.Model, i int) (frame.Member, error) {
	out := frame.Member{Name: lm.Name, Parent: -1}
	if lm.Parent != nil {
		at, err := lm.Parent.place(m)
		if err != nil {
			return out, fmt.Errorf("parent: %w", err)
		}
		out.Parent, out.ParentAlong = at.Member, at.Along
	}
	for _, s := range lm.Stations {
		out.Stations = append(out.Stations, frame.Station{Position: vector(s.Position), Outer: ellipse(s.Upright, s.Across)})
	}
	for _, h := range lm.Hollows {
		out.Hollows = append(out.Hollows, frame.Hollow{
			From: quantity.Length(h.From), To: quantity.Length(h.To),
			InnerFrom: ellipse(h.UprightFrom, h.AcrossFrom), InnerTo: ellipse(h.UprightTo, h.AcrossTo),
		})
	}
	return out, nil
}

func ellipse(upright, across float64) frame.Ellipse {
	return frame.Ellipse{Upright: quantity.Length(upright), Across: quantity.Length(across)}
}

func vector(v [3]float64) quantity.Vec3 { return quantity.Vec3{X: v[0], Y: v[1], Z: v[2]} }

func components(v quantity.Vec3) [3]float64 { return [3]float64{v.X, v.Y, v.Z} }

// place looks a place up among the members read so far.
func (p limbPlace) place(m frame.Model) (frame.Place, error) {
	i := slices.IndexFunc(m.Members, func(member frame.Member) bool { return member.Name == p.Member })
	if i < 0 {
		return frame.Place{}, fmt.Errorf("member %q is not listed before", p.Member)
	}
	if string(p.Along) == `"tip"` {
		return frame.Place{Member: i, Along: stationsLength(m.Members[i].Stations)}, nil
	}
	var along float64
	if err := json.Unmarshal(p.Along, &along); err != nil {
		return frame.Place{}, fmt.Errorf("s: %s; expected metres or \"tip\"", p.Along)
	}
	return frame.Place{Member: i, Along: quantity.Length(along)}, nil
}

func stationsLength(stations []frame.Station) quantity.Length {
	sum := 0.0
	for i := 1; i < len(stations); i++ {
		sum += stations[i].Position.Sub(stations[i-1].Position).Norm()
	}
	return quantity.Length(sum)
}

func (in limbInputs) loadCase(m frame.Model) (frame.LoadCase, error) {
	c := frame.LoadCase{Gravity: vector(in.Gravity), SelfWeight: in.SelfWeight}
	for i, load := range in.Loads {
		at, err := load.At.place(m)
		if err != nil {
			return c, fmt.Errorf("loads[%d]: %w", i, err)
		}
		c.Points = append(c.Points, frame.PointLoad{At: at, Force: vector(load.Force)})
	}
	return c, nil
}
