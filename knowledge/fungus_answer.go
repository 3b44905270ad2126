package knowledge

import (
	"slices"
	"strconv"
	"strings"

	"boughline/engine/fungi"
)

// FungusChoices lists the answers to a question that a list can hold: how each
// is shown, in order. A question for the kind of tree has none: any name does.
func (b *Base) FungusChoices(attribute string) []string {
	kind, names := b.fungusKey.choices(attribute)
	shown := make([]string, len(names))
	for i, n := range names {
		shown[i] = n
		if label, ok := b.fungusKey.labels[kind+"/"+n]; ok && kind != fungi.WordColour {
			shown[i] = label
		}
	}
	return shown
}

// FungusQuestion is the text of the question for an attribute; ok is false for
// what the key never asks.
func (b *Base) FungusQuestion(attribute string) (text string, ok bool) {
	for _, q := range b.fungusKey.questions {
		if q.Attribute == attribute {
			return q.text, true
		}
	}
	return "", false
}

// choices lists the names of an attribute and their kind of word.
func (k fungusKey) choices(attribute string) (kind string, names []string) {
	switch attribute {
	case fungi.AskHost:
		return fungi.WordHost, nil
	case fungi.AskPosition:
		return fungi.WordPosition, k.words.Positions
	case fungi.AskForm:
		return fungi.WordForm, k.words.Forms
	case fungi.AskUnderside:
		return fungi.WordUnderside, k.words.Undersides
	}
	if _, ok := fungi.ColourAsked(attribute); ok {
		return fungi.WordColour, k.words.Colours
	}
	return fungi.WordMark, []string{fungi.Yes, fungi.No}
}

// AnswerFungus adds the answer to one question: the number of a choice, several
// numbers, or words. Words that tell something else are taken as well; the
// question then stands. told is false where the answer says that it cannot be
// told, understood is false where it could not be read. The evidence is then as
// it was.
func (b *Base) AnswerFungus(e fungi.Evidence, attribute, text string) (after fungi.Evidence, told, understood bool) {
	text = strings.TrimSpace(text)
	if text == "" || text == "0" || b.fungusKey.lexicon().Unseen(text) {
		return e, false, true
	}
	for _, answer := range b.answersIn(attribute, text) {
		e, told = e.With(attribute, answer), true
	}
	if told {
		return e, true, true
	}
	if more := b.fungusKey.lexicon().Read([]string{text}); more.Answers() > 0 {
		return e.Over(more), true, true
	}
	return e, false, false
}

// answersIn lists the names that an answer stands for.
func (b *Base) answersIn(attribute, text string) []string {
	_, names := b.fungusKey.choices(attribute)
	if picked, ok := numbered(text, names); ok {
		return picked
	}
	if attribute == fungi.AskHost {
		host := b.hostOf(text)
		if host == "" {
			host = b.fungusKey.lexicon().Read([]string{text}).Host
		}
		return nonEmpty(host)
	}
	plain := strings.ReplaceAll(strings.ToLower(text), " ", "_")
	if slices.Contains(names, plain) {
		return []string{plain}
	}
	if i := slices.IndexFunc(b.FungusChoices(attribute), func(shown string) bool { return strings.EqualFold(shown, text) }); i >= 0 {
		return names[i : i+1]
	}
	if slices.Equal(names, []string{fungi.Yes, fungi.No}) {
		return yesOrNo(plain)
	}
	return b.fungusKey.lexicon().Read([]string{text}).Names(attribute)
}

func nonEmpty(name string) []string {
	if name == "" {
		return nil
	}
	return []string{name}
}

func yesOrNo(text string) []string {
	switch text {
	case "y", "yes_it_does", "yes_there_is", "yes_there_are":
		return []string{fungi.Yes}
	case "n", "no_it_does_not", "none":
		return []string{fungi.No}
	}
	return nil
}

// numbered reads numbers of choices, the first of which is 1.
func numbered(text string, names []string) (picked []string, ok bool) {
	for _, field := range strings.FieldsFunc(text, func(c rune) bool { return c == ',' || c == ' ' || c == ';' }) {
		n, err := strconv.Atoi(field)
		if err != nil || n < 1 || n > len(names) {
			return nil, false
		}
		picked = append(picked, names[n-1])
	}
	return picked, len(picked) > 0
}
