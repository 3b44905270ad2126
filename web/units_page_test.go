package web_test

import (
	"regexp"
	"strings"
	"testing"
)

// metricFigure is a number with a metric unit.
var metricFigure = regexp.MustCompile(`[0-9] (m|kg|kN|N|MPa|Pa|mm|cm|m/s|kN m)\b`)

func TestOutcomesFollowTheUnits(t *testing.T) {
	d := open(t)
	if status, _ := d.post("/settings", "form", "u1", "units", "feet"); status != 200 {
		t.Fatal(status)
	}
	_, page := d.get(d.firstHang())
	page = page[strings.Index(page, "<main"):]
	page = regexp.MustCompile(`(?s)<svg.*?</svg>|<details.*?</details>`).ReplaceAllString(page, "")
	page = strings.ReplaceAll(page, "at 10 m in the open", "") // the height is part of what a wind speed means
	if found := metricFigure.FindString(page); found != "" {
		i := metricFigure.FindStringIndex(page)[0]
		t.Errorf("%q in %q", found, page[max(0, i-80):i+40])
	}
	if !strings.Contains(page, " lb") || !strings.Contains(page, " ft") || !strings.Contains(page, " mph") {
		t.Errorf("no feet and pounds: %.2000s", page)
	}
}

// firstHang is the address of the first outcome that the site lists.
func (d *desk) firstHang() string {
	d.t.Helper()
	_, page := d.get("/site/demo")
	found := regexp.MustCompile(`class="hang" href="([^"]+)"`).FindStringSubmatch(page)
	if found == nil {
		d.t.Fatal("no hang on the site")
	}
	return strings.ReplaceAll(found[1], "&amp;", "&")
}
