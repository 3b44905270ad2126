package cli

import (
	"fmt"
	"io"
	"strings"

	"boughline/assess/wording"
	"boughline/engine/signs"
	"boughline/knowledge"
)

// ruleForm is the JSON form of what signs mean together.
type ruleForm struct {
	ID      string       `json:"id"`
	Name    string       `json:"name"`
	Means   string       `json:"means"`
	All     []clauseForm `json:"all"`
	Spot    signs.Spot   `json:"spot"`
	Effects effectsForm  `json:"effects"`
	sourceForm
}

type clauseForm struct {
	AnyOf    []string       `json:"any_of,omitempty"`
	Quantity signs.Quantity `json:"quantity,omitempty"`
	Above    float64        `json:"above,omitempty"`
}

// rules prints what signs mean together.
func (c signsCommand) rules(w io.Writer, k *knowledge.Base) error {
	if c.JSON {
		return writeJSON(w, rulesForm(k.SignRules()))
	}
	var b strings.Builder
	for _, r := range k.SignRules() {
		var halves []string
		for _, clause := range r.All {
			halves = append(halves, clauseText(clause, k))
		}
		b.WriteString(r.ID + memoryMark(r.FromMemory, r.PartlyFromMemory) + "\n")
		b.WriteString(hanging("  if", strings.Join(halves, ", and "), column))
		b.WriteString(hanging("  means", r.Means, column))
		b.WriteString(hanging("  follows", fmt.Sprintf("on the load path: %s; above the people: %s; elsewhere: %s", wording.Effect(r.OnLoadPath), wording.Effect(r.AbovePeople), wording.Effect(r.Elsewhere)), column))
		b.WriteString(citations(r.Refs))
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// clauseText words one half of a rule.
func clauseText(c signs.Clause, k *knowledge.Base) string {
	if c.Quantity != "" {
		return wording.Measured(c.Quantity, c.Above)
	}
	var names []string
	for _, id := range c.AnyOf {
		if s, ok := k.Sign(id); ok {
			names = append(names, s.Name)
		}
	}
	return strings.Join(names, " or ")
}

func rulesForm(list []signs.Rule) signsDocument {
	doc := signsDocument{Format: signsFormat}
	for _, r := range list {
		f := ruleForm{
			ID: r.ID, Name: r.Name, Means: r.Means, Spot: r.Spot, sourceForm: sourcesOf(r.Refs, r.FromMemory, r.PartlyFromMemory),
			Effects: effectsForm{r.OnLoadPath.String(), r.AbovePeople.String(), r.Elsewhere.String()},
		}
		for _, c := range r.All {
			f.All = append(f.All, clauseForm(c))
		}
		doc.Rules = append(doc.Rules, f)
	}
	return doc
}
