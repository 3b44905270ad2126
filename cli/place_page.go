package cli

import (
	"fmt"
	"io"
	"strings"

	"boughline/assess"
	"boughline/assess/hangsearch"
	"boughline/assess/wording"
	"boughline/quantity"
)

// places writes what a search found: tree by tree, the best place in full and
// the others in a line each.
func (p page) places(r hangsearch.Result, whole bool) error {
	var b strings.Builder
	fmt.Fprintf(&b, "%s, where a swing could hang, for %s; the best is %s\n", r.Site, r.Day, wording.Aim(string(r.Aim)))
	for i, t := range r.Trees {
		name := t.Name
		if name == "" {
			name = t.ID
		}
		fmt.Fprintf(&b, "\n%d. %s (%s)\n", i+1, name, t.Species)
		if len(t.Overlaps) > 0 {
			b.WriteString(hanging("", "Not at the same time as the best hang of "+strings.Join(t.Overlaps, " and ")+": they need the same ground.", 3))
		}
		if len(t.Places) == 0 {
			b.WriteString(hanging("", "No limb of it is in the survey.", 3))
		}
		for j, place := range t.Places {
			b.WriteString(placeText(place, j == 0 || whole, whole))
		}
	}
	b.WriteString("\n" + hanging("!", "Each is judged as the only hang of its tree, for the place as measured, on the gear of the first chain. It is put up only after its own assessment, by whoever signs for it.", 2))
	for _, caution := range wording.Cautions() {
		b.WriteString(hanging("!", caution, 2))
	}
	_, err := io.WriteString(p.w, b.String())
	return err
}

func placeText(p hangsearch.Place, whole, band bool) string {
	var b strings.Builder
	head := fmt.Sprintf("   limb %s, %s", p.Limb, p.Riders)
	switch {
	case p.Best == nil:
		b.WriteString(hanging(head, missText(p.Miss), placeColumn))
	case !whole:
		b.WriteString(hanging(head, wording.Shape(p.Best.Outcome)+" "+hangText(p.Best), placeColumn))
	default:
		b.WriteString(hanging(head, wording.Shape(p.Best.Outcome)+" "+wording.Outcome(p.Best.Outcome), placeColumn))
		b.WriteString(hanging("", hangText(p.Best), placeColumn))
		b.WriteString(hanging("", boundsText(p.Best), placeColumn))
		if open := openText(p.Best); open != "" {
			b.WriteString(hanging("", open, placeColumn))
		}
	}
	if band {
		b.WriteString(bandText(p.Band))
	}
	return b.String()
}

// placeColumn is where the words of a place begin.
const placeColumn = 24

func hangText(f *hangsearch.Found) string {
	h := f.Hang
	return fmt.Sprintf("%s along the limb, line %s, swinging towards %.0f deg and back, %.0f deg to each side; fall from up to %s; least in hand: %s %s",
		metres(h.At.Value), metres(h.Line.Value), h.SwingAzimuth.Value.Degrees(), h.Amplitude.Value.Degrees(), metres(f.Fall),
		lower(wording.CheckTitle(f.Least.Code, f.Least.Part)), wording.Margin(f.Least.Margin))
}

// boundsText says how far the place and the line may be changed.
func boundsText(f *hangsearch.Found) string {
	var parts []string
	for _, edge := range []struct {
		what string
		at   *hangsearch.Edge
	}{
		{"%s along it (nearer to the union)", f.Nearer}, {"%s along it (farther out)", f.Farther},
		{"a line of %s (shorter)", f.Shorter}, {"a line of %s (longer)", f.Longer},
	} {
		if edge.at != nil {
			parts = append(parts, fmt.Sprintf(edge.what, metres(edge.at.At))+", by "+lower(wording.CheckTitle(edge.at.Bind.Code, edge.at.Bind.Part)))
		}
	}
	if len(parts) == 0 {
		return "Nothing binds within what was tried."
	}
	return "It ends at " + strings.Join(parts, "; at ") + "."
}

// openText names the first reason that is no check, where there is one.
func openText(f *hangsearch.Found) string {
	for _, r := range f.Judged.Reasons {
		if !r.Remark && r.Check == nil && r.Outcome == f.Outcome {
			text := "First because: " + wording.Reason(r)
			if change := wording.Change(r.Change); change != "" {
				text += " Would change it: " + change + "."
			}
			return text
		}
	}
	return ""
}

func missText(m *hangsearch.Miss) string {
	if m.Bind.Code == assess.GroundNotSurveyed {
		text := "The ground about the tree has not been surveyed: measure spot heights."
		if m.Along == 0 {
			return text + " By its strength and gear alone nothing serves anywhere."
		}
		return text + " By its strength alone the limb bears them up to " + metres(m.Along) + " along it."
	}
	text := fmt.Sprintf("Nothing serves. Nearest: %s along the limb", metres(m.Along))
	if m.Line > 0 {
		text += ", line " + metres(m.Line)
	}
	text += fmt.Sprintf(", short by %s (%s).", lower(wording.CheckTitle(m.Bind.Code, m.Bind.Part)), wording.Margin(m.Bind.Margin))
	var changes []string
	for _, c := range m.Changes {
		changes = append(changes, changeText(c))
	}
	if len(changes) > 0 {
		text += " Would change it: " + strings.Join(changes, "; or ") + "."
	}
	return text
}

func changeText(c assess.Change) string {
	if c.Code == assess.ChangeLighter && c.Value > 0 {
		return "all riders together at most " + wording.AtMost(c.Value, c.Unit)
	}
	return wording.Change(c)
}

// bandText draws the band: for each place along the limb the lines that serve,
// or what falls short.
func bandText(b hangsearch.Band) string {
	var out strings.Builder
	fmt.Fprintf(&out, "      along    lines that serve, towards %.0f deg, %.0f deg to each side\n", b.Azimuth.Degrees(), b.Amplitude.Degrees())
	for _, row := range b.Rows {
		var words []string
		for _, l := range row.Lines {
			words = append(words, fmt.Sprintf("%.2f to %.2f m", l.From, l.To))
		}
		switch {
		case len(words) > 0:
		case row.Bind == nil:
			words = append(words, "borne; lines need the ground")
		default:
			words = append(words, "none: "+lower(wording.CheckTitle(row.Bind.Code, row.Bind.Part)))
		}
		fmt.Fprintf(&out, "      %5.2f m  %s\n", float64(row.Along), strings.Join(words, ", "))
	}
	return out.String()
}

func metres(l quantity.Length) string { return fmt.Sprintf("%.2f m", float64(l)) }

func lower(text string) string {
	if text == "" {
		return ""
	}
	return strings.ToLower(text[:1]) + text[1:]
}
