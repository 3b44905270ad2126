package knowledge

import (
	"slices"

	"boughline/source"
)

// KnotJob is what a knot is for in a chain, and the line that it takes.
type KnotJob struct {
	Name string
	Job  string
	// Eats is the line that lies in the knot, Tail what is left beyond it to tie
	// off, both in thicknesses of the line.
	Eats  source.Fact
	Tail  source.Fact
	Watch string     // what goes wrong with it
	Ref   source.Ref // of the job
}

func loadKnotJobs(l *loader) []KnotJob {
	var all []KnotJob
	for _, r := range l.read("knot_jobs") {
		j := KnotJob{Name: r.text("name"), Job: r.text("job"), Watch: r.text("watch"), Tail: r.fact("tail_d", "1")}
		j.Eats = r.factOf(r.number("eats_d"), r.number("low"), r.number("high"), "1")
		if len(r.refs) > 1 { // the lengths have the first
			j.Ref = r.refs[1]
		} else {
			r.problem("there is no second source for its job")
		}
		all = append(all, j)
	}
	return all
}

// KnotJob finds what a knot is for by its name.
func (b *Base) KnotJob(name string) (KnotJob, bool) {
	i := slices.IndexFunc(b.knotJobs, func(j KnotJob) bool { return sameText(j.Name, name) })
	if i < 0 {
		return KnotJob{}, false
	}
	return b.knotJobs[i], true
}

// KnotJobs lists the knots with what they are for.
func (b *Base) KnotJobs() []KnotJob { return slices.Clone(b.knotJobs) }
