package knowledge

import (
	"slices"

	"boughline/source"
)

// Freeing is how an anchor round a limb comes down again, by the way it holds.
type Freeing struct {
	Anchor    string // choker, girth hitch, basket, running bowline, straight
	Job       string
	FromBelow string // whether it comes down without climbing, in words
	Pull      string // what has to be pulled
	Remains   string // what stays up or may catch
	Ref       source.Ref
}

func loadFreeing(l *loader) []Freeing {
	var all []Freeing
	for _, r := range l.read("anchor_freeing") {
		all = append(all, Freeing{r.text("anchor"), r.text("job"), r.text("from_below"), r.text("pull"), r.text("remains"), r.ref()})
	}
	return all
}

// Freeing finds how an anchor comes down by its name.
func (b *Base) Freeing(anchor string) (Freeing, bool) {
	i := slices.IndexFunc(b.freeing, func(f Freeing) bool { return sameText(f.Anchor, anchor) })
	if i < 0 {
		return Freeing{}, false
	}
	return b.freeing[i], true
}

// FreeingList lists the anchors with how they come down.
func (b *Base) FreeingList() []Freeing { return slices.Clone(b.freeing) }
