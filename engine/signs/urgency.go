package signs

// Urgency says how pressing a sign is, before anything is known of where it
// stands. It is a judgement of this project, not a published scale.
type Urgency string

// The urgencies.
const (
	Stop       Urgency = "stop"        // no people on it or under it
	StopBelow  Urgency = "stop_below"  // nobody below until it is cleared
	Expert     Urgency = "expert"      // for an arborist to judge
	LookCloser Urgency = "look_closer" // the closer look decides
	NotSeen    Urgency = "not_seen"    // it hides what had to be seen
	LimitUse   Urgency = "limit_use"   // use within limits
	Repeat     Urgency = "repeat"      // look again at a date
	Ask        Urgency = "ask"         // a question to somebody
	Note       Urgency = "note"        // worth a remark
	GoodSign   Urgency = "good_sign"   // speaks for the tree
)

// Urgencies lists the urgencies, the most pressing first.
func Urgencies() []Urgency {
	return []Urgency{Stop, StopBelow, Expert, LookCloser, NotSeen, LimitUse, Repeat, Ask, Note, GoodSign}
}
