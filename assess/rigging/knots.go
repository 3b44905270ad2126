package rigging

import "boughline/source"

// Knot is a knot of the chain, or one of those that its jobs are done with.
type Knot struct {
	Name  string       `json:"name"`
	In    []string     `json:"in,omitempty"` // parts of the chain that have it
	Job   string       `json:"job"`
	Watch string       `json:"watch"`
	Tail  float64      `json:"tail_in_thicknesses"`
	Eats  float64      `json:"eats_in_thicknesses"`
	Keeps float64      `json:"keeps"` // the share of strength that is counted, at most
	Refs  []source.Ref `json:"refs"`  // of the job, the lengths and the share
}

// knots lists those of the chain first.
func (r rigger) knots() []Knot {
	in := map[string][]string{}
	for _, p := range r.figure.Parts {
		for _, end := range p.Part.Ends {
			if k, ok := r.k.Knot(end); ok {
				in[k.Name] = append(in[k.Name], p.Part.Name)
			}
		}
	}
	var used, others []Knot
	for _, j := range r.k.KnotJobs() {
		share, _ := r.k.Knot(j.Name) // a test holds that every knot with a job has one
		k := Knot{Name: j.Name, In: in[j.Name], Job: j.Job, Watch: j.Watch, Tail: j.Tail.Value, Eats: j.Eats.Value, Keeps: share.Share.Low,
			Refs: refs(j.Ref, j.Eats.Ref, share.Share.Ref)}
		if len(k.In) > 0 {
			used = append(used, k)
		} else {
			others = append(others, k)
		}
	}
	return append(used, others...)
}
