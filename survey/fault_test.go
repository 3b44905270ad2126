package survey_test

import (
	"slices"
	"strings"
	"testing"

	"boughline/survey"
)

// fault is one slip in the meadow: old text, new text, the problem it makes.
type fault struct {
	name, old, new string
	code, path     string
}

const (
	oak  = "trees[0]"
	limb = oak + ".members[1]"
	hang = oak + ".hangs[0]"
)

// twenty faults of twenty kinds, which do not touch one another.
var twenty = []fault{
	{"a field twice", `"surveyor": "R. Example",`, `"surveyor": "R. Example", "surveyor": "B. Example",`, survey.CodeDuplicateField, "surveyor"},
	{"half a character", `"gate by the ford"`, `"gate \ud800"`, survey.CodeLostCharacter, "place.way_in"},
	{"a misspelt field", `"sleeve": "strap"`, `"sleve": "strap"`, survey.CodeUnknownField, hang + ".sleve"},
	{"a number for text", `"height": "5.4 m"`, `"height": 5.4`, survey.CodeWrongType, hang + ".height"},
	{"no species", `"species": "Quercus robur",`, ``, survey.CodeMissing, oak + ".species"},
	{"an empty text", `"Brook meadow"`, `""`, survey.CodeEmpty, "site"},
	{"a word out of the list", `"posture": "seated"`, `"posture": "lying"`, survey.CodeNotInList, "riders[0].posture"},
	{"no unit", `"thickness": "11 mm"`, `"thickness": "11"`, survey.CodeBadQuantity, "chains[0].parts[2].thickness"},
	{"a day that is none", `"2026-05-16"`, `"2026-02-30"`, survey.CodeBadDate, "day"},
	{"version 0", `"boughline": 1`, `"boughline": 0`, survey.CodeVersion, "boughline"},
	{"a metre for a centimetre", `"28 cm taped"`, `"28 m taped"`, survey.CodeOutOfRange, "chains[0].parts[0].bend_over"},
	{"less certain than large", `"21 m ±3 % clinometer"`, `"21 m ±300 % clinometer"`, survey.CodeUncertain, oak + ".height"},
	{"a name twice", `"id": "two adults"`, `"id": "one child"`, survey.CodeDuplicateID, "riders[1].id"},
	{"a chain that is not there", `"chain": "long rope"`, `"chain": "long rop"`, survey.CodeReference, hang + ".chain"},
	{"half a shape", `"azimuth": "95 deg compass", `, ``, survey.CodeShape, limb},
	{"one of two diameters", `, "across": "21 cm calliper"`, ``, survey.CodeThickness, limb + ".stations[1]"},
	{"beyond the end", `"at": "4 m", "extent": "0.5 m"`, `"at": "4 m", "extent": "5 m"`, survey.CodeBeyondEnd, oak + ".findings[0].extent"},
	{"a union of the stem", `{"member": "east limb", "form"`, `{"member": "stem", "form"`, survey.CodeUnion, oak + ".unions[0].member"},
	{"looked at before it was seen", `"on": "2026-05-12"`, `"on": "2026-05-02"`, survey.CodeDayOrder, oak + ".findings[0].closer_look.on"},
	{"ages the wrong way round", `"from": 6, "to": 12`, `"from": 12, "to": 6`, survey.CodeAges, "riders[0].ages"},
}

