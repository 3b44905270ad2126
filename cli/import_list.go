package cli

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"

	"boughline/exchange/treelist"
	"boughline/knowledge"
	"boughline/notebook"
	"boughline/survey"
)

// listOptions are those of lists of trees.
type listOptions struct {
	Show    bool              `help:"For a list, show what its columns are taken for and what would come in; nothing is written but the mapping."`
	Mapping string            `help:"For a list, file that says what its columns hold; written where it is missing, used where it is there." placeholder:"FILE" type:"path"`
	Unit    map[string]string `help:"For a list, the unit of a column without one." placeholder:"girth=cm"`
	Decimal string            `help:"For a list, its decimal mark where it cannot be told." placeholder:"MARK"`
	Coding  string            `help:"For a list, its coding where it is not found out." placeholder:"windows-1252"`
	Group   string            `help:"For a list, what trees are whose kind the tables do not know: broadleaf or conifer." placeholder:"GROUP"`
	Origin  string            `help:"For a list, the origin of the site in its coordinates, m." placeholder:"EAST,NORTH"`
	Day     string            `help:"For a list that makes a new site, the day for which it is judged; today if left out." placeholder:"DATE"`
	Refused string            `help:"For a list, CSV file for the rows that did not come in, to be corrected and taken in again." placeholder:"FILE" type:"path"`
}

// list takes trees from a list of others.
func (c importCommand) list(env Env, k *knowledge.Base) error {
	data, err := os.ReadFile(c.From[0])
	if err != nil {
		return fmt.Errorf("cannot read the list: %w", err)
	}
	remembered, err := c.remembered()
	if err != nil {
		return err
	}
	l, m, err := c.mapped(data, remembered)
	if err != nil {
		return refusal{fmt.Errorf("%s: %w", c.From[0], err)}
	}
	c.showColumns(env, l, m)
	if c.Mapping != "" && remembered == nil {
		text, err := m.Text()
		if err != nil {
			return err
		}
		if err := replace(c.Mapping, text); err != nil {
			return err
		}
		fmt.Fprintf(env.Stdout, "%s: the mapping was written; change it there\n", c.Mapping)
	}
	if problems := m.Problems(l); len(problems) > 0 {
		for _, p := range problems {
			fmt.Fprint(env.Stderr, hanging("-", p, 2))
		}
		return refusal{fmt.Errorf("%s: %d %s with its columns; nothing was taken in", c.From[0], len(problems), plural("problem", len(problems)))}
	}
	if c.Into == "" {
		if c.Show {
			return nil
		}
		return refusal{errors.New("--into is missing: expected the survey document or the records to take it into")}
	}
	return c.takeList(env, l, m, k)
}

// remembered is the mapping of an earlier list, nil where there is none.
func (c importCommand) remembered() (*treelist.Mapping, error) {
	if c.Mapping == "" {
		return nil, nil
	}
	text, err := os.ReadFile(c.Mapping)
	if errors.Is(err, os.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, fmt.Errorf("cannot read the mapping: %w", err)
	}
	m, err := treelist.ReadMapping(text)
	if err != nil {
		return nil, refusal{fmt.Errorf("%s: %w", c.Mapping, err)}
	}
	return &m, nil
}

// mapped reads the list with the mapping remembered or proposed, and what the
// command line says besides.
func (c importCommand) mapped(data []byte, remembered *treelist.Mapping) (*treelist.List, treelist.Mapping, error) {
	coding, separator := c.Coding, ""
	if remembered != nil {
		separator = remembered.Separator
		if coding == "" {
			coding = remembered.Coding
		}
	}
	l, err := treelist.Read(data, coding, separator)
	if err != nil {
		return nil, treelist.Mapping{}, err
	}
	m := treelist.Propose(l)
	if remembered != nil {
		m = *remembered
	}
	if c.Decimal != "" {
		m.Decimal = c.Decimal
	}
	if c.Group != "" {
		m.Group = c.Group
	}
	for i, column := range m.Columns {
		if unit, ok := c.Unit[string(column.Field)]; ok {
			m.Columns[i].Unit = unit
		}
	}
	if c.Origin != "" {
		m.Origin, err = originOf(c.Origin)
	}
	return l, m, err
}

func originOf(text string) (*treelist.Origin, error) {
	east, north, _ := strings.Cut(text, ",")
	e, wrongEast := strconv.ParseFloat(strings.TrimSpace(east), 64)
	n, wrongNorth := strconv.ParseFloat(strings.TrimSpace(north), 64)
	if wrongEast != nil || wrongNorth != nil {
		return nil, fmt.Errorf("--origin: %q; expected two numbers, such as 532000,181000", text)
	}
	return &treelist.Origin{East: e, North: n}, nil
}

// showColumns tells what each column is taken for.
func (c importCommand) showColumns(env Env, l *treelist.List, m treelist.Mapping) {
	separator := map[rune]string{'\t': "tab"}[l.Separator]
	if separator == "" {
		separator = string(l.Separator)
	}
	fmt.Fprintf(env.Stdout, "%s: %s, separator %s, decimal mark %s, %d rows, %d empty ones passed over\n",
		c.From[0], l.Coding, separator, m.Decimal, len(l.Rows), l.Empty)
	for _, heading := range l.Header {
		taken := "not in the mapping"
		for _, column := range m.Columns {
			if strings.EqualFold(strings.TrimSpace(column.Heading), heading) {
				taken = strings.TrimSpace(string(column.Field) + " " + column.Unit + " " + column.How)
			}
		}
		switch taken {
		case string(treelist.Keep):
			taken = "kept in the note"
		case string(treelist.LeaveOut):
			taken = "left out, as the mapping says"
		}
		fmt.Fprintf(env.Stdout, "  %-32q %s\n", heading, taken)
	}
	for _, remark := range l.Remarks {
		fmt.Fprint(env.Stdout, hanging("!", remark, 2))
	}
}

