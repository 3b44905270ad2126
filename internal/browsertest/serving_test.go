package browsertest

import (
	"bufio"
	"context"
	"io"
	"net/http"
	"os"
	"os/exec"
	"regexp"
	"strings"
	"syscall"
	"testing"
	"time"
)

// TestMakeRunAnswers starts the app as a newcomer does, fetches pages of the
// demo site and stops it.
func TestMakeRunAnswers(t *testing.T) {
	if os.Getenv("BOUGHLINE_SERVING") == "" {
		t.Skip("make serving runs it: it calls make itself")
	}
	ctx, cancel := context.WithTimeout(t.Context(), 10*time.Minute)
	defer cancel()
	run := exec.CommandContext(ctx, "make", "--no-print-directory", "run", "LISTEN=127.0.0.1:0")
	run.Dir, run.Stderr = "../..", os.Stderr
	run.SysProcAttr = &syscall.SysProcAttr{Setpgid: true}
	out, err := run.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := run.Start(); err != nil {
		t.Fatal(err)
	}
	stop := func() { syscall.Kill(-run.Process.Pid, syscall.SIGINT) }
	t.Cleanup(stop)
	lines := bufio.NewScanner(out)
	address := addressIn(lines)
	if address == "" {
		t.Fatal("make run printed no address")
	}
	for path, want := range map[string]string{"site/demo": "Pennow Wood", "field/": "boot.js", "field/worker.js": "importScripts"} {
		answer, err := http.Get(address + path)
		if err != nil {
			t.Fatal(err)
		}
		page, err := io.ReadAll(answer.Body)
		answer.Body.Close()
		if err != nil || !strings.Contains(string(page), want) {
			t.Errorf("%s does not hold %q: %v", path, want, err)
		}
	}
	stop()
	for lines.Scan() { // until it has ended
	}
	if _, err := http.Get(address); err == nil {
		t.Error("it still answers after it was stopped")
	}
	run.Wait() // make says that it was interrupted
}

var printed = regexp.MustCompile(`^The app is at (http\S+)`)

func addressIn(lines *bufio.Scanner) string {
	for lines.Scan() {
		if m := printed.FindStringSubmatch(lines.Text()); m != nil {
			return m[1]
		}
	}
	return ""
}
