package sketch

import (
	"maps"
	"slices"
	"sync"
)

// book holds all drawings by the ids of the signs.
var book = sync.OnceValue(func() map[string]Sketch {
	all := map[string]Sketch{}
	for _, zone := range []func() map[string]Sketch{crown, limbs, unions, stems, feet, grounds} {
		maps.Copy(all, zone())
	}
	return all
})

// Of returns the drawing of a sign by its id.
func Of(sign string) (Sketch, bool) {
	s, ok := book()[sign]
	return s, ok
}

// Signs lists the ids of the signs that are drawn, sorted.
func Signs() []string { return slices.Sorted(maps.Keys(book())) }
