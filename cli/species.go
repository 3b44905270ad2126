package cli

import (
	"fmt"
	"io"
	"strings"

	"boughline/assess/wording"
	"boughline/knowledge"
)

type speciesCommand struct {
	Name []string `arg:"" help:"Any name of the tree: common or scientific, British or American, a synonym, or the beginning of one."`
	JSON bool     `name:"json" help:"Print the row as JSON."`
}

// Run tells what the tables say of a kind of tree. A name that several share
// lists them and is refused.
func (c speciesCommand) Run(env Env) error {
	k, err := knowledge.Load()
	if err != nil {
		return err
	}
	name := strings.Join(c.Name, " ")
	found := k.FindSpecies(name)
	switch {
	case found.Found == nil && len(found.Others) > 0:
		return refusal{fmt.Errorf("%q may be any of these; name one:\n%s", name, speciesNames(found.Others))}
	case found.Found == nil && len(found.Near) > 0:
		return refusal{fmt.Errorf("%q is in no table; did you mean %s?", name, strings.Join(found.Near, ", "))}
	case found.Found == nil:
		return refusal{fmt.Errorf("%q is in no table; a tree of unknown kind takes the lowest strength of its group, broadleaf or conifer", name)}
	}
	report := newSpeciesReport(k, *found.Found, found.Others)
	if c.JSON {
		return writeJSON(env.Stdout, report)
	}
	return report.write(env.Stdout)
}

func speciesNames(list []knowledge.Species) string {
	lines := make([]string, len(list))
	for i, s := range list {
		lines[i] = fmt.Sprintf("  %s (%s)", s.Scientific, s.Common)
	}
	return strings.Join(lines, "\n")
}

// speciesReport is what the tables say of one kind of tree. Texts that are
// empty say that the tables do not know.
type speciesReport struct {
	Scientific           string   `json:"scientific"`
	Common               string   `json:"common"`
	Names                []string `json:"names"`
	Group                string   `json:"group"`
	Strength             float64  `json:"green_bending_strength_pa"`
	StrengthFrom         string   `json:"strength_from"`
	Fallback             bool     `json:"strength_of_group"` // the tables hold none of its own
	Density              float64  `json:"green_density_kg_m3"`
	Limbs                string   `json:"limb_reputation"`
	Shedding             string   `json:"shedding"`
	Bark                 string   `json:"bark"`
	Durability           string   `json:"decay_resistance_of_heartwood"`
	Compartmentalisation string   `json:"resistance_to_spreading_decay"`
	Diseases             []string `json:"look_for"`
	Note                 string   `json:"note"`
	Memory               string   `json:"from_memory"` // all, part or none
	Sources              []string `json:"sources"`
	AlsoNamed            []string `json:"others_with_that_name"`
	Caution              string   `json:"caution"`
}

const speciesCaution = "Wood and reputation do not say which limb breaks: in one storm study nearly all broken limbs had no visible defect. Ask a consulting arborist where in doubt. Reputation, shedding and bark words are common practice and from memory; no independent arborist has checked them."

func newSpeciesReport(k *knowledge.Base, s knowledge.Species, others []knowledge.Species) speciesReport {
	wood := k.Wood(s)
	r := speciesReport{
		Scientific: s.Scientific, Common: s.Common, Names: listed(s.Names), Group: string(s.Group),
		Strength: wood.MOR.Value, StrengthFrom: wood.MOR.Ref.Citation(), Fallback: wood.Fallback, Density: wood.GreenDensity.Value,
		Limbs: s.LimbReputation, Shedding: s.Shedding, Bark: s.Bark, Durability: s.Durability,
		Compartmentalisation: s.Compartmentalisation, Diseases: listed(s.Diseases), Note: s.Note,
		Memory: memoryWord(s), Sources: []string{}, AlsoNamed: []string{}, Caution: speciesCaution,
	}
	for _, ref := range s.Refs {
		r.Sources = append(r.Sources, ref.Citation())
	}
	for _, o := range others {
		r.AlsoNamed = append(r.AlsoNamed, o.Scientific)
	}
	return r
}

func memoryWord(s knowledge.Species) string {
	switch {
	case s.FromMemory:
		return "all"
	case s.PartlyFromMemory:
		return "part"
	}
	return "none"
}

// speciesColumn is wide enough for the headings of a species.
const speciesColumn = 16

func (r speciesReport) write(w io.Writer) error {
	var b strings.Builder
	line := func(head, text string) {
		if text == "" {
			text = "not in the tables"
		}
		b.WriteString(hanging("  "+head, text, speciesColumn))
	}
	fmt.Fprintf(&b, "%s: %s, a %s\n", r.Scientific, r.Common, r.Group)
	if len(r.Names) > 0 {
		line("also", strings.Join(r.Names, ", "))
	}
	strength := wording.Quantity(r.Strength, "Pa") + " green bending strength, clear wood"
	if r.Fallback {
		strength += "; none of its own is known, so the lowest of its group"
	}
	line("wood", fmt.Sprintf("%s; %.0f kg/m3 green [%s]", strength, r.Density, r.StrengthFrom))
	line("limbs", r.Limbs)
	line("shedding", r.Shedding)
	line("bark", r.Bark)
	line("heartwood", r.Durability)
	line("walls off", r.Compartmentalisation)
	line("look for", strings.Join(r.Diseases, ", "))
	if r.Note != "" {
		line("note", r.Note)
	}
	if len(r.AlsoNamed) > 0 {
		line("not", strings.Join(r.AlsoNamed, ", ")+", whose names begin alike")
	}
	if r.Memory != "none" {
		line("memory", r.Memory+" of this row is from memory")
	}
	for _, s := range r.Sources {
		line("source", s)
	}
	b.WriteString(hanging("!", speciesCaution, 2))
	_, err := io.WriteString(w, b.String())
	return err
}
