package assess_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"boughline/quantity"
	"boughline/survey"
)

// sites is the number of sites that every property is held on; a short run
// takes the first of them.
func sites() int {
	if testing.Short() {
		return 200
	}
	return 1000
}

// draw is the randomness behind one site. It is uniform between its bounds,
// which the ranges of a property-test library are not: their pull towards the
// ends would leave next to no hang near the edge of an outcome.
type draw struct{ *rand.Rand }

func drawOf(stream, number int) draw {
	return draw{rand.New(rand.NewPCG(uint64(stream), uint64(number)))}
}

func (d draw) between(low, high float64) float64 { return low + (high-low)*d.Float64() }

func (d draw) chance(share float64) bool { return d.Float64() < share }

func pick[T any](d draw, from ...T) T { return from[d.IntN(len(from))] }

// siteOf draws plausible site number n: a tree with two limbs, a fork on some,
// one hang whose limb is about as thick as its riders need, and on half of
// them one trouble. All of it is invented; the same number gives the same site.
func siteOf(n int) *survey.Survey {
	d := drawOf(1, n)
	s := &survey.Survey{
		Version: survey.Version, Site: "invented", Day: dayOf("2026-05-16"),
		Wind:   &survey.Wind{Terrain: pick(d, "II", "III", "III", "IV"), InLeaf: pointer(true), StopBeaufort: pointer(pick(d, 4, 5))},
		Riders: []survey.Riders{ridersOf(d)},

		Trees: []survey.Tree{treeOf(d)},
	}
	s.Chains = []survey.Chain{goodChain(d, roughMass(s.Riders[0]))}
	t := &s.Trees[0]
	hangOn(d, t, s)
	if d.chance(0.26) {
		pick(d, mildTroubles...)(d, s)
	}
	if d.chance(0.25) {
		pick(d, troubles...)(d, s)
	}
	return s
}

// ridersOf draws a group by weight or by age.
func ridersOf(d draw) survey.Riders {
	r := survey.Riders{ID: "riders", Count: 1, Posture: pick(d, survey.Seated, survey.Straddled, survey.Standing)}
	seat := weighed(d.between(2, 5))
	r.Seat = &seat
	switch n := d.IntN(10); {
	case n < 8:
		r.Count = pick(d, 1, 1, 2)
		each := weighed(d.between(24, 60))
		r.Each = &each
		r.Ages = &survey.Ages{From: 6, To: pick(d, 9, 12, 16)}
	case n < 9:
		r.Ages = &survey.Ages{From: 6, To: pick(d, 8, 9, 10, 12, 14)}
	default:
		r.Standard, r.Ages = true, &survey.Ages{From: 6, To: 12}
	}
	return r
}

// roughMass is about what a group and its seat weigh, for choosing a limb.
func roughMass(r survey.Riders) float64 {
	each := 70.0
	switch {
	case r.Each != nil:
		each = 1.06 * float64(r.Each.Value)
	case r.Ages != nil && !r.Standard:
		each = 11 + 4.1*float64(r.Ages.To)
	}
	return float64(r.Count)*each + float64(r.Seat.Value)
}

// goodChain draws gear whose seat is about as strong as it must be: for textile
// five times the greatest pull, which is 2.65 times the weight.
func goodChain(d draw, mass float64) survey.Chain {
	seat := d.between(1.02, 1.7) * 5 * 2.65 * quantity.StandardGravity * mass
	return survey.Chain{ID: "chain", Parts: []survey.Part{
		{Name: "anchor sling", Kind: "sling", Material: "textile", Hitch: "choker", Condition: "good",
			Mark: &survey.Mark{Strength: newtons(90e3), Kind: survey.MarkBreaking}, ChokeAngle: &survey.ChosenAngle{Value: 125 * quantity.Degree}},
		{Name: "screw link", Kind: "connector", Material: "metal", Condition: "good", Mark: &survey.Mark{Strength: newtons(50e3), Kind: survey.MarkBreaking}},
		{Name: "swing line", Kind: "rope", Material: "textile", Condition: "good", Ends: []string{"bowline"},
			Mark: &survey.Mark{Strength: newtons(90e3), Kind: survey.MarkBreaking}},
		{Name: "seat", Kind: "seat", Material: "textile", Condition: "good", Mark: &survey.Mark{Strength: newtons(seat), Kind: survey.MarkBreaking}},
	}}
}

