package svg

import (
	"strconv"
	"strings"
	"unicode"
)

// escape makes text harmless inside elements and attributes and leaves out
// what XML cannot hold.
func escape(text string) string {
	text = strings.Map(func(r rune) rune {
		if r == '\uFFFE' || r == '\uFFFF' || unicode.IsControl(r) && r != '\n' && r != '\t' {
			return -1
		}
		return r
	}, text)
	return escaper.Replace(text)
}

var escaper = strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;", `"`, "&quot;", "'", "&#39;")

// identifier makes an id of a key; different keys give different ids.
func identifier(key string) string {
	var b strings.Builder
	b.WriteString("drawing-")
	for _, r := range key {
		if r < unicode.MaxASCII && (unicode.IsLetter(r) || unicode.IsDigit(r)) {
			b.WriteRune(r)
		} else {
			b.WriteString("-" + strconv.FormatInt(int64(r), 16) + "-")
		}
	}
	return b.String()
}
