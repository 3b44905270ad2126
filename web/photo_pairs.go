package web

import (
	"cmp"
	"slices"
	"strings"
	"time"

	"boughline/notebook"
	"boughline/survey"
	"boughline/web/view"
	"boughline/web/words"
)

// photoPairs sets the photos up to a moment beside those since, by what they
// show: a finding, else what is written under them, else the tree.
func (a *app) photoPairs(s *notebook.Site, photos []notebook.Photo, then time.Time, trees ...*survey.Tree) []view.PhotoPair {
	pairs := map[string]*view.PhotoPair{}
	for _, p := range photos {
		of := a.shownBy(p, trees)
		pair := pairs[of]
		if pair == nil {
			pair = &view.PhotoPair{Of: of}
			pairs[of] = pair
		}
		line := a.photoLine(s, p)
		line.About = strings.TrimSuffix(line.About, ", "+of) // it stands above both already
		if p.At.After(then) {
			pair.Since = append(pair.Since, line)
		} else {
			pair.Then = append(pair.Then, line)
		}
	}
	var list []view.PhotoPair
	for _, pair := range pairs {
		list = append(list, *pair)
	}
	slices.SortFunc(list, func(p, q view.PhotoPair) int { return cmp.Compare(p.Of, q.Of) })
	return list
}

// shownBy names what a photo shows, alike for both versions of the tree.
func (a *app) shownBy(p notebook.Photo, trees []*survey.Tree) string {
	if p.Finding == "" {
		return cmp.Or(p.Note, words.WholeTree)
	}
	for _, t := range trees {
		for i := range t.Findings {
			if f := &t.Findings[i]; f.ID == p.Finding {
				return f.ID + ": " + a.signName(f.Sign)
			}
		}
	}
	return p.Finding
}
