package web

import (
	"crypto/sha256"
	"encoding/hex"
	"net/http"
	"strings"
	"sync"

	"boughline/sketch"
)

// sketchVersion changes with any sketch, so that a browser may keep them for
// ever.
var sketchVersion = sync.OnceValue(func() string {
	sum := sha256.New()
	for _, id := range sketch.Signs() {
		drawn, _ := sketch.Of(id)
		sum.Write([]byte(id + drawn.SVG("")))
	}
	return hex.EncodeToString(sum.Sum(nil)[:6])
})

// sketchOf is the address of the sketch of a sign, empty where there is none.
func (a *app) sketchOf(sign string) string {
	if _, ok := sketch.Of(sign); !ok {
		return ""
	}
	return a.link("sketch", sign+".svg") + "?" + sketchVersion()
}

// showSketch sends the sketch of a sign as a picture.
func (a *app) showSketch(w http.ResponseWriter, r *http.Request) error {
	id, isPicture := strings.CutSuffix(r.PathValue("file"), ".svg")
	drawn, ok := sketch.Of(id)
	if !ok || !isPicture {
		return errNoPage
	}
	title := id
	if sign, ok := a.Notebook.Knowledge().Sign(id); ok {
		title = sign.Name
	}
	return sendForEver(w, "image/svg+xml", []byte(drawn.SVG(title)))
}
