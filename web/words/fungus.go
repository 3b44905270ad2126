package words

// The key of fungi.
const (
	WhichFungus     = "Which fungus is it?"
	FungusIntro     = "Say what you see. One question follows another, always the one that tells most; leave out what you cannot tell."
	FungusWords     = "In your own words"
	FungusMoreWords = "Say more in your own words"
	FungusOnIt      = "Is a fungus on it? Find out which"
	FungusWordsHelp = "Where it grows, what it looks like above, underneath and inside. Put a semicolon between two things."
	FungusTake      = "Take these words"
	FungusOther     = "Or in other words"
	FungusTree      = "Kind of tree"
	FungusAnswer    = "Answer"
	CannotTell      = "cannot tell"
	FungusNoMore    = "No further question would part what remains."
	FungusGiven     = "What you said"
	FungusNothing   = "Nothing so far."
	FungusTakeBack  = "take back"
	FungusAfresh    = "Begin afresh"
	FungusResult    = "So far"
	FungusMeans     = "What follows for people"
	FungusReadAs    = "Read as"
	FungusSources   = "How it was read, and who says so"
	FungusElse      = "something else"
	FungusNotParted = "not told apart yet"
	FungusUnread    = "This could not be read and counts for nothing; say it in other words:"
	FungusCaution   = "A help for looking, no more. A mycologist names fungi; an arborist judges the tree. Decay reaches farther than what shows. The shares are a house choice, and no mycologist has checked them. Nothing here says what can be eaten."
	FungusWrite     = "Write it into the finding"
	FungusWriteHelp = "Write a name only after comparing it with a good picture or asking a mycologist. Where what remains differs in weight, only the worst of it is offered. Unknown counts as the worst of what remains, at the foot, on the load path and above people."
	FungusUnknown   = "Write: unknown"
	FungusWriteName = "Write: "
	FungusKept      = "In the finding now:"
	FungusToFinding = "Back to the finding"
	FungusToLook    = "Back to the look"
	FungusToTable   = "All fungi of the table"
	FungusNoName    = "is no fungus of the table. Choose one of the names below, or unknown."
	FungusNoSuch    = "is no question of this key. It was left out; go on with the question below."
	FungusNoAnswer  = "could not be read as an answer. Choose one of the answers, or cannot tell. The question was:"
	FungusTooMuch   = "That is more than can be read at once; the rest was left out. Say it shorter."
)

// FungusFirst says what kind of answer it is, by the answer of the key.
var FungusFirst = map[string]string{
	"not enough seen": "Not enough seen to name it.", "perhaps no fungus": "Perhaps no fungus.",
	"harmless here": "Perhaps something that lives on the tree without weakening it.",
	"named":         "It may be one of these.", "not in the tables": "It fits nothing in the table well.",
}

// fungusChoices show answers whose name alone says too little.
var fungusChoices = map[string]string{
	"pore": "pores: many small holes", "gill": "gills: thin blades", "teeth": "teeth or spines",
	"smooth underneath": "smooth",
	"no underside":      "none: it lies flat", "no holes underneath": "nothing but bark", "base": "foot of the stem", "trunk": "stem",
	"away from trunk": "ground or roots, away from the stem", "lawn": "in grass or soil", "on leaves": "on leaves",
}

// FungusChoice is how an answer is shown.
func FungusChoice(name string) string {
	if text, ok := fungusChoices[name]; ok {
		return text
	}
	return name
}

// FungusShare puts a probability into words.
func FungusShare(p float64) string {
	switch {
	case p >= 0.9:
		return "nearly all points to it"
	case p >= 0.6:
		return "most points to it"
	case p >= 0.3:
		return "much points to it"
	case p >= 0.1:
		return "some points to it"
	}
	return "little points to it; not ruled out"
}
