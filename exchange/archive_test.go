package exchange_test

import (
	"archive/zip"
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"strings"
	"testing"
	"time"

	"boughline/demo"
	"boughline/exchange"
	"boughline/knowledge"
	"boughline/notebook"
	"boughline/store/storetest"
	"boughline/survey"
	"boughline/survey/surveytest"

	"pgregory.net/rapid"
)

var noon = time.Date(2026, 5, 16, 12, 0, 0, 0, time.UTC)

func tables(t testing.TB) *knowledge.Base {
	t.Helper()
	k, err := knowledge.Load()
	if err != nil {
		t.Fatal(err)
	}
	return k
}

func emptyNotebook(t testing.TB) *notebook.Notebook {
	return notebook.New(storetest.NewMemory(), tables(t), func() time.Time { return noon })
}

var picture = []byte("\xff\xd8\xff\xe0 JFIF picture")

// demoCopy is the demo site with an answer and a photo.
func demoCopy(t testing.TB) *notebook.Copy {
	t.Helper()
	n := emptyNotebook(t)
	must(t, func() error {
		_, err := n.Import(t.Context(), demo.Survey(), "demo", notebook.Edit{})
		return err
	}())
	must(t, n.AddPhoto(t.Context(), "demo", notebook.Edit{}, notebook.Photo{ID: "p1", Tree: "T2", Note: "fork"}, picture))
	looker := notebook.Looker{Signs: n.Knowledge().Signs()}
	must(t, n.ChangeTree(t.Context(), "demo", "T3", notebook.Edit{}, func(t *notebook.Tree) error {
		return looker.Answer(t, "crown", "crown-03", notebook.CouldNotSee)
	}))
	c, err := n.Copy(t.Context(), "demo")
	must(t, err)
	return c
}

func must(t testing.TB, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

func archive(t testing.TB, c *notebook.Copy) []byte {
	t.Helper()
	var b bytes.Buffer
	_, err := exchange.WriteArchive(context.Background(), &b, c, exchange.ArchiveOptions{Reading: []exchange.Sheet{{Name: "trees.csv", Data: []byte("tree\r\n")}}})
	must(t, err)
	return b.Bytes()
}

func openArchive(data []byte) (*notebook.Copy, error) {
	a, err := exchange.OpenArchive(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		return nil, err
	}
	if err := a.Check(context.Background(), nil); err != nil {
		return nil, err
	}
	return a.Copy()
}

func document(t testing.TB, s *survey.Survey) string {
	t.Helper()
	var b strings.Builder
	must(t, survey.Write(&b, s))
	return b.String()
}

func TestAnArchiveComesInOnAnotherMachine(t *testing.T) {
	c := demoCopy(t)
	first := archive(t, c)
	if !bytes.Equal(first, archive(t, c)) {
		t.Error("the same site gives other bytes")
	}
	read, err := openArchive(first)
	must(t, err)
	there := emptyNotebook(t)
	done, err := there.Take(t.Context(), read, "unused", notebook.Edit{})
	must(t, err)
	if done.Site != "demo" || len(done.New) != 11 || done.Photos != 1 {
		t.Errorf("came in: %+v", done)
	}
	again, err := there.Copy(t.Context(), "demo")
	must(t, err)
	if document(t, again.Survey) != document(t, c.Survey) {
		t.Error("the document differs")
	}
	if got := again.Answers["T3"]["crown"]["crown-03"]; got != notebook.CouldNotSee {
		t.Errorf("the answer came as %q", got)
	}
	if !bytes.Equal(archive(t, again), first) {
		t.Error("the archive of the other machine differs")
	}
	if done, err = there.Take(t.Context(), read, "unused", notebook.Edit{}); err != nil || len(done.Equal) != 11 || done.Photos != 0 || done.PhotosKept != 1 {
		t.Errorf("once more: %+v, %v", done, err)
	}
}

func TestRandomSitesComeBackByteForByte(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		s := surveytest.Site().Draw(rt, "site")
		read, err := openArchive(archive(t, &notebook.Copy{ID: "x", Survey: s}))
		if err != nil {
			rt.Fatal(err)
		}
		if got, want := document(t, read.Survey), document(t, s); got != want {
			rt.Fatalf("came back as\n%s\nof\n%s", got, want)
		}
	})
}

