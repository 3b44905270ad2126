package knowledge

import "boughline/source"

// resolve returns the sources of the row, the governing one first. The place
// in the column where belongs to the governing one.
func (r row) resolve() []source.Ref {
	keys := append([]string{r.text("source")}, r.list("more_sources")...)
	refs := make([]source.Ref, 0, len(keys))
	for i, key := range keys {
		s, ok := r.loader.sources[key]
		if !ok {
			r.problem("the source %q is not in sources.csv", key)
			continue
		}
		r.loader.used[key] = true
		ref := source.Ref{Source: s}
		if i == 0 {
			ref.Where = r.text("where")
		}
		refs = append(refs, ref)
	}
	return refs
}

// ref returns the governing source of the row.
func (r row) ref() source.Ref {
	if len(r.refs) == 0 {
		return source.Ref{}
	}
	return r.refs[0]
}

// memory reads the column evidence: whether the row rests on memory alone or
// in part. It refuses a row whose governing source says otherwise.
func (r row) memory() (all, part bool) {
	unread := r.ref().Source.Kind
	recalled := unread == source.Memory || unread == source.Practice || unread == source.House
	evidence := r.text("evidence")
	switch {
	case evidence == "memory" && recalled:
		return true, false
	case evidence == "mixed":
		return false, true
	case evidence == "read" && !recalled:
		return false, false
	}
	r.problem("evidence is %q but the governing source is of kind %q", evidence, unread)
	return false, false
}

// Sources lists every source the tables rest on.
func (b *Base) Sources() []source.Source { return append([]source.Source(nil), b.sources...) }
