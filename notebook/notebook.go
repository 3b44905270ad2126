package notebook

import (
	"sync"
	"time"

	"boughline/knowledge"
	"boughline/outing"
	"boughline/store"
)

// Notebook reads and writes the records of a store. It may be used from
// several goroutines.
type Notebook struct {
	store     store.Backend
	knowledge *knowledge.Base
	now       func() time.Time

	mu       sync.Mutex
	decoded  map[string]Tree    // by key of the record
	outcomes map[string]outcome // by key of the record
	outings  map[string]*outing.Outing
}

// New returns the notebook in a store; now gives the time of changes.
func New(b store.Backend, k *knowledge.Base, now func() time.Time) *Notebook {
	return &Notebook{store: b, knowledge: k, now: now, decoded: map[string]Tree{}, outcomes: map[string]outcome{}, outings: map[string]*outing.Outing{}}
}

// Now is the time by the notebook's clock, as on a clock on the wall: the
// counter beside it stands still while some phones sleep.
func (n *Notebook) Now() time.Time { return n.now().Round(0) }

// Knowledge is the tables that surveys are checked against.
func (n *Notebook) Knowledge() *knowledge.Base { return n.knowledge }

// The places of records in the store.
func siteKey(site string) string       { return "site/" + store.Segment(site) }
func treesKey(site string) string      { return "tree/" + store.Segment(site) + "/" }
func treeKey(site, tree string) string { return treesKey(site) + store.Segment(tree) }
func formKey(form string) string       { return "form/" + store.Segment(form) }
func photosKey(site, tree string) string {
	return "photo/" + store.Segment(site) + "/" + store.Segment(tree) + "/"
}
func bytesKey(site, photo string) string {
	return "bytes/" + store.Segment(site) + "/" + store.Segment(photo)
}
func outingsKey(site string) string    { return "outing/" + store.Segment(site) + "/" }
func outingKey(site, id string) string { return outingsKey(site) + store.Segment(id) }
func eventsKey(site, id string) string {
	return "event/" + store.Segment(site) + "/" + store.Segment(id) + "/"
}
func upKey(site, id string) string { return "up/" + store.Segment(site) + "/" + store.Segment(id) }
func briefsKey(site string) string { return "day/" + store.Segment(site) + "/" }
