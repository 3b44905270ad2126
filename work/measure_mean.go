package work

import (
	"fmt"

	"boughline/engine/measure"
)

// weightedMeans combines each list of readings, and the one that stands
// without a list.
func (in measureInputs) weightedMeans() (any, error) {
	pairs := []any{}
	for i, list := range in.Pairs {
		mean, err := list.mean()
		if err != nil {
			return nil, fmt.Errorf("inputs.pairs[%d]: %w", i, err)
		}
		pairs = append(pairs, mean)
	}
	results := map[string]any{"pairs": pairs}
	if len(in.Values) > 0 || len(in.Pairs) == 0 {
		mean, err := in.mean()
		if err != nil {
			return nil, fmt.Errorf("inputs: %w", err)
		}
		for key, value := range mean {
			results[key] = value
		}
	}
	return results, nil
}

func (l readingList) mean() (map[string]any, error) {
	if len(l.Values) != len(l.Sds) {
		return nil, fmt.Errorf("%d values and %d sds; expected one sd for each value", len(l.Values), len(l.Sds))
	}
	readings := make([]measure.Reading, len(l.Values))
	for i, value := range l.Values {
		readings[i] = measure.Reading{Value: value, Sd: l.Sds[i]}
	}
	c, err := measure.Combine(readings)
	if err != nil {
		return nil, err
	}
	results := map[string]any{
		"mean": c.Mean, "sd_internal": c.SdInternal, "sd_widened": c.SdWidened,
		"p_value": c.P, "chi2": c.Chi2, "degrees": c.Degrees,
	}
	if len(readings) == 2 {
		results["chi2_one_degree"] = c.Chi2
		results["difference_over_its_sd"] = measure.Difference(readings[0], readings[1])
	}
	return results, nil
}
