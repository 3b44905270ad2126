package web_test

import (
	"net/http"
	"net/url"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"boughline/notebook"
	"boughline/sketch/drawn"
)

// settled is a page once everything on it is worked out.
func (d *desk) settled(path string) string {
	d.t.Helper()
	for {
		if _, page := d.get(path); !strings.Contains(page, "data-waiting") {
			return page
		}
	}
}

func TestThePlanLeadsToEveryTreeAndHang(t *testing.T) {
	d := open(t)
	page := d.settled("/site/demo")
	plan := page[strings.Index(page, `<svg`):strings.Index(page, `</svg>`)]
	s, err := d.notebook.Site(t.Context(), "demo")
	if err != nil {
		t.Fatal(err)
	}
	for i := range s.Trees {
		tree := &s.Trees[i]
		if link := `<a href="/site/demo/tree/` + tree.ID + `" aria-label="` + tree.ID; !strings.Contains(plan, link) {
			t.Errorf("no link to %s", tree.ID)
		}
		if name := `>` + tree.ID + " " + tree.Name; tree.Name != "" && !strings.Contains(plan, name) {
			t.Errorf("%s is not named", tree.ID)
		}
	}
	if !strings.Contains(plan, `<a href="/site/demo/tree/T1/hang/oak-swing"`) || strings.Contains(plan, "<desc") {
		t.Error("a hang is no link, or the words stand in the drawing as well as beside it")
	}
}

// A finger of 24 px (WCAG 2.2, criterion 2.5.8) on a plan that is 350 px wide.
func TestAFingerMeetsEachTreeOfThePlan(t *testing.T) {
	d := open(t)
	page := d.settled("/site/demo")
	boxes := regexp.MustCompile(`<a href="/site/demo/tree/T\d+"[^>]*>[^§]*?<rect class="touch" x="[^"]*" y="[^"]*" width="([0-9.]+)" height="([0-9.]+)"`).FindAllStringSubmatch(page, -1)
	if len(boxes) < 11 {
		t.Fatalf("%d trees have room for a finger", len(boxes))
	}
	for _, b := range boxes {
		high, err := strconv.ParseFloat(b[2], 64)
		if px := high * 350 / 120; err != nil || px < 24 {
			t.Errorf("%.1f px high, %v", px, err)
		}
	}
}

// A tree whose place is not known is listed below the plan, said so and a link.
func TestATreeWithoutAPlaceIsListedBelowThePlan(t *testing.T) {
	d := open(t)
	if status, _ := d.post("/site/demo/tree/new", "form", "one", "name", "by the gate", "species", "oak", "stem_girth", "200", "stem_girth_how", "taped"); status != http.StatusOK {
		t.Fatal(status)
	}
	page := d.settled("/site/demo")
	if !strings.Contains(page, "by the gate: place not known, not drawn") || !strings.Contains(page, `aria-label="T12 by the gate`) {
		t.Error("it is not listed, or is no link")
	}
}

func TestPartsOfATreeAreLinks(t *testing.T) {
	d := open(t)
	_, page := d.get("/site/demo/tree/T1")
	for _, want := range []string{
		`<a href="/site/demo/tree/T1/member/L1" aria-label="Limb L1 leaves`, `<a href="/site/demo/tree/T1/finding/F1" aria-label="F1: `,
		`<a href="/site/demo/tree/T1/hang/oak-swing" aria-label="Hang oak-swing`, `tabindex="-1"`, `data-step="in"`, "<summary>In words",
	} {
		if !strings.Contains(page, want) {
			t.Errorf("the page lacks %s", want)
		}
	}
}

