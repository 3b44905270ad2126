package assess

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"boughline/knowledge"
	"boughline/survey"
)

// calibrationLimb is the limb of the house calibration: level, 8 m, round,
// tapering to 0.3 of its diameter at the union, arm 2.5 m, bark 8 mm a side,
// girth taped (1.5 %), aspect ratio 0.4. White oak has the strength of the
// table, 55.8 MPa (Record 1914, Circular 213).
const calibrationLimb = `{
 "boughline": 1, "site": "calibration", "day": "2026-05-16",
 "riders": [{"id": "r", "count": 1, "each": "%v kg ±0 kg weighed", "seat": "0.001 kg ±0 kg weighed"}],
 "chains": [{"id": "c", "parts": [{"name": "line", "kind": "rope", "material": "textile", "mark": {"strength": "60 kN", "kind": "breaking"}}]}],
 "trees": [{"id": "t", "species": "Quercus alba",
  "members": [
   {"id": "stem", "length": "12 m laser", "stations": [{"at": "1.3 m", "diameter": "%v mm ±0 mm taped"}], "tip": "200 mm taped"},
   {"id": "limb", "parent": "stem", "rises_at": "5 m laser", "azimuth": "90 deg compass", "inclination": "0 deg clinometer",
    "length": "8 m ±0 m laser", "stations": [{"at": "0 m", "diameter": "%v mm taped"}], "tip": "%v mm taped", "bark": "8 mm ±0 mm calliper"}],
  "unions": [{"member": "limb", "form": "U", "bark": "ridge", "parent": "%v mm ±0 mm taped"}],
  "hangs": [{"id": "h", "member": "limb", "at": "2.5 m ±0 m taped", "line": "3 m", "amplitude": "45 deg", "riders": "r", "chain": "c"}]}]}`

// TestHouseCalibration holds the strength margin at the union to the table of
// the house calibration within 3 %. House values: they keep the whole from
// drifting to where all limbs pass or all fail.
func TestHouseCalibration(t *testing.T) {
	for _, row := range []struct{ diameter, mass, margin float64 }{
		{150, 39, 0.57}, {180, 39, 0.87}, {200, 39, 1.08}, {220, 74.6, 1.00},
		{250, 74.6, 1.31}, {250, 95, 1.17}, {260, 130, 1.09}, {300, 130, 1.50},
	} {
		text := fmt.Sprintf(calibrationLimb, row.mass, 2.5*row.diameter, row.diameter, 0.3*row.diameter, 2.5*row.diameter)
		h := assessOne(t, text)
		c := checkOf(t, h, UnionBending)
		if math.Abs(c.Margin/row.margin-1) > 0.03 {
			t.Errorf("%v mm, %v kg: margin %.3f, want %.2f within 3 %%", row.diameter, row.mass, c.Margin, row.margin)
		}
	}
}

// assessOne reads a survey with one hang and assesses it.
func assessOne(t *testing.T, text string) Hang {
	t.Helper()
	return assessFirst(t, readSurvey(t, text))
}

func readSurvey(t *testing.T, text string) *survey.Survey {
	t.Helper()
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	s, problems, err := survey.Read(strings.NewReader(text))
	if err != nil || len(problems) > 0 {
		t.Fatal(err, problems)
	}
	if problems := Problems(s, k); len(problems) > 0 {
		t.Fatal(problems)
	}
	return s
}

func checkOf(t *testing.T, h Hang, code Code) Check {
	t.Helper()
	for _, c := range h.Checks {
		if c.Code == code {
			return c
		}
	}
	t.Fatalf("hang %s has no check %s", h.ID, code)
	return Check{}
}
