package web_test

import (
	"fmt"
	"html"
	"net/http"
	"net/url"
	"regexp"
	"strings"
	"testing"

	"boughline/knowledge"
)

// askedNow is the question of a page of the key.
var askedNow = regexp.MustCompile(`name="asked" value="([^"]*)"`)

// saidSoFar are the hidden fields of the buttons of a page.
var saidSoFar = regexp.MustCompile(`<input type="hidden" name="(say|answer)" value="([^"]*)">`)

// press answers the question of a page as its form would.
func press(d *desk, path, page, text string) string {
	d.t.Helper()
	question := askedNow.FindStringSubmatch(page)
	if question == nil {
		d.t.Fatalf("nothing is asked on %s", path)
	}
	values := url.Values{}
	form, _, _ := strings.Cut(page[strings.Index(page, `<form method="get"`):], "</form>")
	for _, h := range saidSoFar.FindAllStringSubmatch(form, -1) {
		values.Add(h[1], html.UnescapeString(h[2]))
	}
	values.Add("answer", question[1]+":"+text)
	status, page := d.get(path + "?" + values.Encode())
	if status != http.StatusOK {
		d.t.Fatalf("%s to %s: %d", text, question[1], status)
	}
	return page
}

// What the books say of Fomes fomentarius: a grey hoof with brown pores on the
// stem of birch or beech, hard as wood, cinnamon inside (Schmidt 2006, Wood and
// Tree Fungi; from memory).
var tinder = map[string]string{
	"host": "beech", "position": "trunk", "form": "hoof", "underside": "pore", "upper": "grey", "underside colour": "brown", "flesh": "brown", "hard": "yes",
}

func TestAWholeIdentificationThroughThePages(t *testing.T) {
	d := open(t)
	status, page := d.get("/fungi/key")
	if status != http.StatusOK || !strings.Contains(page, "Not enough seen to name it.") || !strings.Contains(page, ">cannot tell<") {
		t.Fatalf("%d %s", status, page)
	}
	for range 40 {
		question := askedNow.FindStringSubmatch(page)
		if question == nil {
			break
		}
		text, ok := tinder[question[1]]
		if !ok {
			text = "0"
		}
		page = press(d, "/fungi/key", page, text)
		if strings.Contains(page, `name="asked" value="`+question[1]+`"`) {
			t.Fatalf("%s is asked again after %s", question[1], text)
		}
	}
	ranked := page[strings.Index(page, `<ol class="lines ranked">`):]
	first, _, _ := strings.Cut(ranked, "</li>")
	if !strings.Contains(first, "Fomes fomentarius") || !strings.Contains(page, "It may be one of these.") {
		t.Errorf("first stands %s", first)
	}
	for _, want := range []string{"What follows for people", "No further question", "A mycologist names fungi; an arborist judges the tree", "partly from memory", "take back"} {
		if !strings.Contains(page, want) {
			t.Errorf("%q is missing", want)
		}
	}
}

// The page says what the key of the tables says of the same description.
func TestThePageAndTheKeyAgree(t *testing.T) {
	d := open(t)
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	for _, text := range []string{"black crust at the base of a beech", "rubs off on the finger, green film", "a growth", "honey coloured toadstools in a tuft; black laces under the bark"} {
		id := k.IdentifyFungus(knowledge.Description{Words: strings.Split(text, ";")})
		_, page := d.get("/fungi/key?say=" + url.QueryEscape(text))
		if !strings.Contains(html.UnescapeString(page), id.Says) {
			t.Errorf("%s: the page does not say %q", text, id.Says)
		}
		if id.Ask != nil && !strings.Contains(page, html.EscapeString(id.AskText)) {
			t.Errorf("%s: the page does not ask %q", text, id.AskText)
		}
	}
}

func TestAnAnswerOfTheKeyIsTakenBack(t *testing.T) {
	d := open(t)
	_, before := d.get("/fungi/key?answer=host:oak")
	_, page := d.get("/fungi/key?answer=host:oak&answer=form:0")
	if !strings.Contains(page, `<b>cannot tell</b>`) || strings.Contains(page, `name="asked" value="form"`) {
		t.Error("an answer that cannot be told is not listed, or asked for again")
	}
	back := regexp.MustCompile(`href="([^"]*)">take back<span class="hidden">: cannot tell`).FindStringSubmatch(page)
	if back == nil {
		t.Fatal("it cannot be taken back")
	}
	if _, after := d.get(html.UnescapeString(back[1])); after != before {
		t.Error("taken back, the page is not what it was")
	}
}

func TestWhatTheKeyCannotReadIsSaid(t *testing.T) {
	d := open(t)
	for query, want := range map[string]string{
		"answer=smell:plums":                    "“smell” is no question of this key",
		"answer=form:qwxz":                      "“qwxz” could not be read as an answer",
		"answer=form:99":                        "could not be read as an answer",
		"asked=underside&other=":                "could not be read as an answer",
		"answer=yes":                            "“yes” is no question of this key",
		"say=" + strings.Repeat("x", 999):       "more than can be read at once",
		strings.Repeat("answer=form:hoof&", 99): "more than can be read at once",
	} {
		status, page := d.get("/fungi/key?" + query)
		if status != http.StatusUnprocessableEntity || !strings.Contains(page, want) || !strings.Contains(page, "cannot tell") {
			t.Errorf("%.40s: %d, does not say %q", query, status, want)
		}
	}
	if _, page := d.get("/fungi/key?say=zzqq+xxyy"); !strings.Contains(page, "counts for nothing") || !strings.Contains(page, "<li>zzqq xxyy</li>") {
		t.Error("words that cannot be read are not shown as such")
	}
	if status, page := d.get("/fungi/key?asked=host&other=wardrobe"); status != http.StatusUnprocessableEntity || !strings.Contains(page, `value="wardrobe"`) {
		t.Errorf("%d: what was typed is lost", status)
	}
}

