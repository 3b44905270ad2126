package knowledge

import (
	"slices"
	"sync"

	"boughline/engine/fungi"
)

// fungusKey is the key with its words and questions.
type fungusKey struct {
	build      func() worked
	words      fungi.Vocabulary
	questions  []fungusQuestion
	lookalikes []Lookalike
	labels     map[string]string // how a name of the vocabulary is shown, by kind and name
}

// worked is the knowledge worked into a key and a lexicon. That takes longer
// than to read all the tables, so it is done when something is to be named.
type worked struct {
	key     *fungi.Key
	lexicon *fungi.Lexicon
}

func (k fungusKey) key() *fungi.Key         { return k.build().key }
func (k fungusKey) lexicon() *fungi.Lexicon { return k.build().lexicon }

type fungusQuestion struct {
	fungi.Askable
	text string
}

// loadFungusKey works the tables of the fungi into a key.
func loadFungusKey(l *loader, rows []Fungus) fungusKey {
	hosts, hostWords := hostNames(l)
	words, stray := fungusWords(l)
	k := fungusKey{lookalikes: loadLookalikes(l), questions: loadQuestions(l)}
	k.words = vocabulary(words, hosts, stray)
	mixed(l, &k.words)
	k.labels = map[string]string{}
	for _, w := range words {
		if len(w.Ways) > 0 {
			k.labels[w.Kind+"/"+w.Concept] = w.Ways[0]
		}
	}
	all, trust := candidates(rows, k.lookalikes), loadTrust(l)
	if err := fungi.Check(k.words, all); err != nil {
		l.report("fungi.csv or fungus_lookalikes.csv: %w", err)
	}
	k.build = sync.OnceValue(func() worked { return work(k.words, trust, all, append(words, hostWords...)) })
	return k
}

// work builds the key. Load has checked all that it is built from.
func work(v fungi.Vocabulary, t fungi.Trust, all []fungi.Candidate, words []fungi.Words) worked {
	lexicon, err := fungi.NewLexicon(words)
	if err != nil {
		panic("knowledge: " + err.Error())
	}
	key, err := fungi.New(v, t, all)
	if err != nil {
		panic("knowledge: " + err.Error())
	}
	return worked{key, lexicon}
}

// vocabulary lists the names that the words stand for.
func vocabulary(words []fungi.Words, hosts []fungi.Host, stray map[string]float64) fungi.Vocabulary {
	v := fungi.Vocabulary{Hosts: hosts, Stray: stray}
	for _, w := range words {
		switch w.Kind {
		case fungi.WordPosition:
			v.Positions = append(v.Positions, w.Concept)
		case fungi.WordForm:
			v.Forms = append(v.Forms, w.Concept)
		case fungi.WordUnderside:
			v.Undersides = append(v.Undersides, w.Concept)
		case fungi.WordColour:
			v.Colours = append(v.Colours, w.Concept)
		}
	}
	return v
}

// mixed reads what is easily taken for what.
func mixed(l *loader, v *fungi.Vocabulary) {
	for _, r := range l.read("fungus_confusions") {
		r.memory()
		c := fungi.Confusion{One: r.text("one"), Other: r.text("other"), Share: r.share("share")}
		names, list := v.Positions, &v.PositionsMixed
		switch r.text("attribute") {
		case "form":
			names, list = v.Forms, &v.FormsMixed
		case "underside":
			names, list = v.Undersides, &v.UndersidesMixed
		case "colour":
			names, list = v.Colours, &v.ColoursMixed
		}
		if !slices.Contains(names, c.One) || !slices.Contains(names, c.Other) {
			r.problem("%q or %q is no %s of fungus_words.csv", c.One, c.Other, r.text("attribute"))
			continue
		}
		*list = append(*list, c)
	}
}

func loadQuestions(l *loader) []fungusQuestion {
	var all []fungusQuestion
	for _, r := range l.read("fungus_questions") {
		r.memory()
		all = append(all, fungusQuestion{fungi.Askable{Attribute: r.text("id"), Ease: r.share("ease")}, r.text("text")})
	}
	return all
}

func loadTrust(l *loader) fungi.Trust {
	var t fungi.Trust
	into := map[string]*float64{
		"host_floor": &t.HostFloor, "position_floor": &t.PositionFloor, "month_floor": &t.MonthFloor, "form_floor": &t.FormFloor,
		"underside_floor": &t.UndersideFloor, "colour_floor": &t.ColourFloor, "size_floor": &t.SizeFloor, "wider": &t.Wider,
		"decline": &t.Decline, "shown": &t.Shown, "lacks_factor": &t.LacksFactor, "repetition": &t.Repetition,
		"decay_share": &t.DecayShare, "harmless_share": &t.HarmlessShare, "none_share": &t.NoneShare,
		"enough_bits": &t.EnoughBits, "enough_share": &t.EnoughShare, "harmless_from": &t.HarmlessFrom, "remaining_share": &t.RemainingShare,
		"remaining_least": &t.RemainingLeast, "rule_out_share": &t.RuleOutShare, "least_gain": &t.LeastGain,
	}
	for _, r := range l.read("fungus_model") {
		r.memory()
		place, ok := into[r.text("key")]
		if !ok {
			r.problem("%q is no figure of the key", r.text("key"))
			continue
		}
		*place = r.number("value")
		delete(into, r.text("key"))
	}
	for key := range into {
		l.report("fungus_model.csv: %q is missing", key)
	}
	return t
}
