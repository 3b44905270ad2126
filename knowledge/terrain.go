package knowledge

import (
	"slices"

	"boughline/source"
)

// Terrain is a terrain category of EN 1991-1-4, Table 4.1.
type Terrain struct {
	Category    string // 0, I, II, III, IV
	What        string
	Roughness   source.Fact // m, z0
	LeastHeight source.Fact // m, zmin
}

func loadTerrain(l *loader) []Terrain {
	var all []Terrain
	for _, r := range l.read("terrain") {
		all = append(all, Terrain{r.text("category"), r.text("what"), r.fact("roughness_m", "m"), r.fact("least_height_m", "m")})
	}
	return all
}

// Terrain finds a terrain category: "0", "I", "II", "III" or "IV".
func (b *Base) Terrain(category string) (Terrain, bool) {
	i := slices.IndexFunc(b.terrain, func(t Terrain) bool { return sameText(t.Category, category) })
	if i < 0 {
		return Terrain{}, false
	}
	return b.terrain[i], true
}

// Terrains lists the categories from open sea to town.
func (b *Base) Terrains() []Terrain { return slices.Clone(b.terrain) }
