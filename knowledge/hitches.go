package knowledge

import (
	"slices"

	"boughline/quantity"
	"boughline/source"
)

// Hitch is the rating of a sling in one way of use over that of one leg
// straight down.
type Hitch struct {
	Name  string
	What  string
	Share source.Fact
}

func loadHitches(l *loader) []Hitch {
	var all []Hitch
	for _, r := range l.read("hitches") {
		all = append(all, Hitch{r.text("name"), r.text("what"), r.shareInRange()})
	}
	return all
}

// Hitch finds a way of use by its name.
func (b *Base) Hitch(name string) (Hitch, bool) {
	i := slices.IndexFunc(b.hitches, func(h Hitch) bool { return sameText(h.Name, name) })
	if i < 0 {
		return Hitch{}, false
	}
	return b.hitches[i], true
}

// Hitches lists the ways of use of the table.
func (b *Base) Hitches() []Hitch { return slices.Clone(b.hitches) }

// chokeAngle is the share of the choker rating kept between two angles.
type chokeAngle struct {
	from, to quantity.Angle
	share    source.Fact
}

func loadChokeAngles(l *loader) []chokeAngle {
	var all []chokeAngle
	for _, r := range l.read("choke_angles") {
		all = append(all, chokeAngle{
			from: quantity.Angle(r.fact("from_deg", "deg").Value), to: quantity.Angle(r.fact("to_deg", "deg").Value),
			share: r.fact("share", "1"),
		})
	}
	return all
}

// ChokeAngle returns the share of the choker rating kept at the angle between
// the two parts of a choked sling; false outside 0 to 180 degrees. On the
// bound of two steps the lower share counts. Source: sling makers' tables.
func (b *Base) ChokeAngle(angle quantity.Angle) (least source.Fact, ok bool) {
	for _, c := range b.chokeAngles {
		if angle >= c.from && angle <= c.to && (!ok || c.share.Value < least.Value) {
			least, ok = c.share, true
		}
	}
	return least, ok
}