// treeOf draws a tree without looks that are missing or signs that count. The
// stem stands, limb L1 carries the hang, L2 grows to the other side.
func treeOf(d draw) survey.Tree {
	height := d.between(15, 24)
	t := survey.Tree{
		ID: "T1", Species: pick(d, "Quercus robur", "Fagus sylvatica", "Tilia cordata", "Acer pseudoplatanus", "Fraxinus excelsior", "Castanea sativa", "Quercus alba", "Pinus sylvestris"),
		East: pointer(taped(d.between(-50, 50))), North: pointer(taped(d.between(-50, 50))),
		Height: pointer(by(quantity.Clinometer, height)),
		Crown:  &survey.Crown{BaseHeight: pointer(by(quantity.Clinometer, d.between(3, 5))), Width: pointer(taped(d.between(7, 13)))},
	}
	tip := by(quantity.ByEye, 0.2)
	t.Members = []survey.Member{{ID: "stem", Length: pointer(by(quantity.Clinometer, 0.8*height)), Tip: &tip,
		Stations: []survey.Station{{At: metres(1.3), Girth: pointer(taped(math.Pi * d.between(0.7, 1.1)))}}}}
	for _, zone := range survey.Zones {
		t.Looks = append(t.Looks, survey.Look{Zone: zone, State: survey.LookDone, On: dayOf("2026-05-09")})
		if d.chance(0.2) {
			t.Looks = append(t.Looks, survey.Look{Zone: zone, State: survey.LookDone, On: dayOf("2025-10-04")})
		}
	}
	t.Stood = []survey.Gust{{Speed: survey.MeasuredSpeed{Value: quantity.Speed(d.between(26, 36)), Sd: 1, SdStated: true, How: quantity.FromTable}, On: dayOf("2025-11-21"), Source: "station nearby"}}
	return t
}

// hangOn grows the limbs and hangs the swing. The limb is about as thick as it
// must be for these riders at this arm.
func hangOn(d draw, t *survey.Tree, s *survey.Survey) {
	long, height, heading, up := d.between(4.2, 7), d.between(3.7, 4.4), d.between(0, 360), d.between(-3, 14)
	arm, mass, hand := long*d.between(0.35, 0.5), roughMass(s.Riders[0]), d.between(1.2, 1.8)
	thick := thickFor(hand, long, arm, mass)
	rises := height + thick/2 - arm*angle(up).Sin()
	t.Members = append(t.Members,
		limbOf(d, "L1", "stem", rises, heading, up, long, thick),
		limbOf(d, "L2", "stem", rises+d.between(0.5, 1.5), heading+d.between(150, 210), up, 7, d.between(0.15, 0.3)))
	t.Unions = []survey.Union{{Member: "L1", Form: survey.FormU, Bark: survey.BarkRidge, Parent: pointer(taped(thick / d.between(0.33, 0.55)))}}
	on := "L1"
	if d.chance(0.12) { // a fork: the hang is on a limb that grows from the limb
		on, long, arm = "L3", 4, 1.5
		fork := thickFor(hand, long, arm, mass)
		t.Members = append(t.Members, limbOf(d, on, "L1", 0.8, heading+d.between(-40, 40), up, long, fork))
		t.Unions = append(t.Unions, survey.Union{Member: on, Form: survey.FormU, Bark: survey.BarkRidge, Parent: pointer(taped(2 * fork))})
	}
	t.Hangs = []survey.Hang{{
		ID: "swing", Member: on, At: by(quantity.Laser, arm), Line: metres(height - d.between(1.1, 1.25)), Amplitude: degrees(d.between(25, 50)),
		Riders: "riders", Chain: "chain", Height: pointer(by(quantity.Laser, height)), Ground: groundOf(d, "loose fill 300 mm"),
		Waiting: []survey.Spot{{Azimuth: degrees(heading + d.between(-20, 20)), Distance: metres(d.between(9, 12))}},
		WayIn:   []survey.Spot{{Azimuth: degrees(heading), Distance: metres(10)}, {Azimuth: degrees(heading + 10), Distance: metres(25)}},
	}}
	if d.chance(0.4) || len(member(s, on).Path) > 0 {
		t.Hangs[0].SwingAzimuth = pointer(degrees(heading + pick(d, -1.0, 1)*d.between(78, 102)))
	}
}

