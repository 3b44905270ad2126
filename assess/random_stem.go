package assess

import (
	"math"

	"boughline/engine/frame"
	"boughline/quantity"
)

// randomStem is one section of the stem. Its diameters are inputs like those of
// the limbs; its strength is one input of its own, for which the limb's test says nothing.
type randomStem struct {
	height   float64
	outline  randomOutline
	near     quantity.Vec3 // lever from the section to the near place of the hang
	far      quantity.Vec3
	self     quantity.Vec3 // moment of the tree's own weight
	wind     curve         // moment by gust
	share    float64       // of the amplitude at which the pull bends most
	overturn bool          // the root plate below it, not the section
}

// randomStems lists the sections of the stem, and last the root plate.
func (h *randomHang) randomStems() ([]randomStem, error) {
	var list []randomStem
	for _, c := range h.rig.stemCut {
		s, err := h.randomStem(c.height, h.rig.ownWeightAbout(c.height))
		if err != nil {
			return nil, err
		}
		list = append(list, s)
	}
	roots, err := h.randomStem(0, quantity.Vec3{})
	roots.overturn = true
	return append(list, roots), err
}

func (h *randomHang) randomStem(height float64, self quantity.Vec3) (randomStem, error) {
	r := h.rig
	stem := r.on.stem()
	point := stem.position(height)
	wind, err := windCurve(func(gust quantity.Speed, side scenario) float64 {
		return r.windMoment(trial{gust: gust}, height, side)
	})
	s := randomStem{
		wind: wind, height: height, self: self, outline: r.randomOutline(&h.places, stem, height),
		near: r.on.position(float64(r.arm.Low())).Sub(point), far: r.on.position(float64(r.arm.High())).Sub(point),
	}
	swings := r.swings(h.use, angle(r.rules.designAmplitude), 1, 0)
	worst := swings.greatest(func(l loads) float64 { return together(s.far.Cross(l.pull), self) }, 0)
	s.share = float64(worst.at / swings.amplitude)
	return s, err
}

// windCurve tabulates a load of the wind by the gust, between that on the large
// and that on the small crown that the measurements allow.
func windCurve(load func(quantity.Speed, scenario) float64) (curve, error) {
	const greatest = 80 // m/s, one step for each
	return curveOf(func(gust float64) float64 {
		speed := quantity.Speed(gust)
		return (load(speed, unfavourable) + load(speed, favourable)) / 2
	}, 0, greatest, greatest)
}

// stemMoment is what riders, own weight and wind make at the section; what own
// weight relieves is not counted.
func (h *randomHang) stemMoment(s *randomStem, k *randomCase) float64 {
	down, ahead := k.pull(s.share, h.sway)
	pull := h.rig.heading.Scale(ahead).Add(quantity.Vec3{Z: -down})
	lever := s.near.Scale(1 - k.arm).Add(s.far.Scale(k.arm))
	return together(lever.Cross(pull), s.self) + k.x[h.places.drag]*s.wind.at(k.x[h.places.gust])
}

// stemRatio is what the section, or the root plate, bears over what it is asked.
func (h *randomHang) stemRatio(s *randomStem, k *randomCase) float64 {
	bears := k.x[h.places.roots]
	if !s.overturn {
		bears = k.x[h.places.stemStrength] * k.x[h.places.model] * leastModulus(s.outline.at(k.x))
	}
	return bears / h.stemMoment(s, k)
}

func leastModulus(s frame.Section) float64 {
	upright, across := s.SectionModulus()
	return math.Min(upright, across)
}
