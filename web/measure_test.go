package web_test

import (
	"net/http"
	"net/url"
	"strings"
	"testing"

	"boughline/engine/measure"
	"boughline/notebook"
)

// asked is an address of a page of measuring with its readings.
func asked(kind string, readings ...string) string {
	values := url.Values{}
	for i := 0; i < len(readings); i += 2 {
		values.Set(readings[i], readings[i+1])
	}
	return "/measure/" + kind + "?" + values.Encode()
}

// Every kind through its page. The values are those of plain trigonometry and
// geometry, worked by hand or in the sources named; height-by-tangents is the
// example of the handbook of the command line, to the same digits.
func TestEveryKindOfMeasuringHasAPageThatWorksItOut(t *testing.T) {
	rows := map[string]struct {
		readings []string
		want     []string
	}{
		"height-by-tangents": {
			[]string{"distance", "14.2", "distance_sd", "0.08", "top", "38.5", "top_sd", "0.3", "base", "-6.2", "base_sd", "0.3", "nearer", "0", "nearer_sd", "0"},
			[]string{"12.84 m ±0.16 m clinometer", "within 12.52 m to 13.15 m", "Most of the error comes from: Angle up to the point (58 %)", "22 %", "20 %", "Tape to the spot below the point"},
		},
		// 10 tan(45 deg) - 10 tan(0); the slope is level.
		"height-by-tangents-on-slope": {
			[]string{"along", "10 m ±0 m", "slope", "0 deg ±0 deg", "top", "45 deg ±0 deg", "base", "0 deg ±0 deg", "nearer", "0 m ±0 m"}, []string{"10.0000 m ±0.0000 m clinometer"},
		},
		// 20 sin(30 deg) + 2 sin(89 deg).
		"height-by-sines": {
			[]string{"to-top", "20 m ±0 m", "top", "30 deg ±0 deg", "to-base", "2 m ±0 m", "base", "-89 deg ±0 deg"}, []string{"11.9997 m ±0.0000 m laser"},
		},
		// Leverett 2006 (Eastern Native Tree Society): 105 ft at 47 deg are 76.8 ft, 23.41 m.
		"height-by-one-sine": {
			[]string{"to-top", "105 ft", "to-top_sd", "0 ft", "top", "47", "top_sd", "0"}, []string{"23.4062 m ±0.0000 m laser"},
		},
		// 2 m tan(45 deg) / tan(10 deg): 2 / 0.176327.
		"height-by-staff": {
			[]string{"staff", "2 m ±0 m", "top", "45 deg ±0 deg", "staff-top", "10 deg ±0 deg", "base", "0 deg ±0 deg"}, []string{"11.3426 m ±0.0000 m clinometer"},
		},
		// Two tangents of a circle: 2 deg at 8 m are 0.2842 m, 0.1 deg of it 5 %.
		"thickness-by-angular-width": {
			[]string{"distance", "8", "distance_sd", "0.01", "width", "2.0", "width_2", "2.1"}, []string{"0.291 m ±0.010 m angular width", "0.291 m ±0.010 m angular width across", "2 readings, up to 0.1 deg apart, no more than"},
		},
		// 1 m / pi, less twice the bark.
		"girth": {
			[]string{"girth", "100", "girth_how", "by eye", "bark", "8"}, []string{"0.318 m ±0.048 m by eye", "Diameter of the wood"},
		},
		// The triangle 3-4-5: asin(0.6) = 36.8699 deg.
		"lean-by-plumb-line": {[]string{"off", "3 m ±0 m", "drop", "4 m ±0 m"}, []string{"36.8699 deg ±0.0000 deg taped"}},
		// Two equal leans are seen from the diagonal: atan(sqrt(2) tan(5 deg)) = 7.0532 deg, towards 45 deg.
		"lean-from-two-sides": {
			[]string{"first", "5 deg ±0 deg", "second", "5 deg ±0 deg"}, []string{"7.05323 deg ±0.00000 deg clinometer", "45.0000 deg"},
		},
		// pi/4 times 12 m times 8 m.
		"crown-size": {
			[]string{"longest", "12 m ±0 m", "across", "8 m ±0 m", "top", "20 m ±0 m", "lowest", "4 m ±0 m"}, []string{"10.0000 m ±0.0000 m", "75.3982 m2", "125.664 m2"},
		},
		// The triangle 5-12-13: atan(5/12) = 22.6199 deg.
		"slope-by-level-distance": {[]string{"rise", "-5 m ±0 m", "run", "12 m ±0 m"}, []string{"-22.6199 deg ±0.0000 deg taped"}},
		"slope-by-length":         {[]string{"rise", "5 m ±0 m", "along", "13 m ±0 m"}, []string{"22.6199 deg ±0.0000 deg taped"}},
		// cos(60 deg) and sin(60 deg) times 10 m.
		"distance-on-slope": {[]string{"along", "10 m ±0 m", "slope", "60 deg ±0 deg"}, []string{"5.00000 m ±0.00000 m", "8.66025 m"}},
		// 2 m / (2 tan(5 deg)).
		"distance-by-staff": {
			[]string{"staff", "2 m ±0 m", "upper", "5 deg ±0 deg", "lower", "-5 deg ±0 deg"}, []string{"11.4301 m ±0.0000 m clinometer"},
		},
		// 8 (0.5 m)^2 / (3 times 20 m) = 0.0333 m.
		"distance-by-sagging-tape": {[]string{"tape", "20 m ±0 m", "sag", "0.5 m ±0 m"}, []string{"19.9667 m ±0.0000 m taped"}},
		// Two sides of 5 m that are 60 deg apart are closed by a third.
		"distance-between-points": {
			[]string{"to-one", "5 m ±0 m", "one", "0 deg ±0 deg", "to-other", "5 m ±0 m", "other", "0 deg ±0 deg", "between", "60 deg ±0 deg"}, []string{"5.00000 m ±0.00000 m laser"},
		},
		// The example of the command line: 0.57 m apart with errors of 0.12 m and 0.15 m.
		"repeated-lengths": {
			[]string{"reading", "11.62 m ±0.12 m", "reading_2", "11.05 m ±0.15 m"}, []string{"11.40 m ±0.28 m by eye", "2 readings, up to 0.57 m apart, more than their errors explain"},
		},
		// Equal weights: the mean, and the error over the root of 3.
		"repeated-angles": {
			[]string{"reading", "10", "reading_2", "11", "reading_3", "12", "reading_sd", "1", "reading_how", "clinometer"}, []string{"11.00 deg ±0.58 deg clinometer", "3 readings"},
		},
	}
	d := open(t)
	_, list := d.get("/measure")
	for _, kind := range measure.Kinds() {
		row, ok := rows[kind.Name]
		if !ok {
			t.Errorf("no row for %s", kind.Name)
		}
		if strings.Count(list, `"/measure/`+kind.Name+`"`) != 1 {
			t.Errorf("%s does not stand in the list once", kind.Name)
		}
		status, page := d.get(asked(kind.Name, row.readings...))
		page = plain.Replace(page)
		if status != http.StatusOK {
			t.Errorf("%s: %d", kind.Name, status)
		}
		for _, want := range row.want {
			if !strings.Contains(page, want) {
				t.Errorf("%s lacks %q:\n%s", kind.Name, want, aside(page))
			}
		}
	}
}

