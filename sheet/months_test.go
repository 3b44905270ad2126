package sheet_test

import (
	"bytes"
	"strings"
	"testing"

	"boughline/demo"
	"boughline/register"
	"boughline/sheet"
	"boughline/sheet/html"
	"boughline/sheet/sheettest"
	"boughline/survey"
)

// The demo's register has uses in three months; two outings of one day are two.
func TestRidesByMonth(t *testing.T) {
	r, problems, err := register.Read(bytes.NewReader(demo.Register()))
	if err != nil || len(problems) > 0 {
		t.Fatal(err, problems)
	}
	on, err := survey.ParseDate("2026-05-16")
	if err != nil {
		t.Fatal(err)
	}
	page := html.Text(sheettest.Make(t, "gear", sheet.Input{Register: r, On: on}))
	for _, want := range []string{"2025-09: 1 outing, 410 rides.", "2026-03: 2 outings, 480 rides.", "2026-04: 1 outing, 520 rides."} {
		if !strings.Contains(page, want) {
			t.Errorf("the sheet does not say %q", want)
		}
	}
}
