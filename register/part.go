package register

import (
	"fmt"

	"boughline/survey"
)

// chainKinds are the kinds of item that a chain has as parts.
var chainKinds = map[string]bool{Sling: true, Rope: true, Connector: true, Swivel: true, Seat: true, Ring: true}

// Part returns an item as a part of a chain on a day. Its condition is retired
// where the item is, and otherwise not said: it is looked over when the chain is
// put together. A mark whose kind is known goes before the standard. It fails
// for an item that no chain has as a part, such as a sleeve.
func (i Item) Part(on survey.Date) (survey.Part, error) {
	if !chainKinds[i.Kind] {
		return survey.Part{}, fmt.Errorf("item %s is a %s; expected a part of a chain: sling, rope, connector, swivel, seat or ring", i.ID, i.Kind)
	}
	p := survey.Part{
		Name: i.Name, Item: i.ID, Kind: i.Kind, Material: i.Material, Mark: i.Mark,
		Length: i.Length, Thickness: i.Thickness, Width: i.Width, InServiceSince: i.InServiceSince,
	}
	if i.Standard != "" && (i.Mark == nil || i.Mark.Kind == survey.MarkUnknown) {
		p.Mark, p.Standard = nil, i.Standard
	}
	if i.retiredOn(on) {
		p.Condition = "retired"
	}
	return p, nil
}
