package cli

import (
	"bytes"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

type loadTestRecordCommand struct {
	File string   `arg:"" help:"Survey document (JSON); the record is written into it."`
	Hang string   `required:"" help:"The hang." placeholder:"ID"`
	Step []string `help:"Load in all and sag under it, in order: \"40 kg weighed, 1.2 cm taped\" or \"0.4 kN, 1.2 cm taped\"." placeholder:"LOAD,SAG" sep:"none"`
	Set  string   `help:"Sag that stayed when the load was taken off: \"0 cm taped\"." placeholder:"LENGTH"`
	Sign []string `help:"What stopped it: sound, crack, curve or movement." placeholder:"SIGN"`
	On   string   `help:"Day of the test; the day of the survey if left out." placeholder:"DATE"`
	By   string   `help:"Who made it." placeholder:"NAME"`
	JSON bool     `name:"json" help:"Print what follows as JSON."`
}

// Run writes the record into the survey, which it checks as it does any, and
// works out what follows. Without a step it works out what the records there say.
func (c loadTestRecordCommand) Run(env Env) error {
	k, err := knowledge.Load()
	if err != nil {
		return err
	}
	s, err := readSurvey(env, c.File, k)
	if err != nil {
		return err
	}
	if len(c.Step) > 0 {
		if s, err = c.record(env, s, k); err != nil {
			return err
		}
	}
	result, err := assess.JudgeLoadTest(s, k, c.Hang)
	if err != nil {
		return ofHang(c.File, err)
	}
	if c.JSON {
		return writeJSON(env.Stdout, result)
	}
	return page{env.Stdout}.loadTestResult(result)
}

// record adds the test to the tree of its hang and writes the document anew.
func (c loadTestRecordCommand) record(env Env, s *survey.Survey, k *knowledge.Base) (*survey.Survey, error) {
	test, err := c.test(s.Day)
	if err != nil {
		return nil, refusal{err}
	}
	tree := slices.IndexFunc(s.Trees, func(t survey.Tree) bool {
		return slices.ContainsFunc(t.Hangs, func(h survey.Hang) bool { return h.ID == c.Hang })
	})
	if tree < 0 {
		return nil, refusal{fmt.Errorf("--hang: %q is no hang of this survey", c.Hang)}
	}
	s.Trees[tree].LoadTests = append(s.Trees[tree].LoadTests, test)
	var text bytes.Buffer
	if err := survey.Write(&text, s); err != nil {
		return nil, err
	}
	again, problems, err := survey.Read(bytes.NewReader(text.Bytes()))
	if err != nil {
		return nil, err
	}
	if len(problems) > 0 {
		listProblems(env.Stderr, problems)
		return nil, refusal{fmt.Errorf("%d %s with the record; nothing was written", len(problems), plural("problem", len(problems)))}
	}
	return again, replace(c.File, text.Bytes())
}

// test reads the record from the command line.
func (c loadTestRecordCommand) test(day survey.Date) (survey.LoadTest, error) {
	test := survey.LoadTest{Hang: c.Hang, On: day, By: c.By, Signs: c.Sign}
	var err error
	if c.On != "" {
		if test.On, err = survey.ParseDate(c.On); err != nil {
			return test, fmt.Errorf("--on: %w", err)
		}
	}
	for _, text := range c.Step {
		step, err := stepOf(text)
		if err != nil {
			return test, fmt.Errorf("--step %q: %w", text, err)
		}
		test.Steps = append(test.Steps, step)
	}
	if c.Set != "" {
		if test.Set, err = measuredLength(c.Set); err != nil {
			return test, fmt.Errorf("--set: %w", err)
		}
	}
	return test, nil
}

// stepOf reads a load, as a mass or a force, and the sag behind the comma.
func stepOf(text string) (survey.LoadStep, error) {
	var step survey.LoadStep
	load, sag, hasSag := strings.Cut(text, ",")
	mass, err := quantity.Parse[quantity.Mass](strings.TrimSpace(load))
	if err == nil {
		step.Mass = &mass
	} else {
		pull, notForce := quantity.ParseChosen[quantity.Force](strings.TrimSpace(load))
		if notForce != nil {
			return step, fmt.Errorf("load: %w", err)
		}
		step.Pull = &pull
	}
	if hasSag {
		if step.Sag, err = measuredLength(sag); err != nil {
			return step, fmt.Errorf("sag: %w", err)
		}
	}
	return step, nil
}

func measuredLength(text string) (*survey.MeasuredLength, error) {
	m, err := quantity.Parse[quantity.Length](strings.TrimSpace(text))
	return &m, err
}

// replace writes a file whole or not at all.
func replace(name string, data []byte) error {
	file, err := os.CreateTemp(filepath.Dir(name), filepath.Base(name)+".*")
	if err != nil {
		return fmt.Errorf("cannot write beside %s: %w", name, err)
	}
	defer os.Remove(file.Name()) // gone already where all went well
	_, err = file.Write(data)
	if closed := file.Close(); err == nil {
		err = closed
	}
	if err == nil {
		err = os.Rename(file.Name(), name)
	}
	if err != nil {
		return fmt.Errorf("cannot write %s: %w", name, err)
	}
	return nil
}

// loadTestResult writes what follows from the load tests of a hang.
func (p page) loadTestResult(r assess.LoadTestResult) error {
	var b strings.Builder
	b.WriteString(hanging(r.Hang, wording.Outcome(r.Outcome), max(column, len(r.Hang)+2)))
	if r.Limits != nil {
		b.WriteString(hanging("  limits", limits(*r.Limits), column))
	}
	for _, reason := range r.Reasons {
		b.WriteString(hanging("  test", fmt.Sprintf("%s [%s]", wording.Reason(reason), reason.Code), column))
	}
	if len(r.Reasons) == 0 {
		b.WriteString(hanging("  test", "no load test of this hang is on record", column))
	}
	if u := r.Update; u != nil {
		b.WriteString(hanging("  stiffness", updated(u.Stiffness), column))
		b.WriteString(hanging("  strength", "at the union, as the moment it bears: "+updated(u.Strength), column))
		b.WriteString(hanging("  chance", fmt.Sprintf("of the union failing in a year, with this test passed: %s", wording.Figure(u.Chance)), column))
	}
	b.WriteString(hanging("!", wording.LeavesOut(r.LeftOut), 2))
	_, err := io.WriteString(p.w, b.String())
	return err
}

func updated(u assess.Updated) string {
	return fmt.Sprintf("%s with a variation of %.0f %% before, %s with %.0f %% after",
		wording.Quantity(u.Before, u.Unit), 100*u.BeforeCoV, wording.Quantity(u.After, u.Unit), 100*u.AfterCoV)
}