// aside is the part of a page that holds the result.
func aside(page string) string {
	_, page, _ = strings.Cut(page, "<aside")
	page, _, _ = strings.Cut(page, "</aside>")
	return page
}

func TestMeasuringInFeetAndInches(t *testing.T) {
	d := open(t)
	if err := d.notebook.ChangeSettings(t.Context(), notebook.Settings{Units: "feet"}); err != nil {
		t.Fatal(err)
	}
	// Leverett's example again, and a girth of 31.416 in: 10 in across.
	for path, want := range map[string]string{
		asked("height-by-one-sine", "to-top", "105", "to-top_sd", "0", "top", "47", "top_sd", "0"): "76.7921 ft ±0.0000 ft laser",
		asked("girth", "girth", "31.416", "girth_sd", "0.3", "bark", "0.5", "bark_sd", "0"):        "10.000 in ±0.095 in taped",
		asked("distance-on-slope", "along", `6' 6"`, "along_sd", "0", "slope", "0 deg ±0 deg"):     "6.50000 ft ±0.00000 ft clinometer",
		asked("crown-size", "longest", "20", "across", "20", "top", "50", "lowest", "10"):          "ft2",
	} {
		if status, page := d.get(path); status != http.StatusOK || !strings.Contains(page, want) {
			t.Errorf("%s: %d, no %q\n%s", path, status, want, aside(page))
		}
	}
}

