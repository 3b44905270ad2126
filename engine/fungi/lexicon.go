package fungi

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"github.com/agnivade/levenshtein"
)

// Kinds of words.
const (
	WordColour    = "colour"
	WordField     = "field"
	WordMark      = "mark"
	WordForm      = "form"
	WordUnderside = "underside"
	WordPosition  = "position"
	WordHost      = "host"
	WordSize      = "size" // the concept is the size in cm
	WordNegation  = "negation"
	WordUnseen    = "unseen"
)

// Words are the ways in which people say one concept. Of several words in one
// way all must stand in the same clause, in any order; those of a colour stand
// side by side.
type Words struct {
	Kind, Concept string
	Ways          []string
}

// Lexicon reads free words.
type Lexicon struct {
	ways  []way
	known map[string]bool // stems that stand in any way
	stems []string        // the same, sorted
}

type way struct {
	kind, concept string
	stems         []string
}

// NewLexicon prepares the words. A way of more words goes before one of fewer:
// "bruises black" is a mark, and no colour. Errors name a way without words.
func NewLexicon(words []Words) (*Lexicon, error) {
	l := &Lexicon{known: map[string]bool{}}
	for _, w := range words {
		for _, text := range w.Ways {
			stems := tokens(text)
			if len(stems) == 0 {
				return nil, fmt.Errorf("%s %s: %q holds no word", w.Kind, w.Concept, text)
			}
			l.ways = append(l.ways, way{w.Kind, w.Concept, stems})
			for _, s := range stems {
				l.known[s] = true
			}
		}
	}
	for s := range l.known {
		l.stems = append(l.stems, s)
	}
	slices.Sort(l.stems)
	slices.SortStableFunc(l.ways, func(a, b way) int {
		return cmp.Or(-cmp.Compare(len(a.stems), len(b.stems)), slices.Compare(a.stems, b.stems),
			strings.Compare(a.kind, b.kind), strings.Compare(a.concept, b.concept))
	})
	return l, nil
}

// spelled puts right a word that is not known but one letter off a known one.
// Short words are left alone: too many are one letter apart.
func (l *Lexicon) spelled(stem string) string {
	if l.known[stem] || len(stem) < leastSpelled || len(stem) > longestWord {
		return stem
	}
	found := ""
	for _, s := range l.stems {
		if len(s) >= leastSpelled && levenshtein.ComputeDistance(stem, s) == 1 {
			if found != "" {
				return stem
			}
			found = s
		}
	}
	return cmp.Or(found, stem)
}

// Bounds of the words that are put right.
const (
	leastSpelled = 6
	longestWord  = 30
)

// match is one way found in a clause.
type match struct {
	way
	at     []int // of its words
	denied bool
}

// find lists what a clause says. A word that a longer way has taken is not
// read again by a shorter one.
func (l *Lexicon) find(stems []string) []match {
	var found []match
	claimed := map[string][]int{"": make([]int, len(stems))} // for each sort of word: length of the way that took it
	for _, w := range l.ways {
		sort := w.sort()
		if claimed[sort] == nil {
			claimed[sort] = make([]int, len(stems))
		}
		at := w.in(stems)
		if at == nil || w.blocked(at, claimed[sort]) || w.kind == WordField && w.blocked(at, claimed[""]) {
			continue
		}
		for _, i := range at {
			claimed[sort][i] = len(w.stems)
		}
		found = append(found, match{way: w, at: at})
	}
	deny(found)
	return found
}

// blocked reports whether another way has taken one of the words: a longer
// one, or one as long unless both are single words.
func (w way) blocked(at, claimed []int) bool {
	return slices.ContainsFunc(at, func(i int) bool {
		return claimed[i] > len(w.stems) || claimed[i] == len(w.stems) && len(w.stems) > 1
	})
}

// sort groups the kinds whose words take one another: a form, a part or a size
// may be told by words that also tell a mark.
func (w way) sort() string {
	switch w.kind {
	case WordForm, WordField, WordSize:
		return w.kind
	}
	return ""
}

// in returns where the words of the way stand, nil where one is missing.
func (w way) in(stems []string) []int {
	if w.kind == WordColour {
		for i := range stems {
			if i+len(w.stems) <= len(stems) && slices.Equal(stems[i:i+len(w.stems)], w.stems) {
				return span(i, len(w.stems))
			}
		}
		return nil
	}
	var at []int
	for _, s := range w.stems {
		i := slices.Index(stems, s)
		if i < 0 {
			return nil
		}
		at = append(at, i)
	}
	return at
}

func span(from, n int) []int {
	at := make([]int, n)
	for i := range at {
		at[i] = from + i
	}
	return at
}

// deny marks what stands after a negation in its clause, as long as the
// negation is no word of its own way.
func deny(found []match) {
	for _, m := range found {
		if m.kind != WordNegation {
			continue
		}
		for i := range found {
			if f := &found[i]; f.kind != WordNegation && slices.Min(f.at) > m.at[0] {
				f.denied = true
			}
		}
	}
}
