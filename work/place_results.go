package work

import "boughline/engine/place"

type placeResults struct {
	Cells       int             `json:"cells"`
	Feasible    int             `json:"feasible_count"`
	Passed      map[string]int  `json:"pass_counts"`
	Pull        float64         `json:"pull_T_N"`
	SelfMoment  float64         `json:"self_moment_at_base_Nm"`
	NearALimit  int             `json:"cells_within_1e_6_of_a_limit"`
	AtTheLine   int             `json:"cells_at_the_decision_line"`
	Bands       []placeBand     `json:"bands"`
	AlongRange  *[2]float64     `json:"feasible_s_range"`
	LineRange   *[2]float64     `json:"feasible_L_range"`
	LongestLine *placeHang      `json:"longest_line"`
	LowestFall  *placeHang      `json:"lowest_fall"`
	MostInHand  *placeHang      `json:"most_in_hand"`
	NearestMiss *placeHang      `json:"nearest_miss"`
	Dropped     map[string]drop `json:"single_constraint_dropped,omitempty"`
}

type placeHang struct {
	Along        float64            `json:"s"`
	Line         float64            `json:"L"`
	Stress       float64            `json:"stress_Pa"`
	StressAt     float64            `json:"stress_at_u"`
	Foot         float64            `json:"foot_clearance_m"`
	Stem         float64            `json:"stem_clearance_required_m"`
	Fall         float64            `json:"fall_height_m"`
	Margins      map[string]float64 `json:"margins"`
	Least        float64            `json:"least_margin"`
	LeastBinding string             `json:"least_margin_constraint"`
}

type placeBand struct {
	Line         float64  `json:"L"`
	Count        int      `json:"count"`
	Low          *float64 `json:"s_low"`
	High         *float64 `json:"s_high"`
	Contiguous   *bool    `json:"contiguous"`
	BeyondLow    *string  `json:"beyond_low"`
	BeyondHigh   *string  `json:"beyond_high"`
	Nearest      *float64 `json:"nearest_s,omitempty"`
	NearestLeast *float64 `json:"nearest_least_margin,omitempty"`
	NearestBinds *string  `json:"nearest_constraint,omitempty"`
}

type drop struct {
	Feasible int        `json:"feasible_if_dropped"`
	Best     *float64   `json:"best_margin_of_it"`
	At       *placeHang `json:"at"`
}

func (s placeSearch) results(found place.Result) placeResults {
	near, at := s.closeToALimit()
	out := placeResults{
		Cells: found.Cells, Feasible: found.Feasible, Passed: map[string]int{},
		Pull: float64(s.pull), SelfMoment: float64(s.limb.SelfMoment(0)),
		NearALimit: near, AtTheLine: at,
		AlongRange: ends(found.Along), LineRange: ends(found.Line),
		LongestLine: s.hang(found.Bests[0]), LowestFall: s.hang(found.Bests[1]), MostInHand: s.hang(found.Bests[2]),
		NearestMiss: s.hang(found.NearestMiss),
	}
	for k, c := range s.problem.Constraints {
		out.Passed[c.Name] = found.Passed[k]
	}
	for _, b := range found.Bands {
		out.Bands = append(out.Bands, bandOf(b))
	}
	if found.Feasible == 0 {
		out.Dropped = s.dropped(found.Dropped)
	}
	return out
}

func (s placeSearch) hang(h *place.Hang) *placeHang {
	if h == nil {
		return nil
	}
	stress, at := s.limb.Stress(h.Along, s.pull)
	margins := map[string]float64{}
	for k, c := range s.problem.Constraints {
		margins[c.Name] = h.Margins[k]
	}
	return &placeHang{
		Along: float64(h.Along), Line: float64(h.Line), Stress: float64(stress), StressAt: float64(at),
		Foot: float64(s.room.FootClearance(h.Along, h.Line)), Stem: float64(s.stem.For(h.Line)),
		Fall: float64(s.room.FallHeight(h.Along, h.Line)), Margins: margins, Least: h.Least, LeastBinding: h.Binding,
	}
}

func (s placeSearch) dropped(list []place.Dropped) map[string]drop {
	out := map[string]drop{}
	for k, c := range s.problem.Constraints {
		d := drop{Feasible: list[k].Count, At: s.hang(list[k].Best)}
		if d.At != nil {
			d.Best = &list[k].Best.Margins[k]
		}
		out[c.Name] = d
	}
	return out
}

func bandOf(b place.Band) placeBand {
	out := placeBand{Line: float64(b.Line), Count: b.Count}
	if b.Feasible == nil {
		along := float64(b.Nearest.Along)
		out.Nearest, out.NearestLeast, out.NearestBinds = &along, &b.Nearest.Least, &b.Nearest.Binding
		return out
	}
	low, high := float64(b.Feasible.From), float64(b.Feasible.To)
	out.Low, out.High, out.Contiguous = &low, &high, &b.Whole
	out.BeyondLow, out.BeyondHigh = binding(b.BeyondLow), binding(b.BeyondHigh)
	return out
}

// binding names what binds at a pair, or the grid where there is none.
func binding(h *place.Hang) *string {
	name := "grid"
	if h != nil {
		name = h.Binding
	}
	return &name
}

func ends(r *place.Range) *[2]float64 {
	if r == nil {
		return nil
	}
	return &[2]float64{float64(r.From), float64(r.To)}
}
