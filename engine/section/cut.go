package section

import (
	"fmt"

	"github.com/peterstace/simplefeatures/geom"

	"boughline/quantity"
)

// Cut returns the section that the cavities leave of an outline. Cavities may
// overlap and may break through the outline. The error names a ring that is no
// simple outline, and says when no wood is left or when it falls into pieces,
// which do not bend as one.
func Cut(outline Ring, cavities ...Ring) (Section, error) {
	wood, err := polygon(outline)
	if err != nil {
		return Section{}, fmt.Errorf("outline: %w", err)
	}
	holes := make([]geom.Geometry, len(cavities))
	for i, c := range cavities {
		if holes[i], err = polygon(c); err != nil {
			return Section{}, fmt.Errorf("cavity %d: %w", i, err)
		}
	}
	if len(holes) > 0 {
		if wood, err = without(wood, holes); err != nil {
			return Section{}, err
		}
	}
	piece, err := onePiece(wood)
	if err != nil {
		return Section{}, err
	}
	return measure(rings(piece)), nil
}

// polygon checks a ring and turns it into the library's form.
func polygon(r Ring) (geom.Geometry, error) {
	if len(r) < 3 {
		return geom.Geometry{}, fmt.Errorf("%d points; expected at least 3", len(r))
	}
	flat := make([]float64, 0, 2*len(r)+2)
	for i := range len(r) + 1 {
		p := r[i%len(r)]
		flat = append(flat, float64(p.X), float64(p.Y))
	}
	p := geom.NewPolygon([]geom.LineString{geom.NewLineString(geom.NewSequence(flat, geom.DimXY))})
	if err := p.Validate(); err != nil {
		return geom.Geometry{}, fmt.Errorf("expected a closed line that does not cross itself: %w", err)
	}
	return p.AsGeometry(), nil
}

func without(wood geom.Geometry, holes []geom.Geometry) (geom.Geometry, error) {
	hollow, err := geom.UnionMany(holes)
	if err != nil {
		return wood, fmt.Errorf("joining the cavities: %w", err)
	}
	left, err := geom.Difference(wood, hollow)
	if err != nil {
		return wood, fmt.Errorf("cutting the cavities out: %w", err)
	}
	return left, nil
}

// onePiece returns the wood as one polygon. Slivers where a cavity's edge runs
// along the outline count as nothing.
func onePiece(wood geom.Geometry) (geom.Polygon, error) {
	const sliver = 1e-6 // share of the area
	total := wood.Area()
	var piece geom.Polygon
	count := 0
	for _, g := range wood.Dump() {
		if p, ok := g.AsPolygon(); ok && p.Area() > sliver*total {
			piece = p
			count++
		}
	}
	switch count {
	case 0:
		return piece, fmt.Errorf("the cavities leave no wood; expected some within the outline")
	case 1:
		return piece, nil
	}
	return piece, fmt.Errorf("the cavities leave %d pieces of wood apart; expected one", count)
}

// rings returns the edges of a polygon: the outer one, then the holes.
func rings(p geom.Polygon) []Ring {
	var out []Ring
	for _, line := range p.DumpRings() {
		seq := line.Coordinates()
		ring := make(Ring, seq.Length()-1)
		for i := range ring {
			xy := seq.GetXY(i)
			ring[i] = Point{quantity.Length(xy.X), quantity.Length(xy.Y)}
		}
		out = append(out, ring)
	}
	return out
}
