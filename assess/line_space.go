package assess

import (
	"math"

	"boughline/engine/gear"
	"boughline/engine/space"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

// profile is the ground below the line with its heights at their low (-1),
// middle or high end; without one it counts as level.
func (l *line) profile(doubt quantity.Length) space.Ground {
	if l.s.Ground == nil || len(l.s.Ground.Along) == 0 {
		return space.Ground{Stations: []space.Point{{}}}
	}
	return profileOf(atPlumb(l.ends[0].pointsOf(l.s.Ground.Along)), doubt)
}

func (l *line) groundAt(x quantity.Length) quantity.Length { return l.profile(0).At(x) }

// settled is where a traverse comes to rest under a load, or the ends of the
// body of a hammock, from the first anchor on.
func (l *line) settled(u trial, side scenario) []gear.Spot {
	weight := (u.mass + l.riders.seat).Weight()
	if l.s.Kind == survey.HammockLine {
		sag := l.sag().High()
		if side == favourable {
			sag = l.sag().Low()
		}
		got, err := l.hammock(sag, weight).Solve()
		if err != nil {
			return nil
		}
		return []gear.Spot{got.LeftOfBody, got.RightOfBody}
	}
	line := l.slack
	if side == favourable {
		line = l.tight
	}
	return l.walk(line, weight)
}

func (l *line) walk(line gear.SlungLine, weight quantity.Force) []gear.Spot {
	var list []gear.Spot
	for _, share := range walked {
		if got, err := line.Under(weight, share); err == nil {
			list = append(list, got.Load)
		}
	}
	return list
}

// lineSpace lists the checks of ground and fall; a climbing line has neither.
func (l *line) lineSpace() []checker {
	if l.s.Kind == survey.ClimbingLine || l.s.Ground == nil {
		return nil
	}
	return []checker{l.clearanceChecker(), l.fallChecker()}
}

// clearance is the least height of the loaded line above the ground, and where.
func (l *line) clearance(u trial, side scenario) (least float64, x quantity.Length) {
	height, _ := l.ends[0].anchorHeight()
	first, ground := height.Low(), l.profile(1)
	if side == favourable {
		first, ground = height.High(), l.profile(-1)
	}
	least = math.Inf(1)
	spots := l.settled(u, side)
	for _, s := range spots {
		if c := float64(first + s.Y - ground.At(s.X)); c < least {
			least, x = c, s.X
		}
	}
	if len(spots) == 0 {
		return 0, 0
	}
	return least, x
}

func (l *line) clearanceChecker() checker {
	rule := l.k.Parameter(knowledge.LineClearanceLeast)
	try := func(u trial, side scenario) figure {
		least, x := l.clearance(u, side)
		return figure{rule.Value, least, Where{Part: "line", Along: x, Case: string(LineClearance)}}
	}
	return checker{code: LineClearance, unit: "m", cure: byLighter, try: try, terms: func(u trial, f figure) []Term {
		return append(append(l.heightTerms(), l.shapeTerms()...), factTerm("c_l", "room under the loaded line", rule))
	}}
}

// fall is the greatest height of the empty line, or of the body of a hammock,
// above the ground: people stand on the one and lie in the other.
func (l *line) fall(side scenario) (most float64, x quantity.Length) {
	height, _ := l.ends[0].anchorHeight()
	first, ground := height.High(), l.profile(-1)
	if side == favourable {
		first, ground = height.Low(), l.profile(1)
	}
	spots := []gear.Spot{{}, {X: l.span.Value, Y: l.rise}}
	if l.s.Kind == survey.HammockLine {
		spots = l.settled(trial{mass: l.riders.design}, favourable)
	}
	for _, s := range spots {
		if h := float64(first + s.Y - ground.At(s.X)); h > most {
			most, x = h, s.X
		}
	}
	for _, p := range ground.Stations { // a hollow under the line is deeper than at its ends
		if p.Along > 0 && p.Along < l.span.Value && l.s.Kind == survey.TraverseLine {
			if h := float64(first + l.rise*p.Along/l.span.Value - p.Height); h > most {
				most, x = h, p.Along
			}
		}
	}
	return most, x
}

func (l *line) fallChecker() checker {
	limit := l.k.Parameter(knowledge.GreatestFall)
	try := func(u trial, side scenario) figure {
		fall, x := l.fall(side)
		return figure{fall, limit.Value, Where{Part: "line", Along: x, Case: string(FallHeight)}}
	}
	return checker{code: FallHeight, unit: "m", cure: byLighter, try: try, terms: func(u trial, f figure) []Term {
		return append(l.heightTerms(), factTerm("h_max", "greatest height of fall", limit))
	}}
}

func (l *line) heightTerms() []Term {
	var list []Term
	for i, r := range l.ends {
		h, measured := r.anchorHeight()
		t := Term{Symbol: []string{"H_1", "H_2"}[i], Name: "height of the anchor above the ground", Value: float64(h.Value), Unit: "m", Sd: float64(h.Sd), How: h.How, Path: r.at + ".height"}
		if !measured {
			t.Path, t.Note = "", "by the shape of the tree, as if the ground were level"
		}
		list = append(list, t)
	}
	return append(list, Term{Symbol: "r", Name: "rise from the first anchor to the second", Value: float64(l.rise), Unit: "m"})
}

// spaceReasons asks for ground and heights, and compares the fall with what the
// surface is rated for.
func (l *line) spaceReasons() []Reason {
	if l.s.Kind == survey.ClimbingLine {
		return nil
	}
	g, path := l.s.Ground, l.at+".ground"
	if g == nil {
		return []Reason{{Code: GroundNotSurveyed, Outcome: Unfinished, Path: path, Change: Change{Code: ChangeMeasure}}}
	}
	var list []Reason
	if at := firstGuess(g.Along, path+".along"); at != "" {
		list = append(list, Reason{Code: GroundGuessed, Outcome: Unfinished, Path: at, Change: Change{Code: ChangeMeasure}})
	}
	stations := l.profile(0).Stations
	if first, last := stations[0].Along, stations[len(stations)-1].Along; first > profileSlack || last < l.span.Value-profileSlack {
		list = append(list, Reason{Code: GroundTooShort, Outcome: Unfinished, Path: path, Change: Change{Code: ChangeMeasure}})
	}
	for _, r := range l.ends {
		if _, measured := r.anchorHeight(); !measured {
			list = append(list, Reason{Code: HeightAssumed, Outcome: Unfinished, Path: r.at + ".height", End: nameOf(r.s), Change: Change{Code: ChangeMeasure}})
		}
	}
	surface, ok := l.k.Surface(g.Surface)
	if !ok {
		return list
	}
	r := l.ends[0]
	r.lie = &lie{path: path, surface: g.Surface, depth: g.DepthLoose}
	fall, _ := l.fall(unfavourable)
	for _, reason := range r.fallOnto(surface, quantity.Length(fall)) {
		if reason.Code == SurfaceRating {
			reason.Change = Change{Code: ChangeLowerAnchor}
		}
		list = append(list, reason)
	}
	return list
}
