package work

import (
	"encoding/json"
	"fmt"

	"boughline/engine/section"
	"boughline/quantity"
)

// hollowInputs is a round stem with a round hollow at its centre.
type hollowInputs struct {
	Outer   float64 `json:"outer_diameter_m"`
	Inner   float64 `json:"hollow_diameter_m"`
	Opening float64 `json:"opening_share"` // of the circumference, 0 to 1
}

// hollowResults are losses of strength by published short rules, each with its
// author. They carry no pass line: for irregular or off-centre decay they
// understate the loss, which group section works out.
type hollowResults struct {
	Wagener         float64 `json:"wagener_1963_loss"`
	Coder           float64 `json:"coder_1989_loss"`
	SmileyFraedrich float64 `json:"smiley_fraedrich_1992_loss"`
}

func hollow(inputs json.RawMessage) (any, error) {
	in, err := read[hollowInputs](inputs)
	if err != nil {
		return nil, err
	}
	outer, inner := quantity.Length(in.Outer), quantity.Length(in.Inner)
	wagener, err := section.WagenerLoss(inner, outer)
	if err != nil {
		return nil, fmt.Errorf("short rule of 1963: %w", err)
	}
	coder, err := section.CoderLoss(inner, outer)
	if err != nil {
		return nil, fmt.Errorf("short rule of 1989: %w", err)
	}
	open, err := section.SmileyFraedrichLoss(inner, outer, quantity.Proportion(in.Opening))
	if err != nil {
		return nil, fmt.Errorf("short rule of 1992: %w", err)
	}
	return hollowResults{float64(wagener), float64(coder), float64(open)}, nil
}
