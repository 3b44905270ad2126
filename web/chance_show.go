package web

import (
	"fmt"
	"net/http"
	"strconv"
	"strings"

	"boughline/assess"
	"boughline/assess/wording"
	"boughline/notebook"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// mostSamples bounds what one request may ask for.
const mostSamples = 20_000

// showChance answers without samples at once; an address may ask for some.
func (a *app) showChance(w http.ResponseWriter, r *http.Request) error {
	samples, err := samplesAsked(r)
	if err != nil {
		return err
	}
	return a.withHang(w, r, func(e *entry, s *notebook.Site, t *notebook.Tree, h *survey.Hang) error {
		page := view.Chance{
			Page: a.newPage(r, words.ChanceTitle, a.hangTrail(s, t, h)...), Path: a.treeLink(s, t, "hang", h.ID, "chance"),
		}
		near := s.Near(t)
		chances, err := assess.ChanceOf(r.Context(), near, a.Notebook.Knowledge(), h.ID, assess.ChanceOptions{Samples: samples, Seed: 1})
		if r.Context().Err() != nil {
			return nil // nobody waits for the page any more
		}
		if err != nil {
			page.Fault = strings.TrimPrefix(err.Error(), "no chance can be given: ")
		} else {
			chanceView(&page, e.units.in(), chances, easel{a, r, nil})
		}
		page.Sentence = a.outcomeSentence(s, t, h)
		a.nextSteps(&page, e.units.in(), s, t, h, near)
		return a.sendDrawn(w, r, page.Page, page.Drawings, view.ChancePage(page))
	})
}

func samplesAsked(r *http.Request) (int, error) {
	text := r.URL.Query().Get("samples")
	if text == "" {
		return 0, nil
	}
	samples, err := strconv.Atoi(text)
	if err != nil || samples < 0 || samples > mostSamples {
		return 0, fmt.Errorf("%d samples at most, not %q: %w", mostSamples, text, errNoPage)
	}
	return samples, nil
}

// hangTrail leads back to the outcome of a hang.
func (a *app) hangTrail(s *notebook.Site, t *notebook.Tree, h *survey.Hang) []view.Link {
	to := strings.TrimPrefix(a.treeLink(s, t, "hang", h.ID), a.Base)
	return append(a.treeTrail(s, t), view.Link{Text: words.OutcomeOf + ": " + h.ID, To: to})
}

// outcomeSentence says what follows for a hang, or why nothing does.
func (a *app) outcomeSentence(s *notebook.Site, t *notebook.Tree, h *survey.Hang) string {
	found, err := a.Notebook.Outcomes(s, t)
	if err != nil {
		return words.NotWorkedOut + ": " + err.Error()
	}
	for _, result := range found.Hangs {
		if result.ID == h.ID {
			return wording.Outcome(result.Outcome)
		}
	}
	return words.NotWorkedOut
}

func (a *app) nextSteps(page *view.Chance, in wording.Units, s *notebook.Site, t *notebook.Tree, h *survey.Hang, near *survey.Survey) {
	next, err := assess.MeasureNext(near, a.Notebook.Knowledge(), h.ID)
	if err != nil {
		page.NextFault = err.Error()
		return
	}
	for _, n := range next.List {
		page.Next = append(page.Next, view.NextLine{Text: sentence(in.Next(n)), Act: a.measureAt(s, t, h, n)})
	}
	if len(next.List) > 1 {
		page.Together = sentence(in.Together(next))
	}
}

// sentence makes a phrase of the catalogue one.
func sentence(text string) string { return capital(strings.TrimSuffix(text, ".")) + "." }
