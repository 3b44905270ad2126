package web

import (
	"net/http"
	"strings"

	"boughline/sketch/drawn"
)

// sketchOf is the address of the sketch of a sign, empty where there is none.
// It changes with any sketch, so that a browser may keep them for ever.
func (a *app) sketchOf(sign string) string {
	if _, ok := drawn.Of(sign); !ok {
		return ""
	}
	return a.link("sketch", sign+".svg") + "?" + a.asset.sketches
}

// showSketch sends the sketch of a sign as a picture. What it shows the page
// says that holds it.
func (a *app) showSketch(w http.ResponseWriter, r *http.Request) error {
	id, isPicture := strings.CutSuffix(r.PathValue("file"), ".svg")
	picture, ok := drawn.Of(id)
	if !ok || !isPicture {
		return errNoPage
	}
	return sendForEver(w, "image/svg+xml", []byte(picture))
}
