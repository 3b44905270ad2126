// Package drawn holds the sketches of the signs as they come out of the package
// sketch, written down as text: the app on a phone carries a tenth of what the
// strokes weigh as code. Its test writes the text anew with -update.
package drawn

import (
	_ "embed"
	"strings"
	"sync"
)

//go:embed sketches.txt
var text string

// book holds each picture by the id of its sign: one line of the text, id and
// picture with a tab between.
var book = sync.OnceValue(func() map[string]string {
	all := map[string]string{}
	for line := range strings.Lines(text) {
		if id, picture, ok := strings.Cut(strings.TrimSuffix(line, "\n"), "\t"); ok {
			all[id] = picture
		}
	}
	return all
})

// Of returns the sketch of a sign as SVG without a title, by the id of the sign.
func Of(sign string) (svg string, ok bool) {
	svg, ok = book()[sign]
	return svg, ok
}

// Text returns all of them, for telling one edition from another.
func Text() string { return text }
