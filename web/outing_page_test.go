package web_test

import (
	"fmt"
	"html"
	"net/http"
	"net/http/httptest"
	"regexp"
	"strings"
	"testing"
	"time"

	"boughline/demo"
	"boughline/knowledge"
	"boughline/notebook"
	"boughline/outing"
	"boughline/quantity"
	"boughline/store/storetest"
	"boughline/web"

	ical "github.com/arran4/golang-ical"
)

// openWithClock is the app on the morning of the demo's day, with a clock that
// a test moves.
func openWithClock(t *testing.T) (*desk, *time.Time) {
	t.Helper()
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	now := time.Date(2026, 5, 16, 10, 0, 0, 0, time.FixedZone("BST", 3600))
	d := &desk{t: t, kept: storetest.NewMemory()}
	d.notebook = notebook.New(d.kept, k, func() time.Time { return now })
	if _, err := d.notebook.Import(t.Context(), demo.Survey(), "demo", notebook.Edit{What: "demo"}); err != nil {
		t.Fatal(err)
	}
	ids := 0
	d.Server = httptest.NewServer(web.New(web.Config{
		Notebook: d.notebook, Base: "/", NewID: func() string { ids++; return fmt.Sprintf("id%d", ids) },
		Today: func() string { return now.Format(time.DateOnly) }, Log: func(err error) { d.logged = append(d.logged, err) },
	}))
	t.Cleanup(d.Close)
	return d, &now
}

var outingAt = regexp.MustCompile(`action="(/site/demo/outing/[^/"]+)/event"`)

// issued issues the oak's card until five o'clock and returns the address of
// the outing.
func (d *desk) issued() string {
	d.t.Helper()
	status, page := d.post(oak+"/day", "form", "issue", "until", "17:00", "signed", "Ann Rigger")
	found := outingAt.FindStringSubmatch(page)
	if status != http.StatusOK || found == nil {
		d.t.Fatalf("status %d\n%s", status, page)
	}
	return found[1]
}

// event sends one event and returns the page that follows.
func (d *desk) event(at, kind string, more ...string) string {
	d.t.Helper()
	status, page := d.post(at+"/event", append([]string{"kind", kind}, more...)...)
	if status != http.StatusOK {
		d.t.Fatalf("%s: status %d\n%s", kind, status, page)
	}
	return page
}

func (d *desk) refusedEvent(at, want string, form ...string) string {
	d.t.Helper()
	status, page := d.post(at+"/event", form...)
	if status < 400 || status >= 500 || !strings.Contains(html.UnescapeString(page), want) {
		d.t.Errorf("%v: status %d, want %q\n%s", form, status, want, page)
	}
	return page
}

func (d *desk) putUp(at string) {
	d.t.Helper()
	for _, c := range outing.PutUp() {
		d.event(at, "check", "check", string(c))
	}
}

func (d *desk) ridden(at string) {
	d.t.Helper()
	d.putUp(at)
	if status, page := d.post(at+"/test", stood(d.planned("oak-swing"))...); status != http.StatusOK || !strings.Contains(page, "Look it over") {
		d.t.Fatalf("the load test: %d\n%s", status, page)
	}
	d.event(at, "looked-over")
	d.event(at, "started")
}

