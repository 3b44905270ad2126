package treelist

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"boughline/assess"
	"boughline/exchange"
	"boughline/knowledge"
	"boughline/quantity"
	"boughline/survey"
)

// Taken is what came of a list.
type Taken struct {
	Trees []survey.Tree
	// Place is that of the site where coordinates in degrees gave one.
	Place   *survey.Place
	Refused []RefusedRow
	Remarks []Remark
}

// RefusedRow is a row that made no tree, with all that is wrong with it.
type RefusedRow struct {
	Row
	Why []string
}

// Remark says what became of a cell that did not come in just as it stands.
type Remark struct {
	Line int
	Text string
}

// Trees makes trees of the rows of a list, for a site with trees of its own or
// none. The mapping has no Problems. The error says why no row at all can come
// in.
func Trees(l *List, m Mapping, site *survey.Survey, k *knowledge.Base) (*Taken, error) {
	b := builder{list: l, mapping: m, site: site, knowledge: k, ids: map[string]bool{}, taken: &Taken{}}
	for _, heading := range l.Header {
		c, _ := m.column(heading)
		b.columns = append(b.columns, c)
	}
	for i := range site.Trees {
		b.ids[site.Trees[i].ID] = true
	}
	if err := b.findOrigin(); err != nil {
		return nil, err
	}
	for _, row := range l.Rows {
		b.row(row)
	}
	return b.taken, nil
}

type builder struct {
	list      *List
	mapping   Mapping
	columns   []Column
	site      *survey.Survey
	knowledge *knowledge.Base
	origin    exchange.Position
	ids       map[string]bool
	taken     *Taken
}

// has reports whether a column holds the field.
func (b *builder) has(f Field) bool {
	return slices.ContainsFunc(b.columns, func(c Column) bool { return c.Field == f })
}

// row makes one tree or says why not.
func (b *builder) row(row Row) {
	r := reading{builder: b, line: row.Line}
	if n := len(b.columns); len(row.Cells) > n {
		r.fault("it has %d cells under %d headings; perhaps a cell holds the separator and no quotation marks", len(row.Cells), n)
	}
	for i, c := range b.columns {
		if i < len(row.Cells) {
			r.cell(c, row.Cells[i])
		}
	}
	r.finish()
	if len(r.faults) > 0 {
		b.taken.Refused = append(b.taken.Refused, RefusedRow{row, r.faults})
		return
	}
	b.ids[r.tree.ID] = true
	b.taken.Trees = append(b.taken.Trees, r.tree)
	for _, text := range r.remarks {
		b.taken.Remarks = append(b.taken.Remarks, Remark{row.Line, text})
	}
}

// reading is one row on its way to a tree.
type reading struct {
	*builder
	line            int
	tree            survey.Tree
	girth, diameter *survey.MeasuredLength
	at              exchange.Position
	degrees         int // how many of the two were read
	note            []string
	faults, remarks []string
}

func (r *reading) fault(format string, values ...any) {
	r.faults = append(r.faults, fmt.Sprintf(format, values...))
}

func (r *reading) remark(format string, values ...any) {
	r.remarks = append(r.remarks, fmt.Sprintf(format, values...))
}

// cell reads one cell into the tree.
func (r *reading) cell(c Column, cell string) {
	if c.Field == LeaveOut {
		return
	}
	text, err := plainCell(cell)
	if err != nil {
		r.fault("%s: %v", c.Heading, err)
		return
	}
	if text == "" {
		return
	}
	switch {
	case c.Field.isLength():
		r.length(c, text)
	case c.Field == Latitude || c.Field == Longitude:
		r.degree(c, text)
	default:
		r.text(c, text)
	}
}

// plainCell takes off what spreadsheets put round a value. The formula in a
// cell is not its value, and neither is the name of an error.
func plainCell(cell string) (string, error) {
	text := strings.TrimSpace(cell)
	if strings.ContainsRune(text, '\ufffd') {
		return "", fmt.Errorf("%q holds a character that cannot be read; check the coding of the file", text)
	}
	if inner, ok := strings.CutPrefix(text, `="`); ok && strings.HasSuffix(inner, `"`) {
		return strings.TrimSuffix(inner, `"`), nil
	}
	if strings.HasPrefix(text, "=") {
		return "", fmt.Errorf("%q is a formula and not its value; save the list with values", text)
	}
	for _, fault := range []string{"#REF!", "#N/A", "#NV", "#VALUE!", "#WERT!", "#DIV/0!", "#NAME?", "#BEZUG!", "#NULL!", "#NUM!"} {
		if strings.EqualFold(text, fault) {
			return "", fmt.Errorf("%q is an error of a spreadsheet; correct it there", text)
		}
	}
	return exchange.Refuse(text), nil
}

func (r *reading) text(c Column, text string) {
	switch c.Field {
	case TreeID:
		r.tree.ID = text
	case Name:
		r.tree.Name = text
	case Species:
		r.tree.Species = text
	case Group:
		r.tree.Group = strings.ToLower(text)
	case Note:
		r.note = append(r.note, text)
	case Keep:
		r.note = append(r.note, c.Heading+": "+text)
	}
}

