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
	File    string `arg:"" help:"Survey document (JSON)."`
	Tree    string `help:"The tree that the sheet is about." placeholder:"ID"`
	Hang    string `help:"Only this hang." placeholder:"ID"`
	Paper   string `help:"Paper of a PDF: a4 or letter." enum:"a4,letter" default:"a4"`
	Working bool   `help:"Append every number of an assessment as worked steps."`
	Photos  string `help:"Folder of photos, named TREE [FINDING] CAPTION.jpg." type:"existingdir" placeholder:"DIR"`
	Out     string `short:"o" required:"" help:"Write the sheet there: PDF or HTML by the name." placeholder:"FILE"`
}

// Run makes one sheet.
func (c sheetCommand) Run(env Env) error {
	if _, err := sheet.KindOf(c.Kind); err != nil {
		return refusal{err}
	}
	ink, err := c.ink()
	if err != nil {
		return refusal{err}
	}
	k, err := knowledge.Load()
	if err != nil {
		return err
	}
	s, err := readSurvey(env, c.File, k)
	if err != nil {
		return err
	}
	made, err := madeBy()
	if err != nil {
		return err
	}
	photos, err := readPhotos(c.Photos, s, progressOn(env.Stderr, "photos"))
	if err != nil {
		return err
	}
	one, err := sheet.Make(c.Kind, sheet.Input{Survey: s, Knowledge: k, Made: made, Tree: c.Tree, Hang: c.Hang,
		Working: c.Working, Photos: photos, Progress: progressOn(env.Stderr, "working out")})
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
