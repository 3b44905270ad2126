package sheet

import "strings"

// Photo is a picture of a site, a tree or a finding, upright, as JPEG.
type Photo struct {
	Tree    string // the id of the tree; empty for one of the whole site
	Of      string // a finding, a member or a zone of it, where it is of one
	Caption string
	Taken   string // day, ISO 8601; empty where not known
	Data    []byte
	Width   int // pixels
	Height  int
}

// photosOf picks the pictures of a tree; with no tree those of the site.
func photosOf(list []Photo, tree string) []Photo {
	var found []Photo
	for _, p := range list {
		if p.Tree == tree {
			found = append(found, p)
		}
	}
	return found
}

// Words is the caption of a picture: of what, when, and what was written.
func (p Photo) Words() string {
	var parts []string
	for _, text := range []string{p.Tree, p.Of} {
		if text != "" {
			parts = append(parts, text)
		}
	}
	text := strings.Join(parts, " ")
	if p.Caption != "" {
		text = prefixed(text+": ", p.Caption)
		if len(parts) == 0 {
			text = p.Caption
		}
	}
	if p.Taken != "" {
		text += " (" + p.Taken + ")"
	}
	return text
}
