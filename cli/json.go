package cli

import (
	"encoding/json"
	"fmt"
	"io"
)

// writeJSON writes indented JSON for programs.
func writeJSON(w io.Writer, v any) error {
	encoder := json.NewEncoder(w)
	encoder.SetIndent("", "  ")
	encoder.SetEscapeHTML(false)
	if err := encoder.Encode(v); err != nil {
		return fmt.Errorf("cannot write JSON: %w", err)
	}
	return nil
}
