package knowledge

import (
	"encoding/json"
	"os"
	"slices"
	"testing"

	"boughline/engine/fungi"
)

// described is one field description with what it is, written from the source
// it names. Every second one was held out of all tuning.
type described struct {
	ID     string `json:"id"`
	Half   string `json:"half"`
	Source string `json:"source"`
	Inputs struct {
		Host      string   `json:"host"`
		Position  []string `json:"position"`
		Month     int      `json:"month"`
		Form      string   `json:"form"`
		Underside string   `json:"underside_type"`
		Words     []string `json:"words"`
	} `json:"inputs"`
	Expected struct {
		Says  string   `json:"says"`
		First []string `json:"first_any_of"`
	} `json:"expected"`
}

func descriptions(t *testing.T) []described {
	t.Helper()
	data, err := os.ReadFile("testdata/fungus_descriptions.json")
	if err != nil {
		t.Fatal(err)
	}
	var all []described
	if err := json.Unmarshal(data, &all); err != nil {
		t.Fatal(err)
	}
	return all
}

func (d described) description() Description {
	in := d.Inputs
	return Description{Host: in.Host, Positions: in.Position, Month: in.Month, Form: in.Form, Underside: in.Underside, Words: in.Words}
}

// score counts over one part of the descriptions.
type score struct {
	fungi, first, three, meaning int // of decay fungi: the right one first, among three, and a meaning no milder
	harmless, condemned, unsure  int // of harmless things: named as a fungus that counts against the tree, or left open
	short, caught                int // of those that say too little
}

func (s *score) add(d described, id Identification) {
	switch d.Expected.Says {
	case "nothing":
		s.harmless++
		s.condemned += count(id.Answer == fungi.Named || id.Answer == fungi.Unknown)
		s.unsure += count(id.Answer == fungi.NotEnoughSeen)
		return
	case "not-enough":
		s.short++
		s.caught += count(id.Answer == fungi.NotEnoughSeen)
		return
	}
	rank := slices.IndexFunc(id.Ranking(), func(r RankedName) bool { return slices.Contains(d.Expected.First, r.Name) })
	advice := map[string]fungi.Advice{"limb": fungi.NotThisPart, "measure": fungi.MeasureFirst, "no-people": fungi.NoPeople}
	s.fungi++
	s.first += count(rank == 0)
	s.three += count(rank >= 0 && rank < 3)
	s.meaning += count(id.Answer == fungi.Named && id.Meaning.Advice >= advice[d.Expected.Says])
}

func count(yes bool) int {
	if yes {
		return 1
	}
	return 0
}

// The scores of the key on descriptions from published texts (the source
// stands in the file). "tuned" and "held out" are every second one of those
// written before the key; "later" were written after it, and 5 of the first 18
// harmless ones of them were not put aside until the words were widened. All
// share one author with the word lists, so they flatter the key. The least
// asked for of a set that nobody tuned on is 70 % first, 92 % among three.
func TestDescriptions(t *testing.T) {
	b := base(t)
	scores := map[string]*score{"tuned": {}, "held out": {}, "later": {}}
	for _, d := range descriptions(t) {
		if d.Source == "" {
			t.Errorf("%s names no source", d.ID)
		}
		scores[d.Half].add(d, b.IdentifyFungus(d.description()))
	}
	for half, want := range map[string]score{
		"tuned":    {fungi: 32, first: 32, three: 32, meaning: 32, harmless: 11, short: 3, caught: 3},
		"held out": {fungi: 32, first: 32, three: 32, meaning: 32, harmless: 11, short: 2, caught: 2},
		"later":    {fungi: 36, first: 35, three: 36, meaning: 36, harmless: 34, condemned: 1, unsure: 1, short: 4, caught: 4},
	} {
		if got := *scores[half]; got != want {
			t.Errorf("%s: got %+v, want %+v", half, got, want)
		}
	}
}
