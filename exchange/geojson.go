package exchange

import (
	"encoding/json"
	"io"
	"math"

	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

// feature is a feature of RFC 7946. Its members are few and always the same; a
// library that writes them would bring a database's driver along.
type feature struct {
	Type       string         `json:"type"`
	ID         string         `json:"id"`
	Geometry   *point         `json:"geometry"` // null where the place is not known (section 3.2)
	Properties map[string]any `json:"properties"`
}

type point struct {
	Type        string     `json:"type"`
	Coordinates [2]float64 `json:"coordinates"` // longitude, latitude (section 3.1.1)
}

type collection struct {
	Type     string    `json:"type"`
	Features []feature `json:"features"`
}

// WriteGeoJSON writes a site, its trees, findings and hazards as points in
// WGS 84 (RFC 7946). What has no place, because the site or the tree has none,
// is written without a geometry. North of the site counts as true north.
func WriteGeoJSON(w io.Writer, s *survey.Survey, k *knowledge.Base) error {
	m := mapOf{survey: s, knowledge: k}
	m.origin, m.placed = PositionOf(s.Place)
	m.site()
	for i := range s.Trees {
		m.tree(&s.Trees[i])
	}
	for i := range s.Hazards {
		m.hazard(&s.Hazards[i])
	}
	e := json.NewEncoder(w)
	e.SetIndent("", " ")
	return e.Encode(collection{"FeatureCollection", m.features})
}

type mapOf struct {
	survey    *survey.Survey
	knowledge *knowledge.Base
	origin    Position
	placed    bool
	features  []feature
}

func (m *mapOf) add(id string, at spot, known bool, properties map[string]any) {
	f := feature{Type: "Feature", ID: id, Properties: map[string]any{}}
	for name, value := range properties {
		if value != nil && value != "" {
			f.Properties[name] = value
		}
	}
	if known && m.placed {
		f.Geometry = m.point(at)
	}
	m.features = append(m.features, f)
}

// point rounds to the seventh place, about a centimetre.
func (m *mapOf) point(at spot) *point {
	p := m.origin.Moved(quantity.Length(at.east), quantity.Length(at.north))
	return &point{"Point", [2]float64{round7(p.Longitude), round7(p.Latitude)}}
}

func round7(x float64) float64 { return math.Round(x*1e7) / 1e7 }

func (m *mapOf) site() {
	s := m.survey
	p := map[string]any{"kind": "site", "site": s.Site, "day": s.Day.String(), "surveyor": s.Surveyor, "note": s.Note, "trees": len(s.Trees)}
	if s.Place != nil {
		p["way_in"] = s.Place.WayIn
	}
	m.add("site", spot{}, true, p)
}

func (m *mapOf) tree(t *survey.Tree) {
	at, known := treeSpot(t)
	p := map[string]any{
		"kind": "tree", "tree": t.ID, "name": t.Name, "species": t.Species, "note": t.Note,
		"hangs": len(t.Hangs), "findings": len(t.Findings), "height_m": metres(t.Height),
	}
	if girth, height, ok := stemGirth(t); ok {
		p["girth_m"], p["girth_at_m"] = float64(girth), float64(height)
	}
	if known {
		p["east_m"], p["north_m"] = at.east, at.north
	}
	m.add("tree/"+t.ID, at, known, p)
	for i := range t.Findings {
		m.finding(t, &t.Findings[i])
	}
}

func (m *mapOf) finding(t *survey.Tree, f *survey.Finding) {
	at, own, known := findingSpot(t, f)
	p := map[string]any{
		"kind": "finding", "tree": t.ID, "finding": f.ID, "sign": f.Sign, "fungus": f.Fungus, "member": f.Member,
		"seen_on": f.SeenOn.String(), "note": f.Note, "cleared": f.Cleared != nil,
		"height_m": metres(f.Height), "at_m": metres(f.At), "place": "of the tree",
	}
	if sign, ok := m.knowledge.Sign(f.Sign); ok {
		p["sign_name"] = sign.Name
	}
	if own {
		p["place"] = "measured"
	}
	m.add("tree/"+t.ID+"/finding/"+f.ID, at, known, p)
}

func (m *mapOf) hazard(h *survey.Hazard) {
	at, known := hazardSpot(m.survey, h)
	m.add("hazard/"+h.ID, at, known, map[string]any{
		"kind": "hazard", "hazard": h.Hazard, "tree": h.Tree, "seen_on": h.SeenOn.String(), "note": h.Note, "cleared": h.Cleared != nil,
	})
}

// metres is nil for what was not measured.
func metres(l *survey.MeasuredLength) any {
	if l == nil {
		return nil
	}
	return float64(l.Value)
}
