package assess

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"boughline/engine/space"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

// lie is the ground of one hang: its own profile, or a cut through the spot
// heights of its tree. Heights count from the ground at the plumb line.
type lie struct {
	path    string // in the document
	surface string
	depth   *survey.MeasuredLength
	// guess is the path of the first height that was guessed, empty where none was.
	guess string
	// sections lie along the swing line first, then turned off it to either
	// side where the ground there is known.
	sections [][]space.Section
	// foot is the ground at the plumb line over that at the foot of the stem,
	// known where the ground is that of the tree.
	foot *space.Section
	// drawn are the profiles by doubt: low, as measured, high.
	drawn [3][]space.Ground
}

// findLie takes the hang's own ground, or else that of the tree; nil where
// neither is known below the hang.
func (r *rig) findLie() (*lie, error) {
	var l *lie
	switch {
	case r.h.Ground != nil && len(r.h.Ground.Along) > 0:
		l = r.lieOfHang(r.h.Ground)
	case r.h.Ground == nil && r.s.Ground != nil:
		terrain, err := r.terrain()
		if err != nil {
			return nil, fmt.Errorf("%s.ground: %w", r.path, err)
		}
		if l = r.lieOfTree(terrain); l == nil {
			return nil, nil
		}
	default:
		return nil, nil
	}
	for i, doubt := range []quantity.Length{-1, 0, 1} {
		for _, section := range l.sections {
			l.drawn[i] = append(l.drawn[i], profileOf(section, doubt))
		}
	}
	return l, nil
}

// terrain joins the spot heights of the tree, once.
func (t *tree) terrain() (*space.Terrain, error) {
	if t.joined != nil {
		return t.joined, nil
	}
	terrain, err := terrainOf(t.k, t.s.Ground)
	t.joined = terrain
	return terrain, err
}

// grounds returns the profiles that the swing may take: on its line, and off
// it where the ground there is known. Heights are as measured for a doubt of
// 0, at the high 5 % value for +1, at the low one for -1.
func (l *lie) grounds(doubt quantity.Length) []space.Ground { return l.drawn[1+int(doubt)] }

// ground is the profile on the swing line.
func (l *lie) ground(doubt quantity.Length) space.Ground { return l.grounds(doubt)[0] }

func profileOf(section []space.Section, doubt quantity.Length) space.Ground {
	var g space.Ground
	for _, p := range section {
		sd := p.Sd
		if p.Along == 0 { // all heights count from here
			sd = 0
		}
		g.Stations = append(g.Stations, space.Point{Along: p.Along, Height: p.Height + doubt*quantity.Tail*sd})
	}
	return g.Straightened()
}

func (r *rig) lieOfHang(g *survey.Ground) *lie {
	l := &lie{path: r.at + ".ground", surface: g.Surface, depth: g.DepthLoose}
	along, across := r.pointsOf(g.Along), r.pointsOf(g.Across)
	l.guess = cmp.Or(firstGuess(g.Along, l.path+".along"), firstGuess(g.Across, l.path+".across"))
	l.sections = [][]space.Section{atPlumb(along)}
	if len(across) > 0 {
		for _, side := range []quantity.Angle{1, -1} {
			l.sections = append(l.sections, turnedSection(atPlumb(along), atPlumb(across), side*angle(r.rules.sidewaysLaunch)))
		}
	}
	return l
}

func (r *rig) pointsOf(points []survey.GroundPoint) []space.Section {
	var list []space.Section
	for _, p := range points {
		height := resolve(r.k, p.Height)
		list = append(list, space.Section{Along: p.At.Value, Height: height.Value, Sd: height.Sd})
	}
	slices.SortFunc(list, func(a, b space.Section) int { return cmp.Compare(a.Along, b.Along) })
	return list
}

func firstGuess(points []survey.GroundPoint, path string) string {
	for i, p := range points {
		if guessed(p.Height.How) && !p.Height.SdStated {
			return element(path, i)
		}
	}
	return ""
}

// atPlumb adds a point at the plumb line where none stands there.
func atPlumb(section []space.Section) []space.Section {
	if slices.ContainsFunc(section, func(p space.Section) bool { return p.Along == 0 }) {
		return section
	}
	section = append(slices.Clone(section), space.Section{Height: sectionAt(section, 0).Height})
	slices.SortFunc(section, func(a, b space.Section) int { return cmp.Compare(a.Along, b.Along) })
	return section
}

// sectionAt reads a section between its points; it goes on level beyond them.
func sectionAt(section []space.Section, along quantity.Length) space.Section {
	i, _ := slices.BinarySearchFunc(section, along, func(p space.Section, x quantity.Length) int { return cmp.Compare(p.Along, x) })
	switch i {
	case 0:
		return section[0]
	case len(section):
		return section[i-1]
	}
	a, b := section[i-1], section[i]
	share := (along - a.Along) / (b.Along - a.Along)
	return space.Section{Along: along, Height: a.Height + share*(b.Height-a.Height), Sd: a.Sd + share*(b.Sd-a.Sd)}
}

// turnedSection is the ground on a line turned off the swing line, whose
// height is that along it and that across it together.
func turnedSection(along, across []space.Section, by quantity.Angle) []space.Section {
	cos, sin := quantity.Length(by.Cos()), quantity.Length(by.Sin())
	var places []quantity.Length
	for _, p := range along {
		places = append(places, p.Along/cos)
	}
	first, last := places[0], places[len(places)-1]
	for _, p := range across {
		if x := p.Along / sin; x > first && x < last {
			places = append(places, x)
		}
	}
	slices.Sort(places)
	base := sectionAt(across, 0).Height
	var section []space.Section
	for _, x := range slices.Compact(places) {
		a, b := sectionAt(along, x*cos), sectionAt(across, x*sin)
		section = append(section, space.Section{Along: x, Height: a.Height + b.Height - base, Sd: quantity.Length(math.Hypot(float64(a.Sd), float64(b.Sd)))})
	}
	return section
}

// lieOfTree cuts the spot heights of the tree along the swing line, nil where
// the plumb line stands beyond them.
func (r *rig) lieOfTree(terrain *space.Terrain) *lie {
	hang := r.hangPoint()
	height, sd, known := terrain.At(quantity.Length(hang.X), quantity.Length(hang.Y))
	if !known {
		return nil
	}
	l := &lie{path: r.path + ".ground", surface: r.s.Ground.Surface, depth: r.s.Ground.DepthLoose, foot: &space.Section{Height: height, Sd: sd}}
	for i, s := range r.s.Ground.Spots {
		if guessed(s.Height.How) && !s.Height.SdStated {
			l.guess = element(l.path+".spots", i)
			break
		}
	}
	off := angle(r.rules.sidewaysLaunch)
	for _, azimuth := range []quantity.Angle{r.azimuth, r.azimuth + off, r.azimuth - off} {
		section := terrain.Section(hang, azimuth)
		if len(section) == 0 { // the plumb line stands on their very edge
			return nil
		}
		for i := range section {
			section[i].Height -= height
		}
		l.sections = append(l.sections, atPlumb(section))
	}
	return l
}

// terrainOf joins the spot heights about a tree.
func terrainOf(k *knowledge.Base, g *survey.Lie) (*space.Terrain, error) {
	var spots []space.Spot
	for _, s := range g.Spots {
		at, height := spotPosition(s.Azimuth.Value, s.Distance.Value), resolve(k, s.Height)
		spots = append(spots, space.Spot{X: quantity.Length(at.X), Y: quantity.Length(at.Y), Height: height.Value, Sd: height.Sd})
	}
	return space.NewTerrain(spots)
}
