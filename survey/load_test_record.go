package survey

import (
	"fmt"

	"boughline/quantity"
)

// Signs that stop a load test.
const (
	TestSound    = "sound"    // a crack or creak was heard
	TestCrack    = "crack"    // one was seen to open
	TestCurve    = "curve"    // the sag grew faster than the load
	TestMovement = "movement" // stem or ground moved
)

// LoadTest is what was seen when a hang was loaded before anyone rode. What
// follows from it is worked out anew; the record has no place for an outcome.
type LoadTest struct {
	Hang  string     `json:"hang"`
	On    Date       `json:"on"`
	By    string     `json:"by,omitempty"`
	Steps []LoadStep `json:"steps"`
	// Set is the sag that stayed when the load was taken off.
	Set   *MeasuredLength `json:"set,omitempty"`
	Signs []string        `json:"signs,omitempty"` // what stopped it
	Note  string          `json:"note,omitempty"`
}

// LoadStep is one load in all, hung as dead mass or pulled down against a load
// cell, and how far the hang point had gone down under it.
type LoadStep struct {
	Mass *MeasuredMass   `json:"mass,omitempty"`
	Pull *ChosenForce    `json:"pull,omitempty"`
	Sag  *MeasuredLength `json:"sag,omitempty"`
}

// Load is the load of the step as measured.
func (s LoadStep) Load() quantity.Force {
	if s.Pull != nil {
		return s.Pull.Value
	}
	return s.Mass.Value.Weight()
}

// checkLoadTest wants one load in each step, each above the one before it.
func (c *checker) checkLoadTest(at path, test *LoadTest) {
	var before quantity.Force
	for at, step := range items(c, at.field("steps"), test.Steps) {
		if c.isAnyLost(at, "mass", "pull") {
			return
		}
		if (step.Mass == nil) == (step.Pull == nil) {
			c.report(Problem{
				Code: CodeLoadStep, Path: string(at), Fault: "it has no load, or two",
				Expected: "a mass or a pull", Do: "state the mass that hung, or the reading of the load cell",
			})
			return
		}
		load := step.Load()
		if load <= before {
			c.report(Problem{
				Code: CodeLoadStep, Path: string(at), Fault: fmt.Sprintf("its load of %.3g N is no more than that of the step before", float64(load)),
				Expected: "loads that grow from step to step", Do: "state all that hung at each step, in the order in which it was hung",
			})
			return
		}
		before = load
	}
}
