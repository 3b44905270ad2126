package assess

import (
	"fmt"

	"boughline/knowledge"
	"boughline/survey"
)

// rigNamed finds a hang by its name with all that its checks share.
func rigNamed(s *survey.Survey, k *knowledge.Base, hang string) (*rig, error) {
	site, err := newSite(k, rulesOf(k), s)
	if err != nil {
		return nil, err
	}
	var names []string
	for _, t := range site {
		for i := range t.s.Hangs {
			if t.s.Hangs[i].ID == hang {
				return t.rig(i)
			}
			names = append(names, t.s.Hangs[i].ID)
		}
	}
	return nil, UnknownHang{hang, names}
}

// UnknownHang is the error of a name that no hang has.
type UnknownHang struct {
	Name  string
	Known []string
}

func (u UnknownHang) Error() string {
	return fmt.Sprintf("%q is no hang of this survey; expected one of %v", u.Name, u.Known)
}
