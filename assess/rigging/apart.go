package rigging

import (
	"math"

	"boughline/quantity"
)

// apart returns the least distance between two straight pieces, in space;
// pieces without a length are points. It is the least of the distances of their
// ends from the other piece and, where they pass each other, of the lines. Geometry.
func apart(a, b [2]quantity.Vec3) quantity.Length {
	least := math.Min(math.Min(toPiece(a[0], b), toPiece(a[1], b)), math.Min(toPiece(b[0], a), toPiece(b[1], a)))
	u, v, w := a[1].Sub(a[0]), b[1].Sub(b[0]), a[0].Sub(b[0])
	uu, uv, vv := u.Dot(u), u.Dot(v), v.Dot(v)
	det := uu*vv - uv*uv
	if det <= 1e-12*uu*vv { // parallel, or a point: an end is nearest
		return quantity.Length(least)
	}
	s := (uv*v.Dot(w) - vv*u.Dot(w)) / det
	t := (uu*v.Dot(w) - uv*u.Dot(w)) / det
	if s >= 0 && s <= 1 && t >= 0 && t <= 1 {
		least = math.Min(least, w.Add(u.Scale(s)).Sub(v.Scale(t)).Norm())
	}
	return quantity.Length(least)
}

func toPiece(p quantity.Vec3, piece [2]quantity.Vec3) float64 {
	along := piece[1].Sub(piece[0])
	t := 0.0
	if l := along.Dot(along); l > 0 {
		t = math.Min(1, math.Max(0, p.Sub(piece[0]).Dot(along)/l))
	}
	return p.Sub(piece[0]).Sub(along.Scale(t)).Norm()
}
