package assess

// Exposure is how often a hang is ridden: the strength is the same in every
// ride, so that an outing or a season is its largest load, once.
type Exposure struct {
	Code    string `json:"code"`
	Rides   int    `json:"rides"`
	Groups  int    `json:"groups"` // of different riders
	Outings int    `json:"outings"`
	// AtDesign takes the amplitude that strength is checked at, whatever is
	// declared: riders can pump that high.
	AtDesign bool `json:"at_design_amplitude,omitempty"`
}

// Exposures that a chance is worked out for.
const (
	OneRide           = "ride"
	OneOuting         = "outing"
	OneSeason         = "season"
	AtDesignAmplitude = "season-at-design-amplitude"
)

// exposures lists them for a group; riders who were weighed are the same in
// every ride.
func (r *rig) exposures() []Exposure {
	rides, outings := int(r.rules.ridesPerOuting.Value), int(r.rules.outingsPerSeason.Value)
	groups := int(r.rules.groupsPerOuting.Value)
	e := []Exposure{
		{Code: OneRide, Rides: 1, Groups: 1, Outings: 1},
		{Code: OneOuting, Rides: rides, Groups: groups, Outings: 1},
		{Code: OneSeason, Rides: rides * outings, Groups: groups * outings, Outings: outings},
		{Code: AtDesignAmplitude, Rides: rides * outings, Groups: 1, Outings: outings, AtDesign: true},
	}
	if r.riders.s.Each != nil {
		for i := range e {
			e[i].Groups = 1
		}
	}
	return e
}
