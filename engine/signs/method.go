package signs

// Method is a way to look closer at a sign.
type Method string

// The methods. Those that need a thing in the bag come first.
const (
	Binoculars    Method = "binoculars"
	Mallet        Method = "mallet"
	Probe         Method = "probe"
	Tape          Method = "tape"
	Clinometer    Method = "clinometer"
	PlumbLine     Method = "plumb-line"
	Torch         Method = "torch"
	Knife         Method = "knife"
	Spade         Method = "spade"
	PegsAndString Method = "pegs-and-string"
	FeelerGauge   Method = "feeler-gauge"
	MetalDetector Method = "metal-detector"
	OldPhoto      Method = "old-photo"

	FourSides    Method = "four-sides"    // walk right round and look from each side
	MovingLitter Method = "moving-litter" // leaves, ivy and soil moved aside
	LooseBark    Method = "loose-bark"    // only where the bark is loose already
	ScratchTest  Method = "scratch-test"  // a scratch in the bark: green is alive
	Listening    Method = "listening"
	WindyDay     Method = "windy-day"
	Asking       Method = "asking" // the owner, a neighbour, an authority
	Climber      Method = "climber"
	ByArborist   Method = "arborist"
)

var methods = []Method{
	Binoculars, Mallet, Probe, Tape, Clinometer, PlumbLine, Torch, Knife, Spade, PegsAndString, FeelerGauge, MetalDetector, OldPhoto,
	FourSides, MovingLitter, LooseBark, ScratchTest, Listening, WindyDay, Asking, Climber, ByArborist,
}

// Methods lists the methods, those with a thing to bring first.
func Methods() []Method { return append([]Method(nil), methods...) }

// Brought reports whether the method needs a thing brought along.
func (m Method) Brought() bool {
	for _, brought := range methods {
		if brought == FourSides {
			return false
		}
		if brought == m {
			return true
		}
	}
	return false
}
