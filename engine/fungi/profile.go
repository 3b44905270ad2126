package fungi

import (
	"math"
	"slices"
	"strconv"
)

// profile is a candidate as the key uses it: a distribution for every
// attribute.
type profile struct {
	host, position, month, form, underside distribution
	colours                                map[Field]distribution
	marks                                  map[string]float64 // probability that the mark is said to be there
	logLow, logHigh                        float64            // of the sizes it has, m; equal where unknown
}

// drafts holds what all profiles share.
type drafts struct {
	words                             Vocabulary
	trust                             Trust
	genera                            []string
	position, form, underside, colour map[string]distribution
	commonHosts                       distribution
	self                              map[string]distribution // of the hosts: none is taken for another
}

func newDrafts(v Vocabulary, t Trust, all []Candidate) drafts {
	d := drafts{words: v, trust: t,
		position: blur(v.Positions, v.PositionsMixed), form: blur(v.Forms, v.FormsMixed),
		underside: blur(v.Undersides, v.UndersidesMixed), colour: blur(v.Colours, v.ColoursMixed)}
	for _, h := range v.Hosts {
		d.genera = append(d.genera, h.Genus)
	}
	d.commonHosts, d.self = hostsByRows(d.genera, all), blur(d.genera, nil)
	return d
}

// hostsByRows takes the trees that many rows name as the trees that people
// mostly look at.
func hostsByRows(genera []string, all []Candidate) distribution {
	d := distribution{}
	for _, g := range genera {
		d[g] = 1
	}
	for _, c := range all {
		for _, g := range c.Hosts {
			d[g]++
		}
	}
	d.normalise()
	return d
}

func (d drafts) profile(c Candidate) profile {
	p := profile{
		host:      d.hosts(c),
		position:  listed(c.Positions, d.words.Positions, d.position, d.trust.Decline, d.trust.PositionFloor),
		month:     d.months(c),
		form:      listed(c.Forms, d.words.Forms, d.form, 0, d.trust.FormFloor),
		underside: listed(c.Undersides, d.words.Undersides, d.underside, 0, d.trust.UndersideFloor),
		colours:   map[Field]distribution{},
		marks:     map[string]float64{},
	}
	for _, f := range fields {
		p.colours[f] = listed(c.Colours[f], d.words.Colours, d.colour, 0, d.trust.ColourFloor)
	}
	p.colours[AnyField] = anyField(p.colours)
	for m, stray := range d.words.Stray {
		p.marks[m] = d.mark(c, m, stray)
	}
	if c.Largest > 0 {
		p.logLow, p.logHigh = math.Log(float64(c.Smallest)/slack), math.Log(float64(c.Largest)*slack)
	}
	return p
}

// anyField is a colour told without a part: mostly that of the upper side.
func anyField(colours map[Field]distribution) distribution {
	below := mix(colours[Underside], colours[Flesh], 0.5)
	return mix(colours[Upper], below, upperShare)
}

// House: of colours told without a part, the share that is of the upper side.
const upperShare = 0.65

func (d drafts) mark(c Candidate, mark string, stray float64) float64 {
	switch {
	case slices.Contains(c.Marks, mark):
		return d.trust.Shown
	case slices.Contains(c.Lacks, mark):
		return stray * d.trust.LacksFactor
	}
	return stray
}

// hosts spreads a candidate over its hosts: those listed, a share for rare
// ones, a share for the wider group, and the floor for all trees.
func (d drafts) hosts(c Candidate) distribution {
	if len(c.Hosts) == 0 {
		return d.group(c.Wider)
	}
	own := listed(c.Hosts, d.genera, d.self, d.trust.Decline, 0)
	if len(c.RareHosts) > 0 {
		own = mix(listed(c.RareHosts, d.genera, d.self, 0, 0), own, d.trust.HostFloor)
	}
	if c.Wider != "" {
		own = mix(d.group(c.Wider), own, d.trust.Wider)
	}
	return mix(d.commonHosts, own, d.trust.HostFloor)
}

// group is the share of each genus in a group of hosts.
func (d drafts) group(name string) distribution {
	if name == AnyHost || name == "" {
		return d.commonHosts
	}
	in := distribution{}
	for _, h := range d.words.Hosts {
		in[h.Genus] = 0
		if h.Group == name {
			in[h.Genus] = d.commonHosts[h.Genus]
		}
	}
	in.normalise()
	return mix(d.commonHosts, in, d.trust.HostFloor)
}

// months of the year, named by number.
var months = func() []string {
	names := make([]string, 12)
	for i := range names {
		names[i] = strconv.Itoa(i + 1)
	}
	return names
}()

// months gives the months of fruiting equal shares. The months beside them
// share the floor with the rest; old remains keep a part of every month.
func (d drafts) months(c Candidate) distribution {
	if len(c.Months) == 0 || len(c.Months) == 12 {
		return flat(months)
	}
	in, beside := distribution{}, distribution{}
	for _, m := range c.Months {
		in[strconv.Itoa(m)] = 1
		beside[strconv.Itoa(m%12+1)]++
		beside[strconv.Itoa((m+10)%12+1)]++
	}
	in.normalise()
	beside.normalise()
	floor := d.trust.MonthFloor
	if c.Persistent {
		floor *= 2
	}
	rest := mix(fill(beside, months), flat(months), 0.5)
	return mix(rest, fill(in, months), floor)
}

// slack is how far outside the range of the tables a size still counts as
// within it; the range of sizes that people ask about, m, bounds the floor.
const (
	slack    = 1.5
	leastM   = 0.0002
	greatest = 4.0
)

// logSize is the log density of a size, uniform in its logarithm.
func (p profile) logSize(size, floor float64) float64 {
	whole := math.Log(greatest / leastM)
	if p.logHigh <= p.logLow {
		return -math.Log(whole)
	}
	density := floor / whole
	if x := math.Log(size); x >= p.logLow && x <= p.logHigh {
		density += (1 - floor) / (p.logHigh - p.logLow)
	}
	return math.Log(density)
}
