package cli

import (
	"archive/zip"
	"bytes"
	"encoding/csv"
	"encoding/json"
	"io"
	"net/http"
	"strings"
	"testing"

	"boughline/store/storetest"
)

func TestTheAppWritesASiteForElsewhere(t *testing.T) {
	address, stop := running(t, storetest.NewMemory(), "--demo")
	defer stop()
	_, page := get(t, address+"site/demo")
	forms := siteForms(nil)
	for _, form := range forms {
		if !strings.Contains(page, `href="/site/demo/export/`+form.Name+`"`) {
			t.Errorf("the page does not lead to %s", form.Name)
		}
	}
	fetch := func(name string) []byte {
		answer, err := http.Get(address + "site/demo/export/" + name)
		if err != nil {
			t.Fatal(err)
		}
		data, err := io.ReadAll(answer.Body)
		if err != nil || answer.StatusCode != http.StatusOK {
			t.Fatalf("%s: %d, %v", name, answer.StatusCode, err)
		}
		return data
	}
	if !json.Valid(fetch("geojson")) || !bytes.Contains(fetch("calendar"), []byte("END:VCALENDAR")) {
		t.Error("the map or the calendar is none")
	}
	for name, first := range map[string]string{"trees": "tree", "hangs": "tree", "findings": "tree"} {
		rows, err := csv.NewReader(bytes.NewReader(fetch(name))).ReadAll()
		if err != nil || len(rows) < 2 || rows[0][0] != first {
			t.Errorf("%s: %v", name, err)
		}
	}
	archive := fetch("archive")
	if _, err := zip.NewReader(bytes.NewReader(archive), int64(len(archive))); err != nil {
		t.Error(err)
	}
	fetch("stripped")
	answer, err := http.Post(address+"import?form=once", "application/json", bytes.NewReader(archive))
	if err != nil {
		t.Fatal(err)
	}
	if said, _ := io.ReadAll(answer.Body); !strings.Contains(string(said), "The file was taken in") {
		t.Errorf("%d\n%s", answer.StatusCode, said)
	}
}
