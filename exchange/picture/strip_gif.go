package picture

// Blocks of GIF (GIF89a, 1990, appendix A; from memory).
const (
	gifExtension   = 0x21
	gifImage       = 0x2c
	gifEnd         = 0x3b
	gifComment     = 0xfe
	gifApplication = 0xff
)

func stripGIF(data []byte, _ int) ([]byte, error) {
	at := 13
	if len(data) < at {
		return nil, errCutOff
	}
	at += gifColours(data[10])
	if at > len(data) {
		return nil, errCutOff
	}
	out := append(make([]byte, 0, len(data)), data[:at]...)
	for at < len(data) {
		start, needed := at, true
		switch data[at] {
		case gifEnd:
			return append(out, gifEnd), nil
		case gifExtension:
			needed = gifNeeded(data[at:])
			at = gifBlocks(data, at+2)
		case gifImage:
			if at+10 > len(data) {
				return nil, errCutOff
			}
			at = gifBlocks(data, at+11+gifColours(data[at+9]))
		default:
			return nil, errCutOff
		}
		if at < 0 {
			return nil, errCutOff
		}
		if needed {
			out = append(out, data[start:at]...)
		}
	}
	return nil, errCutOff
}

// gifColours is the size of the table of colours that a flag byte announces.
func gifColours(flags byte) int {
	if flags&0x80 == 0 {
		return 0
	}
	return 3 << (1 + flags&7)
}

// gifBlocks goes to behind the last of the blocks that begin at a place,
// negative where the data end before.
func gifBlocks(data []byte, at int) int {
	for at < len(data) {
		size := int(data[at])
		if at += 1 + size; size == 0 {
			return at
		}
	}
	return -1
}

// gifNeeded keeps the number of repeats of a moving picture and drops comments
// and what other applications wrote.
func gifNeeded(block []byte) bool {
	if len(block) < 14 {
		return true
	}
	switch block[1] {
	case gifComment:
		return false
	case gifApplication:
		name := string(block[3:14])
		return name == "NETSCAPE2.0" || name == "ANIMEXTS1.0"
	}
	return true
}
