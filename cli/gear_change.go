package cli

import (
	"boughline/register"
	"boughline/survey"
)

type gearUseCommand struct {
	File   string   `arg:"" help:"Register of gear (JSON)."`
	Items  []string `arg:"" help:"Ids of the items."`
	On     string   `help:"Day of the use; today if left out." placeholder:"DATE"`
	Outing string   `help:"Id of the outing." placeholder:"ID"`
	Wet    bool     `help:"They became wet."`
	Shock  bool     `help:"They took a shock load: a fall, a jump, a slack line that went taut."`
	Cycles int      `help:"Rides or swings counted." placeholder:"COUNT"`
	Out    string   `short:"o" help:"Write the new register there instead of printing it." placeholder:"FILE"`
}

// Run records the use.
func (c gearUseCommand) Run(env Env) error {
	return changeRegister(env, c.File, c.On, c.Out, func(r register.Register, on survey.Date) (register.Register, error) {
		return r.Used(register.Use{Date: on, Outing: c.Outing, Items: c.Items, Wet: c.Wet, Shock: c.Shock, Cycles: c.Cycles})
	})
}

type gearExamineCommand struct {
	File  string `arg:"" help:"Register of gear (JSON)."`
	Item  string `arg:"" help:"Id of the item."`
	Found string `required:"" enum:"fit,unfit" help:"Whether it may stay in use: fit or unfit." placeholder:"WHAT"`
	By    string `required:"" help:"The competent person who examined it." placeholder:"NAME"`
	On    string `help:"Day of the examination; today if left out." placeholder:"DATE"`
	Next  string `help:"Day by which that person wants the next one." placeholder:"DATE"`
	Note  string `help:"What was found, in words." placeholder:"TEXT"`
	Out   string `short:"o" help:"Write the new register there instead of printing it." placeholder:"FILE"`
}

// Run records the examination.
func (c gearExamineCommand) Run(env Env) error {
	return changeRegister(env, c.File, c.On, c.Out, func(r register.Register, on survey.Date) (register.Register, error) {
		e := register.Examination{On: on, By: c.By, Found: c.Found, Note: c.Note}
		if c.Next != "" {
			var err error
			if e.Next, err = dayOf("--next", c.Next); err != nil {
				return r, err
			}
		}
		return r.Examined(c.Item, e)
	})
}

type gearRetireCommand struct {
	File string `arg:"" help:"Register of gear (JSON)."`
	Item string `arg:"" help:"Id of the item."`
	Why  string `required:"" help:"The reason." placeholder:"TEXT"`
	On   string `help:"First day out of use; today if left out." placeholder:"DATE"`
	Out  string `short:"o" help:"Write the new register there instead of printing it." placeholder:"FILE"`
}

// Run retires the item.
func (c gearRetireCommand) Run(env Env) error {
	return changeRegister(env, c.File, c.On, c.Out, func(r register.Register, on survey.Date) (register.Register, error) {
		return r.Retire(c.Item, on, c.Why)
	})
}

// changeRegister reads a register, makes one change and hands it out.
func changeRegister(env Env, file, on, out string, change func(register.Register, survey.Date) (register.Register, error)) error {
	day, err := dayOf("--on", on)
	if err != nil {
		return err
	}
	r, err := readRegister(env, file)
	if err != nil {
		return err
	}
	if r, err = change(r, day); err != nil {
		return refusal{err}
	}
	return writeRegister(env, r, out)
}
