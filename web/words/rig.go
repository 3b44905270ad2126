package words

// How a hang is rigged.
const (
	RigTitle    = "How it is rigged"
	RigIntro    = "The chain first, then what is done from the ground, in order. Open a line to see its formula, numbers and sources. These figures advise; the outcome decides."
	RigOthers   = "The others"
	RigWishes   = "What you want"
	RigWorkOut  = "Work it out anew"
	RigSeat     = "Seat above the ground, at rest under its riders"
	RigSeatHelp = "Left empty: as the line of the hang puts it."
	RigStand    = "Thrower from the plumb line of the hang point"
	RigHours    = "Hours of riding in the day"
	RigNone     = "It cannot be worked out how this hang is rigged"
	RigHoursBad = "a number of hours such as 4 is expected"
)
