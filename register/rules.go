package register

import (
	"fmt"

	"boughline/quantity"
	"boughline/survey"
)

// checker holds the rules that the schema cannot say.
type checker struct {
	lost     func(path string) bool
	problems []survey.Problem
}

func rules(r *Register, lost func(path string) bool) []survey.Problem {
	c := &checker{lost: lost}
	known, complete := c.names(r)
	for n := range r.Items {
		if at := fmt.Sprintf("items[%d]", n); !lost(at) {
			c.checkItem(at, &r.Items[n])
		}
	}
	for n, u := range r.Uses {
		at := fmt.Sprintf("uses[%d]", n)
		if lost("uses") || lost(at) {
			continue
		}
		c.checkDay(at+".date", u.Date)
		c.checkUsed(at+".items", u.Items, known, complete)
	}
	return c.problems
}

func (c *checker) checkUsed(list string, items []string, known map[string]bool, complete bool) {
	if !complete || c.lost(list) {
		return
	}
	for n, id := range items {
		if at := fmt.Sprintf("%s[%d]", list, n); !known[id] && !c.lost(at) {
			c.report(survey.CodeReference, at, "the register holds no item of that name", "the id of an item", "add the item or correct the name")
		}
	}
}

// names are the ids of all items. Where one was lost, or given twice in
// place of another, a name that is not found may have been that one.
func (c *checker) names(r *Register) (known map[string]bool, complete bool) {
	known, complete = map[string]bool{}, !c.lost("items")
	for n, i := range r.Items {
		at := fmt.Sprintf("items[%d]", n)
		if c.lost(at) || c.lost(at+".id") {
			complete = false
			continue
		}
		if known[i.ID] {
			c.report(survey.CodeDuplicateID, at+".id", "another item has the same name", "a name used once in the register", "rename one of them, and the uses that name it")
			complete = false
		}
		known[i.ID] = true
	}
	return known, complete
}

func (c *checker) checkItem(at string, i *Item) {
	if i.Mark != nil && !c.lost(at+".mark") && !c.lost(at+".mark.strength") {
		c.checkRange(at+".mark.strength", i.Mark.Strength.Value >= 100 && i.Mark.Strength.Value <= 1e6, "100 N to 1000 kN")
	}
	c.checkLength(at+".length", i.Length, 0.01, 200)
	c.checkLength(at+".thickness", i.Thickness, 0.0005, 0.3)
	c.checkLength(at+".width", i.Width, 0.001, 1)
	c.checkDay(at+".made", i.Made)
	c.checkDay(at+".in_service_since", i.InServiceSince)
	c.checkDay(at+".use_by", i.UseBy)
	c.checkOrder(at+".in_service_since", i.Made, i.InServiceSince, "it was in service before it was made")
	c.checkOrder(at+".use_by", i.Made, i.UseBy, "its use ends before it was made")
	for n, e := range i.Examinations {
		at := fmt.Sprintf("%s.examinations[%d]", at, n)
		c.checkDay(at+".on", e.On)
		c.checkDay(at+".next", e.Next)
		c.checkOrder(at+".on", i.Made, e.On, "it was examined before it was made")
		c.checkOrder(at+".next", e.On, e.Next, "the next examination is before this one")
	}
	if i.Retired != nil {
		c.checkDay(at+".retired.on", i.Retired.On)
		c.checkOrder(at+".retired.on", i.Made, i.Retired.On, "it was retired before it was made")
	}
}

// checkLength holds a size against the range that can be meant, that of the
// parts of a chain.
func (c *checker) checkLength(at string, m *survey.MeasuredLength, low, high quantity.Length) {
	if m == nil || c.lost(at) {
		return
	}
	c.checkRange(at, m.Value >= low && m.Value <= high, quantity.Format(low)+" to "+quantity.Format(high))
	if m.Value >= low && m.Sd > m.Value {
		c.report(survey.CodeUncertain, at, "the standard deviation is larger than the value",
			"a standard deviation below "+quantity.Format(m.Value), "correct it, or leave the field out if nothing was measured")
	}
}

// checkDay refuses the days that a survey refuses.
func (c *checker) checkDay(at string, d survey.Date) {
	c.checkRange(at, d.IsZero() || (d.Year() >= survey.FirstYear && d.Year() <= survey.LastYear),
		fmt.Sprintf("a day from %d to %d", survey.FirstYear, survey.LastYear))
}

func (c *checker) checkRange(at string, inside bool, expected string) {
	if !inside && !c.lost(at) {
		c.report(survey.CodeOutOfRange, at, "it is not what can be meant", expected, "check the number and its unit")
	}
}

func (c *checker) checkOrder(at string, earlier, later survey.Date, fault string) {
	if earlier.IsZero() || later.IsZero() || c.lost(at) || !earlier.After(later) {
		return
	}
	c.report(survey.CodeDayOrder, at, fault, "a day from "+earlier.String()+" on", "check the two days")
}

func (c *checker) report(code, at, fault, expected, do string) {
	c.problems = append(c.problems, survey.Problem{Code: code, Path: at, Fault: fault, Expected: expected, Do: do})
}