// more faults, one at a time.
var more = []fault{
	{"air that is none", `"on": "2026-05-10", "by": "R. Example"}`, `"on": "2026-05-10", "air": "fresh"}`, survey.CodeNotInList, oak + ".looks[0].air"},
	{"a cover that is none", `"on": "2026-05-10", "by": "R. Example"}`, `"on": "2026-05-10", "in_the_way": ["fog"]}`, survey.CodeNotInList, oak + ".looks[0].in_the_way[0]"},
	{"a hazard at no tree", `"trees": [`, `"hazards": [{"id": "h", "hazard": "ticks", "side": "9 deg", "distance": "4 m"}], "trees": [`, survey.CodeFindingPlace, "hazards[0]"},
	{"a hazard at an unknown tree", `"trees": [`, `"hazards": [{"id": "h", "hazard": "ticks", "tree": "none"}], "trees": [`, survey.CodeReference, "hazards[0].tree"},
	{"a hazard without a distance", `"trees": [`, `"hazards": [{"id": "h", "hazard": "ticks", "tree": "oak", "side": "9 deg"}], "trees": [`, survey.CodeFindingPlace, "hazards[0]"},
	{"a hazard north of nothing", `"trees": [`, `"hazards": [{"id": "h", "hazard": "ticks", "north": "9 m"}], "trees": [`, survey.CodeFindingPlace, "hazards[0]"},
	{"a hazard in two places", `"trees": [`, `"hazards": [{"id": "h", "hazard": "ticks", "tree": "oak", "side": "9 deg", "distance": "4 m", "east": "1 m", "north": "9 m"}], "trees": [`, survey.CodeFindingPlace, "hazards[0]"},
	{"a hazard far out", `"trees": [`, `"hazards": [{"id": "h", "hazard": "ticks", "tree": "oak", "side": "9 deg", "distance": "900 m"}], "trees": [`, survey.CodeOutOfRange, "hazards[0].distance"},
	{"two hazards of one name", `"trees": [`, `"hazards": [{"id": "h", "hazard": "ticks"}, {"id": "h", "hazard": "ticks"}], "trees": [`, survey.CodeDuplicateID, "hazards[1].id"},
	{"a hazard cleared before it was seen", `"trees": [`, `"hazards": [{"id": "h", "hazard": "ticks", "seen_on": "2026-05-10", "cleared": {"on": "2026-05-02", "how": "by hand"}}], "trees": [`, survey.CodeDayOrder, "hazards[0].cleared.on"},
	{"two strengths", `"standard": "EN 362"`, `"standard": "EN 362", "mark": {"strength": "22 kN", "kind": "breaking"}`, survey.CodeStrength, "chains[0].parts[1]"},
	{"a crown above the tree", `"base_height": "4 m by eye"`, `"base_height": "40 m by eye"`, survey.CodeCrown, oak + ".crown.base_height"},
	{"a place on no member", `"sign": "crown-03", "member": "bent limb"`, `"sign": "crown-03"`, survey.CodeFindingPlace, oak + ".findings[0]"},
	{"two stations at one place", `"at": "2.5 m", "upright"`, `"at": "40 cm", "upright"`, survey.CodeSamePlace, limb + ".stations[1].at"},
	{"two stems", `{"id": "bent limb", "parent": "stem"`, `{"id": "bent limb"`, survey.CodeStem, oak + ".members[2].parent"},
	{"a ring of parents", `"id": "stem", "inclination"`, `"id": "stem", "parent": "bent limb", "azimuth": "0 deg", "inclination"`, survey.CodeCycle, oak + ".members[0].parent"},
	{"its own parent", `"bent limb", "parent": "stem"`, `"bent limb", "parent": "bent limb"`, survey.CodeCycle, oak + ".members[2].parent"},
	{"a path and a length", `"stem", "path"`, `"stem", "length": "7 m", "path"`, survey.CodeShape, oak + ".members[2]"},
	{"a path without length", `[{"east": "0 m", "north": "3 m", "up": "0.5 m"}, {"east": "1 m", "north": "5 m", "up": "2 m"}]`, `[{"east": "0 m", "north": "0 m", "up": "0 m"}]`, survey.CodeOutOfRange, oak + ".members[2].path"},
	{"girth and diameter", `"girth": "2.9 m taped"`, `"girth": "2.9 m taped", "diameter": "90 cm"`, survey.CodeThickness, oak + ".members[0].stations[0]"},
	{"no thickness", `, "girth": "2.9 m taped"`, ``, survey.CodeThickness, oak + ".members[0].stations[0]"},
	{"no stations", `[{"at": "1.3 m", "girth": "2.9 m taped"}]`, `[]`, survey.CodeEmpty, oak + ".members[0].stations"},
	{"stations not given", `, "stations": [{"at": "1.3 m", "girth": "2.9 m taped"}]`, ``, survey.CodeMissing, oak + ".members[0].stations"},
	{"a station beyond the end", `"at": "2.5 m", "upright"`, `"at": "8.1 m", "upright"`, survey.CodeBeyondEnd, limb + ".stations[1].at"},
	{"a limb above its parent", `"rises_at": "5.2 m"`, `"rises_at": "25 m"`, survey.CodeBeyondEnd, limb + ".rises_at"},
	{"a hang beyond the end", `"at": "2.5 m", "line"`, `"at": "8.5 m", "line"`, survey.CodeBeyondEnd, hang + ".at"},
	{"a limb 22 m thick", `"22 cm calliper"`, `"22 m calliper"`, survey.CodeOutOfRange, limb + ".stations[1].upright"},
	{"a limb 5 m thick", `"22 cm calliper"`, `"5 m calliper"`, survey.CodeOutOfRange, limb + ".stations[1].upright"},
	{"a limb 88 m round", `"88 cm taped"`, `"88 m taped"`, survey.CodeOutOfRange, limb + ".stations[0].girth"},
	{"a limb 14 m round", `"88 cm taped"`, `"14 m taped"`, survey.CodeOutOfRange, limb + ".stations[0].girth"},
	{"a limb 70 m long", `"length": "8 m"`, `"length": "70 m"`, survey.CodeOutOfRange, limb + ".length"},
	{"a limb 700 m long", `"length": "8 m"`, `"length": "700 m"`, survey.CodeOutOfRange, limb + ".length"},
	{"a tree 200 m high", `"21 m ±3 % clinometer"`, `"200 m"`, survey.CodeOutOfRange, oak + ".height"},
	{"a lean for an inclination", `"inclination": "90 deg"`, `"azimuth": "0 deg", "inclination": "5 deg"`, survey.CodeOutOfRange, oak + ".members[0].inclination"},
	{"steeper than upright", `"inclination": "8 deg"`, `"inclination": "98 deg"`, survey.CodeOutOfRange, limb + ".inclination"},
	{"an azimuth of many turns", `"95 deg compass"`, `"950 deg compass"`, survey.CodeOutOfRange, limb + ".azimuth"},
	{"an amplitude over the top", `"amplitude": "50 deg"`, `"amplitude": "190 deg"`, survey.CodeOutOfRange, hang + ".amplitude"},
	{"a negative girth", `"88 cm taped"`, `"-88 cm taped"`, survey.CodeOutOfRange, limb + ".stations[0].girth"},
	{"a negative line", `"line": "4.6 m"`, `"line": "-4.6 m"`, survey.CodeOutOfRange, hang + ".line"},
	{"a line of 46 m", `"line": "4.6 m"`, `"line": "46 m"`, survey.CodeOutOfRange, hang + ".line"},
	{"a rider of 2 kg", `"85 kg ±3 kg"`, `"2 kg"`, survey.CodeOutOfRange, "riders[1].each"},
	{"a test of another hang", `"hang": "over the bank"`, `"hang": "over the brook"`, survey.CodeReference, oak + ".load_tests[0].hang"},
	{"a step with two loads", `{"pull": "1.8 kN"`, `{"mass": "183 kg", "pull": "1.8 kN"`, survey.CodeLoadStep, oak + ".load_tests[0].steps[2]"},
	{"a step without a load", `{"pull": "1.8 kN", `, `{`, survey.CodeLoadStep, oak + ".load_tests[0].steps[2]"},
	{"a step that takes load off", `"mass": "90 kg weighed"`, `"mass": "40 kg weighed"`, survey.CodeLoadStep, oak + ".load_tests[0].steps[1]"},
	{"a test without steps", `"steps": [{"mass": "45 kg weighed", "sag": "1 cm taped"}, {"mass": "90 kg weighed", "sag": "2 cm taped"}, {"pull": "1.8 kN", "sag": "4 cm taped"}]`, `"steps": []`, survey.CodeEmpty, oak + ".load_tests[0].steps"},
	{"an outcome of a test", `"by": "R. Example", "set"`, `"passed": true, "set"`, survey.CodeUnknownField, oak + ".load_tests[0].passed"},
	{"a sag of 40 m", `"4 cm taped"`, `"40 m taped"`, survey.CodeOutOfRange, oak + ".load_tests[0].steps[2].sag"},
	{"a gust of 280 m/s", `"28 m/s"`, `"280 m/s"`, survey.CodeOutOfRange, oak + ".stood[0].speed"},
	{"Beaufort 13", `"stop_beaufort": 5`, `"stop_beaufort": 13`, survey.CodeOutOfRange, "wind.stop_beaufort"},
	{"no riders in a group", `"count": 1`, `"count": 0`, survey.CodeOutOfRange, "riders[0].count"},
	{"a share of a rider", `"count": 1`, `"count": 1.5`, survey.CodeWrongType, "riders[0].count"},
	{"a latitude of the moon", `"latitude": 52.1`, `"latitude": 521`, survey.CodeOutOfRange, "place.latitude"},
	{"a number without end", `"latitude": 52.1`, `"latitude": 1e999`, survey.CodeOutOfRange, "place.latitude"},
	{"an age of 100", `"to": 12`, `"to": 100`, survey.CodeOutOfRange, "riders[0].ages.to"},
	{"a year long past", `"2024-03-01"`, `"1024-03-01"`, survey.CodeOutOfRange, "chains[0].parts[2].in_service_since"},
	{"a day of 1926 for 2026", `"on": "2026-05-12"`, `"on": "1926-05-12"`, survey.CodeOutOfRange, oak + ".findings[0].closer_look.on"},
	{"no day", `"day": "2026-05-16",`, ``, survey.CodeMissing, "day"},
	{"an empty day", `"day": "2026-05-16"`, `"day": ""`, survey.CodeBadDate, "day"},
	{"cleared before it was seen", `"on": "2026-05-11"`, `"on": "2026-05-01"`, survey.CodeDayOrder, oak + ".findings[1].cleared.on"},
	{"NaN", `"88 cm taped"`, `"NaN cm taped"`, survey.CodeBadQuantity, limb + ".stations[0].girth"},
	{"Infinity", `"line": "4.6 m"`, `"line": "Infinity m"`, survey.CodeBadQuantity, hang + ".line"},
	{"1e400 m", `"line": "4.6 m"`, `"line": "1e400 m"`, survey.CodeBadQuantity, hang + ".line"},
	{"a decimal comma", `"88 cm taped"`, `"88,5 cm taped"`, survey.CodeBadQuantity, limb + ".stations[0].girth"},
	{"a mass for a length", `"88 cm taped"`, `"88 kg taped"`, survey.CodeBadQuantity, limb + ".stations[0].girth"},
	{"measured for chosen", `"line": "4.6 m"`, `"line": "4.6 m taped"`, survey.CodeBadQuantity, hang + ".line"},
	{"negative standard deviation", `"85 kg ±3 kg"`, `"85 kg ±-3 kg"`, survey.CodeBadQuantity, "riders[1].each"},
	{"null", `"seat": "3 kg weighed"`, `"seat": null`, survey.CodeWrongType, "riders[0].seat"},
	{"null in a list", `"members": ["east limb"]`, `"members": [null]`, survey.CodeWrongType, oak + ".looks[1].members[0]"},
	{"a list for an object", `{"base_height": "4 m by eye", "width": "16 m"}`, `[]`, survey.CodeWrongType, oak + ".crown"},
	{"a member that is text", `{"id": "bent limb"`, `"bent limb", {"id": "bent limb"`, survey.CodeWrongType, oak + ".members[2]"},
	{"text for true", `"in_leaf": true, "stop`, `"in_leaf": "yes", "stop`, survey.CodeWrongType, "wind.in_leaf"},
	{"a zone that is none", `"zone": "root_plate"`, `"zone": "roots"`, survey.CodeNotInList, oak + ".looks[2].zone"},
	{"an unknown member in a look", `"members": ["east limb"]`, `"members": ["west limb"]`, survey.CodeReference, oak + ".looks[1].members[0]"},
	{"an unknown parent", `"east limb", "parent": "stem"`, `"east limb", "parent": "stam"`, survey.CodeReference, limb + ".parent"},
	{"an unknown member of a union", `{"member": "east limb", "form"`, `{"member": "eastlimb", "form"`, survey.CodeReference, oak + ".unions[0].member"},
	{"an unknown member of a finding", `"member": "bent limb"`, `"member": "bend limb"`, survey.CodeReference, oak + ".findings[0].member"},
	{"an unknown limb", `"member": "east limb", "at"`, `"member": "limb 9", "at"`, survey.CodeReference, hang + ".member"},
	{"unknown riders", `"riders": "one child"`, `"riders": "nobody"`, survey.CodeReference, hang + ".riders"},
	{"a finding twice", `"id": "hung up"`, `"id": "dead twig"`, survey.CodeDuplicateID, oak + ".findings[1].id"},
	{"a member twice", `"id": "bent limb", "parent"`, `"id": "stem", "parent"`, survey.CodeDuplicateID, oak + ".members[2].id"},
	{"a required field misspelt", `"species": "Quercus`, `"specis": "Quercus`, survey.CodeUnknownField, oak + ".specis"},
	{"a field of half a shape misspelt", `"azimuth": "95 deg compass"`, `"azimut": "95 deg compass"`, survey.CodeUnknownField, limb + ".azimut"},
	{"a thickness misspelt", `"girth": "88 cm taped"`, `"gurth": "88 cm taped"`, survey.CodeUnknownField, limb + ".stations[0].gurth"},
	{"a field with an odd name", `"sleeve"`, `"what. is [this]"`, survey.CodeUnknownField, hang + `["what. is [this]"]`},
	// What was refused makes no second problem further on.
	{"a lost list of members", `"members": [
        {"id"`, `"members": 3, "members": [
        {"id"`, survey.CodeDuplicateField, oak + ".members"},
	{"a lost name of a member", `"id": "bent limb"`, `"id": 7`, survey.CodeWrongType, oak + ".members[2].id"},
	{"a lost name of a chain", `"id": "long rope"`, `"id": ""`, survey.CodeEmpty, "chains[0].id"},
	{"a lost parent", `"bent limb", "parent": "stem"`, `"bent limb", "parent": ["stem"]`, survey.CodeWrongType, oak + ".members[2].parent"},
	{"a lost length", `"length": "8 m"`, `"length": "8"`, survey.CodeBadQuantity, limb + ".length"},
	{"a lost path", `"up": "2 m"`, `"up": "2"`, survey.CodeBadQuantity, oak + ".members[2].path[1].up"},
	{"a lost girth", `"88 cm taped"`, `"88 cm tapped"`, survey.CodeBadQuantity, limb + ".stations[0].girth"},
	{"a lost place", `"at": "2.5 m", "upright"`, `"at": "2.5", "upright"`, survey.CodeBadQuantity, limb + ".stations[1].at"},
	{"a lost age", `"from": 6, "to": 12`, `"from": 12, "to": 0`, survey.CodeOutOfRange, "riders[0].ages.to"},
	{"a lost line", `"line": "4.6 m"`, `"line": "4.6"`, survey.CodeBadQuantity, hang + ".line"},
	{"no member of a hang", `"member": "east limb", "at"`, `"at"`, survey.CodeMissing, hang + ".member"},
	{"a lost member of a finding", `"member": "bent limb"`, `"member": 3`, survey.CodeWrongType, oak + ".findings[0].member"},
}

