package survey

// checkAges wants the younger age first.
func (c *checker) checkAges(at path, r *Riders) {
	if r.Ages == nil || r.Ages.From <= r.Ages.To || c.isAnyLost(at.field("ages"), "from", "to") {
		return
	}
	c.report(Problem{
		Code: CodeAges, Path: string(at.field("ages")), Fault: "the youngest are older than the oldest",
		Expected: "from at most as large as to", Do: "exchange the two",
	})
}
