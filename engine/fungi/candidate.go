package fungi

import "boughline/quantity"

// Kind parts what may be seen on a tree.
type Kind string

// The kinds.
const (
	Decay    Kind = "decay"            // rots living trees
	Harmless Kind = "harmless_fungus"  // a fungus that says nothing against the standing tree, or little
	NoFungus Kind = "no_fungus"        // looks like one and is none
	Unlisted Kind = "not_in_the_table" // anything that the tables do not hold
)

// Advice is what follows for people, ordered: a larger Advice asks for more.
type Advice int

// The advice, the lightest first.
const (
	Nothing      Advice = iota // says nothing against the tree
	LookCloser                 // says little; look at what it grows from
	NotThisPart                // nobody on or under the part that bears it
	MeasureFirst               // nobody before stem, foot and roots were measured
	NoPeople                   // nobody on this tree
)

var adviceNames = []string{"none", "look-closer", "not-this-part", "measure-first", "no-people"}

// String returns the code of the advice, for example "measure-first".
func (a Advice) String() string {
	if a < Nothing || a > NoPeople {
		return "unknown"
	}
	return adviceNames[a]
}

// ParseAdvice returns the advice of a code as String writes it.
func ParseAdvice(code string) (Advice, bool) {
	for i, name := range adviceNames {
		if name == code {
			return Advice(i), true
		}
	}
	return Nothing, false
}

// Candidate is one thing that may have been seen. The lists hold names of the
// Vocabulary, the likeliest first; an empty list says that nothing is known.
type Candidate struct {
	Name       string
	Kind       Kind
	Commonness float64 // weight against others of its kind, above 0

	Hosts, RareHosts []string // genera
	Wider            string   // AnyHost, a group of hosts, or empty for the lists alone
	Positions        []string
	Months           []int
	Persistent       bool // what it leaves can be seen in other months
	Forms            []string
	Undersides       []string
	Colours          map[Field][]string
	Marks, Lacks     []string // what it shows, what it never shows
	Smallest         quantity.Length
	Largest          quantity.Length // 0 where the size is not known

	Weakens []string // the parts of the tree that lose strength
	Hiding  Hiding
	Advice  Advice
}

// AnyHost in Candidate.Wider says that it takes every kind of tree.
const AnyHost = "any"

// Field is the part of a fruit body that a colour belongs to.
type Field string

// The fields. AnyField is a colour told without a part.
const (
	Upper     Field = "upper"
	Underside Field = "underside"
	Flesh     Field = "flesh"
	Spores    Field = "spores"
	AnyField  Field = "any"
)

var fields = []Field{Upper, Underside, Flesh, Spores}

// Hiding says how much of the year there is something to be seen, ordered.
type Hiding int

// The steps of hiding.
const (
	AllYear   Hiding = iota // fruit bodies last for years
	LeavesOld               // fruit bodies of one season whose remains can be found after it
	PartYear                // to be seen for some weeks only; the decay is there all year
)
