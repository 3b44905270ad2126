package assess

import (
	"cmp"
	"math"
	"slices"

	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

// AssessLines works out what follows for the lines of a survey alone. Lines
// whose trees are not in it are not computed.
func AssessLines(s *survey.Survey, k *knowledge.Base) ([]Line, error) {
	if len(s.Lines) == 0 {
		return nil, nil
	}
	site, err := newSite(k, rulesOf(k), s)
	if err != nil {
		return nil, err
	}
	return assessLines(s, k, site), nil
}

func assessLines(s *survey.Survey, k *knowledge.Base, site []*tree) []Line {
	var list []Line
	for i := range s.Lines {
		l, err := lineAt(k, s, site, i)
		if err != nil {
			list = append(list, lineNotComputed(&s.Lines[i], element("lines", i), err))
			continue
		}
		list = append(list, l.assess())
	}
	return list
}

// lineNotComputed is what follows where a line cannot be worked out: nothing is
// decided in its favour.
func lineNotComputed(s *survey.Line, at string, cause error) Line {
	l := Line{ID: s.ID, Kind: s.Kind, Outcome: Unfinished}
	for _, e := range s.Ends {
		l.Ends = append(l.Ends, LineEnd{Tree: e.Tree, Member: e.Member})
	}
	l.Reasons = []Reason{{Code: NotComputed, Outcome: Unfinished, Path: at, Text: cause.Error(), Change: Change{Code: ChangeMeasure}}}
	return l
}

// assess judges a line: the load path of every anchor, the gear, the space.
func (l *line) assess() Line {
	asked := l.ends[0].asked
	result := Line{
		ID: l.s.ID, Kind: l.s.Kind, Ends: l.endFigures(), Shape: l.figure(), LeftOut: l.leftOut(),
		Asked: LineUse{Riders: l.riders.count, Mass: asked.mass, Gear: l.riders.seat, Gust: asked.gust},
	}
	lighter, calm := l.battery()
	for _, c := range append(slices.Clone(lighter), calm...) {
		check := c.result(asked, l.ends[0].alone)
		result.Checks = append(result.Checks, check)
	}
	slices.SortStableFunc(result.Checks, func(a, b Check) int { return cmp.Compare(a.Margin, b.Margin) })
	result.Reasons = l.reasons(result.Checks)
	result.Outcome = l.ladder(&result, lighter, calm)
	slices.SortStableFunc(result.Reasons, moreSerious)
	return result
}

// battery is all checks of a line, each anchor's named after its tree.
func (l *line) battery() (lighter, calm []checker) {
	lighter = append(l.ends[0].gearCheckers(), l.lineSpace()...)
	for _, r := range l.ends {
		lighter = append(lighter, r.named(append(r.anchorCheckers(), r.strengthCheckers()...))...)
		calm = append(calm, r.named(r.windCheckers())...)
	}
	return lighter, calm
}

// named writes the tree of an anchor into what its checks find.
func (r *rig) named(list []checker) []checker {
	for i := range list {
		try := list[i].try
		list[i].try = func(u trial, side scenario) figure {
			f := try(u, side)
			f.where.End = nameOf(r.s)
			return f
		}
	}
	return list
}

// anchorCheckers hold the anchor of a traverse on a stem to the width and the
// diameter that the norm of slack lines asks for.
func (r *rig) anchorCheckers() []checker {
	if r.anchor.line.s.Kind != survey.TraverseLine || r.on.parent != nil {
		return nil
	}
	least := r.k.Parameter(knowledge.StemAnchorDiameter)
	d := r.on.diameter(float64(r.arm.Value)).across
	list := []checker{fixedChecker(StemAtAnchor, r.on.member.ID, least.Value, d,
		factTerm("D_min", "least diameter of a stem that holds a slack line", least))}
	if p := r.anchor.part; p != nil && p.Width != nil {
		least := r.k.Parameter(knowledge.StemAnchorWidth)
		list = append(list, fixedChecker(StrapWidth, p.Name, least.Value, resolve(r.k, *p.Width),
			factTerm("w_min", "least width of a strap round a stem", least)))
	}
	return list
}

// fixedChecker compares a length that no smaller use changes.
func fixedChecker(code Code, part string, least float64, m survey.MeasuredLength, rule Term) checker {
	return checker{code: code, unit: "m", cure: byLighter,
		try: func(_ trial, side scenario) figure {
			size := m.Low()
			if side == favourable {
				size = m.High()
			}
			return figure{least, float64(size), Where{Part: part, Case: string(code)}}
		},
		terms: func(trial, figure) []Term {
			return []Term{{Symbol: "d", Name: "measured", Value: float64(m.Value), Unit: "m", Sd: float64(m.Sd), How: m.How}, rule}
		}}
}

// reasons gathers what speaks against the line as asked for, and the remarks.
func (l *line) reasons(checks []Check) []Reason {
	var list []Reason
	for i := range checks {
		if c := &checks[i]; c.Alone > MayHang {
			list = append(list, Reason{Code: c.Code, Outcome: c.Alone, Check: c, End: c.Where.End, Change: lineChange(c)})
		}
	}
	if !l.riders.known() {
		list = append(list, Reason{Code: RidersNotKnown, Outcome: Unfinished, Path: l.riders.path, Change: Change{Code: ChangeDescribe}, Terms: l.riders.terms})
	}
	if l.s.Kind == survey.ClimbingLine {
		list = append(list, Reason{Code: TrainedOnly, Outcome: WithinLimits, Path: l.at})
	}
	list = append(list, l.spanReasons()...)
	list = append(list, l.spaceReasons()...)
	for _, r := range l.ends {
		list = append(list, r.endReasons()...)
	}
	return withoutRepeats(list)
}

// endReasons is what speaks against one anchor.
func (r *rig) endReasons() []Reason {
	people := r.people(r.asked)
	list := r.guessReasons()
	list = append(list, r.airReasons()...)
	list = append(list, r.woodReasons()...)
	list = append(list, r.unionReasons()...)
	list = append(list, r.anchorReasons()...)
	list = append(list, r.barkReasons()...)
	list = append(list, r.hazardReasons(people)...)
	list = append(list, r.beside()...)
	list = append(list, r.inspectionReasons(people)...)
	for _, n := range r.neighbourReasons(people) {
		if !r.anchor.line.reaches(n.Path) {
			list = append(list, n)
		}
	}
	for i := range list {
		list[i].End = nameOf(r.s)
	}
	for _, reason := range r.gearReasons() {
		if reason.Code == AnchorCreeps {
			reason.End = nameOf(r.s)
		}
		list = append(list, reason)
	}
	return list
}

// reaches reports whether a path of the document lies in a tree that holds the
// line: its findings are judged there.
func (l *line) reaches(path string) bool {
	return slices.ContainsFunc(l.ends, func(r *rig) bool { return len(path) > len(r.path) && path[:len(r.path)+1] == r.path+"." })
}

// anchorReasons asks which part holds here and how wide it is, and says where
// a stem or a strap falls short of a norm that was not made for this line.
func (r *rig) anchorReasons() []Reason {
	var list []Reason
	if r.anchor.part == nil {
		list = append(list, Reason{Code: AnchorNotNamed, Remark: true, Path: r.at + ".anchor"})
	}
	if r.on.parent != nil {
		return list
	}
	width, stem := r.k.Parameter(knowledge.StemAnchorWidth), r.k.Parameter(knowledge.StemAnchorDiameter)
	strict := r.anchor.line.s.Kind == survey.TraverseLine
	p := r.anchor.part
	switch {
	case strict && (p == nil || p.Width == nil):
		list = append(list, Reason{Code: StrapNotMeasured, Outcome: Unfinished, Path: r.at + ".anchor", Change: Change{Code: ChangeMeasure},
			Terms: []Term{factTerm("w_min", "least width of a strap round a stem", width)}})
	case !strict && p != nil && p.Width != nil && float64(resolve(r.k, *p.Width).Value) < width.Value:
		list = append(list, Reason{Code: StrapNarrow, Remark: true, Path: r.at + ".anchor", Text: p.Name,
			Terms: []Term{factTerm("w_min", "least width of a strap round a stem", width)}})
	}
	if d := r.on.diameter(float64(r.arm.Value)).across; !strict && float64(d.Low()) < stem.Value {
		list = append(list, Reason{Code: StemThin, Remark: true, Path: r.at + ".at",
			Terms: []Term{factTerm("D_min", "least diameter of a stem that holds a slack line", stem),
				{Symbol: "d", Name: "diameter at the anchor", Value: float64(d.Value), Unit: "m", Sd: float64(d.Sd), How: d.How}}})
	}
	return list
}

// beside names the hangs and the other lines on the tree of an anchor.
func (r *rig) beside() []Reason {
	var list []Reason
	for i := range r.s.Hangs {
		list = append(list, Reason{Code: NotTogether, Outcome: WithinLimits, Path: element(r.path+".hangs", i), Text: r.s.Hangs[i].ID})
	}
	return append(list, r.linesBeside(r.anchor.line.s.ID)...)
}

// linesBeside names the lines on a tree, but for one.
func (t *tree) linesBeside(but string) []Reason {
	var list []Reason
	for i := range t.survey.Lines {
		other := &t.survey.Lines[i]
		here := slices.ContainsFunc(other.Ends, func(e survey.LineEnd) bool { return e.Tree == t.s.ID })
		if here && other.ID != but {
			list = append(list, Reason{Code: NotTogether, Outcome: WithinLimits, Path: element("lines", i), Text: other.ID})
		}
	}
	return list
}

// spanReasons asks for a span that agrees with the places of the trees.
func (l *line) spanReasons() []Reason {
	if l.byPlace == nil || l.s.Span == nil {
		return nil
	}
	apart := math.Abs(float64(*l.byPlace - l.span.Value))
	doubt := spanDoubt + quantity.Tail*math.Hypot(float64(l.span.Sd), float64(placeDoubt(l.k, l.ends[0].s, l.ends[1].s)))
	if apart <= doubt {
		return nil
	}
	return []Reason{{Code: SpanDisagrees, Outcome: Unfinished, Path: l.at + ".span", Change: Change{Code: ChangeMeasure},
		Terms: []Term{{Symbol: "s", Name: "span as stated", Value: float64(l.span.Value), Unit: "m", How: l.span.How, Path: l.at + ".span"},
			{Symbol: "s_0", Name: "span by the places of the trees", Value: float64(*l.byPlace), Unit: "m"}}}}
}

// spanDoubt is what a span may differ from the places of the trees, m (house).
const spanDoubt = 0.5

// withoutRepeats drops what both ends say of the same thing.
func withoutRepeats(list []Reason) []Reason {
	type key struct {
		code       Code
		path, text string
		sign, zone string
		part       string
	}
	seen := map[key]bool{}
	return slices.DeleteFunc(list, func(r Reason) bool {
		k := key{r.Code, r.Path, r.Text, r.SignID + r.RuleID, r.Zone, r.End}
		if r.Check != nil {
			k.part = r.Check.Where.End + r.Check.Where.Part
			k.path = r.Check.Where.Case
		}
		if r.Code == HazardFound || r.Code == HazardNotPlaced || r.Code == NotTogether || r.Code == GearUnmarked || r.Code == GearCondition || r.Code == GearRetired || r.Code == ChainIncomplete {
			k.part = ""
		}
		repeated := seen[k]
		seen[k] = true
		return repeated
	})
}

// ladder is the worst of the reasons; one that lets people on needs a use at
// which all checks hold together, and states it.
func (l *line) ladder(result *Line, lighter, calm []checker) Outcome {
	outcome := MayHang
	for _, reason := range result.Reasons {
		outcome = max(outcome, reason.Outcome)
	}
	if !outcome.Rideable() {
		return outcome
	}
	u, ok := l.greatestUse(lighter, calm, unfavourable)
	if !ok {
		none := Reason{Code: NoUseFits, Outcome: Leave, Path: l.at, Change: Change{Code: ChangeOtherTree}}
		if _, could := l.greatestUse(lighter, calm, favourable); could {
			none.Outcome, none.Change = Unfinished, Change{Code: ChangeMeasure}
		}
		result.Reasons = append(result.Reasons, none)
		return none.Outcome
	}
	result.Limits = l.limitsOf(u, result.Reasons)
	return outcome
}

// greatestUse finds the greatest mass on a calm day, then the greatest gust.
func (l *line) greatestUse(lighter, calm []checker, side scenario) (trial, bool) {
	r := l.ends[0]
	u := r.asked
	mass, ok := greatest(append(slices.Clone(lighter), calm...), side, float64(r.lightest()), float64(u.mass), func(m float64) trial {
		v := u
		v.mass, v.gust = quantity.Mass(m), r.calm()
		return v
	})
	if !ok {
		return u, false
	}
	u.mass = quantity.Mass(mass)
	gust, ok := greatest(calm, side, float64(r.calm()), float64(u.gust), func(g float64) trial {
		v := u
		v.gust = quantity.Speed(g)
		return v
	})
	u.gust = quantity.Speed(gust)
	return u, ok
}

func (l *line) limitsOf(u trial, reasons []Reason) *LineLimits {
	limits := &LineLimits{
		LineUse:  LineUse{Riders: l.riders.count, Mass: u.mass, Gear: l.riders.seat, Gust: u.gust},
		MassEach: u.mass / quantity.Mass(l.riders.count),
		TestMass: (u.mass + l.riders.seat) * quantity.Mass(l.ends[0].rules.testFactor.Value),
	}
	if b, ok := l.ends[0].beaufortOf(u.gust); ok {
		limits.Beaufort, limits.SeenInTrees = b.Number, b.What
	}
	for _, reason := range reasons {
		if reason.Code == SurfaceRating {
			limits.Departures = append(limits.Departures, string(reason.Code))
		}
	}
	return limits
}

// lineChange is the smallest change that would alter the outcome of a check of
// a line.
func lineChange(c *Check) Change {
	switch c.Code {
	case FallHeight:
		return Change{Code: ChangeLowerAnchor}
	case LineClearance:
		return Change{Code: ChangeHigherAnchor}
	case StrapWidth:
		return Change{Code: ChangeWiderStrap}
	case StemAtAnchor:
		return Change{Code: ChangeOtherTree}
	}
	if change := checkChange(c); change.Code != ChangeCloser {
		return change
	}
	return Change{Code: ChangeMoreSag}
}
