package figure_test

import (
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"boughline/draw"
	"boughline/draw/svg"
	"boughline/sheet/figure"
)

var update = flag.Bool("update", false, "write the golden files anew")

// TestGolden holds the drawings of the demo to the byte. A change is looked at
// before it is kept.
func TestGolden(t *testing.T) {
	s := demoSurvey(t)
	trees, hangs := judged(t, s)
	scenes := []*draw.Scene{figure.Site(s.Site, trees, hangs), figure.Elevation(trees[6], nil), figure.Plan(trees[6], nil)}
	for _, j := range hangs {
		switch j.Assessed.ID {
		case "oak-swing", "slope-swing":
			scenes = append(scenes, ofHang(t, j)...)
		}
	}
	scenes = append(scenes, figure.Section(hollow()), figure.Chance(chanceInput()), figure.Band(bandInput()))
	for _, scene := range scenes {
		compare(t, scene)
	}
}

func ofHang(t fataler, j figure.Judged) []*draw.Scene {
	scenes := []*draw.Scene{figure.KeptClear(j, [][2]float64{{-2, -4}, {2, -4}, {1.5, 0}, {2, 4}, {-2, 4}}), figure.Elevation(j.Figure.Tree, &j), figure.Plan(j.Figure.Tree, &j), figure.Bending(j), figure.SectionOf(j, 0)}
	swing, err := figure.Swing(j)
	if err != nil {
		t.Fatal(err)
	}
	rig, err := figure.Rig(j)
	if err != nil {
		t.Fatal(err)
	}
	return append(scenes, swing, rig)
}

func compare(t *testing.T, scene *draw.Scene) {
	t.Helper()
	name := filepath.Join("testdata", strings.ReplaceAll(scene.Key, " ", "-")+".svg")
	got := svg.Text(scene, svg.Options{})
	if *update {
		if err := os.WriteFile(name, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	if got != string(want) {
		t.Errorf("%s has changed: look at the drawing, then run with -update", name)
	}
}
