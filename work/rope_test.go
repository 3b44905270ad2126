package work

import "testing"

func TestRope(t *testing.T) { checkGroup(t, "rope", nil) }
