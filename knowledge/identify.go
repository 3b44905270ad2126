package knowledge

import (
	"slices"
	"strings"

	"boughline/engine/fungi"
	"boughline/quantity"
	"boughline/source"
)

// Description is what somebody tells of a growth on a tree. Every answer may
// be left out or say that it cannot be told.
type Description struct {
	Host      string // a kind of tree by any name, a genus, or a group
	Positions []string
	Month     int
	Form      string
	Underside string
	Size      quantity.Length
	Words     []string // free words, each by itself: "underside: yellow", "black laces"
}

// Identification is what the key makes of a description.
type Identification struct {
	fungi.Result
	Evidence fungi.Evidence  // how the description was read
	Ask      *fungi.Question // the question that would part the candidates best
	AskText  string
	Says     string // what all that remain mean together, in words
	Refs     []source.Ref
	Memory   bool // some of what it rests on is from memory

	base *Base
}

// Evidence reads a description. What is no name of the tables is read as free
// words; what cannot be read at all stands in Unread and counts for nothing.
func (b *Base) Evidence(d Description) fungi.Evidence {
	k := b.fungusKey
	e := fungi.Evidence{Month: d.Month, Size: max(d.Size, 0)}
	if d.Month < 1 || d.Month > 12 {
		e.Month = 0
	}
	words := slices.Clone(d.Words)
	e.Host = b.hostOf(d.Host)
	if e.Host == "" {
		words = append(words, d.Host)
	}
	for _, p := range d.Positions {
		words = nameOrWords(p, k.words.Positions, &e.Positions, words)
	}
	words = nameOrWords(d.Form, k.words.Forms, &e.Forms, words)
	words = nameOrWords(d.Underside, k.words.Undersides, &e.Undersides, words)
	return e.Over(k.lexicon().Read(words))
}

// nameOrWords puts text among the names of an attribute if it is one, and
// among the free words if not.
func nameOrWords(text string, names []string, into *[]string, words []string) []string {
	name := strings.NewReplacer(" ", "_", "-", "_").Replace(strings.ToLower(strings.TrimSpace(text)))
	if slices.Contains(names, name) {
		*into = append(*into, name)
		return words
	}
	return append(words, text)
}

// hostOf is the genus that a name of a tree stands for, or a group of hosts,
// or empty.
func (b *Base) hostOf(name string) string {
	plain := plainName(name)
	for _, h := range b.fungusKey.words.Hosts {
		if plain == plainName(h.Genus) || plain != "" && strings.HasPrefix(plain, plainName(h.Genus)+" ") {
			return h.Genus
		}
	}
	switch plain {
	case "broadleaf", "hardwood", "broadleaves", "deciduous":
		return string(Broadleaf)
	case "conifer", "softwood", "conifers", "evergreen conifer":
		return string(Conifer)
	}
	if s, ok := b.Species(name); ok {
		return b.hostOf(s.Scientific)
	}
	return ""
}

// IdentifyFungus names what was described, as likely as it is, and says what
// follows. It is a help: a mycologist names fungi, an arborist judges the tree.
func (b *Base) IdentifyFungus(d Description) Identification {
	return b.IdentifyEvidence(b.Evidence(d), nil)
}

// IdentifyEvidence does the same for evidence that Evidence or AnswerFungus
// returned. Attributes in skipped are not asked for again: those who look can
// not tell.
func (b *Base) IdentifyEvidence(e fungi.Evidence, skipped []string) Identification {
	k := b.fungusKey
	result, err := k.key().Identify(e)
	if err != nil { // both hold names of the tables only
		panic("knowledge: " + err.Error())
	}
	id := Identification{Result: result, Evidence: e, Says: b.meaningText(result), base: b}
	var askable []fungi.Askable
	for _, q := range k.questions {
		if !slices.Contains(skipped, q.Attribute) {
			askable = append(askable, q.Askable)
		}
	}
	if q, ok := k.key().Ask(e, askable); ok {
		id.Ask, id.AskText = &q, b.questionText(q.Attribute)
	}
	id.Refs, id.Memory = b.refsOf(result.Meaning.Remaining)
	return id
}

func (b *Base) questionText(attribute string) string {
	i := slices.IndexFunc(b.fungusKey.questions, func(q fungusQuestion) bool { return q.Attribute == attribute })
	return b.fungusKey.questions[i].text
}

// refsOf gathers the sources of several rows, each once.
func (b *Base) refsOf(names []string) (refs []source.Ref, memory bool) {
	add := func(more []source.Ref) {
		for _, r := range more {
			if !slices.Contains(refs, r) {
				refs = append(refs, r)
			}
		}
	}
	for _, name := range names {
		if f, ok := b.Fungus(name); ok {
			add(f.Refs)
			memory = memory || f.FromMemory || f.PartlyFromMemory
			continue
		}
		if k, ok := b.lookalike(name); ok {
			add(k.Refs)
			memory = memory || k.FromMemory || k.PartlyFromMemory
		}
	}
	return refs, memory
}
