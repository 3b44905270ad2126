package browsertest

import (
	"testing"
)

// From the site to the reasons of one hang it is two touches, the third opens
// a reason down to its formula.
func TestThreeTouchesToAReason(t *testing.T) {
	server, _ := host(t)
	b, _ := open(t, t.TempDir(), server.URL+"/", phone)
	b.goTo("site/demo")
	b.until(`!document.querySelector("[data-waiting]")`)
	b.press(`a.hang`)
	b.until(`document.querySelector("details.reason")`)
	b.do()
	if ok := value[bool](b, `(() => { const d = document.querySelector("details.reason"); d.querySelector("summary").click(); return d.open && d.innerText.length > 100 })()`); !ok {
		t.Errorf("a reason does not open:\n%s", b.text())
	}
	if b.touches+1 > 3 {
		t.Errorf("%d touches", b.touches+1)
	}
}
