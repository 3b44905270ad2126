package store

import (
	"fmt"
	"strings"
)

// MaxKey is the greatest length of a key.
const MaxKey = 400

// CheckKey refuses keys that two backends might sort or read differently:
// anything but printable ASCII without spaces.
func CheckKey(key string) error {
	if key == "" || len(key) > MaxKey {
		return fmt.Errorf("a key of %d characters; expected 1 to %d", len(key), MaxKey)
	}
	for _, c := range []byte(key) {
		if c <= ' ' || c > '~' {
			return fmt.Errorf("key %q: expected printable ASCII without spaces; use Segment for free text", key)
		}
	}
	return nil
}

// After is the least text above every key that begins with prefix.
func After(prefix string) string { return prefix + "\x7f" }

// Segment turns free text into one part of a key, without a slash. Different
// texts give different parts.
func Segment(text string) string {
	var b strings.Builder
	for _, c := range []byte(text) {
		if c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == '-' {
			b.WriteByte(c)
			continue
		}
		fmt.Fprintf(&b, "_%02x", c)
	}
	return b.String()
}
