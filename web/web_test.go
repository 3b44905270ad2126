package web_test

import (
	"bytes"
	"fmt"
	"io"
	"net/http"
	"net/http/httptest"
	"net/url"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"boughline/demo"
	"boughline/knowledge"
	"boughline/notebook"
	"boughline/quantity"
	"boughline/store"
	"boughline/store/storetest"
	"boughline/survey"
	"boughline/web"
)

// desk is the app with the demo site.
type desk struct {
	t *testing.T
	*httptest.Server
	notebook *notebook.Notebook
	kept     *storetest.Memory
	logged   []error
}

func open(t *testing.T) *desk {
	t.Helper()
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	d := &desk{t: t, kept: storetest.NewMemory()}
	d.notebook = notebook.New(d.kept, k, func() time.Time { return time.Date(2026, 5, 16, 12, 0, 0, 0, time.UTC) })
	if _, err := d.notebook.Import(t.Context(), demo.Survey(), "demo", notebook.Edit{What: "demo"}); err != nil {
		t.Fatal(err)
	}
	ids := 0
	d.Server = httptest.NewServer(web.New(web.Config{
		Notebook: d.notebook, Base: "/", NewID: func() string { ids++; return fmt.Sprintf("id%d", ids) },
		Today: func() string { return "2026-05-16" }, Log: func(err error) { d.logged = append(d.logged, err) },
	}))
	t.Cleanup(d.Close)
	return d
}

func (d *desk) get(path string) (status int, page string) {
	d.t.Helper()
	return d.read(http.Get(d.URL + path))
}

func (d *desk) post(path string, form ...string) (status int, page string) {
	d.t.Helper()
	values := url.Values{}
	for i := 0; i < len(form); i += 2 {
		values.Set(form[i], form[i+1])
	}
	return d.read(http.PostForm(d.URL+path, values))
}

func (d *desk) read(answer *http.Response, err error) (int, string) {
	d.t.Helper()
	if err != nil {
		d.t.Fatal(err)
	}
	defer answer.Body.Close()
	body, err := io.ReadAll(answer.Body)
	if err != nil {
		d.t.Fatal(err)
	}
	return answer.StatusCode, string(body)
}

func (d *desk) tree(id string) *notebook.Tree {
	d.t.Helper()
	s, err := d.notebook.Site(d.t.Context(), "demo")
	if err != nil {
		d.t.Fatal(err)
	}
	t, err := s.Tree(id)
	if err != nil {
		d.t.Fatal(err)
	}
	return t
}

var (
	links   = regexp.MustCompile(`(?:href|action|src|data-live-from)="([^"#]+)`)
	promise = regexp.MustCompile(`(?i)\bsafe`)
)

// Every address on every page leads somewhere, no page promises anything, none
// has a script or a style in it.
func TestEveryLinkOfEveryPage(t *testing.T) {
	d := withGear(t)
	queue, known := []string{"/"}, map[string]bool{"/": true}
	for len(queue) > 0 {
		path := queue[0]
		queue = queue[1:]
		status, page := d.get(path)
		if status != http.StatusOK && status != http.StatusMethodNotAllowed && !strings.HasSuffix(path, "/delete") {
			if status != http.StatusNotFound || !strings.Contains(page, "There is no such page") || !postOnly.MatchString(path) {
				t.Errorf("%s: %d", path, status)
			}
		}
		if strings.HasPrefix(page, "<!doctype html>") {
			for _, bad := range []string{"<style", " style=", " onclick=", "<script>"} {
				if strings.Contains(page, bad) {
					t.Errorf("%s holds %s", path, bad)
				}
			}
			if found := promise.FindString(page); found != "" {
				t.Errorf("%s says %q", path, found)
			}
		}
		for _, match := range links.FindAllStringSubmatch(page, -1) {
			next := strings.ReplaceAll(match[1], "&amp;", "&")
			if !strings.HasPrefix(next, "/") {
				t.Errorf("%s leads out to %s", path, next)
			} else if !known[next] {
				known[next] = true
				queue = append(queue, next)
			}
		}
	}
	if len(known) < 150 {
		t.Errorf("only %d addresses were found", len(known))
	}
	if len(d.logged) > 0 {
		t.Errorf("logged: %v", d.logged)
	}
}

