package work

import (
	"encoding/json"
	"fmt"

	"boughline/engine/wind"
	"boughline/quantity"
)

type windInputs struct {
	Vb      float64   `json:"vb"`
	Rho     float64   `json:"rho"`
	Co      float64   `json:"co"`
	KI      float64   `json:"kI"`
	Z0      float64   `json:"z0"`
	Zmin    float64   `json:"zmin"`
	Heights []float64 `json:"z_list"`
	Speed   string    `json:"speed"`
	Crown   struct {
		CentreZ         float64 `json:"centre_z"`
		HalfWidth       float64 `json:"half_width_a"`
		HalfHeight      float64 `json:"half_height_b"`
		Cd              float64 `json:"Cd"`
		Vogel           float64 `json:"V"`
		URef            float64 `json:"U_ref"`
		Reconfiguration string  `json:"reconfiguration"`
		Threshold       bool    `json:"threshold"`
	} `json:"crown"`
	Stem struct {
		Base float64 `json:"d_at_z0"`
		Top  float64 `json:"d_at_crown_base"`
		Cd   float64 `json:"Cd"`
		TopZ float64 `json:"top_z"`
	} `json:"stem"`
}

type windResults struct {
	Kr          float64   `json:"kr"`
	Cr          []float64 `json:"cr"`
	Mean        []float64 `json:"vm_m_s"`
	Intensity   []float64 `json:"Iv"`
	Peak        []float64 `json:"qp_Pa"`
	CrownBase   float64   `json:"crown_base_z"`
	CrownArea   float64   `json:"crown_area_m2"`
	UCentre     float64   `json:"U_centre_m_s"`
	RCentre     float64   `json:"R_centre"`
	ZUref       *float64  `json:"z_where_U_equals_U_ref"`
	CrownForce  float64   `json:"crown_force_N"`
	CrownMoment float64   `json:"crown_moment_Nm"`
	CrownHeight float64   `json:"crown_force_height_m"`
	StemForce   float64   `json:"stem_force_N"`
	StemMoment  float64   `json:"stem_moment_Nm"`
	TotalForce  float64   `json:"total_force_N"`
	TotalMoment float64   `json:"total_moment_Nm"`
}

// windOnTree gives the wind profile and the load of a crown and a bare stem in it.
func windOnTree(raw json.RawMessage) (any, error) {
	in, err := read[windInputs](raw)
	if err != nil {
		return nil, err
	}
	crown, err := in.crown()
	if err != nil {
		return nil, err
	}
	profile, averaging := in.profile(), wind.Averaging(in.Speed)
	crownLoad, err := wind.CrownLoad(crown, profile, averaging)
	if err != nil {
		return nil, err
	}
	stemLoad, err := wind.StemLoad(in.stem(), profile, averaging)
	if err != nil {
		return nil, err
	}
	results := windResults{}
	results.addProfile(profile, in.Heights)
	results.addCrown(crown, profile, averaging)
	results.addLoads(crownLoad, stemLoad)
	return results, nil
}

func (in windInputs) profile() wind.Profile {
	return wind.Profile{
		Basic:      quantity.Speed(in.Vb),
		AirDensity: quantity.Density(in.Rho),
		Terrain:    wind.Terrain{Roughness: quantity.Length(in.Z0), LeastHeight: quantity.Length(in.Zmin)},
		Orography:  in.Co,
		Turbulence: in.KI,
	}
}

func (in windInputs) crown() (wind.Crown, error) {
	c := in.Crown
	if c.Reconfiguration != "local" && c.Reconfiguration != "centre" {
		return wind.Crown{}, fmt.Errorf("crown.reconfiguration is %q; expected local or centre", c.Reconfiguration)
	}
	return wind.Crown{
		CentreHeight: quantity.Length(c.CentreZ),
		HalfWidth:    quantity.Length(c.HalfWidth),
		HalfHeight:   quantity.Length(c.HalfHeight),
		Drag:         c.Cd,
		Reconfiguring: wind.Reconfiguration{
			Vogel:     c.Vogel,
			Reference: quantity.Speed(c.URef),
			AtCentre:  c.Reconfiguration == "centre",
			Threshold: c.Threshold,
		},
	}, nil
}

func (in windInputs) stem() wind.Stem {
	return wind.Stem{
		BaseDiameter: quantity.Length(in.Stem.Base),
		TopDiameter:  quantity.Length(in.Stem.Top),
		Top:          quantity.Length(in.Stem.TopZ),
		Drag:         in.Stem.Cd,
	}
}

func (r *windResults) addProfile(p wind.Profile, heights []float64) {
	r.Kr = p.Terrain.Factor()
	for _, height := range heights {
		z := quantity.Length(height)
		r.Cr = append(r.Cr, p.Terrain.RoughnessFactor(z))
		r.Mean = append(r.Mean, float64(p.Mean(z)))
		r.Intensity = append(r.Intensity, p.TurbulenceIntensity(z))
		r.Peak = append(r.Peak, float64(p.PeakPressure(z)))
	}
}

func (r *windResults) addCrown(c wind.Crown, p wind.Profile, averaging wind.Averaging) {
	atCentre := p.Speed(c.CentreHeight, averaging)
	r.CrownBase = float64(c.Base())
	r.CrownArea = float64(c.Area())
	r.UCentre = float64(atCentre)
	r.RCentre = c.Reconfiguring.Factor(atCentre)
	if z, ok := p.HeightOf(c.Reconfiguring.Reference, averaging); ok && z > c.Base() && z < c.Top() {
		height := float64(z)
		r.ZUref = &height
	}
}

func (r *windResults) addLoads(crown, stem wind.Load) {
	total := crown.Add(stem)
	r.CrownForce, r.CrownMoment = float64(crown.Force), float64(crown.Moment)
	r.CrownHeight = float64(crown.Height())
	r.StemForce, r.StemMoment = float64(stem.Force), float64(stem.Moment)
	r.TotalForce, r.TotalMoment = float64(total.Force), float64(total.Moment)
}
