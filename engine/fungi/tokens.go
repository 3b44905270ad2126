package fungi

import (
	"strings"
	"unicode"

	"github.com/kljensen/snowball/english"
)

// tokens are the stems of the words of a text, in lower case (Porter's second
// stemmer of English, by the library). Apostrophes belong to a word, hyphens
// part words.
func tokens(text string) []string {
	words := strings.FieldsFunc(plain(text), func(c rune) bool {
		return !unicode.IsLetter(c) && !unicode.IsDigit(c) && c != '\''
	})
	stems := words[:0]
	for _, w := range words {
		if w = strings.Trim(w, "'"); w != "" {
			stems = append(stems, english.Stem(w, false))
		}
	}
	return stems
}

func plain(text string) string {
	return strings.ToLower(strings.ReplaceAll(text, "’", "'"))
}

// clauses breaks what was said at stops and at "but", so that a word and what
// it belongs to stay together.
func clauses(text string) []string {
	for _, stop := range []string{" but ", " though ", " yet ", " – ", " — ", " - "} {
		text = strings.ReplaceAll(text, stop, ",")
	}
	return strings.FieldsFunc(text, func(c rune) bool { return strings.ContainsRune(",;.:()/\n", c) })
}
