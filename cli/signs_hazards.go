package cli

import (
	"fmt"
	"io"
	"strings"
	"time"

	"boughline/assess/wording"
	"boughline/engine/signs"
	"boughline/knowledge"
)

// hazards prints what at a site can hurt people or must not be harmed.
func (c signsCommand) hazards(w io.Writer, k *knowledge.Base) error {
	if c.JSON {
		return writeJSON(w, hazardsForm(k.Hazards()))
	}
	var b strings.Builder
	group := ""
	for i, h := range k.Hazards() {
		if h.Group != group {
			b.WriteString(zoneTitle(signs.Zone(h.Group), i == 0))
			group = h.Group
		}
		b.WriteString(hanging("  "+h.ID, hazardText(h), 22))
	}
	_, err := io.WriteString(w, b.String())
	return err
}

func hazardText(h signs.Hazard) string {
	text := fmt.Sprintf("%s%s: %s. Look for: %s", h.Name, memoryMark(h.FromMemory, h.PartlyFromMemory), h.Means, h.LookFor)
	if h.From > 0 {
		text += fmt.Sprintf("; mostly %s to %s", time.Month(h.From), time.Month(h.To))
	}
	return fmt.Sprintf("%s. Within %g m of people or of the limb in use: %s; up to %g m: %s. %s", text, float64(h.Reach), wording.Effect(h.Near), float64(h.Outer()), wording.Effect(h.Beyond), wording.HazardDo(h))
}