func TestADayFromTheOutcomeToTheGround(t *testing.T) {
	d, now := openWithClock(t)
	if _, page := d.get(oak); !strings.Contains(page, `href="`+oak+`/day"`) {
		t.Error("the outcome does not lead to the day card")
	}
	at := d.issued()
	_, card := d.get(at + "/card")
	for _, want := range []string{"Ann Rigger", "17:00", "Beaufort 5", "52° 43.860' N, 2° 54.840' W", "Nobody, at no time", "89 mm to 229 mm", "30 minutes after the last thunder", "Hoods, scarves", "steps", "People can be hurt", "<svg"} {
		if !strings.Contains(html.UnescapeString(card), want) {
			t.Errorf("the card lacks %q", want)
		}
	}
	if _, page := d.get("/"); strings.Contains(page, "Up now") {
		t.Error("it is up before anything hangs")
	}
	d.ridden(at)
	*now = now.Add(30 * time.Minute)
	page := d.event(at, "riders", "riders", "1", "mass", "20", "form", "turn")
	if again := d.event(at, "riders", "riders", "1", "mass", "20", "form", "turn"); !strings.Contains(again, "1 turn, 1 rider") || !strings.Contains(page, "1 turn, 1 rider") {
		t.Error("a turn that is sent twice is counted twice")
	}
	if _, page = d.get("/"); !strings.Contains(page, "Up now: oak-swing, down by 17:00") || strings.Contains(page, `class="still late"`) {
		t.Error("the list of sites does not say what is up")
	}
	d.event(at, "stopped")
	d.refusedEvent(at, "say why first", "kind", "looked-over")
	d.event(at, "why", "reason", "break")
	d.event(at, "looked-over")
	d.event(at, "started")
	*now = now.Add(7 * time.Hour)
	for _, path := range []string{"/", "/signs", "/site/demo/tree/T5", at, "/nowhere"} {
		if _, page := d.get(path); !strings.Contains(page, `class="still late"`) || !strings.Contains(page, "STILL UP: oak-swing was to be down by 17:00") {
			t.Errorf("%s is not loud about a swing that is late", path)
		}
	}
	d.refusedEvent(at, "The card lapsed at 17:00", "kind", "riders", "riders", "1", "mass", "20")
	d.event(at, "stopped", "reason", "end")
	d.refusedEvent(at, "Nobody has said that all gear is back", "kind", "down", "bark", "rubbed", "text", "sleeve worn")
	page = d.event(at, "down", "bark", "rubbed", "gear_back", "yes", "text", "sleeve worn")
	if !strings.Contains(page, "It is down") || !strings.Contains(page, "Look this tree over again by") || strings.Contains(page, "STILL UP") {
		t.Errorf("after take-down\n%s", page)
	}
	if _, page := d.get("/site/demo/tree/T1"); !strings.Contains(page, "1 turns, 1 riders") || !strings.Contains(page, "bark rubbed, not through") || !strings.Contains(page, "sleeve worn") || !strings.Contains(page, "look again by") {
		t.Errorf("the tree does not tell its outing\n%s", page)
	}
	if len(d.logged) > 0 {
		t.Errorf("logged: %v", d.logged)
	}
}

// Whatever is sent, only what may be put up gets a card, and not beyond today.
func TestNoWayToAWrongCard(t *testing.T) {
	d, now := openWithClock(t)
	cards := 0
	for tree, hang := range map[string]string{"T1": "oak-swing", "T2": "lime-swing", "T3": "beech-swing", "T4": "fork-swing", "T5": "ash-swing", "T6": "pine-swing", "T7": "chestnut-swing", "T8": "hornbeam-swing", "T9": "slope-swing", "T10": "birch-swing", "T11": "maple-swing"} {
		s, err := d.notebook.Site(t.Context(), "demo")
		if err != nil {
			t.Fatal(err)
		}
		kept, err := s.Tree(tree)
		if err != nil {
			t.Fatal(err)
		}
		found, err := d.notebook.Outcomes(s, kept)
		if err != nil {
			t.Fatal(err)
		}
		path := "/site/demo/tree/" + tree + "/hang/" + hang + "/day"
		_, asked := d.get(path)
		status, page := d.post(path, "form", hang, "until", "17:00", "signed", "Ann", "outcome", "hang", "limits", "999")
		rideable := found.Hangs[0].Outcome.Rideable()
		if rideable != (status == http.StatusOK) || rideable != strings.Contains(asked, "Sign and issue") || rideable == strings.Contains(page, "What stands in the way") {
			t.Errorf("%s is %v: status %d\n%s", hang, found.Hangs[0].Outcome, status, page)
		}
		if rideable {
			cards++
		}
	}
	if cards == 0 || cards == 11 {
		t.Errorf("%d cards of 11", cards)
	}
	for name, form := range map[string][]string{
		"nobody signs": {"until", "17:00", "signed", " "}, "before now": {"until", "09:00", "signed", "Ann"}, "no time": {"until", "soon", "signed", "Ann"},
		"tomorrow": {"until", "2026-05-17T17:00", "signed", "Ann"}, "beyond the day": {"until", "24:30", "signed", "Ann"},
	} {
		status, page := d.post(oak+"/day", append(form, "form", name)...)
		if status != http.StatusUnprocessableEntity || !strings.Contains(page, `role="alert"`) || form[3] == "Ann" && !strings.Contains(page, `value="Ann"`) {
			t.Errorf("%s: %d\n%s", name, status, page)
		}
	}
	// A year later the looks of the document have lapsed.
	*now = now.AddDate(1, 0, 0)
	if status, page := d.post(oak+"/day", "form", "old", "until", "17:00", "signed", "Ann"); status != http.StatusUnprocessableEntity || !strings.Contains(page, "lapsed") {
		t.Errorf("a year later: %d\n%s", status, page)
	}
}