func (r *reading) length(c Column, text string) {
	value, err := length(text, r.mapping.Decimal, c)
	if err != nil {
		r.fault("%s: %v", c.Heading, err)
		return
	}
	m := &survey.MeasuredLength{Value: value, How: quantity.How(c.How)}
	switch c.Field {
	case Girth:
		r.girth = m
	case Diameter:
		r.diameter = m
	case Height:
		r.tree.Height = m
	case CrownWidth:
		r.tree.Crown = &survey.Crown{Width: m}
	case East:
		m.Value -= quantity.Length(r.mapping.easting())
		r.tree.East = m
	case North:
		m.Value -= quantity.Length(r.mapping.northing())
		r.tree.North = m
	}
}

func (r *reading) degree(c Column, text string) {
	x, err := degree(text, r.mapping.Decimal, c.Field)
	if err != nil {
		r.fault("%s: %v", c.Heading, err)
		return
	}
	r.degrees++
	if c.Field == Latitude {
		r.at.Latitude = x
	} else {
		r.at.Longitude = x
	}
}

// finish puts the tree together and holds it to the rules of a survey.
func (r *reading) finish() {
	if !r.has(TreeID) {
		r.tree.ID = r.freeID()
		r.remark("the list has no numbers; it became tree %s", r.tree.ID)
	}
	r.place()
	r.stem()
	r.species()
	r.tree.Note = strings.Join(r.note, "\n")
	switch {
	case r.tree.ID == "":
		r.fault("it has no number or name of its own")
	case r.ids[r.tree.ID]:
		r.fault("tree %q is there already; give it another number, or change that tree itself", r.tree.ID)
	}
	if len(r.faults) == 0 {
		r.check()
	}
}

func (r *reading) freeID() string {
	for i := len(r.ids) + 1; ; i++ {
		if id := fmt.Sprintf("T%d", i); !r.ids[id] {
			return id
		}
	}
}

// breastHeight is where girth and diameter of a stem are measured, 1.3 m
// (forest mensuration).
const breastHeight quantity.Length = 1.3

// stem takes the girth, and the diameter where there is none; the other of two
// goes into the note.
func (r *reading) stem() {
	station := survey.Station{At: survey.ChosenLength{Value: breastHeight}, Girth: r.girth}
	switch {
	case r.girth == nil && r.diameter == nil:
		r.fault("it has neither girth nor diameter of the stem")
	case r.girth == nil:
		station.Diameter = r.diameter
	case r.diameter != nil:
		r.note = append(r.note, "diameter "+r.diameter.String())
		r.remark("the girth is used; the diameter stands in the note")
	}
	r.tree.Members = []survey.Member{{ID: "stem", Stations: []survey.Station{station}}}
}

// species takes the name as it stands where the tables know it, by another of
// its names where that is one tree only, and else needs a group.
func (r *reading) species() {
	if r.tree.Species == "" {
		r.fault("it names no species")
		return
	}
	if _, known := r.knowledge.Species(r.tree.Species); known {
		return
	}
	search := r.knowledge.FindSpecies(r.tree.Species)
	if search.Found != nil {
		r.remark("%q was taken as %s", r.tree.Species, search.Found.Scientific)
		r.note = append(r.note, "species in the list: "+r.tree.Species)
		r.tree.Species = search.Found.Scientific
		return
	}
	if r.tree.Group == "" {
		r.tree.Group = r.mapping.Group
	}
	if r.tree.Group == "" {
		r.fault("the tables do not know the species %q%s; add --group broadleaf or --group conifer, or a column for it", r.tree.Species, likely(search))
		return
	}
	r.remark("the tables do not know %q; it counts as an unknown %s", r.tree.Species, r.tree.Group)
}

func likely(s knowledge.SpeciesSearch) string {
	var names []string
	for _, other := range s.Others {
		names = append(names, other.Scientific)
	}
	names = append(names, s.Near...)
	if len(names) == 0 {
		return ""
	}
	return " (perhaps " + strings.Join(names[:min(3, len(names))], ", ") + ")"
}

// check holds the tree alone to every rule of a survey.
func (r *reading) check() {
	alone := *r.site
	alone.Trees, alone.Hazards = []survey.Tree{r.tree}, nil
	problems := survey.Validate(&alone)
	if len(problems) == 0 {
		problems = assess.Problems(&alone, r.knowledge)
	}
	for _, p := range problems {
		what := strings.TrimPrefix(p.Path, "trees[0].")
		if i := strings.LastIndexByte(what, '.'); i >= 0 {
			what = what[i+1:]
		}
		r.fault("%s is %s: %s; expected %s", what, p.Value, p.Fault, p.Expected)
	}
}

var errGrid = errors.New("the coordinates are those of a national grid: add --origin EAST,NORTH, the origin of the site in them in m, so that trees lie within 5 km of it")