// thickFor is the diameter at which a limb bears its own weight and the riders
// with something in hand, roughly: green wood of 1500 kg/m3 with its branches,
// 15 MPa, 15 mm of bark a side, a pull of 2.65 times the weight by 1.35.
func thickFor(hand, long, arm, mass float64) float64 {
	d := 0.1
	for ; ; d += 0.002 {
		own, ride := 2000*d*d*long*long, 35*mass*arm
		if math.Pi/32*math.Pow(d-0.03, 3)*15e6 > hand*(own+ride) {
			return d
		}
	}
}

// limbOf draws a limb that tapers, straight or with one bend.
func limbOf(d draw, id, parent string, rises, heading, up, long, thick float64) survey.Member {
	m := survey.Member{ID: id, Parent: parent, RisesAt: pointer(by(quantity.Laser, rises)), Tip: pointer(by(quantity.ByEye, 0.05))}
	for i, at := range []float64{0.3, 0.35 * long, 0.65 * long} {
		m.Stations = append(m.Stations, survey.Station{At: metres(at), Girth: pointer(taped(math.Pi * thick * (1 - 0.15*float64(i)*d.between(0.8, 1.2))))})
	}
	if d.chance(0.6) {
		m.Bark = pointer(survey.MeasuredLength{Value: quantity.Length(d.between(0.004, 0.010)), Sd: 0.001, SdStated: true, How: quantity.Calliper})
	}
	if d.chance(0.15) {
		m.Path = bentPath(heading, up, long, d.between(-3, 3), d.between(-3, 3))
		return m
	}
	m.Length, m.Azimuth, m.Inclination = pointer(by(quantity.Laser, long)), pointer(angleBy(quantity.Compass, heading)), pointer(angleBy(quantity.Clinometer, up))
	return m
}

// bentPath is a limb with one bend at 1 m.
func bentPath(heading, up, long, turn, rise float64) []survey.Point {
	first := quantity.Heading(angle(heading), angle(up))
	next := first.Add(quantity.Heading(angle(heading+turn), angle(up+rise)).Scale(long - 1))
	return []survey.Point{point(first), point(next)}
}

func point(v quantity.Vec3) survey.Point {
	return survey.Point{East: metres(v.X), North: metres(v.Y), Up: metres(v.Z)}
}

// groundOf is measured well beyond where riders can land, nearly level.
func groundOf(d draw, surface string) *survey.Ground {
	slope := d.between(-0.02, 0.02)
	g := &survey.Ground{Surface: surface, DepthLoose: pointer(taped(d.between(0.41, 0.5)))}
	for _, at := range []float64{-13, -4, 0, 5, 13} {
		g.Along = append(g.Along, survey.GroundPoint{At: metres(at), Height: survey.MeasuredLength{Value: quantity.Length(slope * at), Sd: 0.02, SdStated: true, How: quantity.Clinometer}})
	}
	return g
}

// mildTroubles are those that a lesser use may answer.
var mildTroubles = []func(draw, *survey.Survey){
	func(d draw, s *survey.Survey) {
		hang(s).Ground.Surface = pick(d, "turf kept", "soil", "wood chips 230 mm")
	},
	func(d draw, s *survey.Survey) { scaleLimb(s, "L1", d.between(0.82, 0.95)) },
	func(d draw, s *survey.Survey) { heavier(s, d.between(1.1, 1.6)) },
	func(d draw, s *survey.Survey) {
		hang(s).Line = metres(float64(hang(s).Height.Value) - d.between(0.5, 0.9))
	},
	func(d draw, s *survey.Survey) { s.Wind.StopBeaufort = pointer(pick(d, 6, 7, 8)) },
	func(d draw, s *survey.Survey) { hang(s).Amplitude = degrees(d.between(55, 100)) },
	func(d draw, s *survey.Survey) {
		s.Chains[0].Parts[3].Mark.Strength.Value *= quantity.Force(d.between(0.5, 0.9))
	},
	func(d draw, s *survey.Survey) { hang(s).Slack = pointer(metres(d.between(0.2, 0.6))) },
}

