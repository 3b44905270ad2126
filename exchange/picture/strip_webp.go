package picture

import "encoding/binary"

// webpNeeded are the chunks by which a picture is shown (RFC 9649, section 2.7;
// from memory).
var webpNeeded = map[string]bool{
	"VP8 ": true, "VP8L": true, "VP8X": true, "ALPH": true, "ANIM": true, "ANMF": true, "ICCP": true,
}

// Flags of the chunk VP8X.
const webpEXIF, webpXMP = 0x08, 0x04

func stripWebP(data []byte, turned int) ([]byte, error) {
	size := int(binary.LittleEndian.Uint32(data[4:])) + 8
	if size > len(data) || size < 12 {
		return nil, errCutOff
	}
	out, extended := append([]byte(nil), data[:12]...), -1
	for at := 12; at < size; {
		if at+8 > size {
			return nil, errCutOff
		}
		kind, length := string(data[at:at+4]), int(binary.LittleEndian.Uint32(data[at+4:]))
		if length > size-at-8 {
			return nil, errCutOff
		}
		end := min(at+8+length+length%2, size)
		if kind == "VP8X" && length >= 1 {
			extended = len(out) + 8
		}
		if webpNeeded[kind] {
			out = append(out, data[at:end]...)
		}
		at = end
	}
	if extended >= 0 {
		out[extended] &^= webpEXIF | webpXMP
		if turned != 1 {
			out[extended] |= webpEXIF
			exif := orientation(turned)
			out = binary.LittleEndian.AppendUint32(append(out, "EXIF"...), uint32(len(exif)))
			out = append(out, exif...)
		}
	}
	binary.LittleEndian.PutUint32(out[4:], uint32(len(out)-8))
	return out, nil
}
