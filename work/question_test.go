package work

import (
	"encoding/json"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"testing"
)

func TestEveryGroupAnswersAQuestion(t *testing.T) {
	asked := map[string]bool{}
	for _, q := range Questions() {
		asked[q.Group] = true
		if q.Asks == "" || q.Formula == "" || q.Source == "" || len(q.Inputs) == 0 {
			t.Errorf("%s: incomplete %+v", q.ID, q)
		}
	}
	for _, group := range Groups() {
		if !asked[group] {
			t.Errorf("no question asks group %s", group)
		}
	}
}

// The examples are a full set of inputs that can be worked out; what is not needed can
// be left out.
func TestExamplesAnswer(t *testing.T) {
	for _, q := range quick() {
		if _, faults, err := q.Answer(q.Examples()); err != nil || len(faults) > 0 {
			t.Errorf("%s: %v %v", q.ID, faults, err)
		}
		if _, faults := q.Document(nil); len(faults) != needed(q) {
			t.Errorf("%s: %d faults without any input, %d are needed", q.ID, len(faults), needed(q))
		}
	}
}

func needed(q Question) (n int) {
	for _, in := range q.Inputs {
		if in.Needed {
			n++
		}
	}
	return n
}

// quick leaves out the one question that samples for long; its inputs are those
// of what-matters.
func quick() []Question {
	return slices.DeleteFunc(slices.Clone(Questions()), func(q Question) bool { return q.ID == "limb-chance" })
}

// other is a value of an input that differs from its example and is in bounds.
func (in Input) other() string {
	switch in.Form {
	case Flag:
		return "no"
	case Choice:
		return in.Columns[len(in.Columns)-1]
	case Text, Words:
		return "toadstool"
	case Whole:
		return strconv.Itoa(int(in.Low) + 1)
	case Number, List:
		return in.scaled(strings.Fields(in.Example))
	}
	lines := strings.Split(in.Example, ";")
	cells := strings.Fields(lines[len(lines)-1])
	lines[len(lines)-1] = in.scaled(cells)
	return strings.Join(lines, ";")
}

// scaled changes every number of a line a little, words and dashes not.
func (in Input) scaled(cells []string) string {
	out := slices.Clone(cells)
	for i, cell := range cells {
		x, err := strconv.ParseFloat(cell, 64)
		whole := in.Form == Records && strings.Contains(strings.Join(in.Columns, " "), "#") && x == 1
		if err != nil || whole {
			continue
		}
		y := 1.02*x + 0.001*min(1, in.High-x)
		if y > in.High || in.High <= 1 {
			y = 0.98*x + 1e-4*min(1, in.High)
		}
		out[i] = strconv.FormatFloat(y, 'g', -1, 64)
	}
	return strings.Join(out, " ")
}

// A path that the reader does not know would change nothing: every input of the
// table, changed or left out, changes the results or is refused.
func TestReaderKnowsEveryInput(t *testing.T) {
	// What one figure overrides is tried without the other one.
	hidden := map[string]string{
		"EA": "k", "zeta": "c_Ns_m", "damping": "c_Ns_m", "f_vertical_Hz": "k_vertical", "f_horizontal_Hz": "k_horizontal",
		"start_angle_deg": "x0", "start_distance_fraction_of_L": "x0",
	}
	// Where a small change makes no step.
	further := map[string]string{
		"t_end": "0.3", "aims.lowest_fall_L_min": "5", "choke_angle_list_deg": "150 100 75 20", "choke_table_angle_from_factor": "120 0.9; 0 0.5",
	}
	for _, q := range quick() {
		for _, in := range q.Inputs {
			written := q.Examples()
			if over := hidden[in.Path]; over != "" {
				delete(written, over)
			}
			if in.Path == "zeta" {
				delete(written, "c_vertical")
				delete(written, "damping")
			}
			if in.Path == "crown.threshold" {
				written["crown.U_ref"] = "35" // above the wind at the foot of the crown
			}
			if q.ID == "fungus" && in.Form == Words {
				written = map[string]string{in.Path: in.Example}
			}
			before, _, err := q.Answer(written)
			if err != nil {
				t.Fatalf("%s without what hides %s: %v", q.ID, in.Path, err)
			}
			changed := in.other()
			if far := further[in.Path]; far != "" {
				changed = far
			}
			written[in.Path] = changed
			after, faults, err := q.Answer(written)
			if len(faults) > 0 {
				t.Errorf("%s: %v", q.ID, faults)
			}
			if err == nil && reflect.DeepEqual(before, after) {
				t.Errorf("%s: %s = %s changes nothing against %s", q.ID, in.Path, changed, in.Example)
			}
		}
	}
}

