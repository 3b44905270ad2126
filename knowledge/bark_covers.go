package knowledge

import (
	"slices"

	"boughline/source"
)

// BarkCover is a way for a hang to bear on the bark.
type BarkCover struct {
	Name  string
	Kind  string      // line, hose, tube, strap or pad
	Width source.Fact // m, over which the pull is spread
	// Rubs says that what moves with the swing touches the bark.
	Rubs  bool
	Needs string
}

func loadBarkCovers(l *loader) []BarkCover {
	var all []BarkCover
	for _, r := range l.read("bark_covers") {
		c := BarkCover{Name: r.text("name"), Kind: r.text("kind"), Needs: r.text("needs"), Rubs: r.yes("rubs")}
		c.Width = r.factOf(r.number("width_mm")/1000, r.number("low")/1000, r.number("high")/1000, "m")
		if !(c.Width.Low > 0) {
			r.problem("its width is %v m; expected more than 0", c.Width.Low)
		}
		all = append(all, c)
	}
	return all
}

// BarkCovers lists the ways of bearing on the bark, the roughest first.
func (b *Base) BarkCovers() []BarkCover { return slices.Clone(b.barkCovers) }
