package exchange

import (
	"io"
	"strconv"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/knowledge"
	"boughline/survey"
)

// WriteTrees writes one row for each tree. Places are those east and north of
// the origin of the site, and in WGS 84 where the site's is known.
func WriteTrees(w io.Writer, s *survey.Survey) error {
	t := newTable(w, "tree", "name", "species", "group", "east_m", "north_m", "latitude", "longitude",
		"height_m", "girth_cm", "girth_at_m", "hangs", "findings", "note")
	origin, placed := PositionOf(s.Place)
	for i := range s.Trees {
		tree := &s.Trees[i]
		_, known := treeSpot(tree)
		var p Position
		if known && placed {
			p = origin.Moved(tree.East.Value, tree.North.Value)
		}
		girth, at, measured := stemGirth(tree)
		t.text(tree.ID, tree.Name, tree.Species, tree.Group).length(tree.East, 1).length(tree.North, 1)
		t.degrees(p.Latitude, known && placed).degrees(p.Longitude, known && placed)
		t.length(tree.Height, 1).number(100*float64(girth), measured).number(float64(at), measured)
		t.count(len(tree.Hangs)).count(len(tree.Findings)).text(tree.Note).end()
	}
	return t.close()
}

// degrees writes seven places behind the point, about a centimetre.
func (t *table) degrees(x float64, known bool) *table {
	if !known {
		return t.number(0, false)
	}
	t.row = append(t.row, strconv.FormatFloat(x, 'f', 7, 64))
	return t
}

// WriteHangs writes one row for each hang with what follows for it: the
// outcome, what governs it, and its limits.
func WriteHangs(w io.Writer, s *survey.Survey, a assess.Assessment) error {
	t := newTable(w, "tree", "hang", "member", "at_m", "line_m", "amplitude_deg", "riders", "chain", "day",
		"outcome", "outcome_in_words", "governed_by", "most_each_kg", "most_amplitude_deg", "most_gust_m_s", "note")
	found := map[string]*assess.Hang{}
	for i := range a.Hangs {
		found[a.Hangs[i].ID] = &a.Hangs[i]
	}
	for i := range s.Trees {
		for j := range s.Trees[i].Hangs {
			h := &s.Trees[i].Hangs[j]
			t.text(s.Trees[i].ID, h.ID, h.Member).length(&h.At, 1).number(float64(h.Line.Value), true)
			t.number(h.Amplitude.Value.Degrees(), true).text(h.Riders, h.Chain, s.Day.String())
			t.outcome(found[h.ID])
			t.text(h.Note).end()
		}
	}
	return t.close()
}

func (t *table) outcome(h *assess.Hang) {
	if h == nil {
		t.text("", "not worked out", "").number(0, false).number(0, false).number(0, false)
		return
	}
	reason := ""
	if len(h.Reasons) > 0 {
		reason = wording.Reason(h.Reasons[0])
	}
	t.text(h.Outcome.String(), wording.Outcome(h.Outcome), reason)
	var most assess.Limits
	if h.Limits != nil {
		most = *h.Limits
	}
	t.number(float64(most.MassEach), h.Limits != nil).number(most.Amplitude.Degrees(), h.Limits != nil).number(float64(most.Gust), h.Limits != nil)
}

// WriteFindings writes one row for each finding.
func WriteFindings(w io.Writer, s *survey.Survey, k *knowledge.Base) error {
	t := newTable(w, "tree", "finding", "sign", "sign_name", "fungus", "member", "at_m", "extent_m", "height_m", "side_deg", "distance_m",
		"seen_on", "looked_closer_on", "closer_look", "cleared_on", "note")
	for i := range s.Trees {
		for j := range s.Trees[i].Findings {
			f := &s.Trees[i].Findings[j]
			name := ""
			if sign, ok := k.Sign(f.Sign); ok {
				name = sign.Name
			}
			t.text(s.Trees[i].ID, f.ID, f.Sign, name, f.Fungus, f.Member).length(f.At, 1).length(f.Extent, 1).length(f.Height, 1)
			if f.Side == nil {
				t.number(0, false)
			} else {
				t.number(f.Side.Value.Degrees(), true)
			}
			t.length(f.Distance, 1).text(f.SeenOn.String()).closer(f).text(f.Note).end()
		}
	}
	return t.close()
}

func (t *table) closer(f *survey.Finding) *table {
	closer, cleared := survey.CloserLook{}, survey.Cleared{}
	if f.Closer != nil {
		closer = *f.Closer
	}
	if f.Cleared != nil {
		cleared = *f.Cleared
	}
	return t.text(closer.On.String(), closer.Result, cleared.On.String())
}