// A file that is taken in brings no card, whatever it holds, and no state.
func TestAFileBringsNoCard(t *testing.T) {
	d, _ := openWithClock(t)
	file := fmt.Sprintf(`{"boughline_site":1,"id":"other","survey":%s,"outings":[{"boughline_outing":1,"id":"o","issue":{"tree":"T5","hang":"ash-swing"}}],"card":{"outcome":"hang"}}`, demo.Survey())
	answer, err := http.Post(d.URL+"/import?form=in", "application/json", strings.NewReader(file))
	if status, _ := d.read(answer, err); status != http.StatusOK {
		t.Fatal(status)
	}
	if status, _ := d.get("/site/other/outing/o"); status != http.StatusNotFound {
		t.Errorf("an outing of a file: %d", status)
	}
	if briefs, err := d.notebook.Briefs(t.Context(), "other"); err != nil || len(briefs) != 0 {
		t.Errorf("outings %v, %v", briefs, err)
	}
	inside := strings.Replace(string(demo.Survey()), `"id": "ash-swing"`, `"id": "ash-swing", "outcome": "hang"`, 1)
	if inside == string(demo.Survey()) {
		t.Fatal("the demo has no such hang")
	}
	answer, err = http.Post(d.URL+"/import?form=in2", "application/json", strings.NewReader(inside))
	if status, page := d.read(answer, err); status != http.StatusUnprocessableEntity {
		t.Errorf("an outcome in a survey: %d\n%s", status, page)
	}
}

