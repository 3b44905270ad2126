package words

// The ground that a swing needs and the heights of fall, on the page of an
// outcome.
const (
	GroundTitle = "Ground and fall, within these limits"
	ClearTwo    = "By EN 1176-2, %s are kept clear each way along the swing line on level ground. On this ground a rider who lets go at the worst moment lands up to %s from the plumb line. The larger counts: keep %s clear each way."
	FallTwo     = "Height of fall: %s by the standard's figure for level ground, half the line and the height of the seat at rest; %s at most worked out over this ground, with the flight of a rider who lets go. The checks go by the one that is worked out."
)
