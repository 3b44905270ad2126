package survey

// checkParts wants one strength for each part: that of its mark or that of its
// standard.
func (c *checker) checkParts(at path, chain *Chain) {
	for at, part := range items(c, at.field("parts"), chain.Parts) {
		if part.Mark != nil && part.Standard != "" {
			c.report(Problem{
				Code: CodeStrength, Path: string(at), Fault: "it has a mark and a standard, which are two strengths",
				Expected: "a mark or a standard", Do: "keep the mark if it can be read",
			})
		}
	}
}
