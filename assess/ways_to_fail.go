package assess

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"boughline/engine/chance"
)

// leastImportance is the square of an importance that is worth a line.
const leastImportance = 0.005

// waysToFail puts the ways of a hang in order, the likeliest first, and names
// those without a design point.
func (h *randomHang) waysToFail(s chance.System, keys []wayKey) (ways []WayToFail, lost []string) {
	for i, key := range keys {
		point := s.Ways[i]
		if point == nil {
			lost = append(lost, fmt.Sprintf("%s of %s", key.code, h.partOf(key)))
			continue
		}
		ways = append(ways, WayToFail{Code: key.code, Part: h.partOf(key), Along: h.alongOf(key), Figure: told(point.Figure), At: h.designInputs(point)})
	}
	slices.SortStableFunc(ways, func(a, b WayToFail) int { return cmp.Compare(a.Beta, b.Beta) })
	return ways, lost
}

// designInputs lists what matters at a design point.
func (h *randomHang) designInputs(point *chance.DesignPoint) []DesignInput {
	var list []DesignInput
	for i, alpha := range point.Importance {
		if alpha*alpha < leastImportance {
			continue
		}
		in := h.inputs.list[i]
		list = append(list, DesignInput{Symbol: in.Symbol, Name: in.Name, Value: point.X[i], Unit: in.Unit, Importance: alpha})
	}
	slices.SortStableFunc(list, func(a, b DesignInput) int { return cmp.Compare(math.Abs(b.Importance), math.Abs(a.Importance)) })
	return list
}
