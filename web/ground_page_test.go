package web_test

import (
	"net/http"
	"regexp"
	"strings"
	"testing"
)

func (d *desk) firstTree() string {
	d.t.Helper()
	_, list := d.get("/site/demo")
	found := regexp.MustCompile(`class="line" href="(/site/demo/tree/[^"]+)"`).FindStringSubmatch(list)
	if found == nil {
		d.t.Fatal("no tree on the site")
	}
	return found[1]
}

func (d *desk) revisionOf(page string) string {
	d.t.Helper()
	found := regexp.MustCompile(`name="revision" value="([^"]+)"`).FindStringSubmatch(page)
	if found == nil {
		d.t.Fatal("no form on the page")
	}
	return found[1]
}

func TestSpotHeightsAreKeptRowByRow(t *testing.T) {
	d := open(t)
	to := d.firstTree() + "/ground"
	_, page := d.get(to)
	rows := []string{
		"surface", "turf", "lie_azimuth_0", "0", "lie_distance_0", "8", "lie_height_0", "0,4", "lie_height_0_how", "clinometer",
		"lie_azimuth_1", "120", "lie_distance_1", "8", "lie_height_1", "-0.3", "lie_height_1_how", "clinometer",
		"lie_azimuth_2", "", "lie_distance_2", "", "lie_height_2", "",
		"lie_azimuth_3", "240", "lie_distance_3", "26 ft", "lie_height_3", "0.1", "lie_height_3_how", "clinometer",
	}
	status, page := d.post(to, append([]string{"form", "s1", "revision", d.revisionOf(page)}, rows...)...)
	if status != http.StatusOK || !strings.Contains(page, "3 spot heights, from -0.30 m to +0.40 m") {
		t.Fatalf("status %d, no drawing of what was kept", status)
	}
	for _, want := range []string{`name="lie_height_2" value="0.1"`, `name="lie_distance_2" value="7.9248"`, `name="lie_height_6"`} {
		if !strings.Contains(page, want) {
			t.Errorf("lacks %s", want)
		}
	}
	status, page = d.post(to, "form", "s2", "revision", d.revisionOf(page), "surface", "turf", "lie_azimuth_0", "0", "lie_distance_0", "8", "lie_height_0", "<1>")
	if status != http.StatusUnprocessableEntity || !strings.Contains(page, `value="&lt;1&gt;"`) {
		t.Errorf("status %d; expected the form with what was typed", status)
	}
	_, page = d.get(to)
	if status, page = d.post(to, "form", "s3", "revision", d.revisionOf(page), "lie_height_0", ""); status != http.StatusOK || strings.Contains(page, "spot heights, from") {
		t.Errorf("status %d; expected no spots any more", status)
	}
}

func TestPlacesOfAHangAreKept(t *testing.T) {
	d := open(t)
	to := d.firstHang() + "/places"
	_, page := d.get(to)
	before := d.revisionOf(page)
	status, page := d.post(to, "form", "p1", "revision", before, "surface", "turf",
		"along_at_0", "12", "along_height_0", "0.5", "along_at_1", "-12", "along_height_1", "0 m ±0.1 m", "along_at_2", "0", "along_height_2", "0", "along_at_3", "5", "along_height_3", "0.2",
		"across_at_0", "-3", "across_height_0", "-0.1", "across_at_1", "3", "across_height_1", "0.1",
		"wait_azimuth_0", "10", "wait_distance_0", "20", "wait_azimuth_1", "40", "wait_distance_1", "22",
		"way_azimuth_0", "10", "way_distance_0", "40",
		"obstacle_what_0", "pond", "obstacle_kind_0", "water", "obstacle_azimuth_0", "200", "obstacle_azimuth_0_how", "compass", "obstacle_distance_0", "30",
		"obstacle_radius_0", "0", "obstacle_shape_0", "area", "obstacle_corners_0", "210 30\r\n205 35")
	if status != http.StatusOK {
		t.Fatalf("status %d: %s", status, regexp.MustCompile(`(?s)<div class="problems".*?</div>`).FindString(page))
	}
	for _, want := range []string{`name="along_at_0" value="-12"`, `name="along_at_3" value="12"`, `name="across_height_1" value="0.1"`, `name="wait_azimuth_1" value="40"`, `value="pond"`, "210 30\n205 35"} {
		if !strings.Contains(page, want) {
			t.Errorf("lacks %s", want)
		}
	}
	status, page = d.post(to, "form", "p2", "revision", d.revisionOf(page), "obstacle_what_0", "fence", "obstacle_azimuth_0", "1", "obstacle_distance_0", "30", "obstacle_radius_0", "0.1", "obstacle_shape_0", "line")
	if status != http.StatusUnprocessableEntity || !strings.Contains(page, "corners belong to a line or an area") {
		t.Errorf("status %d; expected corners to be asked for", status)
	}
}

// Ground that falls evenly is written down by one reading of its slope: by
// 5 degrees over 12 m it falls by 12 tan 5 = 1.05 m.
func TestEvenGroundIsSixSpots(t *testing.T) {
	d := open(t)
	to := d.firstTree() + "/ground"
	_, page := d.get(to)
	status, page := d.post(to, "form", "e1", "revision", d.revisionOf(page), "even_out", "12", "even_falls", "5", "even_towards", "120", "surface", "turf")
	if status != http.StatusOK || !strings.Contains(page, "6 spot heights, from -1.05 m to +1.05 m") {
		t.Fatalf("status %d, no drawing of six spots", status)
	}
	_, page = d.get(to)
	for _, want := range []string{`name="lie_azimuth_2" value="120"`, `name="lie_height_2" value="-1.05"`, `name="lie_height_5" value="1.05"`} {
		if !strings.Contains(page, want) {
			t.Errorf("lacks %s", want)
		}
	}
	status, _ = d.post(to, "form", "e2", "revision", d.revisionOf(page), "even_falls", "3", "surface", "turf")
	if status != http.StatusUnprocessableEntity {
		t.Errorf("a slope without an end: %d", status)
	}
	_, page = d.get(to)
	if status, _ = d.post(to, "form", "e3", "revision", d.revisionOf(page), "even_out", "12", "even_falls", "3", "surface", "turf"); status != http.StatusUnprocessableEntity {
		t.Errorf("a slope without a direction: %d", status)
	}
}
