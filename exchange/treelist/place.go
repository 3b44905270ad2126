package treelist

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"

	"boughline/exchange"
	"boughline/quantity"
	"boughline/survey"
)

func (m Mapping) easting() float64 {
	if m.Origin == nil {
		return 0
	}
	return m.Origin.East
}

func (m Mapping) northing() float64 {
	if m.Origin == nil {
		return 0
	}
	return m.Origin.North
}

// farthest is how far a tree may stand from the origin of its site, m.
const farthest = 5000

// findOrigin makes sure that the coordinates have an origin. Degrees are those
// about the place of the site; a site without one takes the middle of the list.
func (b *builder) findOrigin() error {
	if b.has(East) && b.mapping.Origin == nil && b.isGrid() {
		return errGrid
	}
	if !b.has(Latitude) {
		return nil
	}
	if p := b.site.Place; p != nil {
		b.origin, _ = exchange.PositionOf(p)
		return nil
	}
	if slices.ContainsFunc(b.site.Trees, func(t survey.Tree) bool { return t.East != nil }) {
		return errors.New("the list gives latitude and longitude, and the site has trees with places but none of its own; add its place first")
	}
	var lat, lon []float64
	for _, row := range b.list.Rows {
		if p, ok := b.position(row); ok {
			lat, lon = append(lat, p.Latitude), append(lon, p.Longitude)
		}
	}
	if len(lat) == 0 {
		return nil // each row will say why
	}
	b.origin = exchange.Position{Latitude: median(lat), Longitude: median(lon)}
	b.taken.Place = &survey.Place{Latitude: b.origin.Latitude, Longitude: b.origin.Longitude}
	return nil
}

// median is the middle one, rounded to the fifth place, about a metre.
func median(list []float64) float64 {
	slices.Sort(list)
	return math.Round(list[len(list)/2]*1e5) / 1e5
}

func (b *builder) position(row Row) (p exchange.Position, ok bool) {
	n := 0
	for i, c := range b.columns {
		if i >= len(row.Cells) || c.Field != Latitude && c.Field != Longitude {
			continue
		}
		text, err := plainCell(row.Cells[i])
		if err != nil {
			continue
		}
		x, err := degree(text, b.mapping.Decimal, c.Field)
		if err != nil {
			continue
		}
		if n++; c.Field == Latitude {
			p.Latitude = x
		} else {
			p.Longitude = x
		}
	}
	return p, n == 2
}

// isGrid reports whether most trees stand farther off than a site is wide.
func (b *builder) isGrid() bool {
	far, all := 0, 0
	for i, c := range b.columns {
		if c.Field != East && c.Field != North {
			continue
		}
		for _, row := range b.list.Rows {
			if i >= len(row.Cells) {
				continue
			}
			if x, err := length(row.Cells[i], b.mapping.Decimal, c); err == nil {
				if all++; math.Abs(float64(x)) > farthest {
					far++
				}
			}
		}
	}
	return far > all/2
}

// degree reads decimal degrees, with a letter for the side where there is one.
func degree(text, decimal string, f Field) (float64, error) {
	most, sides := 90.0, "NS"
	if f == Longitude {
		most, sides = 180, "EW"
	}
	bare, sign := strings.TrimSpace(strings.TrimSuffix(strings.TrimSpace(text), "°")), 1.0
	if n := len(bare); n > 0 && strings.ContainsRune(sides, rune(bare[n-1]&^0x20)) {
		if bare[n-1]&^0x20 == sides[1] {
			sign = -1
		}
		bare = strings.TrimSpace(strings.TrimSuffix(strings.TrimSpace(bare[:n-1]), "°"))
	}
	x, err := number(bare, decimal)
	if err != nil {
		return 0, fmt.Errorf("%q is no place in decimal degrees, such as 51%s50722", text, decimal)
	}
	if x *= sign; math.Abs(x) > most {
		return 0, fmt.Errorf("%q lies beyond %g degrees; perhaps latitude and longitude are exchanged", text, most)
	}
	return x, nil
}

// place wants both coordinates or none.
func (r *reading) place() {
	if (r.tree.East == nil) != (r.tree.North == nil) || r.degrees == 1 {
		r.fault("of its two coordinates one is missing")
		return
	}
	if r.degrees == 0 {
		return
	}
	how := quantity.How("")
	for _, c := range r.columns {
		if c.Field == Latitude {
			how = quantity.How(c.How)
		}
	}
	east, north := r.origin.Offset(r.at)
	if math.Hypot(float64(east), float64(north)) > farthest {
		r.fault("it stands %.0f km from the site; check latitude and longitude", math.Hypot(float64(east), float64(north))/1000)
		return
	}
	r.tree.East, r.tree.North = &survey.MeasuredLength{Value: toCentimetre(east), How: how}, &survey.MeasuredLength{Value: toCentimetre(north), How: how}
}

func toCentimetre(l quantity.Length) quantity.Length {
	return quantity.Length(math.Round(float64(l)*100)/100 + 0) // no -0
}