// postOnly are addresses of forms that no page can be got from.
var postOnly = regexp.MustCompile(`/(delete|rest|afresh|photo|bring/[^/]+|part/[0-9]+/(up|down|out))$`)

func TestWhatPeopleTypeIsNeverMarkup(t *testing.T) {
	d := open(t)
	bad := `<script>alert(1)</script>"'><img src=x onerror=alert(1)>`
	if status, _ := d.post("/site/demo/tree/T1/edit", "form", "f", "name", bad, "species", "Quercus robur", "note", bad); status != http.StatusOK {
		t.Fatal(status)
	}
	if status, _ := d.post("/site/demo/edit", "form", "g", "site", bad, "day", "2026-05-16", "surveyor", bad, "note", bad); status != http.StatusOK {
		t.Fatal(status)
	}
	for _, path := range []string{"/", "/site/demo", "/site/demo?q=" + url.QueryEscape(bad), "/site/demo/tree/T1", "/site/demo/tree/T1/edit", "/site/demo/tree/T1/history/1", "/site/demo/edit",
		"/site/demo/tree/T1/member/L1", "/site/demo/tree/T1/margins?member=" + url.QueryEscape(bad)} {
		if _, page := d.get(path); strings.Contains(page, "<script>alert") || strings.Contains(page, "<img src=x") {
			t.Errorf("%s holds what was typed as markup", path)
		}
	}
}

func TestHeadersShutOthersOut(t *testing.T) {
	d := open(t)
	answer, err := http.Get(d.URL + "/")
	if err != nil {
		t.Fatal(err)
	}
	answer.Body.Close()
	policy := answer.Header.Get("Content-Security-Policy")
	if !strings.Contains(policy, "default-src 'none'") || strings.Contains(policy, "unsafe") {
		t.Errorf("policy %q", policy)
	}
	request, err := http.NewRequest(http.MethodPost, d.URL+"/site/demo/tree/T1/delete", nil)
	if err != nil {
		t.Fatal(err)
	}
	request.Header.Set("Origin", "https://elsewhere.invalid")
	if status, _ := d.read(http.DefaultClient.Do(request)); status != http.StatusForbidden {
		t.Errorf("a form of another site: %d", status)
	}
}

func TestAFormSentTwiceIsOneRecord(t *testing.T) {
	d := open(t)
	for range 2 {
		status, _ := d.post("/site/demo/tree/new", "form", "one", "species", "oak", "stem_girth", "200", "stem_girth_how", "taped")
		if status != http.StatusOK {
			t.Fatal(status)
		}
	}
	s, err := d.notebook.Site(t.Context(), "demo")
	if err != nil || len(s.Trees) != 12 {
		t.Errorf("%d trees, %v", len(s.Trees), err)
	}
}

func TestFaultsStandBesideTheirFieldsAndNothingTypedIsLost(t *testing.T) {
	d := open(t)
	status, page := d.post("/site/demo/tree/new", "form", "f", "species", "oak", "stem_girth", "two metres", "azimuth", "110", "name", "by the gate")
	if status != http.StatusUnprocessableEntity {
		t.Fatal(status)
	}
	for _, want := range []string{`value="two metres"`, `value="by the gate"`, `id="stem_girth-fault"`, `aria-invalid="true"`, "is not a number"} {
		if !strings.Contains(page, want) {
			t.Errorf("the form lacks %s", want)
		}
	}
	status, page = d.post("/site/demo/tree/T1/member/L1", "form", "g", "revision", "1", "limb", "L1", "parent", "stem", "length", "400", "at_0", "0.3", "girth_0", "113")
	if status != http.StatusUnprocessableEntity || !strings.Contains(page, "Length, 400 m") || !strings.Contains(page, `value="400"`) {
		t.Errorf("a limb of 400 m: %d\n%s", status, page)
	}
}

