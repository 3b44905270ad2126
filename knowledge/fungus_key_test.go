package knowledge

import (
	"math"
	"slices"
	"strings"
	"testing"

	"boughline/engine/fungi"
	"pgregory.net/rapid"
)

// sameGenus reports whether two names share their first word: close relatives
// mean much the same, and their texts part them badly.
func sameGenus(a, b string) bool {
	x, _, _ := strings.Cut(a, " ")
	y, _, _ := strings.Cut(b, " ")
	return x == y
}

// A description made of a row's own attributes names that row.
func TestOwnAttributesNameTheRow(t *testing.T) {
	b := base(t)
	for _, f := range b.Fungi() {
		e := fungi.Evidence{Host: f.Hosts[0], Positions: f.Positions[:1], Month: f.Months[0], Forms: f.Forms[:1], Undersides: f.Undersides[:1], Marks: map[string]bool{}}
		for _, c := range f.YoungColours {
			e.Colours = append(e.Colours, fungi.Seen{Field: fungi.Upper, Colour: c})
		}
		for _, c := range f.UndersideColours {
			e.Colours = append(e.Colours, fungi.Seen{Field: fungi.Underside, Colour: c})
		}
		for _, m := range f.Marks {
			e.Marks[m] = true
		}
		id := b.IdentifyEvidence(e, nil)
		if id.Answer != fungi.Named || id.Ranked[0].Name != f.Name {
			t.Errorf("%s: %s %v", f.Name, id.Answer, id.Ranked[:3])
		}
	}
}

// The texts of a row, read as free words, lead to it or to its genus.
func TestOwnTextsNameTheRow(t *testing.T) {
	b := base(t)
	wrong := 0
	for _, f := range b.Fungi() {
		id := b.IdentifyFungus(Description{Host: f.Hosts[0], Positions: f.Positions[:1], Form: f.Forms[0], Words: append([]string{
			"upper: " + f.UpperYoung, "underside: " + f.Underside, "flesh: " + f.Flesh, "spores: " + f.SporePrint}, f.OtherSigns...)})
		if top := id.Ranked[0].Name; !sameGenus(top, f.Name) {
			t.Logf("%s: %v", f.Name, id.Ranked[:3])
			wrong++
		}
	}
	if wrong > 0 {
		t.Errorf("%d rows are not found by their own texts", wrong)
	}
}

func TestLookalikesAreNamedByTheirOwnRows(t *testing.T) {
	b := base(t)
	all := b.Lookalikes()
	if len(all) < 30 {
		t.Errorf("%d look-alikes, want 30 or more", len(all))
	}
	for _, k := range all {
		e := fungi.Evidence{Positions: k.Positions[:1], Forms: k.Forms[:1], Marks: map[string]bool{}}
		for _, m := range k.Marks {
			e.Marks[m] = true
		}
		for _, c := range k.Colours[fungi.Underside] {
			e.Colours = append(e.Colours, fungi.Seen{Field: fungi.Underside, Colour: c})
		}
		id := b.IdentifyEvidence(e, nil)
		if id.Answer != fungi.PerhapsNone && id.Answer != fungi.HarmlessHere || !slices.Contains(id.Meaning.Remaining, k.Name) {
			t.Errorf("%s: %s %v", k.Name, id.Answer, id.Ranked[:3])
		}
		if k.Meaning == "" || len(k.Refs) == 0 {
			t.Errorf("%s has no meaning or no source", k.Name)
		}
	}
}

// Every row of the fungi has its marks and colours, so that none is found by
// its host alone.
func TestFungiRowsAreWhole(t *testing.T) {
	fungiRows := base(t).Fungi()
	if len(fungiRows) < 35 {
		t.Errorf("%d fungi", len(fungiRows))
	}
	for _, f := range fungiRows {
		if len(f.Marks) < 4 || len(f.YoungColours) == 0 || len(f.OldColours) == 0 || len(f.UndersideColours) == 0 || len(f.FleshColours) == 0 || len(f.SporeColours) == 0 {
			t.Errorf("%s: marks or colours are missing", f.Name)
		}
		if len(f.Refs) == 0 {
			t.Errorf("%s has no source", f.Name)
		}
	}
}