// Every drawing of a page can be seen by itself with its words.
func TestADrawingStandsAlone(t *testing.T) {
	d := open(t)
	for path, back := range map[string]string{"/site/demo": "", "/site/demo/tree/T1": "", "/site/demo/tree/T1/hang/oak-swing": "", "/site/demo/tree/T1/hang/oak-swing/chance": ""} {
		page := d.settled(path)
		alone := regexp.MustCompile(`href="([^"]*\?drawing=[^"]*)"`).FindAllStringSubmatch(page, -1)
		if len(alone) == 0 || len(alone) != strings.Count(page, `class="figure"`) {
			t.Errorf("%s has %d drawings and %d links to them", path, strings.Count(page, `class="figure"`), len(alone))
		}
		for _, link := range alone {
			status, one := d.get(strings.ReplaceAll(link[1], "&amp;", "&"))
			if status != http.StatusOK || strings.Count(one, "<svg") != 1 || !strings.Contains(one, "<h2>In words</h2>") || !strings.Contains(one, `href="`+path+back+`"`) {
				t.Errorf("%s: %d", link[1], status)
			}
		}
	}
	if status, _ := d.get("/site/demo/tree/T1?drawing=" + url.QueryEscape("elevation T99")); status != http.StatusNotFound {
		t.Errorf("a drawing that is not there: %d", status)
	}
}

func TestEverySignHasItsSketchInTheLook(t *testing.T) {
	d := open(t)
	_, page := d.get("/site/demo/tree/T1/look/crown")
	sources := regexp.MustCompile(`src="(/sketch/[^"]*)"`).FindAllStringSubmatch(page, -1)
	if signs := strings.Count(page, `class="sign"`); len(sources) != 2*signs {
		t.Errorf("%d pictures for %d signs", len(sources), signs)
	}
	answer, err := http.Get(d.URL + sources[0][1])
	if err != nil {
		t.Fatal(err)
	}
	answer.Body.Close()
	if kind, kept := answer.Header.Get("Content-Type"), answer.Header.Get("Cache-Control"); kind != "image/svg+xml" || !strings.Contains(kept, "immutable") {
		t.Errorf("it comes as %q, %q", kind, kept)
	}
	for _, path := range []string{"/sketch/crown-99.svg", "/sketch/crown-01"} {
		if status, _ := d.get(path); status != http.StatusNotFound {
			t.Errorf("%s: %d", path, status)
		}
	}
}

// TestWeight holds the pages with pictures to what a phone takes in at once.
func TestWeight(t *testing.T) {
	d := open(t)
	pictures := 0
	for line := range strings.Lines(drawn.Text()) {
		if strings.HasPrefix(line, "surroundings") || strings.HasPrefix(line, "stem") {
			pictures += len(line)
		}
	}
	for _, path := range []string{"/site/demo/tree/T1/look/stem", "/site/demo/tree/T1/look/surroundings"} {
		if _, page := d.get(path); len(page)+pictures > 300_000 {
			t.Errorf("%s with its pictures: %d bytes", path, len(page)+pictures)
		}
	}
}

// Both figures of the ground and both heights of fall are said, and which of
// each counts.
func TestTheGroundIsSaidTwice(t *testing.T) {
	d := open(t)
	_, page := d.get("/site/demo/tree/T1/hang/oak-swing")
	for _, want := range []string{"By EN 1176-2, ", "lands up to ", "The larger counts", "Height of fall: ", "The checks go by"} {
		if !strings.Contains(page, want) {
			t.Errorf("the page lacks %q", want)
		}
	}
}

func TestPhotosStandSideBySideByWhatTheyShow(t *testing.T) {
	d := open(t)
	jpeg := []byte("\xff\xd8\xff\xe0 JFIF")
	add := func(id, finding, note string) {
		t.Helper()
		if err := d.notebook.AddPhoto(t.Context(), "demo", notebook.Edit{Form: id}, notebook.Photo{ID: id, Tree: "T1", Finding: finding, Note: note}, jpeg); err != nil {
			t.Fatal(err)
		}
	}
	add("p1", "F1", "")
	add("p2", "", "from the gate")
	add("p3", "F1", "")
	_, page := d.get("/site/demo/tree/T1/history/1")
	if n := strings.Count(page, `class="photo-pair"`); n != 2 {
		t.Errorf("%d pairs", n)
	}
	for _, want := range []string{"<h3>F1: ", "<h3>from the gate</h3>", "/photo/p1", "/photo/p3"} {
		if !strings.Contains(page, want) {
			t.Errorf("the page lacks %s", want)
		}
	}
}
