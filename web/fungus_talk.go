package web

import (
	"cmp"
	"net/url"
	"slices"
	"strings"

	"boughline/engine/fungi"
	"boughline/knowledge"
	"boughline/web/view"
	"boughline/web/words"
)

// fungusTalk is what somebody said of a fungus so far. All of it stands in the
// address: nothing is kept between two pages.
type fungusTalk struct {
	said     []fungusSaid
	problems []string
	typed    string // an answer in words that could not be read

	evidence fungi.Evidence
	skipped  []string // what cannot be told
}

// fungusSaid is one answer, or free words, which answer no question.
type fungusSaid struct{ attribute, text string }

// Much more than a person says; so that no address keeps a phone busy.
const (
	mostSaid    = 60
	longestSaid = 400 // bytes
)

// cannotTell is how the address holds an answer that cannot be told.
const cannotTell = "0"

// fungusTalkOf reads what an address or a form holds.
func fungusTalkOf(k *knowledge.Base, values url.Values) *fungusTalk {
	t := &fungusTalk{}
	var entries []fungusSaid
	for _, text := range values["say"] {
		entries = append(entries, fungusSaid{text: text})
	}
	for _, answer := range values["answer"] {
		attribute, text, _ := strings.Cut(answer, ":")
		entries = append(entries, fungusSaid{attribute, text})
	}
	if asked := values.Get("asked"); asked != "" {
		entries = append(entries, fungusSaid{asked, values.Get("other")})
		t.typed = values.Get("other")
	}
	entries = slices.DeleteFunc(entries, func(s fungusSaid) bool { return s.attribute == "" && strings.TrimSpace(s.text) == "" })
	if len(entries) > mostSaid || slices.ContainsFunc(entries, func(s fungusSaid) bool { return len(s.text) > longestSaid }) {
		t.problems = append(t.problems, words.FungusTooMuch)
		entries = slices.DeleteFunc(entries, func(s fungusSaid) bool { return len(s.text) > longestSaid })
		entries = entries[:min(len(entries), mostSaid)]
	}
	t.read(k, entries)
	return t
}

// read takes the free words first: answers are laid over them.
func (t *fungusTalk) read(k *knowledge.Base, entries []fungusSaid) {
	var free []string
	for _, s := range entries {
		if s.attribute == "" {
			free = append(free, strings.Split(s.text, ";")...)
			t.said = append(t.said, s)
		}
	}
	t.evidence = k.Evidence(knowledge.Description{Words: free})
	for _, s := range entries {
		if s.attribute != "" {
			t.answer(k, s)
		}
	}
}

func (t *fungusTalk) answer(k *knowledge.Base, s fungusSaid) {
	question, ok := k.FungusQuestion(s.attribute)
	if !ok {
		t.problems = append(t.problems, "“"+s.attribute+"” "+words.FungusNoSuch)
		return
	}
	after, told, understood := k.AnswerFungus(t.evidence, s.attribute, s.text)
	if !understood || !told && strings.TrimSpace(s.text) == "" {
		t.problems = append(t.problems, "“"+s.text+"” "+words.FungusNoAnswer+" "+question)
		return
	}
	if !told {
		s.text = cannotTell
		t.skipped = append(t.skipped, s.attribute)
	}
	if s.text == t.typed {
		t.typed = ""
	}
	t.evidence, t.said = after, append(t.said, s)
}

// begins reports whether nothing was said yet beside where it grows.
func (t *fungusTalk) begins() bool {
	return !slices.ContainsFunc(t.said, func(s fungusSaid) bool {
		return s.attribute != fungi.AskHost && s.attribute != fungi.AskPosition
	})
}

// field is what a form or an address holds of an answer.
func (s fungusSaid) field() view.Choice {
	if s.attribute == "" {
		return view.Choice{Value: "say", Text: s.text}
	}
	return view.Choice{Value: "answer", Text: s.attribute + ":" + s.text}
}

func (t *fungusTalk) fields() []view.Choice {
	var list []view.Choice
	for _, s := range t.said {
		list = append(list, s.field())
	}
	return list
}

// without is the address of the same talk when one thing is taken back.
func (t *fungusTalk) without(path string, i int) string {
	return fungusAddress(path, slices.Delete(slices.Clone(t.said), i, i+1))
}

func fungusAddress(path string, said []fungusSaid) string {
	values := url.Values{}
	for _, s := range said {
		f := s.field()
		values.Add(f.Value, f.Text)
	}
	// An address that says nothing differs from the one the key begins with.
	return path + "?" + cmp.Or(values.Encode(), "say=")
}

// given lists what was said, each with the address without it.
func (t *fungusTalk) given(k *knowledge.Base, path string) []view.FungusGiven {
	var list []view.FungusGiven
	for i, s := range t.said {
		g := view.FungusGiven{What: words.FungusWords, Text: s.text, Without: t.without(path, i)}
		if s.attribute != "" {
			g.What, _ = k.FungusQuestion(s.attribute)
			g.Text = words.FungusChoice(s.text)
		}
		if s.attribute != "" && s.text == cannotTell {
			g.Text = words.CannotTell
		}
		list = append(list, g)
	}
	return list
}