// Every question can be answered by each of its choices, by number and by the
// words shown, and not at all.
func TestEveryQuestionTakesItsAnswers(t *testing.T) {
	b := base(t)
	for _, q := range b.fungusKey.questions {
		for _, text := range []string{"", "0", "cannot tell", "could not see"} {
			if e, told, ok := b.AnswerFungus(fungi.Evidence{}, q.Attribute, text); told || !ok || e.Answers() != 0 {
				t.Errorf("%s: %q was taken for an answer", q.Attribute, text)
			}
		}
		if _, told, ok := b.AnswerFungus(fungi.Evidence{}, q.Attribute, "lorem ipsum"); told || ok {
			t.Errorf("%s: nonsense was understood", q.Attribute)
		}
		choices := b.FungusChoices(q.Attribute)
		_, names := b.fungusKey.choices(q.Attribute)
		for i, shown := range choices {
			for _, text := range []string{shown, names[i], " " + strings.ToUpper(names[i])} {
				e, told, ok := b.AnswerFungus(fungi.Evidence{}, q.Attribute, text)
				if !told || !ok || !slices.Equal(e.Names(q.Attribute), names[i:i+1]) {
					t.Errorf("%s: %q was read as %v %v %v", q.Attribute, text, e.Names(q.Attribute), told, ok)
				}
			}
		}
	}
	if e, _, ok := b.AnswerFungus(fungi.Evidence{}, fungi.AskForm, "1, 2"); !ok || len(e.Forms) != 2 {
		t.Errorf("two numbers were read as %v", e.Forms)
	}
	if e, _, ok := b.AnswerFungus(fungi.Evidence{}, fungi.AskHost, "an old copper beech"); !ok || e.Host != "Fagus" {
		t.Errorf("a tree in words was read as %q", e.Host)
	}
}

// "Cannot tell" is the same as an answer left out, and order does not matter.
func TestCannotTellIsLeftOut(t *testing.T) {
	b := base(t)
	all := descriptions(t)
	rapid.Check(t, func(t *rapid.T) {
		d := rapid.SampledFrom(all).Draw(t, "description").description()
		with := d
		with.Words = rapid.Permutation(append(slices.Clone(d.Words), "cannot tell", "the underside: could not see")).Draw(t, "words")
		with.Positions = rapid.Permutation(d.Positions).Draw(t, "positions")
		if with.Form == "" {
			with.Form = "cannot tell"
		}
		a, b := b.IdentifyFungus(d), b.IdentifyFungus(with)
		if a.Answer != b.Answer || a.Says != b.Says || math.Abs(a.Ranked[0].Probability-b.Ranked[0].Probability) > 1e-9 {
			t.Fatalf("%+v\n%+v", a.Evidence, b.Evidence)
		}
	})
}

func TestRankingSumsToOneAtMost(t *testing.T) {
	b := base(t)
	for _, d := range descriptions(t) {
		id := b.IdentifyFungus(d.description())
		sum, last := 0.0, 1.0
		for _, one := range id.Ranking() {
			if one.Probability > last {
				t.Errorf("%s: out of order", d.ID)
			}
			sum, last = sum+one.Probability, one.Probability
		}
		if sum > 1+1e-9 {
			t.Errorf("%s: the probabilities sum to %g", d.ID, sum)
		}
	}
}

// Nothing that the key says calls a tree safe or puts an unknown aside.
func TestMeaningsNeverCallSafe(t *testing.T) {
	b := base(t)
	for _, d := range append(descriptions(t), described{ID: "nothing said"}) {
		id := b.IdentifyFungus(d.description())
		if id.Says == "" || strings.Contains(strings.ToLower(id.Says), "safe") {
			t.Errorf("%s: %q", d.ID, id.Says)
		}
		if id.Answer == fungi.NotEnoughSeen && !strings.Contains(id.Says, "counts as the worst") {
			t.Errorf("%s: %q", d.ID, id.Says)
		}
		if len(id.Refs) == 0 {
			t.Errorf("%s rests on no source", d.ID)
		}
	}
}

func FuzzIdentifyFungus(f *testing.F) {
	for _, d := range []string{"black crust at the foot of a beech", "no pores, white sheet under bark", "dead twig, 3 cm across", "\xff:;"} {
		f.Add(d, "oak", 8)
	}
	b, err := Load()
	if err != nil {
		f.Fatal(err)
	}
	f.Fuzz(func(t *testing.T, words, host string, month int) {
		id := b.IdentifyFungus(Description{Host: host, Month: month, Form: words, Words: []string{words}})
		sum := 0.0
		for _, one := range id.Ranked {
			sum += one.Probability
		}
		if math.IsNaN(sum) || sum > 1+1e-9 || id.Says == "" {
			t.Errorf("%q on %q: sum %g", words, host, sum)
		}
	})
}
