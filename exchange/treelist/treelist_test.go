package treelist_test

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"boughline/assess"
	"boughline/exchange"
	"boughline/exchange/treelist"
	"boughline/knowledge"
	"boughline/survey"
	"boughline/survey/surveytest"

	"golang.org/x/text/encoding/charmap"
	"golang.org/x/text/encoding/unicode"
	"pgregory.net/rapid"
)

func tables(t testing.TB) *knowledge.Base {
	t.Helper()
	k, err := knowledge.Load()
	must(t, err)
	return k
}

func must(t testing.TB, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

func empty(t testing.TB) *survey.Survey {
	t.Helper()
	day, err := survey.ParseDate("2026-05-16")
	must(t, err)
	return &survey.Survey{Version: survey.Version, Site: "Orchard", Day: day}
}

// take reads a list with the mapping that is proposed for it.
func take(t *testing.T, data []byte, change ...func(*treelist.Mapping)) (*treelist.List, *treelist.Taken) {
	t.Helper()
	l, err := treelist.Read(data, "", "")
	must(t, err)
	m := treelist.Propose(l)
	for _, c := range change {
		c(&m)
	}
	if problems := m.Problems(l); len(problems) > 0 {
		t.Fatalf("%v\n%+v", problems, m)
	}
	taken, err := treelist.Trees(l, m, empty(t), tables(t))
	must(t, err)
	return l, taken
}

// accepted holds what came in to every rule of a survey.
func accepted(t *testing.T, taken *treelist.Taken) {
	t.Helper()
	s := empty(t)
	s.Trees, s.Place = taken.Trees, taken.Place
	if problems := append(survey.Validate(s), assess.Problems(s, tables(t))...); len(problems) > 0 {
		t.Errorf("the survey has problems: %v", problems)
	}
}

// brief writes what came in, one tree a line.
func brief(trees []survey.Tree) string {
	var b strings.Builder
	of := func(l *survey.MeasuredLength) string {
		if l == nil {
			return "-"
		}
		return strings.ReplaceAll(fmt.Sprintf("%.4g", float64(l.Value)), "+", "")
	}
	for _, t := range trees {
		s := t.Members[0].Stations[0]
		fmt.Fprintf(&b, "%s|%s|girth %s|diameter %s|height %s|%s,%s|%q\n", t.ID, t.Species, of(s.Girth), of(s.Diameter), of(t.Height), of(t.East), of(t.North), t.Note)
	}
	return b.String()
}

const german = "Baum-Nr;Baumart;Stammumfang (cm);Höhe in m;Rechtswert [m];Hochwert [m];Standort\r\n" +
	"1;Quercus robur;235,5;18,2;10,5;-3;Wiese süd\r\n2;Fagus sylvatica;1.204;9;0;0;\r\n"

const wantGerman = `1|Quercus robur|girth 2.355|diameter -|height 18.2|10.5,-3|"Standort: Wiese süd"
2|Fagus sylvatica|girth 12.04|diameter -|height 9|0,0|""
`

func TestEveryCodingGivesTheSameTrees(t *testing.T) {
	encode := func(e interface{ Bytes([]byte) ([]byte, error) }) []byte {
		data, err := e.Bytes([]byte(german))
		must(t, err)
		return data
	}
	for coding, data := range map[string][]byte{
		"UTF-8":                  []byte(german),
		"UTF-8 with a mark":      []byte("\ufeff" + german),
		"Windows-1252":           encode(charmap.Windows1252.NewEncoder()),
		"UTF-16 little":          encode(unicode.UTF16(unicode.LittleEndian, unicode.UseBOM).NewEncoder()),
		"UTF-16 big":             encode(unicode.UTF16(unicode.BigEndian, unicode.UseBOM).NewEncoder()),
		"UTF-16 without a mark":  encode(unicode.UTF16(unicode.LittleEndian, unicode.IgnoreBOM).NewEncoder()),
		"tabs":                   []byte(strings.ReplaceAll(german, ";", "\t")),
		"old Macintosh newlines": []byte(strings.ReplaceAll(german, "\r\n", "\n")),
		"a line about itself":    []byte("sep=;\r\n" + german),
	} {
		l, taken := take(t, data)
		if !strings.HasPrefix(coding, l.Coding) && strings.HasPrefix(coding, "U") {
			t.Errorf("%s was taken for %s", coding, l.Coding)
		}
		if got := brief(taken.Trees); got != wantGerman || len(taken.Refused) > 0 {
			t.Errorf("%s:\n%s%v", coding, got, taken.Refused)
		}
		accepted(t, taken)
	}
}

func TestHeadingsOfSeveralLanguages(t *testing.T) {
	for heading, want := range map[string]string{
		"Tree": "tree", "tree_id": "tree", "Tree species": "species", "Tree height (m)": "height m", "DBH (in)": "diameter in", "Girth at 1.3 m [cm]": "girth cm",
		"girth_cm": "girth cm", "height in m": "height m", "Stammumfang/cm": "girth cm", "Höhe (m)": "height m", "Hoehe": "height", "BHD cm": "diameter cm",
		"Circonférence (cm)": "girth cm", "Essence": "species", "Hauteur [m]": "height m", "Omtrek in cm": "girth cm", "Especie": "species", "Altura (m)": "height m",
		"Wysokość m": "height m", "Obwód pnia [cm]": "girth cm", "Trädslag": "species", "Træart": "species", "X": "east m", "Northing": "north m", "lat": "latitude", "Längengrad": "longitude",
		"Crown spread (ft)": "crown_width ft", "Remarks": "note", "Vitality": "keep", "Inspected on": "keep", `DBH (")`: "diameter in", "": "keep",
	} {
		l, err := treelist.Read([]byte("Other;"+heading+"\n1;2\n"), "", ";")
		must(t, err)
		c := treelist.Propose(l).Columns[1]
		if got := strings.TrimSpace(string(c.Field) + " " + c.Unit); got != want {
			t.Errorf("%q was taken for %q; expected %q", heading, got, want)
		}
	}
}

func TestWhatIsWrongIsSaidRowByRow(t *testing.T) {
	rows := []struct{ row, says string }{
		{`1,Quercus robur,200,1`, ""},
		{`1,Quercus robur,210,1`, `tree "1" is there already`},
		{`3,Quercus robur,=2*100,1`, "is a formula"},
		{`4,Quercus robur,#REF!,1`, "error of a spreadsheet"},
		{`5,Quercus robur,,1`, "neither girth nor diameter"},
		{`6,,200,1`, "names no species"},
		{`7,Arbor ignota,200,1`, "do not know the species"},
		{`8,Quercus robur,two,1`, `"two" is no number`},
		{`9,Quercus robur,20000,1`, "too large"},
		{`10,Quercus robur,200,1,2,3`, "6 cells under 4 headings"},
		{`,Quercus robur,200,1`, "no number or name of its own"},
		{`12,Quercus robur,2.00 m,"=""0123"""`, ""},
		{`13,Quercus robur,"1,235 mm",'-wind`, ""},
		{`14,Quercus robur,200 furlong,1`, "no unit that is known"},
		{"15,Quercus \ufffd,200,1", "cannot be read; check the coding"},
		{`16,"oak, English",200,1`, ""},
	}
	text := "tree,species,girth (cm),note\n"
	for _, r := range rows {
		text += r.row + "\n"
	}
	_, taken := take(t, []byte(text+"\n,,,\n"))
	refused := map[int]string{}
	for _, r := range taken.Refused {
		refused[r.Line] = strings.Join(r.Why, "; ")
	}
	for i, r := range rows {
		why, bad := refused[i+2]
		if bad != (r.says != "") || !strings.Contains(why, r.says) {
			t.Errorf("%s: %q; expected %q", r.row, why, r.says)
		}
	}
	if len(taken.Trees)+len(taken.Refused) != len(rows) {
		t.Errorf("%d and %d of %d rows", len(taken.Trees), len(taken.Refused), len(rows))
	}
	want := `1|Quercus robur|girth 2|diameter -|height -|-,-|"1"
12|Quercus robur|girth 2|diameter -|height -|-,-|"0123"
13|Quercus robur|girth 1.235|diameter -|height -|-,-|"-wind"
16|Quercus robur|girth 2|diameter -|height -|-,-|"1\nspecies in the list: oak, English"
`
	if got := brief(taken.Trees); got != want {
		t.Errorf("came in as\n%s", got)
	}
	accepted(t, taken)
}

func TestProblemsOfAMapping(t *testing.T) {
	for text, says := range map[string]string{
		"tree,species,girth\n1,oak,200\n":                         "has no unit: add --unit girth=cm",
		"tree,girth cm\n1,200\n":                                  "no column holds the species",
		"tree,species\n1,oak\n":                                   "no column holds the girth",
		"tree,species,girth cm,x\n1,oak,200,1\n":                  "one is missing",
		"tree,species,girth cm,x,y,lat,lon\n1,oak,200,1,1,51,0\n": "two kinds of coordinates",
		"tree;species;girth mm\n1;oak;1,234\n":                    "cannot be told from the list",
		"tree,species,girth cm\n1,oak,200\n\"":                    "it cannot be taken apart",
		"":                                                        "it is empty",
		"PK\x03\x04\x00\x00\x00\x00\x00\x00binary\x00\x00\x00\x00\x00\x00\x00\x00\x00": "no list",
	} {
		l, err := treelist.Read([]byte(text), "", "")
		said := fmt.Sprint(err)
		if err == nil {
			said = strings.Join(treelist.Propose(l).Problems(l), "; ")
		}
		if !strings.Contains(said, says) {
			t.Errorf("%q: %q; expected %q", text, said, says)
		}
	}
}

func TestDecimalMarks(t *testing.T) {
	for cells, want := range map[string]string{
		"2,5;3": ",", "2.5;3": ".", "200;300": ".", "1.234,5;2": ",", "1,234.5;2": ".", "1,234;2,5": ",", "1.234;2.5": ".", "1,234;2": "", "0,123;1": ",", "12,3456;1": ",",
	} {
		l, err := treelist.Read([]byte("girth m;height m\n"+cells+"\n"), "", ";")
		must(t, err)
		if got := treelist.Propose(l).Decimal; got != want {
			t.Errorf("%q: %q; expected %q", cells, got, want)
		}
	}
}

func TestPlacesInDegrees(t *testing.T) {
	_, taken := take(t, []byte("Tree\tSpecies\tDBH (in)\tLat\tLon\n1\tQuercus robur\t24\t51.5000\t0.1200 W\n2\tQuercus robur\t20\t51.5010\t-0.1200\n3\tQuercus robur\t20\t-0.12\t51.5\n4\tQuercus robur\t20\t151\t0\n5\tQuercus robur\t20\t51.5\t\n"))
	if p := taken.Place; p == nil || p.Latitude != 51.5 || p.Longitude != -0.12 {
		t.Fatalf("place %+v", p)
	}
	// A thousandth of a degree of latitude at 51.5 degrees north is 111.26 m
	// (111 132.954 - 559.822 cos 2x + 1.175 cos 4x for a degree; from memory).
	if got, want := brief(taken.Trees), "1|Quercus robur|girth -|diameter 0.6096|height -|0,0|\"\"\n2|Quercus robur|girth -|diameter 0.508|height -|0,111.3|\"\"\n"; got != want {
		t.Errorf("%s", got)
	}
	var why []string
	for _, r := range taken.Refused {
		why = append(why, r.Why[0])
	}
	if got := strings.Join(why, "\n"); len(why) != 3 || !strings.Contains(why[0], "km from the site") || !strings.Contains(why[1], "exchanged") || !strings.Contains(why[2], "one is missing") {
		t.Errorf("refused: %s", got)
	}
	accepted(t, taken)
}

func TestCoordinatesOfAGrid(t *testing.T) {
	data := []byte("tree,species,girth cm,easting,northing\n1,Quercus robur,200,532010,181020\n")
	l, err := treelist.Read(data, "", "")
	must(t, err)
	if _, err := treelist.Trees(l, treelist.Propose(l), empty(t), tables(t)); err == nil || !strings.Contains(err.Error(), "--origin") {
		t.Errorf("without an origin: %v", err)
	}
	_, taken := take(t, data, func(m *treelist.Mapping) { m.Origin = &treelist.Origin{East: 532000, North: 181000} })
	if got := brief(taken.Trees); !strings.Contains(got, "|10,20|") {
		t.Errorf("%s", got)
	}
}

func TestAMappingIsRemembered(t *testing.T) {
	l, err := treelist.Read([]byte(german), "", "")
	must(t, err)
	m := treelist.Propose(l)
	text, err := m.Text()
	must(t, err)
	again, err := treelist.ReadMapping(text)
	must(t, err)
	if fmt.Sprint(again) != fmt.Sprint(m) {
		t.Errorf("%+v came back as %+v", m, again)
	}
	for bad, says := range map[string]string{
		`{"boughline_mapping":2}`: "expected 1", `{"x":1}`: "unknown field",
		`{"boughline_mapping":1,"columns":[{"heading":"a","field":"b"}]}`:                  "expected one of",
		`{"boughline_mapping":1,"columns":[{"heading":"a","field":"girth","how":"felt"}]}`: "was measured",
	} {
		if _, err := treelist.ReadMapping([]byte(bad)); err == nil || !strings.Contains(err.Error(), says) {
			t.Errorf("%s: %v", bad, err)
		}
	}
	l.Header = append(l.Header, "New")
	if got := strings.Join(again.Problems(l), ""); !strings.Contains(got, `does not name the column "New"`) {
		t.Errorf("a new column: %q", got)
	}
}

// TestOurOwnListComesIn takes in what WriteTrees wrote: ids, species, places and
// girths are those of before, and every row is a tree or refused.
func TestOurOwnListComesIn(t *testing.T) {
	k := tables(t)
	rapid.Check(t, func(rt *rapid.T) {
		s := surveytest.Site().Draw(rt, "site")
		var b bytes.Buffer
		if err := exchange.WriteTrees(&b, s); err != nil {
			rt.Fatal(err)
		}
		l, err := treelist.Read(b.Bytes(), "utf-8", ",")
		if err != nil {
			rt.Fatal(err)
		}
		m := treelist.Propose(l)
		m.Decimal = "."
		for i, c := range m.Columns {
			if c.Field == treelist.Latitude || c.Field == treelist.Longitude {
				m.Columns[i].Field = treelist.LeaveOut // east and north say the same
			}
		}
		if problems := m.Problems(l); len(problems) > 0 {
			rt.Fatal(problems, m)
		}
		taken, err := treelist.Trees(l, m, empty(t), k)
		if err != nil {
			rt.Fatal(err)
		}
		if len(taken.Trees)+len(taken.Refused) != len(s.Trees) {
			rt.Fatalf("%d and %d of %d trees", len(taken.Trees), len(taken.Refused), len(s.Trees))
		}
		for _, got := range taken.Trees {
			for _, want := range s.Trees {
				if want.ID == got.ID && !near(got.East, want.East) {
					rt.Errorf("tree %s at %v of %v", got.ID, got.East, want.East)
				}
			}
		}
	})
}

func near(a, b *survey.MeasuredLength) bool {
	if a == nil || b == nil {
		return true // places with one coordinate are refused
	}
	d := float64(a.Value - b.Value)
	return d < 1e-3 && d > -1e-3
}

func FuzzRead(f *testing.F) {
	f.Add([]byte(german))
	f.Add([]byte("sep=|\na|b\n1|2"))
	k, err := knowledge.Load()
	must(f, err)
	f.Fuzz(func(t *testing.T, data []byte) {
		l, err := treelist.Read(data, "", "")
		if err != nil {
			return
		}
		m := treelist.Propose(l)
		if len(m.Problems(l)) > 0 {
			return
		}
		taken, err := treelist.Trees(l, m, empty(t), k)
		if err == nil && len(taken.Trees)+len(taken.Refused) != len(l.Rows) {
			t.Errorf("%d and %d of %d rows", len(taken.Trees), len(taken.Refused), len(l.Rows))
		}
	})
}