func TestTwoTabsOnTheSameLimb(t *testing.T) {
	d := open(t)
	limb := []string{"revision", "1", "limb", "L1", "parent", "stem", "rises_at", "4.6", "azimuth", "110", "inclination", "4", "at_0", "0.3", "at_1", "2.5", "girth_1", "97"}
	if status, _ := d.post("/site/demo/tree/T1/member/L1", append(limb, "form", "tab1", "girth_0", "113", "length", "9.5")...); status != http.StatusOK {
		t.Fatal(status)
	}
	status, page := d.post("/site/demo/tree/T1/member/L1", append(limb, "form", "tab2", "girth_0", "120", "length", "8.5")...)
	if status != http.StatusConflict || !strings.Contains(page, "8.5") || !strings.Contains(page, "Keep what I typed") {
		t.Fatalf("status %d\n%s", status, page)
	}
	limb[1] = "2"
	if status, _ := d.post("/site/demo/tree/T1/member/L1", append(limb, "form", "tab2b", "girth_0", "120", "length", "8.5")...); status != http.StatusOK {
		t.Errorf("keeping what was typed: %d", status)
	}
	if got := d.tree("T1").Members[1].Length.Value; got != 8.5 {
		t.Errorf("length %v", got)
	}
}

func TestSavingAFormUnchangedChangesNothing(t *testing.T) {
	for _, setting := range []string{"", "feet"} {
		d := open(t)
		if err := d.notebook.ChangeSettings(t.Context(), notebook.Settings{Units: setting}); err != nil {
			t.Fatal(err)
		}
		for _, id := range []string{"T1", "T2", "T3", "T4", "T5", "T6", "T7", "T8", "T9", "T10", "T11"} {
			before := document(t, &d.tree(id).Tree)
			at := "/site/demo/tree/" + id
			paths := []string{at + "/edit"}
			for _, m := range d.tree(id).Members {
				paths = append(paths, at+"/member/"+m.ID)
			}
			for _, h := range d.tree(id).Hangs {
				paths = append(paths, at+"/hang/"+h.ID+"/edit")
			}
			for _, f := range d.tree(id).Findings {
				paths = append(paths, at+"/finding/"+f.ID)
			}
			for _, path := range paths {
				_, page := d.get(path)
				if status, after := d.post(path, formOf(page)...); status != http.StatusOK {
					t.Fatalf("%s: %d\n%s", path, status, after)
				}
				if after := document(t, &d.tree(id).Tree); after != before {
					t.Fatalf("%s (%s): saving it as it stands changed the tree\n%s\n%s", path, setting, before, after)
				}
			}
		}
	}
}