func spoil(t *testing.T, text string, f fault) string {
	t.Helper()
	if strings.Count(text, f.old) != 1 {
		t.Fatalf("%s: %q stands %d times in the document, want once", f.name, f.old, strings.Count(text, f.old))
	}
	return strings.Replace(text, f.old, f.new, 1)
}

func TestEachFaultIsOneProblem(t *testing.T) {
	for _, f := range slices.Concat(twenty, more) {
		t.Run(f.name, func(t *testing.T) {
			_, problems := read(t, spoil(t, meadow(t), f))
			wantOne(t, problems, wanted{code: f.code, path: f.path})
			if p := problems[0]; p.Line == 0 || p.Column == 0 {
				t.Errorf("it has no place in the text: %v", p)
			}
		})
	}
}

func TestTwentyFaultsAreTwentyProblemsInOneRun(t *testing.T) {
	text := meadow(t)
	codes := map[string]bool{}
	want := map[string]string{}
	for _, f := range twenty {
		text = spoil(t, text, f)
		codes[f.code] = true
		want[f.path] = f.code
	}
	if len(twenty) != 20 || len(codes) != 20 {
		t.Fatalf("%d faults of %d kinds", len(twenty), len(codes))
	}
	_, problems := read(t, text)
	for i, p := range problems {
		if want[p.Path] != p.Code {
			t.Errorf("not wanted: %v", p)
		}
		delete(want, p.Path)
		if i > 0 && (p.Line < problems[i-1].Line || (p.Line == problems[i-1].Line && p.Column < problems[i-1].Column)) {
			t.Errorf("out of order: %v", p)
		}
	}
	if len(want) > 0 || len(problems) != 20 {
		t.Errorf("%d problems; not found: %v", len(problems), want)
	}
}

