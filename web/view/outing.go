package view

// formOf is the id of an act, other for each on a page, so that one pressed
// twice is one event and another is never taken for it. A stop has none: it is
// taken however often it is pressed.
func (o Outing) formOf(a Act) string {
	id := o.Form
	for _, h := range a.Hidden {
		if h.Value == "kind" && h.Text == "stopped" {
			return ""
		}
		id += "-" + h.Text
	}
	return id
}
