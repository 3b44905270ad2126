package assess

import (
	"boughline/quantity"
	"boughline/survey"
)

// testOfTheDay is the newest test of this hang on the day that is judged, with
// its path in the document; nil where there is none. A test lapses at day's end.
func (r *rig) testOfTheDay() (newest *survey.LoadTest, path string) {
	for i := range r.s.LoadTests {
		if t := &r.s.LoadTests[i]; t.Hang == r.h.ID && t.On == r.survey.Day {
			newest, path = t, element(r.path+".load_tests", i)
		}
	}
	return newest, path
}

// testReasons judges the load tests of every limb that carries this hang. One
// that went wrong bars the limb for good: it never lapses, and no later one lifts it. One that
// was passed lifts no finding.
func (r *rig) testReasons() []Reason {
	var list []Reason
	for i := range r.s.LoadTests {
		test, path := &r.s.LoadTests[i], element(r.path+".load_tests", i)
		tested, err := r.testedRig(test)
		if err != nil || tested == nil || test.On.After(r.survey.Day) {
			continue
		}
		bad := tested.faultsOf(test, path)
		list = append(list, bad...)
		if test.Hang == r.h.ID && len(bad) == 0 {
			list = append(list, r.soundTest(test, path))
		}
	}
	return list
}

// testedRig is the hang that a test was made on, where its limb carries this one.
func (r *rig) testedRig(test *survey.LoadTest) (*rig, error) {
	if test.Hang == r.h.ID {
		return r, nil
	}
	for i := range r.hangs {
		if h := &r.hangs[i]; h.ID == test.Hang && r.carriesHang(r.shapes[h.Member]) {
			return r.rig(i)
		}
	}
	return nil, nil
}

// faultsOf lists what went wrong in a test: a sign that stopped it, more sag
// than the band, a set that stayed.
func (r *rig) faultsOf(test *survey.LoadTest, path string) []Reason {
	bars := func(code Code, text string, terms ...Term) Reason {
		return Reason{Code: code, Outcome: Leave, Path: path, Text: text, Terms: terms, Change: Change{Code: ChangeOtherLimb}}
	}
	var list []Reason
	for _, sign := range test.Signs {
		list = append(list, bars(TestStopped, sign))
	}
	if i, high := r.sagsTooFar(test); i >= 0 {
		step := test.Steps[i]
		list = append(list, bars(TestSags, r.on.member.ID,
			Term{Symbol: "F", Name: "load", Value: float64(step.Load()), Unit: "N", Path: element(path+".steps", i)},
			Term{Symbol: "w", Name: "sag under it", Value: float64(step.Sag.Value), Unit: "m", How: step.Sag.How, Path: element(path+".steps", i)},
			Term{Symbol: "w_95", Name: "sag that one sound limb in twenty exceeds", Value: float64(high), Unit: "m"}))
	}
	if limit, stays := r.setStays(test); stays {
		list = append(list, bars(TestSet, r.on.member.ID,
			Term{Symbol: "w_0", Name: "sag that stayed", Value: float64(test.Set.Value), Unit: "m", How: test.Set.How, Path: path + ".set"},
			Term{Symbol: "w_0max", Name: "sag that may stay", Value: float64(limit), Unit: "m", Note: percent("of the greatest sag", r.rules.testSet.Value)}))
	}
	return list
}

// sagsTooFar finds the first step whose sag is above its band beyond what reading
// it can be off by, -1 where none is.
func (r *rig) sagsTooFar(test *survey.LoadTest) (step int, high quantity.Length) {
	law, err := r.sagBefore()
	if err != nil { // stiffness and variations come from tables that a test checks
		return -1, 0
	}
	for i, s := range test.Steps {
		if s.Sag == nil {
			continue
		}
		if _, _, high = law.under(s.Load()); r.sagRead(*s.Sag).Low() > high {
			return i, high
		}
	}
	return -1, 0
}

// setStays reports whether more sag stayed than its share of the greatest sag,
// beyond what reading a tape can be off by.
func (r *rig) setStays(test *survey.LoadTest) (limit quantity.Length, stays bool) {
	if test.Set == nil {
		return 0, false
	}
	for _, s := range test.Steps {
		if s.Sag != nil {
			limit = max(limit, s.Sag.Value*quantity.Length(r.rules.testSet.Value))
		}
	}
	return limit, r.sagRead(*test.Set).Low() > limit
}

// soundTest is what follows from a test without a fault: it counts on its own
// day, if sag and set were read.
func (r *rig) soundTest(test *survey.LoadTest, path string) Reason {
	switch {
	case test.On != r.survey.Day:
		return Reason{Code: TestLapsed, Remark: true, Path: path, Text: test.On.String()}
	case test.Set == nil || len(r.readings(test)) == 0:
		return Reason{Code: TestNotRead, Outcome: Unfinished, Path: path, Change: Change{Code: ChangeTest}}
	}
	u, err := r.afterTest(test)
	if err != nil {
		return Reason{Code: TestNotRead, Outcome: Unfinished, Path: path, Text: err.Error(), Change: Change{Code: ChangeTest}}
	}
	return Reason{Code: TestPassed, Remark: true, Path: path, Text: r.on.member.ID, Terms: u.terms(path)}
}
