package cli

import (
	"io"
	"os"

	"github.com/schollz/progressbar/v3"
)

// progressOn draws a bar on a terminal and nothing elsewhere.
func progressOn(w io.Writer, what string) func(done, total int) {
	file, ok := w.(*os.File)
	if !ok || !isTerminal(file) {
		return nil
	}
	var bar *progressbar.ProgressBar
	return func(done, total int) {
		if bar == nil {
			bar = progressbar.NewOptions(total, progressbar.OptionSetWriter(w), progressbar.OptionClearOnFinish(), progressbar.OptionSetDescription(what))
		}
		_ = bar.Set(done) // a bar that cannot be drawn is no reason to stop
	}
}

func isTerminal(file *os.File) bool {
	info, err := file.Stat()
	return err == nil && info.Mode()&os.ModeCharDevice != 0
}
