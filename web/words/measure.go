package words

// Measuring.
const (
	Measuring       = "Measuring"
	MeasureIt       = "Measure it"
	MeasuringIntro  = "What a tape does not reach, from what can be read. Choose what you want to know, then the way that fits what you have with you. Nothing is kept here: the result is a line to put into a form."
	NeedsReadings   = "needs"
	LeftOut         = "Left out:"
	ReadAgain       = "Read again, or say how exactly"
	StandardError   = "Standard deviation"
	StandardHelp    = "Left out, the usual one of the way of reading."
	SecondReading   = "Second reading"
	ThirdReading    = "Third reading"
	WorkItOut       = "Work it out"
	WorkedOut       = "What it comes to"
	WorkedWait      = "Fill in what was read and the result follows."
	StillMissing    = "Still missing:"
	CannotWork      = "This cannot be worked out yet:"
	LineForForm     = "Type this line into the form:"
	LineForGirth    = "In a field for a girth:"
	BoundsOf        = "95 times in 100 it lies within %s to %s, if nothing but the readings errs."
	MostOfError     = "Most of the error comes from: %s (%.0f %%). That is the one to read with more care."
	GreatestOfError = "The greatest part of the error comes from: %s (%.0f %%). That is the one to read with more care."
	RestOfError     = "The rest: %s."
	TooCoarse       = "The readings are too coarse for this way: its error is a rough idea only."
	ReadingsAgree   = "%d readings, up to %s apart, no more than their errors explain."
	ReadingsDiffer  = "%d readings, up to %s apart, more than their errors explain. Look for a mistake; the error is widened."
	BackToForm      = "Back to the form it is for"
	OtherWays       = "Other ways of measuring"
)

// The tilt of a phone.
const (
	TiltTake     = "Take it from this phone"
	TiltHow      = "Angles with this phone"
	TiltHelp     = "Sight along the long edge, the top of the phone away from you. Press, then hold still until it says so."
	TiltZeroHelp = "First the zero: lay the long edge on something near level and press. Turn the phone end for end on the same spot, the same edge down, and press again."
	TiltOneWay   = "On the edge, one way"
	TiltTurned   = "Turned end for end"
	TiltBusy     = "Hold still"
	TiltTaken    = "Taken"
	TiltShaky    = "It moved too much. Try again."
	TiltZeroed   = "The zero of this phone is off by (deg):"
	TiltNoZero   = "Without a zero the usual error of a clinometer is taken."
)

// Wanted are the headings of the list of ways, by what is wanted.
var Wanted = map[string]string{
	"heights": "A height", "thickness": "A thickness", "lean": "Lean and crown", "slope": "A slope", "distance": "A distance, also along a limb",
	"repeats": "One value from several readings",
}
