package exchange

import (
	"bytes"

	"boughline/assess"
	"boughline/knowledge"
	"boughline/survey"
)

// Lists are the lists of a site as CSV: trees, hangs with what follows for them,
// findings.
func Lists(s *survey.Survey, k *knowledge.Base) ([]Sheet, error) {
	a, err := assess.Assess(s, k)
	if err != nil {
		return nil, err
	}
	var trees, hangs, findings bytes.Buffer
	if err := WriteTrees(&trees, s); err != nil {
		return nil, err
	}
	if err := WriteHangs(&hangs, s, a); err != nil {
		return nil, err
	}
	if err := WriteFindings(&findings, s, k); err != nil {
		return nil, err
	}
	return []Sheet{{"trees.csv", trees.Bytes()}, {"hangs.csv", hangs.Bytes()}, {"findings.csv", findings.Bytes()}}, nil
}
