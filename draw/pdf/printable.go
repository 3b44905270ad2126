package pdf

import (
	"strings"
	"sync"

	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/sfnt"
)

// face is the regular face of Family; the bold one has the same letters.
var face = sync.OnceValue(func() *sfnt.Font {
	f, err := sfnt.Parse(goregular.TTF)
	if err != nil { // the typeface is built in
		panic(err)
	}
	return f
})

// Printable replaces what Family has no letter for by a question mark, so that
// no word is silently lost, and leaves out what cannot be seen.
func Printable(text string) string {
	var buffer sfnt.Buffer
	return strings.Map(func(r rune) rune {
		switch {
		case r == '\n' || r == '\t' || r == '\r':
			return ' '
		case r < ' ' || r == 0x7f || r == '\u200b' || r == '\ufeff' || r == '\u200d' || r == '\ufe0f':
			return -1
		}
		if glyph, err := face().GlyphIndex(&buffer, r); err != nil || glyph == 0 {
			return '?'
		}
		return r
	}, text)
}
