package knowledge

import (
	"slices"

	"boughline/source"
)

// Surface is the height of fall a surface is rated for.
type Surface struct {
	Name      string
	RatedFall source.Fact // m
	// LooseDepth is the depth of loose fill, in m, that the rating asks for,
	// what is kicked out included; nil for firm ground.
	LooseDepth *source.Fact
}

func loadSurfaces(l *loader) []Surface {
	var all []Surface
	for _, r := range l.read("surfaces") {
		all = append(all, Surface{r.text("name"), r.fact("rated_fall_m", "m"), r.maybeFact("loose_depth_m", "m")})
	}
	return all
}

// Surface finds a surface by its name.
func (b *Base) Surface(name string) (Surface, bool) {
	i := slices.IndexFunc(b.surfaces, func(s Surface) bool { return sameText(s.Name, name) })
	if i < 0 {
		return Surface{}, false
	}
	return b.surfaces[i], true
}

// Surfaces lists the surfaces of the table.
func (b *Base) Surfaces() []Surface { return slices.Clone(b.surfaces) }