// takeList makes trees of the rows and puts them where they are to go.
func (c importCommand) takeList(env Env, l *treelist.List, m treelist.Mapping, k *knowledge.Base) error {
	target, err := c.target(env, k)
	if err != nil {
		return err
	}
	defer target.closed()
	taken, err := treelist.Trees(l, m, target.site, k)
	if err != nil {
		return refusal{fmt.Errorf("%s: %w", c.From[0], err)}
	}
	for _, r := range taken.Remarks {
		fmt.Fprint(env.Stdout, hanging("!", fmt.Sprintf("line %d: %s", r.Line, r.Text), 2))
	}
	for _, r := range taken.Refused {
		fmt.Fprint(env.Stdout, hanging("-", fmt.Sprintf("line %d did not come in: %s", r.Line, strings.Join(r.Why, "; ")), 2))
	}
	if c.Refused != "" {
		if err := writeRefused(c.Refused, l, taken.Refused); err != nil {
			return err
		}
	}
	verb := "came in"
	if c.Show {
		verb = "would come in"
	} else if len(taken.Trees) > 0 {
		if err := target.add(taken); err != nil {
			return err
		}
	}
	fmt.Fprintf(env.Stdout, "%s: %d of %d rows %s, %d did not\n", c.Into, len(taken.Trees), len(l.Rows), verb, len(taken.Refused))
	if len(taken.Trees) == 0 {
		return refusal{fmt.Errorf("%s: no row can come in", c.From[0])}
	}
	return nil
}

// writeRefused writes the rows that did not come in just as they were, with
// the reasons in a column of their own that is left out when they come again.
func writeRefused(name string, l *treelist.List, rows []treelist.RefusedRow) error {
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	w.Comma = l.Separator
	_ = w.Write(append(append([]string{}, l.Header...), treelist.Why))
	for _, r := range rows {
		cells := append(append([]string{}, r.Cells...), make([]string, max(0, len(l.Header)-len(r.Cells)))...)
		_ = w.Write(append(cells, strings.Join(r.Why, "; ")))
	}
	w.Flush()
	if err := w.Error(); err != nil {
		return err
	}
	return replace(name, b.Bytes())
}

// listTarget is where the trees of a list go.
type listTarget struct {
	site   *survey.Survey
	add    func(*treelist.Taken) error
	closed func() error
}

func (c importCommand) target(env Env, k *knowledge.Base) (listTarget, error) {
	records, err := c.intoRecords()
	if err != nil {
		return listTarget{}, err
	}
	if records {
		return c.recordsTarget(env, k)
	}
	none := func() error { return nil }
	if _, err := os.Stat(c.Into); errors.Is(err, os.ErrNotExist) {
		s, err := c.newSite()
		return listTarget{s, func(t *treelist.Taken) error { return c.writeTrees(s, t) }, none}, err
	}
	s, err := readSurvey(env, c.Into, k)
	return listTarget{s, func(t *treelist.Taken) error { return c.writeTrees(s, t) }, none}, err
}

// newSite is named after the file where the command line names none.
func (c importCommand) newSite() (*survey.Survey, error) {
	s := &survey.Survey{Version: survey.Version, Site: c.Site}
	if s.Site == "" {
		s.Site = strings.TrimSuffix(filepath.Base(c.From[0]), filepath.Ext(c.From[0]))
	}
	day := c.Day
	if day == "" {
		day = today()
	}
	var err error
	if s.Day, err = survey.ParseDate(day); err != nil {
		err = refusal{fmt.Errorf("--day: %w", err)}
	}
	return s, err
}

func (c importCommand) writeTrees(s *survey.Survey, taken *treelist.Taken) error {
	s.Trees = append(s.Trees, taken.Trees...)
	if taken.Place != nil {
		s.Place = taken.Place
	}
	var text bytes.Buffer
	if err := survey.Write(&text, s); err != nil {
		return err
	}
	return replace(c.Into, text.Bytes())
}

// recordsTarget adds to a site of the records, or makes one where there is none.
func (c importCommand) recordsTarget(env Env, k *knowledge.Base) (listTarget, error) {
	n, closed, err := openRecords(env, c.Into, k)
	if err != nil {
		return listTarget{}, err
	}
	target, err := c.recordsSite(env, n)
	if err != nil {
		closed()
		return listTarget{}, err
	}
	target.closed = closed
	return target, nil
}

func (c importCommand) recordsSite(env Env, n *notebook.Notebook) (listTarget, error) {
	edit := notebook.Edit{What: "trees from " + filepath.Base(c.From[0])}
	id, err := siteOf(env.context(), n, c.Site)
	if errors.Is(err, errNotNamed) { // it is made
		s, err := c.newSite()
		return listTarget{site: s, add: func(t *treelist.Taken) error {
			s.Trees, s.Place = t.Trees, t.Place
			_, err := n.Take(env.context(), &notebook.Copy{Survey: s}, newID(), edit)
			return err
		}}, err
	}
	if err != nil {
		return listTarget{}, err
	}
	copied, err := n.Copy(env.context(), id)
	if err != nil {
		return listTarget{}, err
	}
	return listTarget{site: copied.Survey, add: func(t *treelist.Taken) error {
		if t.Place != nil {
			if err := n.ChangeSite(env.context(), id, edit, func(s *survey.Survey) error { s.Place = t.Place; return nil }); err != nil {
				return err
			}
		}
		return n.AddTrees(env.context(), id, edit, t.Trees)
	}}, nil
}
