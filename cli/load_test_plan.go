package cli

import (
	"fmt"
	"io"
	"strings"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/knowledge"
	"boughline/quantity"
)

type loadTestCommand struct {
	Plan   loadTestPlanCommand   `cmd:"" help:"Plan the load test of a hang: steps, sag to expect, where to stand, when to stop."`
	Record loadTestRecordCommand `cmd:"" help:"Write a load test into the survey and say what follows from it."`
}

type loadTestPlanCommand struct {
	File string `arg:"" help:"Survey document (JSON)."`
	Hang string `required:"" help:"The hang." placeholder:"ID"`
	JSON bool   `name:"json" help:"Print the plan as JSON."`
}

// Run plans a load test.
func (c loadTestPlanCommand) Run(env Env) error {
	k, err := knowledge.Load()
	if err != nil {
		return err
	}
	s, err := readSurvey(env, c.File, k)
	if err != nil {
		return err
	}
	plan, err := assess.PlanLoadTest(s, k, c.Hang)
	if err != nil {
		return ofHang(c.File, err)
	}
	if c.JSON {
		return writeJSON(env.Stdout, plan)
	}
	return page{env.Stdout}.loadTestPlan(plan)
}

// loadTestPlan writes a plan to work from.
func (p page) loadTestPlan(plan assess.LoadTestPlan) error {
	var b strings.Builder
	b.WriteString(hanging(plan.Hang, wording.Outcome(plan.Outcome), max(column, len(plan.Hang)+2)))
	if !plan.Outcome.Rideable() {
		b.WriteString(hanging("  !", "Nothing is hung or tested here as things stand; the plan is for the use asked for.", column))
	}
	b.WriteString(hanging("  for", wording.Use(plan.Use), column))
	b.WriteString(hanging("  how", "dead mass at the hang point, water or sand, or a pull straight down through a ground anchor with a load cell; put on and taken off from outside the drop zone. People are never the test mass.", column))
	b.WriteString(hanging("  stand", fmt.Sprintf("everybody at least %s from the plumb line of the hang point, nobody below the limb; only the one who loads comes nearer, from the side of the stem, and never under the load", wording.Quantity(float64(plan.StandOff), "m")), column))
	for i, step := range plan.Steps {
		b.WriteString(hanging(fmt.Sprintf("  step %d", i+1), fmt.Sprintf("%s in all (or %s): the hang point goes down %s, nine sound limbs in ten between %s and %s",
			wording.Quantity(float64(step.Mass), "kg"), wording.Quantity(float64(step.Pull), "N"), millimetres(step.Sag), millimetres(step.Low), millimetres(step.High)), column))
	}
	b.WriteString(hanging("  counts", fmt.Sprintf("a mass counts at its low 5 %% value: the %s, weighed as a scale in the field weighs, count as %s, which is what this use asks for",
		wording.Quantity(float64(plan.Total), "kg"), wording.AtMost(float64(plan.Counts), "kg")), column))
	b.WriteString(hanging("  hold", fmt.Sprintf("%.0f s at each step, then read the sag; after the last take all off and read what stays: no more than %s. A tape may be %s off besides", float64(plan.Hold), millimetres(plan.SetAtMost), millimetres(plan.ReadingOff)), column))
	b.WriteString(hanging("  stop", "at "+stopSigns(plan.StopAt)+", or sag above its band: take the load off and leave the limb for good", column))
	b.WriteString(hanging("  lapses", "at the end of the day; it lifts no finding", column))
	b.WriteString(hanging("!", wording.LeavesOut(plan.LeftOut), 2))
	_, err := io.WriteString(p.w, b.String())
	return err
}

func millimetres(l quantity.Length) string { return fmt.Sprintf("%.1f mm", float64(l)*1000) }

func stopSigns(codes []string) string {
	words := make([]string, len(codes))
	for i, code := range codes {
		words[i] = wording.StopSign(code)
	}
	return strings.Join(words, ", ")
}
