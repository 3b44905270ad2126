package picture

import (
	"encoding/binary"
	"hash/crc32"
)

// pngNeeded are the chunks beside the critical ones by which a picture is
// shown (PNG, third edition, 2025, section 11.3; from memory).
var pngNeeded = map[string]bool{
	"tRNS": true, "cHRM": true, "gAMA": true, "iCCP": true, "sBIT": true, "sRGB": true, "cICP": true, "mDCV": true, "cLLI": true,
	"bKGD": true, "hIST": true, "pHYs": true, "sPLT": true, "acTL": true, "fcTL": true, "fdAT": true,
}

func stripPNG(data []byte, turned int) ([]byte, error) {
	out := append(make([]byte, 0, len(data)), data[:8]...)
	for at := 8; at+12 <= len(data); {
		size := binary.BigEndian.Uint32(data[at:])
		if uint64(size) > uint64(len(data)-at-12) {
			break
		}
		kind, end := string(data[at+4:at+8]), at+12+int(size)
		critical := kind[0]&0x20 == 0 // a capital letter
		if critical || pngNeeded[kind] {
			out = append(out, data[at:end]...)
		}
		if kind == "IHDR" && turned != 1 {
			out = append(out, pngChunk("eXIf", orientation(turned))...)
		}
		if at = end; kind == "IEND" {
			return out, nil
		}
	}
	return nil, errCutOff
}

func pngChunk(kind string, data []byte) []byte {
	chunk := binary.BigEndian.AppendUint32(nil, uint32(len(data)))
	chunk = append(append(chunk, kind...), data...)
	return binary.BigEndian.AppendUint32(chunk, crc32.ChecksumIEEE(chunk[4:]))
}