func TestNothingTypedIntoTheKeyIsMarkup(t *testing.T) {
	d := open(t)
	bad := url.QueryEscape(`<script>alert(1)</script>"'><img src=x onerror=alert(1)>`)
	for _, path := range []string{"/fungi/key", d.keyOfFinding("T3")} {
		for _, query := range []string{"say=", "answer=", "answer=host:", "answer=%3Cscript%3Ealert(1):", "asked=host&other=", "asked=form&other="} {
			if _, page := d.get(path + "?" + query + bad); strings.Contains(page, "<script>alert") || strings.Contains(page, "<img src=x") {
				t.Errorf("%s?%s holds what was typed as markup", path, query)
			}
		}
	}
	if _, page := d.post(d.keyOfFinding("T3"), "form", "f", "revision", "1", "fungus", `<script>alert(1)</script>`); strings.Contains(page, "<script>alert") || !strings.Contains(page, "is no fungus of the table") {
		t.Error("a name that is none is markup, or taken")
	}
}

// keyOfFinding is the address of the key for the first finding of a tree.
func (d *desk) keyOfFinding(tree string) string {
	d.t.Helper()
	return "/site/demo/tree/" + tree + "/finding/" + d.tree(tree).Findings[0].ID + "/fungus"
}

func TestTheKeyIsReachedFromWhereAFungusIsSeen(t *testing.T) {
	d := open(t)
	for path, want := range map[string]string{
		"/fungi": "/fungi/key", "/site/demo/tree/T1/look/limb": "/site/demo/tree/T1/look/limb/fungus?",
		strings.TrimSuffix(d.keyOfFinding("T3"), "/fungus"): d.keyOfFinding("T3") + "?",
	} {
		if _, page := d.get(path); !strings.Contains(page, `href="`+want) {
			t.Errorf("%s does not lead to %s", path, want)
		}
	}
	if status, _ := d.get("/site/demo/tree/T1/look/cellar/fungus"); status != http.StatusNotFound {
		t.Errorf("a zone that is none: %d", status)
	}
}

func TestTheKeyWritesANameIntoTheFinding(t *testing.T) {
	d := open(t)
	path := d.keyOfFinding("T3")
	_, page := d.get(path + "?say=" + url.QueryEscape("grey hoof, brown pores, hard as wood; on the trunk of a beech"))
	if !strings.Contains(page, "Write: unknown") || !strings.Contains(page, "Write: Fomes fomentarius") {
		t.Fatal("the names that remain are not offered")
	}
	for _, name := range []string{"Fomes fomentarius", "unknown"} {
		revision := d.tree("T3").Revision
		if status, _ := d.post(path, "form", "write "+name, "revision", fmt.Sprint(revision), "fungus", name); status != http.StatusOK {
			t.Fatal(status)
		}
		if f := d.tree("T3").Findings[0]; f.Fungus != name {
			t.Errorf("the finding holds %q, not %q", f.Fungus, name)
		}
	}
	before := d.tree("T3").Findings[0].Fungus
	if status, _ := d.post(path, "form", "x", "revision", "1", "fungus", "algae"); status != http.StatusUnprocessableEntity || d.tree("T3").Findings[0].Fungus != before {
		t.Errorf("%d: a name that is none was taken", status)
	}
}

// Where the fungi that remain differ in what follows, only the worst is offered.
func TestTheKeyOffersNoMilderName(t *testing.T) {
	d := open(t)
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	text := "honey coloured toadstools in a tuft at the base of a beech"
	id := k.IdentifyFungus(knowledge.Description{Words: []string{text}})
	if id.Answer != "named" || id.Meaning.Agreed {
		t.Fatalf("%s, agreed %t: this description parts the fungi and tests nothing", id.Answer, id.Meaning.Agreed)
	}
	_, page := d.get(d.keyOfFinding("T3") + "?say=" + url.QueryEscape(text))
	if !strings.Contains(page, "Write: "+id.Meaning.Worst) || strings.Count(page, "Write: ") != 2 {
		t.Error("more is offered than unknown and the worst of what remains")
	}
}

// Signs that speak of a fungus on this tree lead to the key, and no others do.
func TestSignsOfALookThatAreAFungus(t *testing.T) {
	d := open(t)
	for zone, want := range map[string]int{"crown": 2, "limb": 1, "union": 1, "stem": 1, "base": 4, "root_plate": 1, "ground": 0, "surroundings": 0} {
		if _, page := d.get("/site/demo/tree/T1/look/" + zone); strings.Count(page, "Which fungus is it?") != want {
			t.Errorf("%s: %d signs lead to the key, not %d", zone, strings.Count(page, "Which fungus is it?"), want)
		}
	}
}

// A name is offered only where enough was seen.
func TestTheKeyOffersNoNameBeforeEnoughWasSeen(t *testing.T) {
	d := open(t)
	_, page := d.get(d.keyOfFinding("T3"))
	if !strings.Contains(page, "Write: unknown") || strings.Count(page, "Write: ") != 1 {
		t.Error("a name is offered though nothing was said")
	}
}
