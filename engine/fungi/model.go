package fungi

// Host is a genus of trees.
type Host struct {
	Genus string
	Group string // for example conifer
}

// Confusion says that a share of those who see One tell it as Other, and the
// other way round.
type Confusion struct {
	One, Other string
	Share      float64
}

// Vocabulary holds the names that an attribute can take, with what is easily
// taken for what.
type Vocabulary struct {
	Hosts                                 []Host
	Positions, Forms, Undersides, Colours []string
	PositionsMixed, FormsMixed            []Confusion
	UndersidesMixed, ColoursMixed         []Confusion
	Stray                                 map[string]float64 // for each mark: how often it is told of something that has it not
}

// Trust holds the house figures of the key: how far a description is trusted.
type Trust struct {
	HostFloor, PositionFloor, MonthFloor float64 // share told against the tables
	FormFloor, UndersideFloor            float64
	ColourFloor, SizeFloor               float64
	Wider                                float64 // share of a wider group of hosts beside those listed
	Decline                              float64 // how fast the weight of a host or place falls along its list
	Shown                                float64 // share in which a mark is noticed when asked for
	LacksFactor                          float64 // of the stray share, for what a candidate never shows
	Repetition                           float64 // exponent of the number of answers of one kind: 1 counts all in full, 0 counts their mean
	DecayShare, HarmlessShare, NoneShare float64 // of all that people ask about; the rest is not in the tables
	EnoughBits                           float64 // of information below which too little was seen
	HarmlessFrom                         float64 // share of what is harmless from which it is put aside
	EnoughShare                          float64 // of the best candidate below which too little was seen
	RemainingShare                       float64 // that those who remain possible hold together
	RemainingLeast                       float64 // of one that remains, against the likeliest
	RuleOutShare                         float64 // share from which a fungus that bars people is named beside a harmless answer
	LeastGain                            float64 // bits below which no question is worth asking
}
