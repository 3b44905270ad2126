package sheet

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/sheet/words"
)

// outcomes is the table that opens an assessment: what follows for each hang
// and what governs.
func (s *Sheet) outcomes(hangs []assess.Hang) {
	s.heading(1, words.Outcomes)
	if len(hangs) == 0 {
		s.say(words.NoHang)
		return
	}
	t := &Table{Caption: words.OutcomesShown, Columns: []Column{{Title: words.Hang, Wide: 3}, {Title: words.Limb, Wide: 1.3}, {Title: words.Outcome, Wide: 5}, {Title: words.Governs, Wide: 7}}}
	for _, h := range hangs {
		t.Rows = append(t.Rows, []string{h.ID, h.Member, outcomeCell(h), governs(h)})
	}
	s.add(t)
}

// outcomeCell is the shape of an outcome with its sentence.
func outcomeCell(h assess.Hang) string {
	return shaped(h.Outcome, wording.Outcome(h.Outcome))
}

// shaped puts the shape of an outcome before words on one line with the first.
func shaped(o assess.Outcome, text string) string {
	return strings.ReplaceAll(wording.Shape(o), " ", "\u00a0") + " " + text
}

// governs is the first reason, or where nothing speaks against it the check
// with the least in hand.
func governs(h assess.Hang) string {
	for _, r := range h.Reasons {
		if !r.Remark {
			return capital(wording.Reason(r))
		}
	}
	for _, c := range h.Checks {
		if c.Alone == assess.MayHang {
			return fmt.Sprintf(words.GovernsCheck, wording.Check(c), wording.Margin(c.Margin))
		}
	}
	return ""
}

// hang adds all that follows for one hang.
func (s *Sheet) hang(u *subject, h assess.Hang) {
	s.add(&NewPage{})
	s.heading(1, fmt.Sprintf(words.HangTitle, h.ID, h.Member))
	s.add(&Paragraph{Words: outcomeCell(h), Strong: true})
	if h.Asked.Riders > 0 {
		s.say(words.Asked + ": " + wording.Use(h.Asked) + ".")
	}
	s.because(h.Reasons)
	if h.Limits != nil {
		s.limits(h.Limits)
	}
	s.noted(h)
	s.hangDrawings(u, h)
	s.checks(h)
}

// because lists what speaks against the hang as asked for, each with what
// would change it.
func (s *Sheet) because(reasons []assess.Reason) {
	list := said(reasons, false, func(r assess.Reason) string {
		text := capital(wording.Reason(r))
		if change := wording.Change(r.Change); change != "" {
			text = fmt.Sprintf(words.WouldChange, text, change)
		}
		return text
	})
	if len(list) > 0 {
		s.heading(2, words.Because)
		s.add(&List{Items: list, Numbered: true})
	}
}

// noted lists the remarks, and how likely the limb breaks.
func (s *Sheet) noted(h assess.Hang) {
	var list []string
	if h.Chance != nil {
		list = append(list, words.ChanceTitle+": "+wording.LimbChances(*h.Chance))
	}
	list = append(list, said(h.Reasons, true, func(r assess.Reason) string { return capital(wording.Reason(r)) })...)
	if len(list) > 0 {
		s.heading(2, words.Noted)
		s.add(&List{Items: list})
	}
}

// said words reasons or remarks. Findings of one sign that lead to the same are
// named together.
func said(reasons []assess.Reason, remark bool, word func(assess.Reason) string) []string {
	var list []string
	findings := map[string][]string{}
	for _, r := range reasons {
		if r.Remark != remark {
			continue
		}
		text := word(r)
		if _, known := findings[text]; !known {
			list = append(list, text)
		}
		findings[text] = append(findings[text], r.Finding)
	}
	for i, text := range list {
		if of := strings.Join(slices.Compact(findings[text]), ", "); of != "" {
			list[i] = of + ": " + text
		}
	}
	return list
}

// capital begins a sentence.
func capital(text string) string {
	first, n := utf8.DecodeRuneInString(text)
	if n == 0 {
		return text
	}
	return string(unicode.ToUpper(first)) + text[n:]
}

// limits is the table of the greatest use at which every check holds.
func (s *Sheet) limits(l *assess.Limits) {
	f := &facts{Table{Caption: words.LimitsShown, Columns: []Column{{Title: words.Limit, Wide: 4}, {Title: words.Value, Wide: 5}}}}
	length := func(x float64) string { return wording.Quantity(x, "m") }
	f.put(words.NumberLimit, fmt.Sprint(l.Riders))
	f.put(words.RidersLimit, wording.AtMost(float64(l.Mass), "kg"))
	f.put(words.SwingLimit, wording.AtMost(float64(l.Amplitude), "rad"))
	f.put(words.GustLimit, wording.AtMost(float64(l.Gust), "m/s"))
	if l.Beaufort > 0 {
		f.put(words.MeanLimit, fmt.Sprintf(words.MeanText, l.Beaufort, l.SeenInTrees))
	}
	f.put(words.LineLimit, length(float64(l.Line)))
	f.put(words.ClearLimit, length(float64(l.KeptClear))+" ("+fmt.Sprintf(words.ClearNote, length(float64(l.LetGo)), length(float64(l.StandardClear)))+")")
	f.put(words.FallLimit, length(float64(l.FallFrom)))
	f.put(words.TestLimit, wording.Quantity(float64(l.TestMass), "kg"))
	if len(l.Departures) > 0 {
		f.put(words.Departure, wording.Departures(l.Departures))
	}
	s.heading(2, words.LimitsTitle)
	s.add(&f.Table)
}

// checks is the table of all checks of a hang with where each is from.
func (s *Sheet) checks(h assess.Hang) {
	if len(h.Checks) == 0 {
		return
	}
	t := &Table{Caption: fmt.Sprintf(words.ChecksShown, h.ID), Columns: []Column{
		{Title: words.Check, Wide: 5}, {Title: words.Demand, Wide: 2.2, Number: true}, {Title: words.Capacity, Wide: 2.2, Number: true},
		{Title: words.Margin, Wide: 1.6, Number: true}, {Title: words.MarginBest, Wide: 1.6, Number: true}, {Title: words.Basis, Wide: 6}}}
	for _, c := range h.Checks {
		t.Rows = append(t.Rows, []string{wording.Check(c), wording.Quantity(c.Demand, c.Unit), wording.Quantity(c.Capacity, c.Unit),
			wording.Margin(c.Margin), wording.Margin(c.Best), wording.Basis(c.Code)})
	}
	s.heading(2, words.Checks)
	s.add(t)
}

// sources lists what the figures of the checks are from, each once.
func (s *Sheet) sources(hangs []assess.Hang) {
	var list []string
	seen := map[string]bool{}
	for _, h := range hangs {
		for _, c := range h.Checks {
			for _, term := range c.Terms {
				for _, ref := range term.Refs {
					if text := ref.Citation(); !seen[text] {
						seen[text] = true
						list = append(list, text)
					}
				}
			}
		}
	}
	if len(list) > 0 {
		s.heading(1, words.SourcesTitle)
		s.say(words.SourcesSay)
		s.add(&List{Items: list})
	}
}
