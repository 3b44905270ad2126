package words

// The letter in doubt.
const (
	ArboristSays   = "a letter in doubt: what was seen, where, and what is asked of an arborist"
	ArboristTitle  = "What do you make of %s?"
	ArboristTo     = "To (consulting arborist)"
	ArboristFrom   = "From (name, organisation, telephone)"
	ArboristAbout  = "We mean to hang a rope swing from this tree for a day, and are in doubt. Below is what was seen and measured, and where. We name no cause and claim nothing beyond it; the drawings show where things are, not how they are inside."
	ArboristUse    = "What we mean to do: %s, from limb %s, %s out from its foot."
	ArboristAsk    = "What we ask"
	ArboristAskOf  = "%s (%s), %s: %s"
	ArboristWhat   = "what does it mean for people on this limb and below it?"
	ArboristClose  = "Closer look that the sign asks for: %s"
	ArboristAskAll = "Is there anything on this tree, on the way from this limb to the ground, or above the place where people would be, for which you would not hang anything here?"
	ArboristLimits = "Under which conditions, and until when, would your answer hold?"
	ArboristNone   = "No finding of this tree asks for an arborist by our rules. We ask for a second look all the same:"
	ArboristSeen   = "What was seen"
	ArboristNot    = "What was not seen"
	ArboristReply  = "Your answer"
	ArboristLines  = "What you found, and what follows"
)
