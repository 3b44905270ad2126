package assess

import "strconv"

// element names one element of a list in the document: trees[2].
func element(list string, index int) string { return list + "[" + strconv.Itoa(index) + "]" }
