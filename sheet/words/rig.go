package words

// How a hang is rigged.
const (
	RigSays   = "how a hang is rigged: chain, line to cut, throw, anchor, knots, bark"
	RigTitle  = "Rigging of %s"
	RigOf     = "limb %s of %s, %s, judged for %s"
	RigMargin = "margin %s: %s"
	WhoRigs   = "Who rigs it"
	WhoChecks = "Who checks knots and connectors"
)
