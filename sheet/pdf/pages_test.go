package pdf

import (
	"testing"

	"pgregory.net/rapid"
)

// Pieces stay in order and on the page; what is kept stays with what follows,
// but where the two need more than a page; a part of a table that comes first on
// a page has its head above it.
func TestPlace(t *testing.T) {
	const top, bottom = 10.0, 110.0
	head := &piece{height: 5, draw: func(float64) {}}
	rapid.Check(t, func(t *rapid.T) {
		pieces := make([]piece, rapid.IntRange(1, 60).Draw(t, "pieces"))
		for i := range pieces {
			p := &pieces[i]
			p.height = rapid.Float64Range(0.5, 60).Draw(t, "height")
			switch rapid.IntRange(0, 9).Draw(t, "what") {
			case 0:
				p.newPage = true
			case 1:
				p.gap, p.height = true, p.height/10
			case 2, 3:
				p.keep, p.height = true, p.height/10
			case 4, 5:
				p.head = head
			}
		}
		list := place(pieces, top, bottom)
		at, page, y := map[*piece]placed{}, 0, top
		for i, one := range list {
			if one.page < page || one.page == page && one.y < y-1e-9 {
				t.Fatalf("piece %d goes back", i)
			}
			if one.y < top || one.y+one.piece.height > bottom+1e-6 && one.y > top+head.height {
				t.Fatalf("piece %d reaches from %.1f to %.1f", i, one.y, one.y+one.piece.height)
			}
			if one.piece.head != nil && (i == 0 || list[i-1].page < one.page) {
				t.Fatalf("piece %d opens a page without its head", i)
			}
			page, y = one.page, one.y+one.piece.height
			at[one.piece] = one
		}
		for i := range pieces {
			p := &pieces[i]
			next := i + 1
			for next < len(pieces) && pieces[next].gap {
				next++
			}
			if p.keep && !p.gap && next < len(pieces) && !pieces[next].newPage && !pieces[next].keep && p.height+pieces[next].height < (bottom-top)/2 &&
				together(pieces, i, bottom-top) != p.height && at[p].page != at[&pieces[next]].page {
				t.Fatalf("piece %d is kept, but the next is on another page", i)
			}
		}
	})
}
