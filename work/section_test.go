package work

import (
	"encoding/json"
	"math"
	"os"
	"path/filepath"
	"testing"
)

// Green's theorem on polygons of 2e5 corners (see the method in each file).
func TestSectionCases(t *testing.T) {
	checkGroup(t, "section", []rule{
		{[]string{"area"}, "area"},
		{[]string{"centroid"}, "centroid"},
		{[]string{"W_min_dir", "Ixy"}, ""}, // TestSectionDirections
		{[]string{"W_", "ratio_to_sound", "load_dir"}, "W"},
		{[]string{"I"}, "I"},
	})
}

type sectionCase struct {
	Expected struct {
		Area      float64 `json:"area_m2"`
		Ixy       float64 `json:"Ixy_m4"`
		Major     float64 `json:"I_major_m4"`
		Minor     float64 `json:"I_minor_m4"`
		Direction float64 `json:"W_min_dir_deg"`
		Least     float64 `json:"W_min_m3"`
		Greatest  float64 `json:"W_max_m3"`
	} `json:"expected"`
	Tolerance map[string]tolerance `json:"tolerance"`
}

// The product of inertia is compared on the scale of the principal values, for
// it may be 0. The direction of the least modulus is the same the other way
// round, and any direction has it where greatest and least agree.
func TestSectionDirections(t *testing.T) {
	files, err := filepath.Glob("testdata/cases/section_*.json")
	if err != nil || len(files) == 0 {
		t.Fatalf("no section cases: %v", err)
	}
	for _, file := range files {
		t.Run(filepath.Base(file), func(t *testing.T) {
			data, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			var want, got sectionCase
			if err := json.Unmarshal(data, &want); err != nil {
				t.Fatal(err)
			}
			result, err := Run(data)
			if err != nil {
				t.Fatal(err)
			}
			encoded, err := json.Marshal(result.Results)
			if err != nil {
				t.Fatal(err)
			}
			if err := json.Unmarshal(encoded, &got.Expected); err != nil {
				t.Fatal(err)
			}
			w, g := want.Expected, got.Expected
			if math.Abs(g.Ixy-w.Ixy) > want.Tolerance["I"].Rel*w.Major {
				t.Errorf("Ixy %v, want %v", g.Ixy, w.Ixy)
			}
			off := math.Abs(math.Remainder(g.Direction-w.Direction, 180))
			if w.Greatest > w.Least*1.001 && off > want.Tolerance["dir"].AbsDeg {
				t.Errorf("direction %v, want %v", g.Direction, w.Direction)
			}
		})
	}
}
