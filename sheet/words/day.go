package words

// The day card and the record of an outing.
const (
	DayCardSays  = "who may ride on one hang on one day, on one page, from the file of a day"
	DayCardRules = "Rules of the day"
	DayCardGoes  = "Goes by"
	DayCardIs    = "What is done"

	OutingSays    = "what happened on one day, from the file of that day"
	OutingTitle   = "Record of the outing: %s"
	OutingOf      = "%s, card of %s, signed by %s"
	OutingCarried = "What it carried"
	OutingStands  = "It stands so: %s."
	OutingOver    = "Nobody rode on it again that day: %s."
	OutingLate    = "It was to be down by %s and was taken down at %s."
	OutingNotDown = "Nobody has written down that the swing is down."
	OutingTurns   = "Turns, by what no rider weighed more than"
	UpTo          = "Each up to"
	Turns         = "Turns"
	Riders        = "Riders"
	OutingEvents  = "What happened"
	OutingShown   = "All events in their order; a correction leaves what it corrects in its place"
	OutingNone    = "Nothing was written down yet."
	Number        = "No."
	Happened      = "What happened"
	OutingStops   = "Stops"
	NoReason      = "no reason was given"
	OutingWind    = "Wind and lightning"
	OutingHurt    = "Incidents and near misses"
	NoneWritten   = "None is written down."
	OutingDown    = "Taken down"
	WhoInCharge   = "Who is in charge that day"
)
