package treelist

import (
	"bytes"
	"fmt"
	"strings"
	"unicode/utf8"

	"golang.org/x/text/encoding"
	"golang.org/x/text/encoding/charmap"
	"golang.org/x/text/encoding/htmlindex"
	"golang.org/x/text/encoding/unicode"
)

// decode makes UTF-8 of a list and says what coding it had. asked names one of
// the WHATWG Encoding Standard; empty finds it out: by a byte order mark, by
// the zero bytes of UTF-16, else UTF-8 where it is in form and Windows-1252
// where not.
func decode(data []byte, asked string) (text, coding string, err error) {
	e, coding := guess(data)
	if asked != "" {
		if e, err = htmlindex.Get(asked); err != nil {
			return "", "", fmt.Errorf("the coding %q is not known; expected a name such as utf-8, utf-16le, windows-1252, windows-1250", asked)
		}
		coding = asked
	}
	plain, err := e.NewDecoder().Bytes(data)
	if err != nil {
		return "", coding, fmt.Errorf("cannot be read as %s: %w", coding, err)
	}
	return strings.TrimPrefix(string(plain), "\ufeff"), coding, nil
}

func guess(data []byte) (encoding.Encoding, string) {
	switch {
	case bytes.HasPrefix(data, []byte{0xff, 0xfe}), zerosAt(data, 1):
		return unicode.UTF16(unicode.LittleEndian, unicode.UseBOM), "UTF-16"
	case bytes.HasPrefix(data, []byte{0xfe, 0xff}), zerosAt(data, 0):
		return unicode.UTF16(unicode.BigEndian, unicode.UseBOM), "UTF-16"
	case utf8.Valid(data):
		return encoding.Nop, "UTF-8"
	}
	return charmap.Windows1252, "Windows-1252"
}

// zerosAt reports whether most of the first characters have a zero byte at the
// odd or the even places, as text in Latin letters has in UTF-16 without a mark.
func zerosAt(data []byte, parity int) bool {
	first, zeros := data[:min(len(data), 400)], 0
	for i := parity; i < len(first); i += 2 {
		if first[i] == 0 {
			zeros++
		}
	}
	return len(first) > 3 && zeros > len(first)/4
}

// isGarbled finds text that was once taken for Windows-1252 and was UTF-8: two
// odd letters in place of one.
func isGarbled(text string) bool {
	for _, pair := range []string{"Ã¤", "Ã¶", "Ã¼", "ÃŸ", "Ã©", "Ã¨", "Ã±", "Ã¡", "â€", "Ã¸", "Ã¥"} {
		if strings.Contains(text, pair) {
			return true
		}
	}
	return false
}
