package work

import (
	"encoding/json"
	"fmt"
)

// evidenceKinds are what evidence can do to what is known of a limb.
var evidenceKinds = map[string]figure{
	"proof_truncation": proofTruncation,
	"proof_uncertain":  proofUncertain,
	"normal_normal":    sagReadings,
}

// evidence gives what is known of strength or stiffness after evidence of the
// kind that the inputs name.
func evidence(raw json.RawMessage) (any, error) {
	in, err := read[struct {
		Kind string `json:"kind"`
	}](raw)
	if err != nil {
		return nil, err
	}
	compute, ok := evidenceKinds[in.Kind]
	if !ok {
		return nil, fmt.Errorf("kind %q; expected proof_truncation, proof_uncertain or normal_normal", in.Kind)
	}
	return compute(raw)
}
