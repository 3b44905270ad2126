package knowledge

import "slices"

// word reads a cell that holds one word of a fixed set.
func word[W ~string](r row, column string, known []W) W {
	w := W(r.text(column))
	if !slices.Contains(known, w) {
		r.problem("%s is %q, expected one of %q", column, w, known)
	}
	return w
}

// wordList reads a list of words of a fixed set.
func wordList[W ~string](r row, column string, known []W) []W {
	var list []W
	for _, text := range r.list(column) {
		if !slices.Contains(known, W(text)) {
			r.problem("%s holds %q, expected words of %q", column, text, known)
		}
		list = append(list, W(text))
	}
	return list
}
