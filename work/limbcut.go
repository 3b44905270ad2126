package work

import (
	"math"
	"slices"

	"boughline/engine/frame"
	"boughline/quantity"
)

// cuts lists the section forces on both sides of the root, the tip and the
// middle of every member, of every station, load, lumped mass, hollow end and
// side limb, half-way between any two neighbours of those, half-way from the
// root to each of them, and at every half metre.
func (l *limb) cuts() []map[string]any {
	var out []map[string]any
	for i := range l.model.Members {
		for _, s := range l.cutsAlong(i) {
			for _, side := range []frame.Side{frame.RootSide, frame.TipSide} {
				out = append(out, l.cut(frame.Place{Member: i, Along: s}, side))
			}
		}
	}
	return out
}

func (l *limb) cutsAlong(member int) []quantity.Length {
	const half = 0.5 // m
	marks := l.frame.Breaks(member)
	for _, load := range l.loads.Points {
		if load.At.Member == member {
			marks = append(marks, load.At.Along)
		}
	}
	slices.Sort(marks)
	cuts := slices.Clone(marks)
	for i := 1; i < len(marks); i++ {
		cuts = append(cuts, (marks[i]+marks[i-1])/2, marks[i]/2)
	}
	for s := quantity.Length(half); s < l.frame.Length(member); s += half {
		cuts = append(cuts, s)
	}
	slices.Sort(cuts)
	return slices.CompactFunc(cuts, func(a, b quantity.Length) bool { return math.Abs(float64(b-a)) < 1e-6 })
}

// cut gives forces, moments and stresses on one side of a place.
func (l *limb) cut(at frame.Place, side frame.Side) map[string]any {
	f := l.statics.At(at, side)
	section := l.frame.Section(at, side)
	greatest, least := section.Fibres(f)
	worst := section.Worst(f)
	out := l.place(at)
	for name, value := range map[string]float64{
		"N": float64(f.Axial), "V_v": float64(f.ShearUpright), "V_h": float64(f.ShearAcross),
		"T": float64(f.Torque), "M_h": float64(f.MomentAcross), "M_v": float64(f.MomentUpright),
		"V":         math.Hypot(float64(f.ShearUpright), float64(f.ShearAcross)),
		"M":         math.Hypot(float64(f.MomentAcross), float64(f.MomentUpright)),
		"sigma_max": float64(greatest.Stress), "sigma_min": float64(least.Stress),
		"tau_torsion_max": float64(section.TorsionShear(f.Torque)),
		"tau_shear_max":   float64(section.TransverseShear(f)),
	} {
		out[name] = value
	}
	out["side"] = side.String()
	out["xyz"] = components(l.frame.Position(at))
	out["F_vec"], out["M_vec"] = components(f.Force), components(f.Moment)
	out["worst"] = map[string]float64{
		"sigma": float64(worst.Stress), "y_v": float64(worst.Upright), "y_h": float64(worst.Across),
	}
	return out
}
