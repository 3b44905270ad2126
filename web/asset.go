package web

import (
	"crypto/sha256"
	_ "embed"
	"encoding/hex"
	"net/http"

	"boughline/draw/svg"
	"boughline/sketch/drawn"
)

//go:embed asset/app.css
var styleText []byte

//go:embed asset/app.js
var scriptText []byte

//go:embed asset/tilt.js
var tiltText []byte

//go:embed asset/drawing.js
var drawingText []byte

//go:embed asset/icon.svg
var iconText []byte

// assets are the paths of style and scripts, which carry a hash of their
// contents and so may be kept by the browser for ever.
type assets struct{ style, script, tilt, drawing, sketches string }

func newAssets() assets {
	return assets{
		style: "asset/" + hashed(dressed()) + ".css", script: "asset/" + hashed(scriptText) + ".js", tilt: "asset/" + hashed(tiltText) + ".js",
		drawing: "asset/" + hashed(drawingText) + ".js", sketches: hashed([]byte(drawn.Text())),
	}
}

// dressed is the style of the pages with that of the drawings.
func dressed() []byte { return append([]byte(svg.Stylesheet), styleText...) }

func hashed(data []byte) string {
	sum := sha256.Sum256(data)
	return hex.EncodeToString(sum[:8])
}

func (a *app) sendAsset(w http.ResponseWriter, r *http.Request) error {
	switch "asset/" + r.PathValue("file") {
	case a.asset.style:
		return sendForEver(w, "text/css; charset=utf-8", dressed())
	case a.asset.script:
		return sendForEver(w, "text/javascript; charset=utf-8", scriptText)
	case a.asset.drawing:
		return sendForEver(w, "text/javascript; charset=utf-8", drawingText)
	case a.asset.tilt:
		return sendForEver(w, "text/javascript; charset=utf-8", tiltText)
	}
	return errNoPage
}

func (a *app) icon(w http.ResponseWriter, _ *http.Request) error {
	return sendForEver(w, "image/svg+xml", iconText)
}

func sendForEver(w http.ResponseWriter, kind string, data []byte) error {
	w.Header().Set("Content-Type", kind)
	w.Header().Set("Cache-Control", "public, max-age=31536000, immutable")
	_, err := w.Write(data)
	return err
}

// ping keeps a worker awake while somebody reads.
func (a *app) ping(w http.ResponseWriter, _ *http.Request) error {
	w.WriteHeader(http.StatusNoContent)
	return nil
}
