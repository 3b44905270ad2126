package place

import (
	"fmt"
	"math"

	"boughline/quantity"
)

// Run is neighbouring hang points with one line, all feasible or all not,
// that the same constraint binds.
type Run struct {
	Along    Range
	Feasible bool
	Binding  string
}

// Runs maps what binds along the limb with one line, whether of the grid or
// not: one row of a map of the limb. Errors are those of Search.
func (p Problem) Runs(line quantity.Length) ([]Run, error) {
	if err := p.validate(); err != nil {
		return nil, err
	}
	var runs []Run
	for _, along := range p.Grid.Along.Values() {
		here := p.Pair(along, line)
		if math.IsNaN(here.Least) {
			return nil, fmt.Errorf("constraints: a margin is no number at along %v m, line %v m", along, line)
		}
		run := Run{Range{along, along}, here.Least >= -Slack, here.Binding}
		if k := len(runs) - 1; k >= 0 && runs[k].Feasible == run.Feasible && runs[k].Binding == run.Binding {
			runs[k].Along.To = along
			continue
		}
		runs = append(runs, run)
	}
	return runs, nil
}
