package knowledge

import (
	"cmp"
	"slices"
	"strings"
	"unicode"

	"github.com/agnivade/levenshtein"
	"golang.org/x/text/unicode/norm"
)

// SpeciesSearch is what a name of a tree finds.
type SpeciesSearch struct {
	Found  *Species  // the species meant, nil where none or more than one is
	Others []Species // the others that the name may mean, by scientific name
	Near   []string  // names that are spelled nearly so, where nothing is found
}

// FindSpecies looks a tree up by any name it has: scientific or common,
// British or American, a synonym; whatever the case, accents, hyphens and order
// of words. Where no name is just so, the beginnings of its words do as long as
// they fit one species only. A genus or a word that several have in common
// lists them.
func (b *Base) FindSpecies(name string) SpeciesSearch {
	words := nameWords(name)
	if len(words) == 0 {
		return SpeciesSearch{}
	}
	var exact, begins []Species
	for _, s := range b.species {
		switch s.matches(words) {
		case sameName:
			exact = append(exact, s)
		case begunName:
			begins = append(begins, s)
		}
	}
	for _, list := range [][]Species{exact, begins} {
		slices.SortFunc(list, func(a, b Species) int { return cmp.Compare(a.Scientific, b.Scientific) })
	}
	switch {
	case len(exact) == 1:
		return SpeciesSearch{Found: &exact[0], Others: begins}
	case len(exact) == 0 && len(begins) == 1:
		return SpeciesSearch{Found: &begins[0]}
	case len(exact)+len(begins) > 0:
		return SpeciesSearch{Others: append(exact, begins...)}
	}
	return SpeciesSearch{Near: b.nearNames(name)}
}

// How well a species fits a name.
type fit int

const (
	otherName fit = iota
	begunName     // each word begins a word of one of its names
	sameName
)

func (s Species) matches(words []string) fit {
	best := otherName
	for _, name := range append([]string{s.Scientific, s.Common}, s.Names...) {
		best = max(best, fits(words, nameWords(name)))
	}
	return best
}

// fits compares words in any order; "honey locust" is "honeylocust" too.
func fits(words, name []string) fit {
	if slices.Equal(slices.Sorted(slices.Values(words)), slices.Sorted(slices.Values(name))) || strings.Join(words, "") == strings.Join(name, "") {
		return sameName
	}
	free := slices.Clone(name)
	for _, w := range words {
		i := slices.IndexFunc(free, func(n string) bool { return strings.HasPrefix(n, w) })
		if i < 0 {
			return otherName
		}
		free = slices.Delete(free, i, i+1)
	}
	return begunName
}

// nameWords are the words of a name in lower case, without accents,
// punctuation and hybrid signs.
func nameWords(name string) []string {
	plain := strings.Map(func(c rune) rune {
		switch {
		case unicode.Is(unicode.Mn, c) || c == '\'' || c == '’':
			return -1
		case !unicode.IsLetter(c):
			return ' '
		}
		return unicode.ToLower(c)
	}, norm.NFD.String(name))
	return slices.DeleteFunc(strings.Fields(plain), func(w string) bool { return w == "x" || w == "tree" })
}

// nearNames lists names that differ in few letters, the nearest first.
func (b *Base) nearNames(name string) []string {
	const most, longest = 5, 60 // names listed, letters compared
	text := strings.ToLower(name)
	if len(text) > longest {
		return nil
	}
	type near struct {
		name string
		away int
	}
	var list []near
	for _, s := range b.species {
		for _, n := range append([]string{s.Scientific, s.Common}, s.Names...) {
			if d := levenshtein.ComputeDistance(text, strings.ToLower(n)); d <= max(1, len(text)/4) {
				list = append(list, near{n, d})
			}
		}
	}
	slices.SortFunc(list, func(a, b near) int { return cmp.Or(cmp.Compare(a.away, b.away), cmp.Compare(a.name, b.name)) })
	var names []string
	for _, n := range list[:min(most, len(list))] {
		names = append(names, n.name)
	}
	return names
}
