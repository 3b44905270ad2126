package assess

import (
	"cmp"
	"math"
	"slices"

	"boughline/knowledge"
	"boughline/quantity"
	"boughline/source"
	"boughline/survey"
)

// NextMeasurement is one thing that could be measured or looked at better, with
// what would then stand. The whole hang is judged anew for each.
type NextMeasurement struct {
	What  string          `json:"what"` // a row of the table of efforts
	How   quantity.How    `json:"how"`
	Part  string          `json:"part,omitempty"`
	Along quantity.Length `json:"along_m,omitempty"`
	// Places is how many places are measured, all of which Minutes counts.
	Places  int          `json:"places"`
	Minutes float64      `json:"minutes"`
	Path    string       `json:"path"`
	Refs    []source.Ref `json:"refs"`
	// Now is how the hang stands; Likely is how it would if the measurement came
	// out as it is taken now; Better and Worse, if it came out by one standard deviation of
	// what there is to learn to either side. About two in three come out between them.
	Now    Standing `json:"now"`
	Likely Standing `json:"likely"`
	Better Standing `json:"better"`
	Worse  Standing `json:"worse"`
	// Moves is how far the index moves between Worse and Better, for each minute.
	Moves float64 `json:"index_per_minute"`
}

// Standing is what matters of a judged hang when measurements are weighed.
type Standing struct {
	Outcome Outcome       `json:"outcome"`
	Open    int           `json:"open"`      // reasons that leave it undecided
	Mass    quantity.Mass `json:"riders_kg"` // greatest within the limits, 0 where nothing is hung
	Riders  int           `json:"riders"`    // of those asked for who weigh no more than that together
	// Index is the least reliability index of the limb, at the use asked for.
	Index float64 `json:"index"`
}

// standing reads a judged hang.
func (r *rig) standing(h Hang) Standing {
	s := Standing{Outcome: h.Outcome, Index: greatestBeta}
	for _, reason := range h.Reasons {
		if reason.Outcome == Unfinished && !reason.Remark {
			s.Open++
		}
	}
	if h.Limits != nil {
		s.Mass = h.Limits.Mass
		each := float64(r.asked.mass) / float64(r.riders.count)
		s.Riders = int(math.Floor(float64(s.Mass)/each + 1e-9))
	}
	if h.Chance != nil {
		s.Index = h.Chance.Index
	}
	return s
}

// NextSteps is what to measure or look at next.
type NextSteps struct {
	Now  Standing          `json:"now"`
	List []NextMeasurement `json:"list"` // what is worth a minute most first
	// Together is how the hang would stand with all of the list done and come
	// out as taken now.
	Together Standing `json:"together"`
}

// MeasureNext lists what could be measured better for one hang: first what alone
// would likely change the outcome or settle something open, then what likely lifts the limit
// most, then what moves the index most, each for a minute of work.
func MeasureNext(s *survey.Survey, k *knowledge.Base, hang string) (NextSteps, error) {
	r, err := rigNamed(s, k, hang)
	if err != nil {
		return NextSteps{}, err
	}
	next := NextSteps{Now: r.standing(r.assess())}
	var worth []candidate
	for _, c := range r.candidates() {
		n, err := r.weigh(c, next.Now)
		if err != nil {
			return NextSteps{}, err
		}
		if n.matters() {
			next.List = append(next.List, n)
			worth = append(worth, c)
		}
	}
	inOrderOfWorth(next.List)
	next.Together, err = r.standingAfter(worth, 0)
	return next, err
}

func inOrderOfWorth(list []NextMeasurement) {
	slices.SortStableFunc(list, func(a, b NextMeasurement) int {
		return cmp.Or(cmp.Compare(b.lifts(), a.lifts()), cmp.Compare(b.gain()/b.Minutes, a.gain()/a.Minutes), cmp.Compare(b.Moves, a.Moves))
	})
}

// weigh judges the hang anew for one candidate.
func (r *rig) weigh(c candidate, now Standing) (NextMeasurement, error) {
	effort, _ := r.k.Effort(c.what)
	n := NextMeasurement{
		What: c.what, How: effort.How, Part: c.part, Along: c.along, Places: max(1, c.places), Minutes: effort.Minutes.Value * float64(max(1, c.places)),
		Path: c.path, Refs: []source.Ref{effort.Minutes.Ref}, Now: now,
	}
	var err error
	for _, out := range []struct {
		standing *Standing
		good     float64
	}{{&n.Likely, 0}, {&n.Better, 1}, {&n.Worse, -1}} {
		if *out.standing, err = r.standingAfter([]candidate{c}, out.good); err != nil {
			return n, err
		}
	}
	n.Moves = math.Abs(n.Better.Index-n.Worse.Index) / n.Minutes
	return n, nil
}

// standingAfter judges the hang anew with some things measured.
func (r *rig) standingAfter(list []candidate, good float64) (Standing, error) {
	v, err := r.varied()
	if err != nil {
		return Standing{}, err
	}
	for _, c := range list {
		effort, _ := r.k.Effort(c.what)
		c.apply(v, effort.How, good)
	}
	again, err := rigNamed(v.survey, r.k, r.h.ID)
	if err != nil {
		return Standing{}, err
	}
	return again.standing(again.assess()), nil
}

// leastMove is the change of the index that is worth a line.
const leastMove = 0.01

// matters reports whether anything would stand otherwise.
func (n NextMeasurement) matters() bool {
	return n.Likely.Open < n.Now.Open || n.Likely.Outcome != n.Now.Outcome || n.Better.Outcome != n.Now.Outcome || n.Worse.Outcome != n.Now.Outcome ||
		math.Abs(n.Better.Index-n.Worse.Index) >= leastMove || n.gain() > 0.5
}

// lifts ranks what would change: 3 for a better outcome as things are taken now,
// 2 for one thing less that leaves it open, 1 for a better outcome if it comes out well.
func (n NextMeasurement) lifts() int {
	switch {
	case n.Likely.Outcome < n.Now.Outcome:
		return 3
	case n.Likely.Open < n.Now.Open:
		return 2
	case n.Better.Outcome < n.Now.Outcome:
		return 1
	}
	return 0
}

// gain is by how much the greatest mass of riders would likely grow, kg.
func (n NextMeasurement) gain() float64 {
	return math.Max(0, float64(n.Likely.Mass-n.Now.Mass))
}
