package work

import "testing"

func TestWindCases(t *testing.T) {
	checkGroup(t, "wind", []rule{
		{[]string{"z_where", "crown_base_z"}, "z"},
		{[]string{"force"}, "force"},
		{[]string{"moment"}, "moment"},
		{[]string{"."}, "profile"},
	})
}
