package cli

import (
	"bufio"
	"bytes"
	"context"
	"io"
	"net/http"
	"path/filepath"
	"strings"
	"testing"

	"boughline/store"
	"boughline/store/storetest"
)

// running starts the app and returns its address and what ends it.
func running(t *testing.T, kept store.Backend, more ...string) (address string, stop func() int) {
	t.Helper()
	ctx, cancel := context.WithCancel(context.Background())
	out, in := io.Pipe()
	code := make(chan int, 1)
	go func() {
		defer in.Close()
		code <- Run(Env{
			Context: ctx, Stdout: in, Stderr: io.Discard,
			Args:      append([]string{"app", "--listen", "127.0.0.1:0", "--data", filepath.Join(t.TempDir(), "new", "data.db")}, more...),
			OpenStore: func(string) (store.Backend, error) { return kept, nil },
		})
	}()
	line, err := bufio.NewReader(out).ReadString('\n')
	if err != nil {
		t.Fatal(err)
	}
	go io.Copy(io.Discard, out)
	address = strings.Fields(line)[4]
	return address, func() int { cancel(); return <-code }
}

func get(t *testing.T, address string) (int, string) {
	t.Helper()
	answer, err := http.Get(address)
	if err != nil {
		t.Fatal(err)
	}
	defer answer.Body.Close()
	page, err := io.ReadAll(answer.Body)
	if err != nil {
		t.Fatal(err)
	}
	return answer.StatusCode, string(page)
}

func TestAppServesUntilItIsStopped(t *testing.T) {
	kept := storetest.NewMemory()
	address, stop := running(t, kept, "--demo")
	if status, page := get(t, address+"site/demo"); status != http.StatusOK || !strings.Contains(page, "Pennow Wood") {
		t.Errorf("status %d\n%s", status, page)
	}
	request, err := http.NewRequest(http.MethodGet, address, nil)
	if err != nil {
		t.Fatal(err)
	}
	request.Host = "elsewhere.invalid"
	if answer, err := http.DefaultClient.Do(request); err != nil || answer.StatusCode != http.StatusForbidden {
		t.Errorf("a name that points here: %v, %v", answer, err)
	} else {
		answer.Body.Close()
	}
	if code := stop(); code != ExitDone {
		t.Errorf("exit code %d", code)
	}
	if _, err := http.Get(address); err == nil {
		t.Error("it still answers")
	}
	address, stop = running(t, kept) // the same records without the demo's word
	if _, page := get(t, address); strings.Count(page, "Pennow Wood") != 1 {
		t.Errorf("the list of sites:\n%s", page)
	}
	stop()
}

func TestAppRefusesAnAddressThatIsNone(t *testing.T) {
	var talk bytes.Buffer
	code := Run(Env{
		Context: t.Context(), Stdout: io.Discard, Stderr: &talk,
		Args:      []string{"app", "--listen", "nowhere:at:all", "--data", filepath.Join(t.TempDir(), "data.db")},
		OpenStore: func(string) (store.Backend, error) { return storetest.NewMemory(), nil },
	})
	if code != ExitFailed || !strings.Contains(talk.String(), "nowhere") {
		t.Errorf("code %d, %s", code, talk.String())
	}
}