// TestWhatCannotBeReadIsNamed leaves out what cannot be read and says so.
func TestWhatCannotBeReadIsNamed(t *testing.T) {
	c := demoCopy(t)
	c.Damaged = []*notebook.Damaged{{Tree: "T99", Cause: errors.New("half a record")}}
	var b bytes.Buffer
	m, err := exchange.WriteArchive(t.Context(), &b, c, exchange.ArchiveOptions{Strip: func([]byte) ([]byte, error) { return nil, errors.New("no end of the picture") }})
	must(t, err)
	if got := strings.Join(m.LeftOut, "\n"); !strings.Contains(got, "T99") || !strings.Contains(got, "photo p1 of tree T2: no end") {
		t.Errorf("left out: %s", got)
	}
	read, err := openArchive(b.Bytes())
	must(t, err)
	if len(read.Photos) != 0 {
		t.Errorf("photos %v", read.Photos)
	}
}

// TestTheTimeOfACameraGoesWithTheRest: it was copied out of the photo.
func TestTheTimeOfACameraGoesWithTheRest(t *testing.T) {
	c := demoCopy(t)
	c.Photos[0].Taken = noon
	for _, strip := range []func([]byte) ([]byte, error){nil, func(data []byte) ([]byte, error) { return data, nil }} {
		var b bytes.Buffer
		_, err := exchange.WriteArchive(t.Context(), &b, c, exchange.ArchiveOptions{Strip: strip})
		must(t, err)
		read, err := openArchive(b.Bytes())
		must(t, err)
		if read.Photos[0].Taken.IsZero() != (strip != nil) {
			t.Errorf("taken %s", read.Photos[0].Taken)
		}
	}
}

// edit rewrites an archive entry by entry.
func edit(t *testing.T, data []byte, change func(name string, data []byte) []byte, more ...exchange.Sheet) []byte {
	t.Helper()
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	must(t, err)
	var b bytes.Buffer
	w := zip.NewWriter(&b)
	add := func(name string, data []byte) {
		entry, err := w.Create(name)
		must(t, err)
		_, err = entry.Write(data)
		must(t, err)
	}
	for _, f := range z.File {
		r, err := f.Open()
		must(t, err)
		content, err := io.ReadAll(r)
		must(t, err)
		if content = change(f.Name, content); content != nil {
			add(f.Name, content)
		}
	}
	for _, s := range more {
		add(s.Name, s.Data)
	}
	must(t, w.Close())
	return b.Bytes()
}

func same(_ string, data []byte) []byte { return data }

func in(file, old, new string) func(string, []byte) []byte {
	return func(name string, data []byte) []byte {
		if name == file {
			return bytes.ReplaceAll(data, []byte(old), []byte(new))
		}
		return data
	}
}

func without(file string) func(string, []byte) []byte {
	return func(name string, data []byte) []byte {
		if name == file {
			return nil
		}
		return data
	}
}

