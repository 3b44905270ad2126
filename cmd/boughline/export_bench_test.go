package main

import (
	"bytes"
	"encoding/binary"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"

	"boughline/cli"
	"boughline/demo"
	"boughline/knowledge"
	"boughline/notebook"
	"boughline/quantity"
	"boughline/store"
	"boughline/store/sqlite"
	"boughline/survey"
)

const (
	manyTrees   = 200
	manyPhotos  = 400
	photoLength = 2 << 20
)

// manyTreesOf repeats the trees of the demo site over a wood.
func manyTreesOf(b *testing.B) *survey.Survey {
	b.Helper()
	read := func() *survey.Survey {
		s, problems, err := survey.Read(bytes.NewReader(demo.Survey()))
		if err != nil || len(problems) > 0 {
			b.Fatal(problems, err)
		}
		return s
	}
	site := read()
	site.Hazards, site.Trees = nil, nil
	for row := 0; len(site.Trees) < manyTrees; row++ {
		for _, t := range read().Trees {
			t.ID = fmt.Sprintf("%s-%d", t.ID, row)
			if t.North != nil {
				t.North.Value += quantity.Length(150 * row)
			}
			for i := range t.Hangs {
				t.Hangs[i].ID = fmt.Sprintf("%s-%d", t.Hangs[i].ID, row)
			}
			for i := range t.LoadTests {
				t.LoadTests[i].Hang = fmt.Sprintf("%s-%d", t.LoadTests[i].Hang, row)
			}
			site.Trees = append(site.Trees, t)
		}
	}
	site.Trees = site.Trees[:manyTrees]
	return site
}

// noise is in the form of a JPEG with EXIF, as large as one of a telephone.
func noise(seed uint64) []byte {
	data := []byte("\xff\xd8\xff\xe1\x00\x10Exif\x00\x00MM\x00\x2a\x00\x00\x00\x08\xff\xda\x00\x02")
	source := rand.New(rand.NewPCG(seed, 1))
	for len(data) < photoLength {
		data = binary.LittleEndian.AppendUint64(data, source.Uint64()&0x7f7f7f7f7f7f7f7f)
	}
	return append(data, 0xff, 0xd9)
}

func manyRecords(b *testing.B) string {
	b.Helper()
	name := filepath.Join(b.TempDir(), "records.db")
	kept, err := sqlite.Open(name)
	if err != nil {
		b.Fatal(err)
	}
	defer kept.Close()
	k, err := knowledge.Load()
	if err != nil {
		b.Fatal(err)
	}
	n := notebook.New(kept, k, time.Now)
	site := manyTreesOf(b)
	if _, err := n.Take(b.Context(), &notebook.Copy{ID: "many", Survey: site}, "", notebook.Edit{}); err != nil {
		b.Fatal(err)
	}
	for i := range manyPhotos {
		p := notebook.Photo{ID: fmt.Sprintf("p%03d", i), Tree: site.Trees[i%manyTrees].ID}
		if err := n.AddPhoto(b.Context(), "many", notebook.Edit{}, p, noise(uint64(i))); err != nil {
			b.Fatal(err)
		}
	}
	return name
}

// BenchmarkExportOfTwoHundredTrees exports a site with 400 photos of 2 MB out of
// SQLite, with the outcomes of all hangs. most_MB is the greatest memory that the
// whole process held at any time (Linux).
func BenchmarkExportOfTwoHundredTrees(b *testing.B) {
	records := manyRecords(b)
	for name, more := range map[string][]string{"as they are": nil, "stripped": {"--strip-photos"}} {
		b.Run(name, func(b *testing.B) {
			out := filepath.Join(b.TempDir(), "many.zip")
			for b.Loop() {
				var said bytes.Buffer
				code := cli.Run(cli.Env{
					Context: b.Context(), Args: append([]string{"export", records, "--as", "archive", "-o", out}, more...),
					Stdout: &said, Stderr: &said, OpenStore: func(file string) (store.Backend, error) { return sqlite.Open(file) },
				})
				if code != 0 || !strings.Contains(said.String(), "400 photos") {
					b.Fatal(code, said.String())
				}
			}
			b.ReportMetric(mostMemory(), "most_MB")
		})
	}
}

// mostMemory is the greatest resident memory of the process so far, MB, 0 where
// the system does not tell.
func mostMemory() float64 {
	status, _ := os.ReadFile("/proc/self/status")
	_, rest, _ := strings.Cut(string(status), "VmHWM:")
	kB, _ := strconv.ParseFloat(strings.Fields(rest + " 0")[0], 64)
	return kB / 1000
}