func TestFaultsOfReadingsStandBesideThem(t *testing.T) {
	d := open(t)
	for _, row := range []struct {
		kind     string
		readings []string
		want     []string
	}{
		{"height-by-tangents", []string{"distance", "far", "top", "4 m"}, []string{`value="far"`, `id="distance-fault"`, `id="top-fault"`, "is no unit of angle", `id="base-fault"`}},
		{"girth", []string{"girth", "100", "girth_2", "x", "bark", "8 mm"}, []string{`id="girth_2-fault"`, `value="100"`, `value="x"`, "<details open"}},
		{"girth", []string{"girth", "100", "girth_sd", "-1", "bark", "8"}, []string{`id="girth_sd-fault"`, `value="-1"`}},
		{"girth", []string{"girth", "100", "bark", "400"}, []string{`id="bark-fault"`, "leaves no wood"}},
		{"slope-by-length", []string{"rise", "14", "along", "13"}, []string{`id="rise-fault"`, "expected less than the length along it"}},
		{"distance-by-staff", []string{"staff", "0", "upper", "5", "lower", "-5"}, []string{`id="staff-fault"`, "expected 0.01 m to"}},
		{"lean-from-two-sides", []string{"first", "0", "second", "0"}, []string{"there is no lean to combine"}},
		{"girth", []string{"girth", "100", "girth_how", "by magic", "bark", "8"}, []string{`id="girth-fault"`, "by magic"}},
	} {
		status, page := d.get(asked(row.kind, row.readings...))
		if status != http.StatusUnprocessableEntity {
			t.Errorf("%s %v: %d", row.kind, row.readings, status)
		}
		for _, want := range row.want {
			if !strings.Contains(plain.Replace(page), want) {
				t.Errorf("%s %v lacks %q", row.kind, row.readings, want)
			}
		}
		if strings.Contains(page, `class="taken"`) {
			t.Errorf("%s %v has a result", row.kind, row.readings)
		}
	}
	if status, page := d.get("/measure/girth"); status != http.StatusOK || strings.Contains(page, `class="fault"`) {
		t.Errorf("an empty page finds fault: %d", status)
	}
	if status, _ := d.get("/measure/by-magic"); status != http.StatusNotFound {
		t.Errorf("an unknown kind: %d", status)
	}
}

func TestMeasuringFollowsWhatIsTyped(t *testing.T) {
	d := open(t)
	part := func(path string) string {
		request, err := http.NewRequest(http.MethodGet, d.URL+path, nil)
		if err != nil {
			t.Fatal(err)
		}
		request.Header.Set("X-Part", "1")
		status, page := d.read(http.DefaultClient.Do(request))
		if status != http.StatusOK || strings.Contains(page, "<html") {
			t.Errorf("%s: %d\n%s", path, status, page)
		}
		return page
	}
	if page := part(asked("girth", "live", "yes", "girth", "100")); !strings.Contains(page, "Still missing") || !strings.Contains(page, "Thickness of the bark") {
		t.Errorf("what is missing is not named:\n%s", page)
	}
	if page := part(asked("girth", "live", "yes", "girth", "100", "bark", "8 mm taped")); !strings.Contains(page, "0.3183 m ±0.0048 m taped") {
		t.Errorf("no result:\n%s", page)
	}
}