// What the files of outside results give and no question of the group knows
// makes no difference to the results.
func TestQuestionsKnowEveryInputOfTheCases(t *testing.T) {
	files, err := filepath.Glob("testdata/cases/*.json")
	if err != nil {
		t.Fatal(err)
	}
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		var doc map[string]any
		if err := json.Unmarshal(data, &doc); err != nil {
			t.Fatal(err)
		}
		if group := doc["group"]; group == "reliability" || group == "place" {
			continue // seconds each; the first has the inputs of sobol, the second is flat
		}
		inputs := doc["inputs"].(map[string]any)
		before := answer(t, doc)
		for name := range inputs {
			if known(doc["group"].(string), name) || name == "readings" || name == "pairs" {
				continue // the kinds of measuring describe their own readings
			}
			kept := inputs[name]
			delete(inputs, name)
			if after := answer(t, doc); !reflect.DeepEqual(before, after) {
				t.Errorf("%s: %s counts and no question knows it", file, name)
			}
			inputs[name] = kept
		}
	}
}

func answer(t *testing.T, doc map[string]any) any {
	t.Helper()
	data, err := json.Marshal(doc)
	if err != nil {
		t.Fatal(err)
	}
	result, err := Run(data)
	if err != nil {
		return err.Error()
	}
	return result.Results
}

// known reports whether a question of the group has the input, or holds it fixed.
func known(group, name string) bool {
	return slices.ContainsFunc(Questions(), func(q Question) bool {
		_, fixed := q.fixed[name]
		return q.Group == group && (fixed || slices.ContainsFunc(q.Inputs, func(in Input) bool {
			first, _, _ := strings.Cut(in.Path, ".")
			return first == name
		}))
	})
}

func TestWrittenInputsThatAreRefused(t *testing.T) {
	for name, c := range map[string]struct{ question, path, text, want string }{
		"no number":        {"swing-time", "L", "three", "expected a number from 0.2 to 60"},
		"out of range":     {"swing-time", "L", "600", "expected a number from 0.2 to 60"},
		"not a number":     {"swing-time", "L", "NaN", "expected a number"},
		"short line":       {"room-under-swing", "ground_x_y", "1 2; 3", "line 2: 1 entries; expected 2"},
		"half a rope":      {"gear-chain", "links", "a 1 1 1 1 - - 1.5 0 -", "count: \"1.5\"; expected a whole number"},
		"no such way":      {"wind-on-tree", "speed", "breeze", "expected gust or mean"},
		"half a half":      {"swing-against-air", "half_swings", "2.5", "expected a whole number"},
		"too many letters": {"swing-time", "amplitude_deg", "30 x", "expected a number"},
	} {
		q, ok := QuestionByID(c.question)
		if !ok {
			t.Fatal(c.question)
		}
		written := q.Examples()
		written[c.path] = c.text
		_, faults := q.Document(written)
		if len(faults) != 1 || faults[0].Path != c.path || !strings.Contains(faults[0].Reason, c.want) {
			t.Errorf("%s: %v", name, faults)
		}
	}
}

// 3 m to 60 degrees: the pull of a pendulum at its lowest point is 3 - 2 cos 60
// = 2 times the weight, exactly (conservation of energy).
func TestAQuestionWorkedByHand(t *testing.T) {
	q, _ := QuestionByID("swing-time")
	results, _, err := q.Answer(map[string]string{"L": "3", "amplitude_deg": "60"})
	if err != nil {
		t.Fatal(err)
	}
	if pull := results.(map[string]any)["peak_tension_over_mg"].(map[string]any)["60"].(float64); pull < 1.9999999 || pull > 2.0000001 {
		t.Errorf("pull %v", pull)
	}
}
