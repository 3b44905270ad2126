package signs

import (
	"fmt"
	"slices"
)

// Effect is what a finding does to a hang, ordered: a larger Effect weighs
// more. The zero Effect does nothing.
type Effect int

// The effects, the lightest first.
const (
	None             Effect = iota // nothing
	Remark                         // noted with its side
	Question                       // to be asked before the day
	Again                          // to be looked at again at a date
	Limit                          // use within limits
	CloserLook                     // unfinished until the closer look is done
	Arborist                       // for an arborist to judge
	BarsUntilCleared               // nobody below until it is taken down
	Bars                           // the hang is left
)

var effectNames = []string{
	None: "none", Remark: "remark", Question: "question", Again: "repeat", Limit: "limit",
	CloserLook: "closer-look", Arborist: "ask-arborist", BarsUntilCleared: "bars-until-cleared", Bars: "bars",
}

// Effects lists the effects, the lightest first.
func Effects() []Effect {
	return []Effect{None, Remark, Question, Again, Limit, CloserLook, Arborist, BarsUntilCleared, Bars}
}

// String returns the code of the effect, for example "closer-look".
func (e Effect) String() string {
	if e < None || e > Bars {
		return fmt.Sprintf("effect(%d)", int(e))
	}
	return effectNames[e]
}

// ParseEffect returns the effect of a code as String writes it.
func ParseEffect(code string) (Effect, error) {
	i := slices.Index(effectNames, code)
	if i < 0 {
		return None, fmt.Errorf("%q is no effect; expected one of %q", code, effectNames)
	}
	return Effect(i), nil
}