// A change of the survey after issue does not touch a card, and no event can
// widen it.
func TestACardHoldsToWhatItWasIssuedFrom(t *testing.T) {
	d, _ := openWithClock(t)
	at := d.issued()
	_, before := d.get(at + "/card")
	err := d.notebook.ChangeTree(t.Context(), "demo", "T1", notebook.Edit{}, func(t *notebook.Tree) error {
		t.Hangs[0].Amplitude.Value = 10 * quantity.Degree
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if _, after := d.get(at + "/card"); cardOf(after) != cardOf(before) {
		t.Error("the card follows a change of the survey")
	}
	d.ridden(at)
	d.refusedEvent(at, "the card allows", "kind", "riders", "riders", "9", "mass", "20")
	d.refusedEvent(at, "the card allows", "kind", "riders", "riders", "1", "mass", "90", "limits", "99")
	d.refusedEvent(at, "a number is wanted", "kind", "riders", "riders", "one", "mass", "20")
	d.refusedEvent(at, "a number is wanted", "kind", "wind", "gust_m_s", "NaN")
}

func cardOf(page string) string {
	_, page, _ = strings.Cut(page, `<article`)
	page, _, _ = strings.Cut(page, `</article>`)
	return page
}

func TestEventsOutOfOrderAreTold(t *testing.T) {
	d, _ := openWithClock(t)
	at := d.issued()
	d.refusedEvent(at, "look it over first", "kind", "started")
	d.refusedEvent(at, "confirm", "kind", "check", "check", "ground")
	d.refusedEvent(at, "no kind of event", "kind", "party")
	status, page := d.post(at+"/test", stood(d.planned("oak-swing"))...)
	if status != http.StatusUnprocessableEntity || !strings.Contains(page, "once the swing is up") || !strings.Contains(page, `value="Ann"`) {
		t.Errorf("a load test before it is up: %d\n%s", status, page)
	}
	if tests := d.tree("T1").LoadTests; len(tests) != 0 {
		t.Errorf("kept %+v", tests)
	}
	if status, _ := d.get("/site/demo/outing/none"); status != http.StatusNotFound {
		t.Errorf("no such outing: %d", status)
	}
}

func TestAFailedLoadTestInTheOutingBarsTheLimb(t *testing.T) {
	d, _ := openWithClock(t)
	at := d.issued()
	d.putUp(at)
	status, page := d.post(at+"/test", stood(d.planned("oak-swing"), "sign_crack", "yes")...)
	if status != http.StatusOK || !strings.Contains(page, "Riding is over for today: the load test was not passed") {
		t.Fatalf("status %d\n%s", status, page)
	}
	d.refusedEvent(at, "Riding is over", "kind", "looked-over")
	d.event(at, "down", "bark", "as before", "gear_back", "yes")
	if status, page := d.post(oak+"/day", "form", "again", "until", "17:00", "signed", "Ann"); status != http.StatusUnprocessableEntity || !strings.Contains(page, "was stopped at this limb") {
		t.Errorf("a new card: %d\n%s", status, page)
	}
}

func TestWindAndLightningAreTimedByTheServer(t *testing.T) {
	d, now := openWithClock(t)
	at := d.issued()
	d.ridden(at)
	if page := d.event(at, "lightning", "seconds", "25"); !strings.Contains(page, "everybody stays away until 10:30") {
		t.Errorf("after lightning\n%s", page)
	}
	d.refusedEvent(at, "keep everybody away until 10:30", "kind", "looked-over")
	*now = now.Add(30 * time.Minute)
	d.event(at, "looked-over")
	d.event(at, "started")
	if page := d.event(at, "wind", "beaufort", "6"); !strings.Contains(page, "Look it over before anyone rides") {
		t.Errorf("after a gust\n%s", page)
	}
	d.event(at, "looked-over")
	if page := d.refusedEvent(at, "above what the card allows", "kind", "started"); !strings.Contains(page, "What do the trees tell now?") {
		t.Errorf("after the look-over\n%s", page)
	}
	d.event(at, "wind", "beaufort", "3")
	d.event(at, "started")
}

// A stop is taken from however old a page it is pressed.
func TestAStopIsNeverTakenForAnother(t *testing.T) {
	d, _ := openWithClock(t)
	at := d.issued()
	d.ridden(at)
	_, page := d.get(at)
	_, stop, _ := strings.Cut(page, `<div class="stop">`)
	if !strings.Contains(stop[:strings.Index(stop, "</form>")], `name="form" value=""`) {
		t.Error("the stop carries an id that could be used up")
	}
	for range 2 {
		d.event(at, "stopped")
		d.event(at, "why", "reason", "rain")
		d.event(at, "looked-over")
		d.event(at, "started")
	}
}

func TestTheCalendarIsReadElsewhere(t *testing.T) {
	d, _ := openWithClock(t)
	at := d.issued()
	_, text := d.get(at + "/calendar.ics")
	calendar, err := ical.ParseCalendar(strings.NewReader(text))
	if err != nil || len(calendar.Events()) != 1 {
		t.Fatalf("%v\n%s", err, text)
	}
	event := calendar.Events()[0]
	begin, err := event.GetStartAt()
	if err != nil || !begin.Equal(time.Date(2026, 5, 16, 16, 0, 0, 0, time.UTC)) || len(event.Alarms()) != 1 {
		t.Errorf("begins %v, %v, alarms %v", begin, err, event.Alarms())
	}
}

func TestAnOutingFileIsReadByTheCommandLine(t *testing.T) {
	d, _ := openWithClock(t)
	at := d.issued()
	d.putUp(at)
	_, file := d.get(at + "/outing.json")
	o, altered, err := outing.Read([]byte(file), d.notebook.Knowledge())
	if err != nil || altered || o.Stage != outing.Up {
		t.Errorf("%v, altered %v", err, altered)
	}
}

func TestAnOutingIsNeverMarkup(t *testing.T) {
	d, _ := openWithClock(t)
	bad := `<script>alert(1)</script>"'><img src=x onerror=alert(1)>`
	status, page := d.post(oak+"/day", "form", "issue", "until", "17:00", "signed", bad)
	found := outingAt.FindStringSubmatch(page)
	if status != http.StatusOK || found == nil {
		t.Fatal(status)
	}
	at := found[1]
	d.event(at, "incident", "text", bad)
	_, wrong := d.post(at+"/event", "kind", "wind", "gust_m_s", bad)
	_, card := d.get(at + "/card")
	_, shown := d.get(at)
	for _, page := range []string{page, wrong, card, shown} {
		if strings.Contains(page, "<script>alert") || strings.Contains(page, "<img src=x") {
			t.Error("what was typed is markup")
		}
	}
	if !strings.Contains(html.UnescapeString(shown), bad) {
		t.Error("what was typed is lost")
	}
}