func document(t *testing.T, tree *survey.Tree) string {
	t.Helper()
	var b bytes.Buffer
	if err := survey.Write(&b, &survey.Survey{Trees: []survey.Tree{*tree}}); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

var (
	inputs  = regexp.MustCompile(`<input[^>]*?(?:name="([^"]*)"[^>]*?value="([^"]*)"|value="([^"]*)"[^>]*?name="([^"]*)")`)
	selects = regexp.MustCompile(`(?s)<select[^>]*name="([^"]*)".*?</select>`)
	picked  = regexp.MustCompile(`<option value="([^"]*)" selected`)
	areas   = regexp.MustCompile(`(?s)<textarea[^>]*name="([^"]*)"[^>]*>(.*?)</textarea>`)
	plain   = strings.NewReplacer("&#34;", `"`, "&#39;", "'", "&lt;", "<", "&gt;", ">", "&amp;", "&")
)

// formOf picks what a browser would send of the first form of a page.
func formOf(page string) []string {
	_, page, _ = strings.Cut(page, `class="sheet"`)
	page, _, _ = strings.Cut(page, "</form>")
	var list []string
	for _, m := range inputs.FindAllStringSubmatch(page, -1) {
		list = append(list, m[1]+m[4], plain.Replace(m[2]+m[3]))
	}
	for _, m := range selects.FindAllStringSubmatch(page, -1) {
		chosen := ""
		if p := picked.FindStringSubmatch(m[0]); p != nil {
			chosen = p[1]
		}
		list = append(list, m[1], plain.Replace(chosen))
	}
	for _, m := range areas.FindAllStringSubmatch(page, -1) {
		list = append(list, m[1], plain.Replace(m[2]))
	}
	return list
}

func TestAPhotoOfThirtyMegabytes(t *testing.T) {
	d := open(t)
	jpeg := append([]byte("\xff\xd8\xff\xe0 JFIF"), bytes.Repeat([]byte{7}, 30<<20)...)
	send := func(data []byte) (int, string) {
		return d.read(http.Post(d.URL+"/site/demo/tree/T1/photo?form=p", "image/jpeg", bytes.NewReader(data)))
	}
	if status, page := send(jpeg); status != http.StatusOK || !strings.Contains(page, "The photo is kept.") {
		t.Errorf("status %d", status)
	}
	if status, page := d.read(http.Post(d.URL+"/site/demo/tree/T1/photo?form=q", "image/jpeg", bytes.NewReader(append(jpeg, jpeg...)))); status != http.StatusUnprocessableEntity || !strings.Contains(page, "send a smaller one") {
		t.Errorf("status %d\n%s", status, page)
	}
	photos, err := d.notebook.Photos(t.Context(), "demo", "T1")
	if err != nil || len(photos) != 1 {
		t.Errorf("photos %v, %v", photos, err)
	}
}

func TestAFullDeviceSaysSo(t *testing.T) {
	d := open(t)
	d.kept.Fail = store.ErrFull
	status, page := d.post("/site/demo/tree/T1/look/crown", "form", "f", "sign", "crown-01", "answer", "seen")
	if status != http.StatusInsufficientStorage || !strings.Contains(page, "There is no room left") {
		t.Errorf("status %d\n%s", status, page)
	}
}

func TestADamagedTreeIsShownAndCanBeMended(t *testing.T) {
	d := open(t)
	put := []store.Put{{Key: "tree/demo/_541", Rests: 1, What: "broken", Data: []byte(`{"boughline":1`)}}
	if err := store.Apply(t.Context(), d.kept, time.Now(), put); err != nil {
		t.Fatal(err)
	}
	if status, page := d.get("/site/demo"); status != http.StatusOK || !strings.Contains(page, "cannot be read") || !strings.Contains(page, "/site/demo/tree/T1/history") {
		t.Fatalf("status %d\n%s", status, page)
	}
	if status, page := d.get("/site/demo/tree/T1/history"); status != http.StatusOK || !strings.Contains(page, "history/1") {
		t.Fatalf("status %d\n%s", status, page)
	}
	if status, _ := d.post("/site/demo/tree/T1/history/1", "form", "mend"); status != http.StatusOK || d.tree("T1").Name == "" {
		t.Errorf("status %d", status)
	}
}

func TestUndoPutsBackWhatWasThere(t *testing.T) {
	d := open(t)
	before := document(t, &d.tree("T1").Tree)
	if status, _ := d.post("/site/demo/tree/T1/look/stem", "form", "a", "sign", "stem-01", "answer", "seen"); status != http.StatusOK || len(d.tree("T1").Findings) != 3 {
		t.Fatal(status, d.tree("T1").Findings)
	}
	if status, page := d.get("/site/demo/tree/T1/history/1"); status != http.StatusOK || !strings.Contains(page, "stem-01") {
		t.Errorf("the comparison does not name what changed: %d\n%s", status, page)
	}
	if status, _ := d.post("/site/demo/tree/T1/history/1", "form", "b"); status != http.StatusOK {
		t.Fatal(status)
	}
	if after := document(t, &d.tree("T1").Tree); after != before {
		t.Errorf("undo left\n%s\nwant\n%s", after, before)
	}
}

func TestMarginsFollowTheNumbers(t *testing.T) {
	d := open(t)
	_, page := d.get("/site/demo/tree/T1/member/L1")
	values := url.Values{"member": {"L1"}}
	form := formOf(page)
	for i := 0; i < len(form); i += 2 {
		values.Set(form[i], form[i+1])
	}
	_, as := d.get("/site/demo/tree/T1/margins?" + values.Encode())
	values.Set("girth_0", "40")
	values.Set("girth_1", "35")
	values.Set("girth_2", "30")
	_, thin := d.get("/site/demo/tree/T1/margins?" + values.Encode())
	if !strings.Contains(as, "oak-swing") || !strings.Contains(as, "1.03") || as == thin || !strings.Contains(thin, "Leave it") {
		t.Errorf("as it is:\n%s\nthin:\n%s", as, thin)
	}
	if now := d.tree("T1"); now.Revision != 1 {
		t.Errorf("trying kept something: revision %d", now.Revision)
	}
	values.Set("girth_0", "x")
	if status, page := d.get("/site/demo/tree/T1/margins?" + values.Encode()); status != http.StatusOK || !strings.Contains(page, "is not a number") {
		t.Errorf("status %d\n%s", status, page)
	}
}

// The words of the screen stand in the catalogue: a view holds none.
func TestViewsHoldNoWords(t *testing.T) {
	files, err := filepath.Glob("view/*.templ")
	if err != nil || len(files) < 8 {
		t.Fatal(files, err)
	}
	between := regexp.MustCompile(`>\s*([A-Za-z][A-Za-z ,.]{2,})\s*<`)
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		for _, m := range between.FindAllStringSubmatch(string(data), -1) {
			t.Errorf("%s holds the words %q", file, m[1])
		}
	}
}

