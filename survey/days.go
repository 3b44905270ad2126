package survey

import "fmt"

// The years that a day of a document can lie in.
const (
	FirstYear = 1950
	LastYear  = 2200
)

// checkDay refuses days that no survey can mean.
func (c *checker) checkDay(at path, d Date) {
	if year := d.Year(); d.IsZero() || (year >= FirstYear && year <= LastYear) {
		return
	}
	c.lost[at] = true
	c.report(Problem{
		Code: CodeOutOfRange, Path: string(at), Fault: "no day of that year can be meant",
		Expected: fmt.Sprintf("a day from %d to %d", FirstYear, LastYear), Do: "check the year",
	})
}

// checkFindingDays wants a finding to be seen before it is looked at again or
// cleared.
func (c *checker) checkFindingDays(at path, f *Finding) {
	if c.isLost(at.field("seen_on")) {
		return
	}
	if f.Closer != nil {
		c.checkLater(at.field("closer_look").field("on"), f.Closer.On, f.SeenOn, "the closer look")
	}
	if f.Cleared != nil {
		c.checkLater(at.field("cleared").field("on"), f.Cleared.On, f.SeenOn, "the clearing")
	}
}

func (c *checker) checkLater(at path, later, seen Date, what string) {
	if later.IsZero() || seen.IsZero() || c.isLost(at) || !seen.After(later) {
		return
	}
	c.report(Problem{
		Code: CodeDayOrder, Path: string(at), Fault: what + " is before the day on which the finding was seen",
		Expected: "a day from " + seen.String() + " on", Do: "check the two days",
	})
}
