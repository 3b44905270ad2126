package notebook_test

import (
	"bytes"
	"encoding/json"
	"errors"
	"slices"
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
)

const site = "demo"

var noon = time.Date(2026, 5, 16, 12, 0, 0, 0, time.UTC)

// open returns a notebook with the demo site.
func open(t *testing.T) (*notebook.Notebook, *storetest.Memory) {
	t.Helper()
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	m := storetest.NewMemory()
	n := notebook.New(m, k, func() time.Time { return noon })
	if _, err := n.Import(t.Context(), demo.Survey(), site, notebook.Edit{What: "demo"}); err != nil {
		t.Fatal(err)
	}
	return n, m
}

func read(t *testing.T, n *notebook.Notebook) *notebook.Site {
	t.Helper()
	s, err := n.Site(t.Context(), site)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func tree(t *testing.T, n *notebook.Notebook, id string) *notebook.Tree {
	t.Helper()
	found, err := read(t, n).Tree(id)
	if err != nil {
		t.Fatal(err)
	}
	return found
}

func setNote(text string) func(*notebook.Tree) error {
	return func(t *notebook.Tree) error { t.Note = text; return nil }
}

func note(t *notebook.Tree) any { return t.Note }

func height(t *notebook.Tree) any { return t.Height }

func TestTheDocumentComesBackAsItWentIn(t *testing.T) {
	n, _ := open(t)
	var got bytes.Buffer
	if err := survey.Write(&got, read(t, n).Survey()); err != nil {
		t.Fatal(err)
	}
	s, problems, err := survey.Read(bytes.NewReader(demo.Survey()))
	if err != nil || len(problems) > 0 {
		t.Fatal(problems, err)
	}
	var want bytes.Buffer
	if err := survey.Write(&want, s); err != nil {
		t.Fatal(err)
	}
	if got.String() != want.String() {
		t.Error("the site in parts is not the document it came from")
	}
}

func TestTwoPeopleOnDifferentPartsOfOneTree(t *testing.T) {
	n, _ := open(t)
	base := tree(t, n, "T1").Revision
	tall := survey.MeasuredLength{Value: 21, How: quantity.Clinometer}
	if err := n.ChangeTree(t.Context(), site, "T1", notebook.Edit{Base: base, Part: height}, func(t *notebook.Tree) error { t.Height = &tall; return nil }); err != nil {
		t.Fatal(err)
	}
	if err := n.ChangeTree(t.Context(), site, "T1", notebook.Edit{Base: base, Part: note}, setNote("by the other")); err != nil {
		t.Fatal(err)
	}
	if now := tree(t, n, "T1"); now.Height.Value != 21 || now.Note != "by the other" {
		t.Errorf("one of two changes is lost: %v, %q", now.Height, now.Note)
	}
}

func TestTwoPeopleOnTheSamePart(t *testing.T) {
	n, _ := open(t)
	base := tree(t, n, "T1").Revision
	edit := notebook.Edit{Base: base, Part: note}
	if err := n.ChangeTree(t.Context(), site, "T1", edit, setNote("first")); err != nil {
		t.Fatal(err)
	}
	var changed *notebook.Changed
	if err := n.ChangeTree(t.Context(), site, "T1", edit, setNote("second")); !errors.As(err, &changed) {
		t.Fatalf("got %v, want Changed", err)
	}
	if changed.Now.Note != "first" || changed.Before.Note == "first" || tree(t, n, "T1").Note != "first" {
		t.Errorf("before %q, now %q", changed.Before.Note, changed.Now.Note)
	}
}

func TestAFormSentTwiceIsOneChange(t *testing.T) {
	n, _ := open(t)
	edit := notebook.Edit{Form: "once", To: "/there"}
	if err := n.ChangeTree(t.Context(), site, "T1", edit, setNote("a")); err != nil {
		t.Fatal(err)
	}
	var again *notebook.Again
	if err := n.ChangeTree(t.Context(), site, "T1", edit, setNote("b")); !errors.As(err, &again) || again.To != "/there" {
		t.Errorf("got %v", err)
	}
	if now := tree(t, n, "T1"); now.Note != "a" || now.Revision != 2 {
		t.Errorf("note %q, revision %d", now.Note, now.Revision)
	}
}

func TestEveryVersionCanBeReadAndComeBack(t *testing.T) {
	n, _ := open(t)
	for _, text := range []string{"one", "two", "three"} {
		if err := n.ChangeTree(t.Context(), site, "T1", notebook.Edit{What: text}, setNote(text)); err != nil {
			t.Fatal(err)
		}
	}
	if err := n.Restore(t.Context(), site, "T1", 2, notebook.Edit{What: "back"}); err != nil {
		t.Fatal(err)
	}
	versions, err := n.Versions(t.Context(), site, "T1")
	if err != nil {
		t.Fatal(err)
	}
	var notes []string
	for _, v := range versions {
		notes = append(notes, v.Note)
	}
	if !slices.Equal(notes[:4], []string{"one", "three", "two", "one"}) {
		t.Errorf("versions %q", notes)
	}
	if err := n.DeleteTree(t.Context(), site, "T1", notebook.Edit{}); err != nil {
		t.Fatal(err)
	}
	if gone, err := n.Deleted(t.Context(), site); err != nil || !slices.Equal(gone, []string{"T1"}) {
		t.Errorf("deleted %v, %v", gone, err)
	}
	if err := n.Restore(t.Context(), site, "T1", 5, notebook.Edit{}); err != nil || tree(t, n, "T1").Note != "one" {
		t.Errorf("a deleted tree does not come back: %v", err)
	}
}

func TestWhatMakesTheSurveyWrongIsNotKept(t *testing.T) {
	n, _ := open(t)
	err := n.ChangeTree(t.Context(), site, "T1", notebook.Edit{}, func(t *notebook.Tree) error { t.Members = t.Members[:1]; return nil })
	var invalid *notebook.Invalid
	if !errors.As(err, &invalid) || tree(t, n, "T1").Revision != 1 {
		t.Errorf("a hang without its limb: %v", err)
	}
}

func TestADamagedRecordHidesNoOther(t *testing.T) {
	n, m := open(t)
	put := []store.Put{{Key: "tree/demo/_541", Rests: 1, Data: []byte(`{"boughline":1,"tree":{"id":`)}}
	if err := store.Apply(t.Context(), m, noon, put); err != nil {
		t.Fatal(err)
	}
	s := read(t, n)
	if len(s.Damaged) != 1 || s.Damaged[0].Tree != "T1" || len(s.Trees) != 10 {
		t.Fatalf("damaged %v, %d trees", s.Damaged, len(s.Trees))
	}
	if err := n.Restore(t.Context(), site, "T1", 1, notebook.Edit{}); err != nil {
		t.Fatal(err)
	}
	if s := read(t, n); len(s.Damaged) != 0 || len(s.Trees) != 11 {
		t.Errorf("an earlier version did not mend it: %v", s.Damaged)
	}
}

func TestARecordOfALaterProgramIsLeftAlone(t *testing.T) {
	n, m := open(t)
	put := []store.Put{{Key: "tree/demo/_541", Rests: 1, Data: []byte(`{"boughline":99,"tree":{}}`)}}
	if err := store.Apply(t.Context(), m, noon, put); err != nil {
		t.Fatal(err)
	}
	if s := read(t, n); len(s.Damaged) != 1 || !strings.Contains(s.Damaged[0].Error(), "later program") {
		t.Errorf("damaged: %v", s.Damaged)
	}
	if err := n.ChangeTree(t.Context(), site, "T1", notebook.Edit{}, setNote("x")); err == nil {
		t.Error("a record of a later program was written over")
	}
}

func TestAFullDeviceKeepsWhatWasThere(t *testing.T) {
	n, m := open(t)
	m.Fail = store.ErrFull
	if err := n.ChangeTree(t.Context(), site, "T1", notebook.Edit{}, setNote("x")); !errors.Is(err, store.ErrFull) {
		t.Errorf("got %v", err)
	}
	m.Fail = nil
	if now := tree(t, n, "T1"); now.Note == "x" || now.Revision != 1 {
		t.Errorf("note %q, revision %d", now.Note, now.Revision)
	}
}

func TestPhotosAreKeptAsTheyAre(t *testing.T) {
	n, _ := open(t)
	jpeg := append([]byte("\xff\xd8\xff\xe0 JFIF"), bytes.Repeat([]byte{7}, 30<<20)...)
	if err := n.AddPhoto(t.Context(), site, notebook.Edit{}, notebook.Photo{ID: "p1", Tree: "T1"}, jpeg); err != nil {
		t.Fatal(err)
	}
	if data, err := n.PhotoBytes(t.Context(), site, "p1"); err != nil || !bytes.Equal(data, jpeg) {
		t.Errorf("%d of %d bytes, %v", len(data), len(jpeg), err)
	}
	var not *notebook.NotAPhoto
	for name, data := range map[string][]byte{"nothing": nil, "a page": []byte("<html><script>"), "too large": make([]byte, notebook.MaxPhoto+1)} {
		if err := n.AddPhoto(t.Context(), site, notebook.Edit{}, notebook.Photo{ID: name, Tree: "T1"}, data); !errors.As(err, &not) {
			t.Errorf("%s: %v", name, err)
		}
	}
}

func TestAWholeSiteMovesToAnotherDevice(t *testing.T) {
	n, _ := open(t)
	jpeg := []byte("\xff\xd8\xff\xe0 JFIF picture")
	if err := n.AddPhoto(t.Context(), site, notebook.Edit{}, notebook.Photo{ID: "p1", Tree: "T2"}, jpeg); err != nil {
		t.Fatal(err)
	}
	looker := notebook.Looker{Signs: n.Knowledge().Signs()}
	if err := n.ChangeTree(t.Context(), site, "T3", notebook.Edit{}, func(t *notebook.Tree) error {
		return looker.Answer(t, "crown", "crown-03", notebook.CouldNotSee)
	}); err != nil {
		t.Fatal(err)
	}
	var file bytes.Buffer
	if err := n.Export(t.Context(), &file, site); err != nil {
		t.Fatal(err)
	}
	there, _ := open(t)
	done, err := there.Import(t.Context(), file.Bytes(), "unused", notebook.Edit{What: "from the phone"})
	if err != nil || done.Site != site || done.Photos != 1 || !slices.Equal(done.Changed, []string{"T3"}) || len(done.Equal) != 10 {
		t.Fatalf("%+v, %v", done, err)
	}
	if got := tree(t, there, "T3").Answers["crown"]["crown-03"]; got != notebook.CouldNotSee {
		t.Errorf("the answer came as %q", got)
	}
	if data, err := there.PhotoBytes(t.Context(), site, "p1"); err != nil || !bytes.Equal(data, jpeg) {
		t.Errorf("photo: %q, %v", data, err)
	}
	if again, err := there.Import(t.Context(), file.Bytes(), "unused", notebook.Edit{}); err != nil || len(again.Equal) != 11 || again.Photos != 0 {
		t.Errorf("the same file once more: %+v, %v", again, err)
	}
}

func TestFilesThatCannotBeTakenIn(t *testing.T) {
	n, _ := open(t)
	newer, err := json.Marshal(map[string]any{"boughline_site": 9, "survey": map[string]any{}})
	if err != nil {
		t.Fatal(err)
	}
	for name, file := range map[string][]byte{
		"a later program": newer, "a later document": []byte(`{"boughline": 7}`), "no JSON": []byte("\x89PNG"), "nothing": nil,
	} {
		var invalid *notebook.Invalid
		if _, err := n.Import(t.Context(), file, "x", notebook.Edit{}); !errors.As(err, &invalid) || invalid.Problems[0].Do == "" {
			t.Errorf("%s: %v", name, err)
		}
	}
	if sites, err := n.Sites(t.Context()); err != nil || len(sites) != 1 {
		t.Errorf("sites %v, %v", sites, err)
	}
}
