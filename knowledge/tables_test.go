package knowledge

import (
	"encoding/csv"
	"io/fs"
	"math"
	"path"
	"slices"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"
)

// Counts and column sums as the tables stood when they were checked against
// their sources: a slip of the finger fails.
func TestRowCountsAndColumnSums(t *testing.T) {
	for _, c := range []struct {
		table string
		rows  int
		sums  map[string]float64
	}{
		{"sources", 239, nil},
		{"parameters", 184, map[string]float64{"value": 36551.731301, "low": 36140.389301, "high": 37351.499301}},
		{"wood", 241, map[string]float64{
			"mor_mpa": 12048.5, "mor_low_mpa": 2016.9, "mor_sd_mpa": 482.34, "moe_mpa": 1926990,
			"proportional_limit_mpa": 1583.6, "compression_mpa": 5083.2, "shear_mpa": 1436.62,
			"compression_across_mpa": 566.46, "tension_across_mpa": 348.12, "basic_gravity": 75.973,
			"green_density_kg_m3": 115605}},
		{"limb_tests", 2, map[string]float64{"breaking_stress_mpa": 54.2, "moment_nm": 6530}},
		{"green_weight", 101, map[string]float64{"wood_kg_m3": 83265, "wood_and_bark_kg_m3": 83744, "bark_kg_m3": 88315}},
		{"bark", 112, map[string]float64{"a_mm": 314.64911, "b_mm_per_cm": 91.73742, "c_mm_per_cm2": -0.18672}},
		{"species", 146, nil},
		{"signs", 113, nil},
		{"sign_effects", 10, nil},
		{"sign_rules", 26, nil},
		{"hazards", 28, map[string]float64{"reach_m": 252}},
		{"fungi", 47, map[string]float64{"size_low_cm": 346, "size_high_cm": 1644}},
		{"fungus_lookalikes", 33, nil},
		{"fungus_hosts", 48, nil},
		{"fungus_words", 250, nil},
		{"fungus_confusions", 113, nil},
		{"fungus_questions", 36, nil},
		{"riders", 34, map[string]float64{"p5_kg": 1015.5, "p50_kg": 1299, "p95_kg": 1825.9, "stature_p50_cm": 4791, "stature_p95_cm": 5142}},
		{"adults", 2, map[string]float64{"mean_kg": 168.1, "p95_kg": 250}},
		{"gear", 15, map[string]float64{"least_kn": 293}},
		{"knots", 17, map[string]float64{"share": 10.9182, "low": 10.9182, "high": 11.4982}},
		{"knot_jobs", 14, map[string]float64{"eats_d": 336, "low": 251, "high": 451, "tail_d": 144}},
		{"part_lengths", 6, map[string]float64{"length_m": 1.06}},
		{"bark_covers", 5, map[string]float64{"width_mm": 291}},
		{"hitches", 4, map[string]float64{"share": 4.25}},
		{"choke_angles", 5, map[string]float64{"share": 3.72}},
		{"surfaces", 11, map[string]float64{"rated_fall_m": 16.1, "loose_depth_m": 1.62}},
		{"terrain", 5, map[string]float64{"roughness_m": 1.363, "least_height_m": 19}},
		{"beaufort", 8, map[string]float64{"low_kt": 208, "high_kt": 249, "mean_m_s": 116.08}},
		{"effort", 15, map[string]float64{"minutes": 87, "low": 44, "high": 181}},
		{"methods", 22, map[string]float64{"value": 152.1}},
	} {
		records := readTable(t, c.table)
		if got := len(records) - 1; got != c.rows {
			t.Errorf("%s has %d rows, want %d", c.table, got, c.rows)
		}
		for column, want := range c.sums {
			if got := columnSum(t, records, column); math.Abs(got-want) > 1e-6*math.Max(1, math.Abs(want)) {
				t.Errorf("%s: %s adds up to %.6f, want %.6f", c.table, column, got, want)
			}
		}
	}
}

func readTable(t *testing.T, name string) [][]string {
	t.Helper()
	f, err := data.Open(path.Join("data", name+".csv"))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	records, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	return records
}

func columnSum(t *testing.T, records [][]string, column string) float64 {
	t.Helper()
	i := slices.Index(records[0], column)
	if i < 0 {
		t.Fatalf("no column %q", column)
	}
	sum := 0.0
	for _, r := range records[1:] {
		if r[i] == "" {
			continue
		}
		x, err := strconv.ParseFloat(r[i], 64)
		if err != nil {
			t.Fatal(err)
		}
		sum += x
	}
	return sum
}

// spoil copies the tables and changes the first occurrence of old in one.
func spoil(t *testing.T, table, old, new string) fs.FS {
	t.Helper()
	files := fstest.MapFS{}
	entries, err := data.ReadDir("data")
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		text, err := data.ReadFile(path.Join("data", e.Name()))
		if err != nil {
			t.Fatal(err)
		}
		if e.Name() == table+".csv" {
			if !strings.Contains(string(text), old) {
				t.Fatalf("%s holds no %q", table, old)
			}
			text = []byte(strings.Replace(string(text), old, new, 1))
		}
		files[e.Name()] = &fstest.MapFile{Data: text}
	}
	return files
}

