package work

import "testing"

func TestEvidence(t *testing.T) { checkGroup(t, "evidence", nil) }
