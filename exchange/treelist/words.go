package treelist

import (
	_ "embed"
	"encoding/csv"
	"slices"
	"strings"
	"sync"
	"unicode"

	"golang.org/x/text/unicode/norm"
)

// wordsText holds plain words of several languages for the columns of a list
// of trees, without accents, ä as ae or a.
//
//go:embed words.csv
var wordsText string

// phrases leads from the words of a heading to the field.
var phrases = sync.OnceValue(func() map[string]Field {
	rows, err := csv.NewReader(strings.NewReader(wordsText)).ReadAll()
	if err != nil {
		panic("words.csv: " + err.Error()) // embedded, a fault of the build
	}
	found := map[string]Field{}
	for _, row := range rows[1:] {
		for phrase := range strings.SplitSeq(row[2], "|") {
			if _, taken := found[phrase]; !taken {
				found[phrase] = Field(row[0])
			}
		}
	}
	return found
})

// letters that do not come apart into a letter and an accent.
var letters = strings.NewReplacer("ß", "ss", "ø", "o", "æ", "ae", "œ", "oe", "ł", "l", "đ", "d")

// plainWords are the words of a heading in small letters without accents.
func plainWords(heading string) []string {
	heading = letters.Replace(strings.ToLower(heading))
	var b strings.Builder
	for _, r := range norm.NFD.String(heading) {
		switch {
		case unicode.Is(unicode.Mn, r):
		case unicode.IsLetter(r) || unicode.IsDigit(r) || r == '"':
			b.WriteRune(r)
		default:
			b.WriteByte(' ')
		}
	}
	return strings.Fields(strings.ReplaceAll(b.String(), `"`, ` " `))
}

// match finds the field of a heading, by the most of its words. A heading that
// holds the word for a tree besides another is about the other.
func match(words []string) (Field, int) {
	best, most := Keep, 0
	for from := range words {
		for to := len(words); to > from; to-- {
			field, ok := fieldOf(words[from:to])
			n := 2 * (to - from)
			if field == TreeID || field == Name {
				n--
			}
			if ok && n > most {
				best, most = field, n
			}
		}
	}
	return best, most
}

// fieldOf looks words up, also with ä, ö and ü spelled out.
func fieldOf(words []string) (Field, bool) {
	phrase := strings.Join(words, " ")
	if field, ok := phrases()[phrase]; ok {
		return field, true
	}
	for known, field := range phrases() {
		if strings.ContainsAny(known, "e") && spelled.Replace(known) == phrase {
			return field, true
		}
	}
	return "", false
}

var spelled = strings.NewReplacer("ae", "a", "oe", "o", "ue", "u")

// unitOf finds the unit of a heading and gives the words without it. The
// English and German "in" is a unit only where no other stands there.
func unitOf(words []string) (unit string, rest []string) {
	names := map[string]string{
		"mm": "mm", "cm": "cm", "m": "m", "metre": "m", "metres": "m", "meter": "m", "meters": "m", "centimetres": "cm", "centimeters": "cm",
		"ft": "ft", "feet": "ft", "foot": "ft", "in": "in", "inch": "in", "inches": "in", `"`: "in", "zoll": "in",
	}
	for i, word := range words {
		if i > 0 && strings.Trim(words[i-1], "0123456789") == "" {
			continue // of a place, as in girth at 1.3 m
		}
		if found, ok := names[word]; ok && (unit == "" || unit == "in") {
			unit = found
		}
	}
	rest = slices.DeleteFunc(slices.Clone(words), func(word string) bool { _, ok := names[word]; return ok })
	return unit, rest
}
