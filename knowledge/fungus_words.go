package knowledge

import (
	"slices"
	"strings"
	"unicode"

	"boughline/engine/fungi"
)

// fungusWords reads in which words people say what they see, and how often a
// mark is told of something that has it not.
func fungusWords(l *loader) (words []fungi.Words, stray map[string]float64) {
	stray = map[string]float64{}
	for _, r := range l.read("fungus_words") {
		kind, concept, _ := strings.Cut(r.text("id"), "/")
		r.memory()
		w := fungi.Words{Kind: kind, Concept: concept, Ways: r.list("words")}
		if len(w.Ways) == 0 || slices.ContainsFunc(w.Ways, func(text string) bool { return !strings.ContainsFunc(text, unicode.IsLetter) }) {
			r.problem("a way of saying it holds no word")
		}
		words = append(words, w)
		if kind == fungi.WordMark {
			stray[concept] = r.share("stray")
		}
	}
	return words, stray
}

// share reads a number between 0 and 1.
func (r row) share(column string) float64 {
	x := r.number(column)
	if !(x > 0 && x < 1) {
		r.problem("%s is %g; expected a share between 0 and 1", column, x)
	}
	return x
}

// hostNames reads the genera with their groups and common names.
func hostNames(l *loader) (hosts []fungi.Host, words []fungi.Words) {
	for _, r := range l.read("fungus_hosts") {
		r.memory()
		genus := r.text("genus")
		hosts = append(hosts, fungi.Host{Genus: genus, Group: string(r.group())})
		words = append(words, fungi.Words{Kind: fungi.WordHost, Concept: genus, Ways: append(r.list("names"), genus)})
	}
	return hosts, words
}