func TestLoadRefusesFaults(t *testing.T) {
	for _, c := range []struct{ name, table, old, new, want string }{
		{"row without a source", "surfaces", "school-play-pages", "", `the source "" is not in sources.csv`},
		{"unknown source", "surfaces", "school-play-pages", "hearsay", `the source "hearsay" is not in sources.csv`},
		{"unknown second source", "surfaces", ",danish-nature-agency", ",hearsay", `the source "hearsay"`},
		{"unused source", "sources", "\nhouse,", "\nspare,,,Spare,read\nhouse,", `no row names the source "spare"`},
		{"source of unknown kind", "sources", "Wood Handbook, FPL-GTR-190\",read", "Wood Handbook, FPL-GTR-190\",hearsay", `kind "hearsay"`},
		{"source without a title", "sources", ",House value,", ",,", "no title"},
		{"row that stands twice", "terrain", "\nII,", "\nI,", `"I" is empty or stands twice`},
		{"row without a name", "terrain", "\nII,", "\n,", `"" is empty or stands twice`},
		{"low above the value", "parameters", "member-factor,0.67,0.54", "member-factor,0.67,0.70", "outside its range"},
		{"high below the value", "parameters", "0.67,0.54,0.81", "0.67,0.54,0.6", "outside its range"},
		{"no number", "parameters", "member-factor,0.67", "member-factor,O.67", `"O.67", not a number`},
		{"infinite number", "parameters", "member-factor,0.67", "member-factor,inf", "not a number"},
		{"unknown unit", "parameters", "0.15,0.15,0.15,m,", "0.15,0.15,0.15,yard,", `the unit "yard"`},
		{"fractiles out of order", "riders", "12.0,14.3,17.4", "12.0,14.3,14.0", "not in order"},
		{"mean above the fractile", "adults", "90.6,130", "140,130", "above the 95 %"},
		{"wind outside its number", "beaufort", "4.34", "5.34", "outside"},
		{"unknown group", "species", ",broadleaf,", ",palm,", `the group "palm"`},
		{"one name for two species", "species", "sessile oak;durmast oak", "sessile oak;English oak", `"English oak" names both`},
		{"species without a common name", "species", "pedunculate oak;English oak;oak,", ",", "no common name"},
		{"unknown sex", "riders", ",male,", ",boy,", `the sex "boy"`},
		{"age in parts", "riders", "male-3,3,", "male-3,3.5,", "not a whole number"},
		{"unknown material", "gear", ",textile,", ",string,", `the material "string"`},
		{"unknown way of measuring", "methods", "taped-any,taped,", "taped-any,guessed,", `"guessed" is no way`},
		{"unknown way to measure better", "effort", "arm,laser,", "arm,guessed,", `"guessed" is no way`},
		{"work without time", "effort", "arm,laser,3,2,", "arm,laser,3,0,", "expected more than 0"},
		{"unknown zone", "signs", "crown-01,crown,", "crown-01,roof,", `zone is "roof"`},
		{"unknown urgency", "signs", ",look_closer,tree,", ",soon,tree,", `urgency is "soon"`},
		{"unknown scope", "signs", ",look_closer,tree,", ",look_closer,wood,", `scope is "wood"`},
		{"unknown method", "signs", ",binoculars;old-photo;moving-litter,", ",telescope,", `methods holds "telescope"`},
		{"unknown need", "signs", ",leaf,", ",full moon,", `needs is "full moon"`},
		{"a sign without a source", "signs", ",mixed,umass-oak,lonsdale-1999,", ",mixed,,lonsdale-1999,", `the source "" is not in sources.csv`},
		{"a rule without a source", "sign_rules", ",read,usfs-hazard-1996,florida-roots,", ",read,,florida-roots,", `the source "" is not in sources.csv`},
		{"a hazard without a source", "hazards", ",mixed,power-lines,house,", ",mixed,,house,", `the source "" is not in sources.csv`},
		{"a rule with a sign that is none", "sign_rules", "root_plate-01;root_plate-02;root_plate-03", "root_plate-77", `names "root_plate-77"`},
		{"a rule with an unknown quantity", "sign_rules", "limb_length_m>8", "limb_luck>8", `is "limb_luck>8"`},
		{"a rule of one half", "sign_rules", "stem-12,stem-13,", "stem-12,,", "two halves at least"},
		{"a season without an end", "hazards", ",3,8,10,bars,", ",3,0,10,bars,", "months from 3 to 0"},
		{"unknown effect", "signs", ",tree,closer-look,", ",tree,fine,", `"fine" is no effect`},
		{"evidence that the source belies", "fungi", ",read,", ",memory,", "evidence is"},
		{"no month", "fungi", ",6;7;8;9;10;11;12,", ",6;7;8;9;10;11;13,", `"13" is no month`},
		{"neither yes nor no", "fungi", ",yes,", ",perhaps,", "expected yes or no"},
		{"sizes out of order", "fungi", ",10,60,", ",70,60,", "above the greatest"},
		{"missing column", "surfaces", "rated_fall_m", "height_m", `no column "rated_fall_m"`},
		{"torn table", "knots", "name,share", "name", "cannot be read"},
	} {
		_, err := load(spoil(t, c.table, c.old, c.new))
		if err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: got %v, want an error with %q", c.name, err, c.want)
		}
	}
	if _, err := load(fstest.MapFS{}); err == nil {
		t.Error("no tables at all were taken")
	}
}
