package fungi

import (
	"maps"
	"slices"
	"strconv"
	"strings"

	"boughline/quantity"
)

// Read takes what was said in free words, each entry by itself. An entry may
// begin with the part it speaks of and a colon ("underside: yellow"). What
// stands after "no", "not" or "without" in its clause was looked for and not
// there. The order of the entries does not matter.
func (l *Lexicon) Read(entries []string) Evidence {
	r := reading{marks: map[string][2]bool{}, lexicon: l}
	for _, entry := range entries {
		if !r.entry(entry) && strings.TrimSpace(entry) != "" {
			r.e.Unread = append(r.e.Unread, entry)
		}
	}
	return r.evidence()
}

// Unseen reports whether a text says that something was not seen or cannot be
// told.
func (l *Lexicon) Unseen(text string) bool {
	return slices.ContainsFunc(l.find(tokens(text)), func(m match) bool { return m.kind == WordUnseen })
}

// reading gathers what the entries say.
type reading struct {
	lexicon *Lexicon
	e       Evidence
	marks   map[string][2]bool // told to be there, told not to be there
	hosts   []string
	sizes   []float64 // cm
}

func (r *reading) entry(text string) bool {
	topic, text := r.lexicon.topic(text)
	any := false
	for _, clause := range clauses(text) {
		stems := tokens(clause)
		for i, s := range stems {
			stems[i] = r.lexicon.spelled(s)
		}
		found := r.lexicon.find(stems)
		if slices.ContainsFunc(found, func(m match) bool { return m.kind == WordUnseen }) {
			any = true // said that it was not seen
			continue
		}
		if size, ok := measured(clause, topic == topicSize); ok {
			r.sizes = append(r.sizes, size)
			any = true
		}
		any = r.take(found, topic) || any
	}
	return any
}

// topicSize is the topic of an entry that tells how large it is.
const topicSize = "size"

// topic splits off the part that an entry speaks of.
func (l *Lexicon) topic(text string) (topic, rest string) {
	head, rest, ok := strings.Cut(text, ":")
	if !ok || len(strings.Fields(head)) > 3 {
		return "", text
	}
	if strings.EqualFold(strings.TrimSpace(head), topicSize) {
		return topicSize, rest
	}
	for _, m := range l.find(tokens(head)) {
		if m.kind == WordField {
			return m.concept, rest
		}
	}
	return "", text
}

// take adds what was found in one clause and reports whether it was anything.
func (r *reading) take(found []match, topic string) bool {
	any := false
	for _, m := range found {
		any = any || m.kind != WordNegation && m.kind != WordField
		switch m.kind {
		case WordColour:
			if f := fieldOf(m, found, topic); f != "" && !m.denied {
				r.e.Colours = append(r.e.Colours, Seen{f, m.concept})
			}
		case WordMark:
			told := r.marks[m.concept]
			told[boolInt(m.denied)] = true
			r.marks[m.concept] = told
		case WordForm:
			addTo(&r.e.Forms, &r.e.NotForms, m)
		case WordUnderside:
			addTo(&r.e.Undersides, &r.e.NotUnder, m)
		case WordPosition:
			addTo(&r.e.Positions, nil, m)
		case WordHost:
			addTo(&r.hosts, nil, m)
		case WordSize:
			if cm, err := strconv.ParseFloat(m.concept, 64); err == nil && !m.denied {
				r.sizes = append(r.sizes, cm)
			}
		}
	}
	return any
}

func boolInt(b bool) int {
	if b {
		return 1
	}
	return 0
}

func addTo(told, denied *[]string, m match) {
	switch {
	case !m.denied:
		*told = append(*told, m.concept)
	case denied != nil:
		*denied = append(*denied, m.concept)
	}
}

// fieldOf is the part a colour belongs to: the topic of the entry, or the
// nearest part named in the clause, the later one of two. A colour of the
// edge, the stalk or the leaves tells nothing here and gives "".
func fieldOf(m match, found []match, topic string) Field {
	part, nearest := topic, 0
	for _, f := range found {
		if f.kind != WordField || topic != "" {
			continue
		}
		away := f.at[0] - m.at[0]
		if d := 2*max(away, -away) - boolInt(away > 0); part == "" || d < nearest {
			part, nearest = f.concept, d
		}
	}
	switch f := Field(part); {
	case part == "" || part == topicSize:
		return AnyField
	case slices.Contains(fields, f):
		return f
	}
	return ""
}

// evidence puts the reading in order. A mark told both ways was not told.
func (r *reading) evidence() Evidence {
	e := r.e
	e.Positions, e.Forms, e.NotForms = sorted(e.Positions), sorted(e.Forms), without(sorted(e.NotForms), e.Forms)
	e.Undersides, e.NotUnder = sorted(e.Undersides), without(sorted(e.NotUnder), e.Undersides)
	slices.SortFunc(e.Colours, func(a, b Seen) int {
		return strings.Compare(string(a.Field)+a.Colour, string(b.Field)+b.Colour)
	})
	e.Colours = slices.Compact(e.Colours)
	e.Marks = map[string]bool{}
	for _, m := range slices.Sorted(maps.Keys(r.marks)) {
		if told := r.marks[m]; told[0] != told[1] {
			e.Marks[m] = told[0]
		}
	}
	if hosts := sorted(r.hosts); len(hosts) == 1 {
		e.Host = hosts[0]
	}
	if len(r.sizes) > 0 {
		e.Size = quantity.Length(slices.Max(r.sizes) / 100)
	}
	slices.Sort(e.Unread)
	return e
}

func without(list, others []string) []string {
	return slices.DeleteFunc(list, func(n string) bool { return slices.Contains(others, n) })
}

// Over returns the evidence with what was answered directly in front of what
// the free words said of the same attribute. That it grows on a twig counts
// beside any other position.
func (e Evidence) Over(words Evidence) Evidence {
	all := words
	if e.Host != "" {
		all.Host = e.Host
	}
	if len(e.Positions) > 0 {
		all.Positions = slices.Clone(e.Positions)
		if slices.Contains(words.Positions, Twig) {
			all.Positions = sorted(append(all.Positions, Twig))
		}
	}
	if e.Month > 0 {
		all.Month = e.Month
	}
	if len(e.Forms) > 0 {
		all.Forms, all.NotForms = e.Forms, nil
	}
	if len(e.Undersides) > 0 {
		all.Undersides, all.NotUnder = e.Undersides, nil
	}
	if e.Size > 0 {
		all.Size = e.Size
	}
	all.Colours = append(slices.Clone(words.Colours), e.Colours...)
	all.Marks = maps.Clone(words.Marks)
	if all.Marks == nil {
		all.Marks = map[string]bool{}
	}
	maps.Copy(all.Marks, e.Marks)
	all.Unread = append(slices.Clone(words.Unread), e.Unread...)
	return all
}
