package treelist

import (
	"encoding/json"
	"fmt"
	"slices"
	"strings"

	"boughline/quantity"
)

// Field is what a column holds.
type Field string

// The fields. Keep writes the cell into the note of the tree; LeaveOut drops the
// column, and the report says so.
const (
	TreeID     Field = "tree"
	Name       Field = "name"
	Species    Field = "species"
	Group      Field = "group"
	Girth      Field = "girth"
	Diameter   Field = "diameter"
	East       Field = "east"
	North      Field = "north"
	Latitude   Field = "latitude"
	Longitude  Field = "longitude"
	Height     Field = "height"
	CrownWidth Field = "crown_width"
	Note       Field = "note"
	Keep       Field = "keep"
	LeaveOut   Field = "leave out"
)

// Fields lists them all.
func Fields() []Field {
	return []Field{TreeID, Name, Species, Group, Girth, Diameter, East, North, Latitude, Longitude, Height, CrownWidth, Note, Keep, LeaveOut}
}

func (f Field) isLength() bool {
	return slices.Contains([]Field{Girth, Diameter, East, North, Height, CrownWidth}, f)
}

func (f Field) isNumber() bool { return f.isLength() || f == Latitude || f == Longitude }

// Why heads the column of reasons in a list of rows that did not come in; it is
// left out when they come again.
const Why = "why"

// Mapping says what the columns of a list hold.
type Mapping struct {
	Version int `json:"boughline_mapping"`
	// Coding and Separator are found out where they are left out.
	Coding    string `json:"coding,omitempty"`
	Separator string `json:"separator,omitempty"`
	Decimal   string `json:"decimal"` // . or ,
	// Group holds for trees whose kind the tables do not know and whose row
	// names none: broadleaf or conifer.
	Group string `json:"group,omitempty"`
	// Origin is the origin of the site in the coordinates of the list, m.
	Origin  *Origin  `json:"origin,omitempty"`
	Columns []Column `json:"columns"`
}

// Origin is a place in the coordinates of a list, m.
type Origin struct {
	East  float64 `json:"east"`
	North float64 `json:"north"`
}

// Column is one column of a list, known by its heading.
type Column struct {
	Heading string `json:"heading"`
	Field   Field  `json:"field"`
	Unit    string `json:"unit,omitempty"` // of a length whose cells have none
	// How says how it was measured (taped, clinometer, laser ...); left out, it
	// is judged like a value by eye.
	How string `json:"how,omitempty"`
}

// mappingVersion is that of the file of a mapping.
const mappingVersion = 1

// ReadMapping reads a remembered mapping.
func ReadMapping(data []byte) (Mapping, error) {
	var m Mapping
	decoder := json.NewDecoder(strings.NewReader(string(data)))
	decoder.DisallowUnknownFields()
	if err := decoder.Decode(&m); err != nil {
		return m, fmt.Errorf("the mapping cannot be read: %w", err)
	}
	if m.Version != mappingVersion {
		return m, fmt.Errorf("boughline_mapping is %d; expected %d", m.Version, mappingVersion)
	}
	for _, c := range m.Columns {
		if !slices.Contains(Fields(), c.Field) {
			return m, fmt.Errorf("column %q has the field %q; expected one of %v", c.Heading, c.Field, Fields())
		}
		if c.How != "" && !slices.Contains(quantity.Hows(), quantity.How(c.How)) {
			return m, fmt.Errorf("column %q was measured %q; expected one of %v", c.Heading, c.How, quantity.Hows())
		}
	}
	return m, nil
}

// Text writes a mapping for a file.
func (m Mapping) Text() ([]byte, error) {
	data, err := json.MarshalIndent(m, "", " ")
	return append(data, '\n'), err
}

// Propose reads the headings of a list. Of two columns for one field the one
// with more fitting words is taken; the other is kept in the note.
func Propose(l *List) Mapping {
	m := Mapping{Version: mappingVersion}
	taken := map[Field]int{}
	fit := make([]int, len(l.Header))
	for i, heading := range l.Header {
		unit, words := unitOf(plainWords(heading))
		field, n := match(words)
		c := Column{Heading: heading, Field: field}
		if fit[i] = 10*n - len(words); field.isLength() {
			c.Unit = unit
		}
		if (field == East || field == North) && unit == "" {
			c.Unit = "m" // of a grid
		}
		m.Columns = append(m.Columns, c)
		if before, twice := taken[field]; !twice || field == Keep {
			taken[field] = i
		} else if fit[i] > fit[before] {
			m.Columns[before].Field, m.Columns[before].Unit, taken[field] = Keep, "", i
		} else {
			m.Columns[i].Field, m.Columns[i].Unit = Keep, ""
		}
	}
	m.Decimal = findDecimal(l, m)
	return m
}

// Problems says why a mapping does not do for a list, all of it.
func (m Mapping) Problems(l *List) []string {
	var list []string
	say := func(format string, values ...any) { list = append(list, fmt.Sprintf(format, values...)) }
	used := map[Field]string{}
	for _, heading := range l.Header {
		c, ok := m.column(heading)
		if !ok {
			say("the mapping does not name the column %q; add it, with the field keep or leave out where it is none of the others", heading)
			continue
		}
		if before, twice := used[c.Field]; twice && c.Field != Keep && c.Field != LeaveOut && c.Field != Note {
			say("the columns %q and %q are both %s; keep one, and give the other the field keep", before, heading, c.Field)
		}
		used[c.Field] = heading
		if c.Field.isLength() && c.Unit == "" && !everyCellHasUnit(l, heading) {
			say("column %q (%s) has no unit: add --unit %s=cm, or the unit it has", heading, c.Field, c.Field)
		}
	}
	has := func(f Field) bool { _, ok := used[f]; return ok }
	if !has(Species) {
		say("no column holds the species; name it in the mapping")
	}
	if !has(Girth) && !has(Diameter) {
		say("no column holds the girth or the diameter of the stem, without which a tree cannot be judged; name it in the mapping")
	}
	if has(East) != has(North) || has(Latitude) != has(Longitude) {
		say("of two coordinates one is missing; name both columns or none")
	}
	if has(East) && has(Latitude) {
		say("there are two kinds of coordinates; give one pair the field keep")
	}
	if m.Decimal != "." && m.Decimal != "," {
		say("whether 1,234 is more than a thousand or little more than one cannot be told from the list: add --decimal . or --decimal ,")
	}
	return list
}

func (m Mapping) column(heading string) (Column, bool) {
	i := slices.IndexFunc(m.Columns, func(c Column) bool { return strings.EqualFold(strings.TrimSpace(c.Heading), heading) })
	switch {
	case i >= 0:
		return m.Columns[i], true
	case heading == Why:
		return Column{Heading: Why, Field: LeaveOut}, true
	}
	return Column{}, false
}