func TestReadingsAreNeverMarkup(t *testing.T) {
	d := open(t)
	bad := `"><script>alert(1)</script><img src=x>`
	for _, path := range []string{
		asked("girth", "girth", bad, "girth_how", bad, "girth_sd", bad, "girth_2", bad, "bark", bad, "back", "site/"+bad),
		asked("repeated-angles", "reading", "1 deg", "reading_sd", bad), "/measure?back=" + url.QueryEscape("site/"+bad),
	} {
		if _, page := d.get(path); strings.Contains(page, "<script>alert") || strings.Contains(page, "<img src=x") {
			t.Errorf("%s holds what was typed as markup", path)
		}
	}
}

// The way from a field to its measuring leads back to the form and to no other
// place; the line of the result is taken by the field.
func TestMeasuringForAForm(t *testing.T) {
	d := open(t)
	const form = "/site/demo/tree/T1/member/L1"
	_, page := d.get(form)
	if !strings.Contains(page, `href="/measure?back=site%2Fdemo%2Ftree%2FT1%2Fmember%2FL1#thickness"`) {
		t.Fatal("the form does not lead to measuring")
	}
	to := asked("thickness-by-angular-width", "distance", "8 m ±0.01 m", "width", "2 deg", "back", form[1:])
	if _, page := d.get(to); !strings.Contains(page, `href="`+form+`"`) || !strings.Contains(page, "0.284 m ±0.014 m angular width across") {
		t.Errorf("no way back\n%s", aside(page))
	}
	for _, back := range []string{"//elsewhere.invalid/", "https://elsewhere.invalid", "/elsewhere.invalid", "javascript:alert(1)"} {
		if _, page := d.get("/measure/girth?back=" + url.QueryEscape(back)); strings.Contains(page, "elsewhere") || strings.Contains(page, "alert(1)") {
			t.Errorf("it leads to %s", back)
		}
	}
	values := []string{"form", "f", "revision", "1", "limb", "L1", "parent", "stem", "rises_at", "4.61 m ±0.12 m laser", "rises_at_how", "clinometer", "azimuth", "110",
		"inclination", "4", "length", "8", "at_0", "0.3", "girth_0", "0.284 m ±0.014 m angular width across", "girth_0_how", "taped"}
	if status, page := d.post(form, values...); status != http.StatusOK {
		t.Fatalf("%d\n%s", status, page)
	}
	limb := d.tree("T1").Members[1]
	if got := limb.Stations[0].Diameter.String(); got != "0.284 m ±0.014 m angular width" {
		t.Errorf("thickness %s", got)
	}
	if got := limb.RisesAt.String(); got != "4.61 m ±0.12 m laser" {
		t.Errorf("height %s", got)
	}
}

// A phone is offered where an angle is read by clinometer, and only by the
// script: the page shows nothing of it by itself.
func TestAPhoneIsOfferedWhereItCanMeasure(t *testing.T) {
	d := open(t)
	for kind, angles := range map[string]int{"height-by-tangents": 2, "height-by-staff": 3, "thickness-by-angular-width": 0, "girth": 0, "distance-between-points": 2} {
		_, page := d.get("/measure/" + kind)
		if got := strings.Count(page, "data-tilt-for="); got != angles {
			t.Errorf("%s offers %d angles, want %d", kind, got, angles)
		}
		shown := strings.Count(page, "data-tilt ") + strings.Count(page, "data-tilt>")
		if hidden := strings.Count(page, "data-tilt hidden"); hidden != shown || (angles > 0) != (hidden == angles+1) {
			t.Errorf("%s: %d parts for a phone, %d of them hidden", kind, shown, hidden)
		}
		if scripts := strings.Count(page, "<script src="); (angles > 0) != (scripts == 2) {
			t.Errorf("%s has %d scripts", kind, scripts)
		}
	}
}
