package surveytest

import (
	"fmt"

	"boughline/survey"

	"pgregory.net/rapid"
)

// inspect adds looks and findings to a tree.
func inspect(t *rapid.T, tree *survey.Tree) {
	for _, zone := range survey.Zones {
		if yesOrNo(t) {
			tree.Looks = append(tree.Looks, look(t, zone, tree.Members))
		}
	}
	for i := range rapid.IntRange(0, 3).Draw(t, "findings") {
		tree.Findings = append(tree.Findings, finding(t, i, tree.Members))
	}
}

func look(t *rapid.T, zone string, members []survey.Member) survey.Look {
	l := survey.Look{
		Zone:  zone,
		State: rapid.SampledFrom([]string{survey.LookDone, survey.LookNotDone, survey.LookBlocked}).Draw(t, "state"),
		By:    note(t, "by"),
		Note:  note(t, "note"),
	}
	if yesOrNo(t) {
		l.On = days().Draw(t, "on")
	}
	if yesOrNo(t) {
		l.Members = []string{someMember(t, members).ID}
	}
	if yesOrNo(t) {
		sign := signs().Draw(t, "not visible")
		l.NotVisible = []string{sign}
		l.StandIns = []survey.StandIn{{Sign: sign, What: text().Draw(t, "what"), Clear: yesOrNo(t)}}
	}
	return l
}

func finding(t *rapid.T, i int, members []survey.Member) survey.Finding {
	f := survey.Finding{
		ID:     fmt.Sprintf("finding %d", i+1),
		Sign:   signs().Draw(t, "sign"),
		Fungus: note(t, "fungus"),
		SeenOn: days().Draw(t, "seen on"),
		Note:   note(t, "note"),
	}
	if yesOrNo(t) {
		onMember(t, &f, someMember(t, members))
	} else {
		f.Side = maybe(t, "side", angle(0, 360))
		f.Height = maybe(t, "height", length(0, 20))
		f.Distance = maybe(t, "distance", length(0, 10))
	}
	f.Closer = maybe(t, "closer", func(t *rapid.T) survey.CloserLook {
		return survey.CloserLook{
			On: f.SeenOn.AddMonths(rapid.IntRange(0, 12).Draw(t, "months")), How: text().Draw(t, "how"), By: note(t, "by"),
			Result: rapid.SampledFrom([]string{survey.CloserClear, survey.CloserWorse, survey.CloserUnclear}).Draw(t, "result"),
		}
	})
	f.Cleared = maybe(t, "cleared", func(t *rapid.T) survey.Cleared {
		return survey.Cleared{On: f.SeenOn.AddMonths(1), How: text().Draw(t, "how"), By: note(t, "by")}
	})
	return f
}

func onMember(t *rapid.T, f *survey.Finding, m survey.Member) {
	end := memberLength(m)
	f.Member = m.ID
	f.At = maybe(t, "at", length(0, end/2))
	if f.At != nil {
		f.Extent = maybe(t, "extent", length(0, end/4))
	}
}

// signs draws names of signs in the form of the table of signs.
func signs() *rapid.Generator[string] {
	return rapid.SampledFrom([]string{"crown-01", "limb-02", "union-01", "stem-03", "base-02", "root_plate-01", "ground-01"})
}

func someMember(t *rapid.T, members []survey.Member) survey.Member {
	return members[rapid.IntRange(0, len(members)-1).Draw(t, "member")]
}

// memberLength is at most the length of the member.
func memberLength(m survey.Member) float64 {
	if m.Length != nil {
		return float64(m.Length.Value)
	}
	return float64(m.Path[0].East.Value)
}
