package measure

import (
	"encoding/json"
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"boughline/quantity"
)

// plain is a limb that rises straight in its plane before a camera without
// faults, read without error.
func plain(seed uint64) scene {
	s := randomScene(rand.New(rand.NewPCG(seed, 5)))
	s.errors = 0
	s.bough.curve, s.bough.sway, s.bough.narrow = 0, 0, 0
	s.lens.k1, s.lens.cx, s.lens.cy = 0, pictureWidth/2, pictureHeight/2
	return s
}

// plainPicture finds the first scene from the seed on that is within the
// picture.
func plainPicture(seed uint64) (scene, Picture) {
	for ; ; seed += 1000 {
		s := plain(seed)
		if p := s.picture(1); within(p) {
			return s, p
		}
	}
}

func workPicture(t *testing.T, p Picture) Outcome {
	t.Helper()
	out, err := p.Work(percent)
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// Without any error the picture gives the limb back. Edges are found by
// bisection to a hundredth of a pixel.
func TestPictureWithoutErrorGivesTheLimbBack(t *testing.T) {
	for seed := range uint64(50) {
		s, p := plainPicture(seed)
		out := workPicture(t, p)
		thickness, along, slope := s.bough.truth()
		near(t, "thickness", out.labelled("thickness at station 2").Value/thickness, 1, 2e-3)
		near(t, "along", out.labelled("along the limb from station 1 to station 3").Value/along, 1, 1e-4)
		near(t, "slope", out.labelled("slope of the limb from station 2 to station 3").Value, slope, 1e-4)
		plane := s.bough.foot.Y*math.Cos(s.bough.azimuth) - s.bough.foot.X*math.Sin(s.bough.azimuth)
		near(t, "plane", out.labelled("level distance from the camera to the limb's plane").Value/plane, 1, 1e-4)
	}
}

// A station by itself gives its thickness as well, and so do a length and an angle marked
// freely, a reference by distance, and the angle of view in place of the focal length.
func TestOtherWaysIntoThePicture(t *testing.T) {
	for seed := range uint64(20) {
		s, p := plainPicture(seed)
		thickness, _, slope := s.bough.truth()
		from, to := s.bough.axis(0), s.bough.axis(s.bough.length)
		end, foot := s.lens.image(to), s.lens.image(from)
		below := s.lens.image(from.Add(quantity.Vec3{Z: -0.5}))
		p.Limb = p.Limb[1:2]
		p.Limb[0].Name = "the middle"
		p.Lengths = []Span{{"limb", &foot, &end}}
		p.Angles = []Corner{{"limb and plumb line", &foot, &below, &end}}
		p.References = []Reference{{At: &foot, Distance: Value(fmt.Sprintf("%.12f m ±1 mm", math.Hypot(from.X, from.Y)))}}
		p.Focal, p.View = "", Value(fmt.Sprintf("%.12f deg", 2*math.Atan(pictureWidth/2/s.lens.focal)/degree))
		out := workPicture(t, p)
		near(t, "thickness", out.labelled("thickness at the middle").Value/thickness, 1, 5e-3)
		near(t, "length", out.labelled("length of limb").Value, s.bough.length, 1e-5)
		near(t, "angle", out.labelled("angle of limb and plumb line").Value, slope+math.Pi/2, 1e-5)
	}
}

// What the forward lens model bends is bent back, well beyond the bound taken.
func TestUnbendTurnsTheLensRound(t *testing.T) {
	for _, k1 := range []float64{-0.02, 0, 0.01, 0.1} {
		for _, u := range []float64{0.1, 0.5, 0.8} {
			bent := u * (1 + k1*u*u)
			c := camera{bend: num(k1)}
			near(t, "radius", c.unbend(num(bent*bent)).Real*bent, u, 1e-9)
		}
	}
}

// Whatever is known less surely makes no result surer.
func TestErrorOfAPictureNeverShrinks(t *testing.T) {
	for seed := range uint64(10) {
		_, p := plainPicture(100 + seed)
		before := workPicture(t, p).Results
		worse := func(v Value) Value { return Value(strings.ReplaceAll(string(v), "±", "±1")) } // 0.5 becomes 10.5
		for name, spoil := range map[string]func(*Picture){
			"tilt":   func(p *Picture) { p.Tilt = worse(p.Tilt) },
			"turned": func(p *Picture) { p.Turned = worse(p.Turned) },
			"roll":   func(p *Picture) { p.Roll = worse(p.Roll) },
			"focal":  func(p *Picture) { p.Focal = Value(strings.Replace(string(p.Focal), "±0.00", "±0.01", 1)) },
			"nearer": func(p *Picture) { p.References[0].Nearer = worse(p.References[0].Nearer) },
			"strays": func(p *Picture) { p.Strays = "0 m ±1 m" },
			"bend":   func(p *Picture) { wide := 0.1; p.Bend = &wide },
		} {
			q := p
			q.References = []Reference{p.References[0]}
			spoil(&q)
			for i, r := range workPicture(t, q).Results {
				if r.Sd < before[i].Sd*(1-1e-9) {
					t.Errorf("%s: %s ±%v became ±%v", name, r.Label, before[i].Sd, r.Sd)
				}
			}
		}
	}
}

// With twice the error of the marks the result is less sure, and the marks have the
// greater share of it.
func TestCoarserMarksAreLessSure(t *testing.T) {
	_, p := plainPicture(3)
	fine := workPicture(t, p).labelled("thickness at station 2")
	p.MarkSd = 2 * markSd
	rough := workPicture(t, p).labelled("thickness at station 2")
	if rough.Sd <= fine.Sd || rough.Share[marks] <= fine.Share[marks] || rough.Value != fine.Value {
		t.Errorf("±%v became ±%v", fine.Sd, rough.Sd)
	}
}

// Two references that contradict each other widen every length, and say so.
func TestReferencesThatDisagree(t *testing.T) {
	_, p := plainPicture(4)
	p.References = append(p.References, p.References[0])
	agreed := workPicture(t, p)
	p.References[1].Length = Value(strings.Replace(string(p.References[1].Length), " m", "e1 m", 1))
	torn := workPicture(t, p)
	if !agreed.Repeated[0].Agree() || torn.Repeated[0].Agree() {
		t.Errorf("agreed %+v, torn %+v", agreed.Repeated, torn.Repeated)
	}
	label := "thickness at station 2"
	if torn.labelled(label).Sd < 3*agreed.labelled(label).Sd {
		t.Errorf("±%v became ±%v only", agreed.labelled(label).Sd, torn.labelled(label).Sd)
	}
}

// A known length that was guessed makes a guess of all that follows from it.
func TestAGuessedReferenceStaysAGuess(t *testing.T) {
	_, p := plainPicture(5)
	if how := workPicture(t, p).Results[0].How; how != quantity.Photo {
		t.Errorf("got %q", how)
	}
	p.References[0].Length += " by eye"
	if how := workPicture(t, p).Results[0].How; how != quantity.ByEye {
		t.Errorf("got %q", how)
	}
}

func TestPictureRefuses(t *testing.T) {
	for says, spoil := range map[string]func(*Picture){
		"width_px and height_px: 0 by 3000":        func(p *Picture) { p.Width = 0 },
		"references: there are none":               func(p *Picture) { p.References = nil },
		"nothing is marked":                        func(p *Picture) { p.Limb = nil },
		"mark_sd_px: -1":                           func(p *Picture) { p.MarkSd = -1 },
		"bend: 3":                                  func(p *Picture) { three := 3.0; p.Bend = &three },
		"tilt is missing":                          func(p *Picture) { p.Tilt = "" },
		"tilt: 80 deg; expected -70 deg to 70 deg": func(p *Picture) { p.Tilt = "80 deg" },
		"turned: it has no unit":                   func(p *Picture) { p.Turned = "3" },
		"focal_35mm: 26 m":                         func(p *Picture) { p.Focal = "26 m" },
		"less than 10 deg, or from behind": func(p *Picture) {
			p.View, p.Focal, p.Turned = "120 deg", "", "-60 deg"
			p.Limb[0].Edges = []Mark{{0, 100}, {0, 200}}
		},
		"references[0]: expected from, to and length":   func(p *Picture) { p.References[0].To = nil },
		"references[0]: it puts the limb":               func(p *Picture) { p.References[0].Nearer = "-90 m" },
		"references[0].length: \"kg\" is no unit":       func(p *Picture) { p.References[0].Length = "2 kg" },
		"references[0]: two marks 0 px apart":           func(p *Picture) { p.References[0].To = p.References[0].From },
		"limb[1]: 1 edges":                              func(p *Picture) { p.Limb[1].Edges = p.Limb[1].Edges[:1] },
		"limb[1].edges: two marks 0 px apart":           func(p *Picture) { p.Limb[1].Edges[0] = p.Limb[1].Edges[1] },
		"limb[0] and limb[1]: two marks 0 px apart":     func(p *Picture) { p.Limb[1] = p.Limb[0] },
		"limb[2].edges[1]: [5000, 1]; expected a point": func(p *Picture) { p.Limb[2].Edges[1] = Mark{5000, 1} },
		"lengths[0].to is missing":                      func(p *Picture) { p.Lengths = []Span{{From: &Mark{3, 4}}} },
		"angles[0].other is missing":                    func(p *Picture) { p.Angles = []Corner{{At: &Mark{3, 4}, One: &Mark{100, 4}}} },
		"limb[0].edges[0]: [NaN, 1]; expected":          func(p *Picture) { p.Limb[0].Edges[0] = Mark{math.NaN(), 1} },
	} {
		_, p := plainPicture(6)
		spoil(&p)
		out, err := p.Work(percent)
		if err == nil || !strings.Contains(err.Error(), says) || out.Results != nil {
			t.Errorf("%v; want %q", err, says)
		}
	}
}

func TestMarksAreTwoNumbers(t *testing.T) {
	for _, text := range []string{"[1]", "[1,2,3]", `"1,2"`, "[]", "{}", `[1,"2"]`} {
		var m Mark
		if err := json.Unmarshal([]byte(text), &m); err == nil {
			t.Errorf("%s gave %v", text, m)
		}
	}
	var m Mark
	if err := json.Unmarshal([]byte("[1.5, 2]"), &m); err != nil || m != (Mark{1.5, 2}) {
		t.Errorf("got %v, %v", m, err)
	}
}

// A focal length without an error has 3 %, and a bend anywhere within its bound has the
// standard deviation of a uniform law, bound/sqrt 3 (elementary).
func TestWhatAPictureTakesUnstated(t *testing.T) {
	_, p := plainPicture(7)
	p.Focal = "26 mm"
	unstated := workPicture(t, p).Results[0]
	p.Focal = "26 mm ±3 %"
	if stated := workPicture(t, p).Results[0]; stated.Sd != unstated.Sd {
		t.Errorf("±%v unstated, ±%v with 3 %%", unstated.Sd, stated.Sd)
	}
	bent, tilted := unstated.Gradient["bend"]*0.02/math.Sqrt(3), unstated.Gradient["tilt"]*tiltSd*degree
	near(t, "shares", unstated.Share["bend"]/unstated.Share["tilt"], bent*bent/(tilted*tilted), 1e-9)
}
