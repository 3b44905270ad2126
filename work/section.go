package work

import (
	"encoding/json"
	"fmt"
	"math"

	"boughline/engine/section"
	"boughline/quantity"
)

// sectionInputs is an outline with its cavities, in metres and degrees.
type sectionInputs struct {
	Outline  shape   `json:"outline"`
	Cavities []shape `json:"cavities"`
}

// shape is an ellipse (half-axes a and b, turned by rot_deg), a circle, a
// polygon, radii at angles, or a concentric cavity with an opening.
type shape struct {
	Type      string       `json:"type"`
	A         float64      `json:"a"`
	B         float64      `json:"b"`
	Rotation  float64      `json:"rot_deg"`
	Radius    float64      `json:"r"`
	CentreX   float64      `json:"cx"`
	CentreY   float64      `json:"cy"`
	Points    [][2]float64 `json:"pts"`
	Angles    []float64    `json:"angles_deg"`
	Radii     []float64    `json:"radii"`
	Opening   float64      `json:"open_dir_deg"`
	HalfAngle float64      `json:"open_half_angle_deg"`
}

// loadDirections are the directions for which the results are listed, degrees.
var loadDirections = [...]float64{0, 30, 60, 90, 120, 150, 180, 225, 270, 315}

func sectionFigure(raw json.RawMessage) (any, error) {
	in, err := read[sectionInputs](raw)
	if err != nil {
		return nil, err
	}
	outline, cavities, err := in.rings()
	if err != nil {
		return nil, err
	}
	sound, err := section.Cut(outline)
	if err != nil {
		return nil, err
	}
	left, err := section.Cut(outline, cavities...)
	if err != nil {
		return nil, err
	}
	out := sectionResults(left, sound)
	return out, in.addPublished(out)
}

// rings turns the shapes into closed lines; an open cavity gives two.
func (in sectionInputs) rings() (outline section.Ring, cavities []section.Ring, err error) {
	if outline, err = in.Outline.ring(); err != nil {
		return nil, nil, fmt.Errorf("outline: %w", err)
	}
	for i, c := range in.Cavities {
		ring, err := c.ring()
		if err != nil {
			return nil, nil, fmt.Errorf("cavities[%d]: %w", i, err)
		}
		cavities = append(cavities, ring)
		if c.Type == "concentric_open" {
			half, centre := angle(c.HalfAngle), c.centre()
			if !(half > 0 && half < math.Pi) {
				return nil, nil, fmt.Errorf("cavities[%d]: open_half_angle_deg %v; expected above 0 and below 180", i, c.HalfAngle)
			}
			cavities = append(cavities, section.Opening(centre, angle(c.Opening), half, outline.Reach(centre)))
		}
	}
	return outline, cavities, nil
}

func angle(degrees float64) quantity.Angle { return quantity.Angle(degrees) * quantity.Degree }

func (s shape) centre() section.Point {
	return section.Point{X: quantity.Length(s.CentreX), Y: quantity.Length(s.CentreY)}
}

func (s shape) ring() (section.Ring, error) {
	switch s.Type {
	case "ellipse":
		return section.Ellipse(s.centre(), quantity.Length(s.A), quantity.Length(s.B), angle(s.Rotation)), nil
	case "circle", "concentric_open":
		return section.Circle(s.centre(), quantity.Length(s.Radius)), nil
	case "polygon":
		ring := make(section.Ring, len(s.Points))
		for i, p := range s.Points {
			ring[i] = section.Point{X: quantity.Length(p[0]), Y: quantity.Length(p[1])}
		}
		return ring, nil
	case "radii":
		if len(s.Angles) != len(s.Radii) {
			return nil, fmt.Errorf("%d angles_deg for %d radii; expected as many", len(s.Angles), len(s.Radii))
		}
		soundings := make([]section.Sounding, len(s.Radii))
		for i := range soundings {
			soundings[i] = section.Sounding{Angle: angle(s.Angles[i]), Radius: quantity.Length(s.Radii[i])}
		}
		return section.Soundings(s.centre(), soundings), nil
	}
	return nil, fmt.Errorf("type %q; expected ellipse, circle, polygon, radii or concentric_open", s.Type)
}

func sectionResults(left, sound section.Section) map[string]any {
	least, direction := left.Least()
	soundLeast, _ := sound.Least()
	ratio, _ := left.LeastRatio(sound)
	directions := make([]map[string]float64, len(loadDirections))
	for i, degrees := range loadDirections {
		m := left.Modulus(angle(degrees))
		directions[i] = map[string]float64{
			"load_dir_deg":          degrees,
			"W_m3":                  m.GoverningM3,
			"W_tension_side_m3":     m.TensionM3,
			"W_compression_side_m3": m.CompressionM3,
			"W_simple_I_over_c_m3":  m.SimpleM3,
			"ratio_to_sound":        m.GoverningM3 / sound.Modulus(angle(degrees)).GoverningM3,
		}
	}
	return map[string]any{
		"area_m2":                           float64(left.Area),
		"centroid_m":                        [2]float64{float64(left.Centroid.X), float64(left.Centroid.Y)},
		"Ixx_m4":                            left.IxxM4,
		"Iyy_m4":                            left.IyyM4,
		"Ixy_m4":                            left.IxyM4,
		"I_major_m4":                        left.MajorM4,
		"I_minor_m4":                        left.MinorM4,
		"area_ratio":                        float64(left.Area / sound.Area),
		"W_min_m3":                          least,
		"W_min_dir_deg":                     direction.Degrees(),
		"W_max_m3":                          greatestModulus(left),
		"W_min_ratio_to_sound_min":          least / soundLeast,
		"worst_ratio_W_over_sound_same_dir": ratio,
		"by_direction":                      directions,
	}
}

// greatestModulus looks at every tenth of a degree, as the files do: the peak
// is sharp, and the exact one lies a little higher.
func greatestModulus(s section.Section) float64 {
	greatest := 0.0
	for k := range 1800 {
		greatest = max(greatest, s.Modulus(angle(float64(k)/10)).GoverningM3)
	}
	return greatest
}

// addPublished sets the published formulas beside a round stem with one
// central round cavity, for comparison.
func (in sectionInputs) addPublished(out map[string]any) error {
	if in.Outline.Type != "ellipse" || in.Outline.A != in.Outline.B || len(in.Cavities) != 1 {
		return nil
	}
	c := in.Cavities[0]
	if c.Type != "circle" && c.Type != "concentric_open" || c.centre() != in.Outline.centre() {
		return nil
	}
	hollow, stem := quantity.Length(2*c.Radius), quantity.Length(2*in.Outline.A)
	if c.Type == "concentric_open" {
		loss, err := section.SmileyFraedrichLoss(hollow, stem, quantity.Proportion(c.HalfAngle/180))
		out["published_loss"] = map[string]float64{"Smiley & Fraedrich 1992": float64(loss)}
		return err
	}
	wagener, err := section.WagenerLoss(hollow, stem)
	if err != nil {
		return err
	}
	coder, err := section.CoderLoss(hollow, stem)
	out["published_loss"] = map[string]float64{"Wagener 1963": float64(wagener), "Coder 1989": float64(coder)}
	return err
}
