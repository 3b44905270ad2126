package cli

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"runtime/debug"
	"strings"

	"boughline/knowledge"
	"boughline/sheet"
	"boughline/sheet/html"
	"boughline/sheet/pdf"
)

type sheetCommand struct {
	Kind    string `arg:"" help:"One of: ${sheet_kinds}."`
	File    string `arg:"" help:"Survey document (JSON); for day-card and outing the file of a day, for gear a register."`
	Tree    string `help:"The tree that the sheet is about." placeholder:"ID"`
	Hang    string `help:"Only this hang." placeholder:"ID"`
	Paper   string `help:"Paper of a PDF: a4 or letter." enum:"a4,letter" default:"a4"`
	Working bool   `help:"Append every number of an assessment as worked steps."`
	Photos  string `help:"Folder of photos, named TREE [FINDING] CAPTION.jpg." type:"existingdir" placeholder:"DIR"`
	On      string `help:"The day that a register is judged for; today if left out." placeholder:"DATE"`
	Out     string `short:"o" required:"" help:"Write the sheet there: PDF or HTML by the name." placeholder:"FILE"`
}

// Run makes one sheet.
func (c sheetCommand) Run(env Env) error {
	kind, err := sheet.KindOf(c.Kind)
	if err != nil {
		return refusal{err}
	}
	if err := c.fits(kind); err != nil {
		return refusal{err}
	}
	ink, err := c.ink()
	if err != nil {
		return refusal{err}
	}
	in, err := c.input(env, kind)
	if err != nil {
		return err
	}
	one, err := sheet.Make(c.Kind, in)
	if err != nil {
		return sheetRefusal(c.File, err)
	}
	var b bytes.Buffer
	if err := ink(&b, one); err != nil {
		return err
	}
	if err := os.WriteFile(c.Out, b.Bytes(), 0o644); err != nil {
		return fmt.Errorf("cannot write the sheet: %w", err)
	}
	return nil
}

// fits refuses options that say nothing to a kind of sheet.
func (c sheetCommand) fits(k sheet.Kind) error {
	for _, given := range []struct {
		option string
		is     bool
		takes  sheet.Takes
		of     string
	}{
		{"tree", c.Tree != "", sheet.TakesSurvey, "a survey"}, {"hang", c.Hang != "", sheet.TakesSurvey, "a survey"}, {"photos", c.Photos != "", sheet.TakesSurvey, "a survey"},
		{"working", c.Working, sheet.TakesSurvey, "a survey"}, {"on", c.On != "", sheet.TakesRegister, "a register of gear"},
	} {
		if given.is && given.takes != k.Takes {
			return fmt.Errorf("--%s is for sheets made of %s; leave it out for %s", given.option, given.of, k.Name)
		}
	}
	return nil
}

// input reads what a kind of sheet is made of.
func (c sheetCommand) input(env Env, kind sheet.Kind) (sheet.Input, error) {
	in := sheet.Input{Tree: c.Tree, Hang: c.Hang, Working: c.Working, Progress: progressOn(env.Stderr, "working out")}
	var err error
	if in.Knowledge, err = knowledge.Load(); err != nil {
		return in, err
	}
	if in.Made, err = madeBy(); err != nil {
		return in, err
	}
	switch kind.Takes {
	case sheet.TakesOuting:
		in.Outing, err = readDay(env, c.File, in.Knowledge)
		return in, err
	case sheet.TakesRegister:
		if in.On, err = dayOf("--on", c.On); err != nil {
			return in, err
		}
		r, err := readRegister(env, c.File)
		in.Register = &r
		return in, err
	}
	if in.Survey, err = readSurvey(env, c.File, in.Knowledge); err != nil {
		return in, err
	}
	in.Photos, err = readPhotos(c.Photos, in.Survey, progressOn(env.Stderr, "photos"))
	return in, err
}

// ink writes in the form that the name of the file asks for.
func (c sheetCommand) ink() (func(io.Writer, *sheet.Sheet) error, error) {
	switch strings.ToLower(filepath.Ext(c.Out)) {
	case ".html", ".htm":
		return html.Write, nil
	case ".pdf":
		paper := pdf.A4
		if c.Paper == "letter" {
			paper = pdf.Letter
		}
		return func(w io.Writer, s *sheet.Sheet) error { return pdf.Write(w, s, paper) }, nil
	}
	return nil, fmt.Errorf("-o %s: cannot tell the form of the sheet; expected a name that ends in .pdf or .html", c.Out)
}

// sheetRefusal names the option that would help.
func sheetRefusal(file string, err error) error {
	var unknown sheet.Unknown
	var missing sheet.Missing
	switch {
	case errors.As(err, &unknown):
		return refusal{fmt.Errorf("--%s: %w", unknown.What, err)}
	case errors.As(err, &missing):
		return refusal{fmt.Errorf("--%s: %w", missing.What, err)}
	}
	return refusal{fmt.Errorf("%s: %w", file, err)}
}

// madeBy says which program and which tables are at work.
func madeBy() (sheet.Made, error) {
	tables, err := knowledge.Version()
	return sheet.Made{Program: "boughline " + programVersion(), Knowledge: tables}, err
}

// programVersion is the version that the program was built as: that of its
// module, else the commit, else that it has none.
func programVersion() string {
	info, ok := debug.ReadBuildInfo()
	if !ok {
		return "(development build)"
	}
	if v := info.Main.Version; v != "" && v != "(devel)" {
		return v
	}
	for _, s := range info.Settings {
		if s.Key == "vcs.revision" && len(s.Value) >= 12 {
			return "commit " + s.Value[:12]
		}
	}
	return "(development build)"
}

// sheetKinds lists the kinds for the help.
func sheetKinds() string {
	var names []string
	for _, k := range sheet.Kinds() {
		names = append(names, k.Name)
	}
	return strings.Join(names, ", ")
}