// crowd puts many copies of the demo's oak on a site.
func crowd(b testing.TB, d *notebook.Notebook, count int) {
	b.Helper()
	s, err := d.Site(b.Context(), "demo")
	if err != nil {
		b.Fatal(err)
	}
	oak, err := s.Tree("T1")
	if err != nil {
		b.Fatal(err)
	}
	for i := range count {
		t := *oak
		t.ID = fmt.Sprintf("X%d", i)
		t.Hangs = []survey.Hang{oak.Hangs[0]}
		t.Hangs[0].ID = fmt.Sprintf("swing %d", i)
		east := survey.MeasuredLength{Value: quantity.Length(30 * (i % 20)), How: quantity.Taped}
		north := survey.MeasuredLength{Value: quantity.Length(30 * (i / 20)), How: quantity.Taped}
		t.East, t.North = &east, &north
		if err := d.AddTree(b.Context(), "demo", notebook.Edit{}, t); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkSiteOf300 is the page of a site of 300 trees with its plan, whose
// outcomes have been worked out before.
func BenchmarkSiteOf300(b *testing.B) {
	k, err := knowledge.Load()
	if err != nil {
		b.Fatal(err)
	}
	n := notebook.New(storetest.NewMemory(), k, time.Now)
	if _, err := n.Import(b.Context(), demo.Survey(), "demo", notebook.Edit{}); err != nil {
		b.Fatal(err)
	}
	crowd(b, n, 289)
	h := web.New(web.Config{Notebook: n, Base: "/", NewID: func() string { return "x" }, Today: func() string { return "2026-05-16" }})
	ask := func() string {
		w := httptest.NewRecorder()
		h.ServeHTTP(w, httptest.NewRequest(http.MethodGet, "/site/demo", nil))
		return w.Body.String()
	}
	for strings.Contains(ask(), "data-waiting") {
	}
	page := ask()
	if strings.Count(page, `class="touch"`) < 300 {
		b.Fatal("not every tree is on the plan")
	}
	for b.Loop() {
		ask()
	}
	b.ReportMetric(float64(len(page))/1000, "kB")
}