func TestHintsForPeople(t *testing.T) {
	tests := []struct{ old, new, do string }{
		{`"88 cm taped"`, `"88 m taped"`, "perhaps 88 cm is meant"},
		{`"85 kg ±3 kg"`, `"85000 kg"`, "perhaps 85000 g is meant"},
		{`"28 m/s"`, `"110 m/s"`, "perhaps 110 km/h is meant"},
		{`"chain": "long rope"`, `"chain": "longrope"`, `perhaps "long rope" is meant`},
		{`"sleeve": "strap"`, `"sleeve": "strop"`, `perhaps "strap" is meant`},
		{`"sleeve": "strap"`, `"sleave": "strap"`, `perhaps "sleeve" is meant`},
		{`"height": "5.4 m"`, `"height": 5.4`, `write it as in "72 cm"`},
		{`"height": "5.4 m"`, `"height": null`, "leave the field out"},
	}
	for _, test := range tests {
		_, problems := read(t, spoil(t, meadow(t), fault{test.new, test.old, test.new, "", ""}))
		if len(problems) != 1 || !strings.Contains(problems[0].Do, test.do) {
			t.Errorf("%s: got %v, want the hint %s", test.new, problems, test.do)
		}
	}
}

func TestWhatIsNoFault(t *testing.T) {
	tests := []fault{
		{name: "a stem as a path", old: `"inclination": "90 deg", "length": "20 m by eye"`, new: `"path": [{"east": "1 m", "north": "0 m", "up": "20 m"}]`},
		{name: "a leaning stem", old: `"inclination": "90 deg"`, new: `"azimuth": "-90 deg", "inclination": "45 deg"`},
		{name: "a member without a shape yet", old: `"azimuth": "95 deg compass", "inclination": "8 deg", "length": "8 m", `, new: ``},
		{name: "a stem of 14 m girth", old: `"2.9 m taped"`, new: `"14 m taped"`},
		{name: "the bounds of turns", old: `"azimuth": "95 deg compass", "inclination": "8 deg"`, new: `"azimuth": "720 deg", "inclination": "-90 deg"`},
		{name: "an amplitude of 180 deg", old: `"amplitude": "50 deg"`, new: `"amplitude": "180 deg"`},
		{name: "a place near nought", old: `"0 m ±2 m"`, new: `"0.1 m ±2 m"`},
		{name: "the very end", old: `"at": "2.5 m", "line"`, new: `"at": "800 cm", "line"`},
		{name: "empty lists", old: `"waiting": [{"azimuth": "200 deg", "distance": "7 m"}]`, new: `"waiting": [], "way_in": []`},
		{name: "a whole number with a point", old: `"count": 2`, new: `"count": 2.0`},
		{name: "seen and looked at on one day", old: `"on": "2026-05-12"`, new: `"on": "2026-05-10"`},
	}
	for _, f := range tests {
		if _, problems := read(t, spoil(t, meadow(t), f)); len(problems) > 0 {
			t.Errorf("%s: %v", f.name, problems)
		}
	}
}