func TestArchivesThatAreRefused(t *testing.T) {
	good := archive(t, demoCopy(t))
	bomb := bytes.Repeat([]byte{' '}, 70<<20)
	for name, c := range map[string]struct {
		data []byte
		says string
	}{
		"cut off":             {good[:len(good)-200], "cut off"},
		"cut in half":         {good[:len(good)/2], "cut off"},
		"nothing":             {nil, "cut off"},
		"another zip":         {edit(t, good, func(string, []byte) []byte { return nil }, exchange.Sheet{Name: "read/a.csv"}), "has no manifest.json"},
		"path upwards":        {edit(t, good, same, exchange.Sheet{Name: "../../etc/passwd"}), "might lead out"},
		"path from the root":  {edit(t, good, same, exchange.Sheet{Name: "/etc/passwd"}), "might lead out"},
		"path of Windows":     {edit(t, good, same, exchange.Sheet{Name: `photos\..\..\x.jpg`}), "might lead out"},
		"path in a folder":    {edit(t, good, same, exchange.Sheet{Name: "photos/../../x.jpg"}), "might lead out"},
		"bomb":                {edit(t, good, without("survey.json"), exchange.Sheet{Name: "survey.json", Data: bomb}), "unpacks to more than 64 MB"},
		"a later program":     {edit(t, good, in("manifest.json", `"boughline_archive": 1`, `"boughline_archive": 2`)), "later program"},
		"a later document":    {resum(t, edit(t, good, in("survey.json", `"boughline": 2`, `"boughline": 3`))), "version"},
		"no survey":           {edit(t, good, without("survey.json")), "listed in the manifest and missing"},
		"a photo is missing":  {edit(t, good, without("photos/p1.jpg")), "listed in the manifest and missing"},
		"a file too many":     {edit(t, good, same, exchange.Sheet{Name: "read/more.csv"}), "not listed"},
		"a file twice":        {edit(t, good, same, exchange.Sheet{Name: "survey.json"}), "twice"},
		"a changed survey":    {edit(t, good, in("survey.json", "taped", "laser")), "checksum differs"},
		"a changed photo":     {edit(t, good, in("photos/p1.jpg", "JFIF", "EXIF")), "checksum differs"},
		"a manifest of words": {edit(t, good, in("manifest.json", "{", "[")), "is no manifest"},
	} {
		_, err := openArchive(c.data)
		var invalid *notebook.Invalid
		var refused *exchange.Refusal
		if !errors.As(err, &invalid) && !errors.As(err, &refused) {
			t.Errorf("%s: %v", name, err)
		} else if !strings.Contains(err.Error(), c.says) {
			t.Errorf("%s: %v; expected %q", name, err, c.says)
		}
	}
}

// resum writes the manifest of a changed archive anew.
func resum(t *testing.T, data []byte) []byte {
	t.Helper()
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	must(t, err)
	var files []string
	for _, f := range z.File {
		if f.Name == "manifest.json" {
			continue
		}
		r, err := f.Open()
		must(t, err)
		content, err := io.ReadAll(r)
		must(t, err)
		files = append(files, fmt.Sprintf(`{"name":%q,"bytes":%d,"sha256":%q}`, f.Name, len(content), sum(content)))
	}
	manifest := `{"boughline_archive":1,"id":"demo","site":"x","files":[` + strings.Join(files, ",") + `]}`
	return edit(t, data, without("manifest.json"), exchange.Sheet{Name: "manifest.json", Data: []byte(manifest)})
}

// TestAPhotoThatIsNone: a browser shows bytes as what they are, so a page
// among the photos must not come in.
func TestAPhotoThatIsNone(t *testing.T) {
	data := resum(t, edit(t, archive(t, demoCopy(t)), func(name string, data []byte) []byte {
		if name == "photos/p1.jpg" {
			return []byte("<html><script>alert(1)</script>")
		}
		return data
	}))
	read, err := openArchive(data)
	must(t, err)
	there := emptyNotebook(t)
	var not *notebook.NotAPhoto
	if _, err := there.Take(t.Context(), read, "x", notebook.Edit{}); !errors.As(err, &not) {
		t.Errorf("taken: %v", err)
	}
	if sites, err := there.Sites(t.Context()); err != nil || len(sites) != 0 {
		t.Errorf("sites %v, %v", sites, err)
	}
}

func FuzzOpenArchive(f *testing.F) {
	good := archive(f, &notebook.Copy{Survey: &survey.Survey{Version: survey.Version, Site: "x"}})
	f.Add(good)
	f.Add(good[:len(good)/2])
	f.Fuzz(func(t *testing.T, data []byte) {
		if c, err := openArchive(data); err == nil && c.Survey == nil {
			t.Error("neither a site nor an error")
		}
	})
}
