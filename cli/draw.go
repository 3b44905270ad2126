package cli

import (
	"bytes"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"boughline/assess"
	"boughline/draw"
	"boughline/draw/pdf"
	"boughline/draw/svg"
	"boughline/knowledge"
	"boughline/sheet/figure"
	"boughline/survey"
)

type drawCommand struct {
	Figure string `arg:"" help:"One of: elevation, plan, swing, bending, section, rig, site." enum:"elevation,plan,swing,bending,section,rig,site"`
	File   string `arg:"" help:"Survey document (JSON)."`
	Hang   string `help:"The hang to draw." placeholder:"ID" xor:"which"`
	Tree   string `help:"The tree to draw, without any hang." placeholder:"ID" xor:"which"`
	Out    string `short:"o" help:"Write the drawing there, as SVG or PDF by the name, instead of SVG to standard output." placeholder:"FILE"`
}

// Run draws one figure.
func (c drawCommand) Run(env Env) error {
	k, err := knowledge.Load()
	if err != nil {
		return err
	}
	s, err := readSurvey(env, c.File, k)
	if err != nil {
		return err
	}
	scene, err := c.scene(s, k)
	if err != nil {
		return refusal{err}
	}
	if c.Out == "" {
		return svg.Write(env.Stdout, scene, svg.Options{})
	}
	var b bytes.Buffer
	if err := c.ink(&b, scene, s.Day); err != nil {
		return refusal{err}
	}
	if err := os.WriteFile(c.Out, b.Bytes(), 0o644); err != nil {
		return fmt.Errorf("cannot write the drawing: %w", err)
	}
	return nil
}

// ink draws in the ink that the name of the file asks for.
func (c drawCommand) ink(w io.Writer, scene *draw.Scene, day survey.Date) error {
	switch strings.ToLower(filepath.Ext(c.Out)) {
	case ".svg":
		return svg.Write(w, scene, svg.Options{})
	case ".pdf":
		dated, err := time.Parse(time.DateOnly, day.String())
		if err != nil {
			return fmt.Errorf("day: %w", err)
		}
		return pdf.Write(w, scene, dated)
	}
	return fmt.Errorf("-o %s: cannot tell the kind of drawing; expected a name that ends in .svg or .pdf", c.Out)
}

func (c drawCommand) scene(s *survey.Survey, k *knowledge.Base) (*draw.Scene, error) {
	figures, err := assess.NewFigures(s, k)
	if err != nil {
		return nil, err
	}
	if c.Tree != "" {
		return c.ofTree(figures)
	}
	judged, err := judgedHangs(s, k, figures)
	if err != nil {
		return nil, err
	}
	if c.Figure == "site" {
		return figure.Site(s.Site, figures.Trees(), judged), nil
	}
	i := slices.IndexFunc(judged, func(j figure.Judged) bool { return j.Assessed.ID == c.Hang })
	if i < 0 {
		return nil, fmt.Errorf("--hang: %q cannot be drawn; expected one of %s", c.Hang, namesOf(judged))
	}
	return c.ofHang(judged[i])
}

// judgedHangs pairs every hang that can be worked out with what follows for it.
func judgedHangs(s *survey.Survey, k *knowledge.Base, figures *assess.Figures) ([]figure.Judged, error) {
	a, err := assess.Assess(s, k)
	if err != nil {
		return nil, err
	}
	var list []figure.Judged
	for _, h := range a.Hangs {
		if drawn, err := figures.Hang(h.ID); err == nil { // the assessment says why it is not computed
			list = append(list, figure.Judged{Figure: drawn, Assessed: h})
		}
	}
	return list, nil
}

func namesOf(judged []figure.Judged) string {
	var ids []string
	for _, j := range judged {
		ids = append(ids, j.Assessed.ID)
	}
	return strings.Join(ids, ", ")
}

func (c drawCommand) ofTree(figures *assess.Figures) (*draw.Scene, error) {
	t, err := figures.Tree(c.Tree)
	if err != nil {
		return nil, fmt.Errorf("--tree: %w", err)
	}
	switch c.Figure {
	case "elevation":
		return figure.Elevation(t, nil), nil
	case "plan":
		return figure.Plan(t, nil), nil
	}
	return nil, fmt.Errorf("--tree: %s is the drawing of a hang; expected --hang", c.Figure)
}

func (c drawCommand) ofHang(j figure.Judged) (*draw.Scene, error) {
	switch c.Figure {
	case "elevation":
		return figure.Elevation(j.Figure.Tree, &j), nil
	case "plan":
		return figure.Plan(j.Figure.Tree, &j), nil
	case "swing":
		return figure.Swing(j)
	case "bending":
		return figure.Bending(j), nil
	case "rig":
		return figure.Rig(j)
	}
	return figure.SectionOf(j, 0), nil
}
