package wood

import (
	"fmt"

	"boughline/quantity"
)

// RepeatedShares are the shares of the member's strength that the stress of a
// load repeated through a day must not pass: OneWay where it always bends the
// same way, Reversing where it bends to and fro. Values come from fatigue tests
// of dry sawn wood, at far more cycles than a day gives (Forest Products
// Laboratory, Wood Handbook, 2010, table 5-17: about 0.40 to 0.60 and 0.30; from
// memory).
type RepeatedShares struct{ OneWay, Reversing float64 }

// Limit returns the greatest stress allowed under repeated load: the share of
// strength, and never more than the proportional limit of bending, past which
// fibres are damaged for good (Record, 1914, The Mechanical Properties of Wood).
// proportionalLimit is that of the member, not of clear wood.
// Errors: a strength, limit or share out of range.
func (s RepeatedShares) Limit(strength, proportionalLimit quantity.Stress, reversing bool) (quantity.Stress, error) {
	if !(strength > 0) || !(proportionalLimit > 0) {
		return 0, fmt.Errorf("repeated load: strength %v Pa and proportional limit %v Pa; expected both more than 0",
			float64(strength), float64(proportionalLimit))
	}
	share := s.OneWay
	if reversing {
		share = s.Reversing
	}
	if !(share > 0 && share <= 1) {
		return 0, fmt.Errorf("repeated load: share of strength %v; expected more than 0, at most 1", share)
	}
	return min(quantity.Stress(share)*strength, proportionalLimit), nil
}