// troubles are those that bar a hang or leave it undecided.
var troubles = []func(draw, *survey.Survey){
	func(d draw, s *survey.Survey) {
		addFinding(d, s, pick(d, memberSigns...), pick(d, s.Trees[0].Members...).ID)
	},
	func(d draw, s *survey.Survey) { addFinding(d, s, pick(d, treeSigns...), "") },
	func(d draw, s *survey.Survey) {
		addFinding(d, s, pick(d, "crown-10", "limb-11", "stem-04", "base-01"), "L1")
	},
	func(d draw, s *survey.Survey) {
		addFinding(d, s, pick(d, "crown-10", "limb-11", "stem-04", "base-01"), "L1")
	},
	func(d draw, s *survey.Survey) {
		addFinding(d, s, pick(d, "crown-10", "limb-11", "stem-04", "base-01"), "L1")
	},
	func(d draw, s *survey.Survey) { look(d, s).State = pick(d, survey.LookNotDone, survey.LookBlocked) },
	func(d draw, s *survey.Survey) { look(d, s).On = dayOf("2025-03-01") },
	func(d draw, s *survey.Survey) { hideSign(d, look(d, s)) },
	func(d draw, s *survey.Survey) { guessLimb(s, hang(s).Member) },
	func(d draw, s *survey.Survey) { s.Chains[0].Parts[0].Condition = pick(d, "retired", "unknown") },
	func(d draw, s *survey.Survey) { s.Trees[0].Unions[0].Form = pick(d, survey.FormV, survey.NotSeen) },
	func(d draw, s *survey.Survey) { s.Trees[0].Unions = s.Trees[0].Unions[1:] },
	func(d draw, s *survey.Survey) { hang(s).Ground = nil },
	func(d draw, s *survey.Survey) { hang(s).Ground.Along = hang(s).Ground.Along[1:4] },
	func(d draw, s *survey.Survey) { s.Trees[0].Crown = nil },
	func(d draw, s *survey.Survey) { s.Wind = nil },
	func(d draw, s *survey.Survey) { scaleLimb(s, "L1", d.between(0.45, 0.75)) },
	func(d draw, s *survey.Survey) { s.Trees[0].Stood = nil },
	func(d draw, s *survey.Survey) {
		s.Riders[0].Ages, s.Riders[0].Each, s.Riders[0].Standard = nil, nil, false
	},
	func(d draw, s *survey.Survey) {
		hang(s).Obstacles = []survey.Obstacle{{What: "stump", Azimuth: angleBy(quantity.Compass, d.between(0, 360)), Distance: taped(d.between(0.5, 6)), Radius: taped(0.3)}}
	},
	func(d draw, s *survey.Survey) { s.Trees[0].Species, s.Trees[0].Group = "Arbor ignota", "broadleaf" },
}

// Signs of a part of the tree, which count by where they are, and signs of the
// whole tree.
var (
	memberSigns = []string{"crown-04", "crown-06", "crown-07", "crown-08", "crown-10", "limb-01", "limb-02", "limb-06", "limb-07", "limb-11", "limb-15", "limb-19", "union-02", "union-04", "union-08"}
	treeSigns   = []string{"crown-01", "stem-01", "stem-04", "stem-10", "base-01", "base-07", "base-09", "root_plate-06", "ground-01", "surroundings-05", "surroundings-16"}
)

func dayOf(text string) survey.Date {
	d, err := survey.ParseDate(text)
	if err != nil {
		panic(err)
	}
	return d
}

func pointer[T any](v T) *T { return &v }

func by(how quantity.How, m float64) survey.MeasuredLength {
	return survey.MeasuredLength{Value: quantity.Length(m), How: how}
}

func taped(m float64) survey.MeasuredLength { return by(quantity.Taped, m) }

func metres(m float64) survey.ChosenLength { return survey.ChosenLength{Value: quantity.Length(m)} }

func newtons(n float64) survey.ChosenForce { return survey.ChosenForce{Value: quantity.Force(n)} }

func weighed(kg float64) survey.MeasuredMass {
	return survey.MeasuredMass{Value: quantity.Mass(kg), How: quantity.Weighed}
}

func angle(deg float64) quantity.Angle { return quantity.Angle(deg) * quantity.Degree }

func degrees(deg float64) survey.ChosenAngle { return survey.ChosenAngle{Value: angle(deg)} }

func angleBy(how quantity.How, deg float64) survey.MeasuredAngle {
	return survey.MeasuredAngle{Value: angle(deg), How: how}
}
