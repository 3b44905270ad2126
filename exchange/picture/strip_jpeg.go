package picture

import (
	"bytes"
	"encoding/binary"
)

// Markers of JPEG (ITU-T T.81, Table B.1; from memory).
const (
	jpegStart   = 0xd8
	jpegEnd     = 0xd9
	jpegScan    = 0xda
	jpegRestart = 0xd0 // to 0xd7
	jpegTEM     = 0x01
	jpegApp0    = 0xe0
	jpegApp1    = 0xe1
	jpegApp2    = 0xe2
	jpegApp14   = 0xee
	jpegApp15   = 0xef
	jpegComment = 0xfe
)

func stripJPEG(data []byte, turned int) ([]byte, error) {
	out := append(make([]byte, 0, len(data)), 0xff, jpegStart)
	written := turned == 1
	for at := 2; ; {
		marker, next := jpegMarker(data, at)
		if next < 0 {
			return nil, errCutOff
		}
		at = next
		if marker != jpegApp0 && !written { // behind JFIF, which comes first
			out, written = append(out, exifSegment(turned)...), true
		}
		switch {
		case marker == jpegEnd:
			return append(out, 0xff, jpegEnd), nil
		case marker == jpegTEM || marker >= jpegRestart && marker < jpegStart:
			out = append(out, 0xff, marker)
			continue
		}
		if at+2 > len(data) {
			return nil, errCutOff
		}
		end := at + int(binary.BigEndian.Uint16(data[at:]))
		if end < at+2 || end > len(data) {
			return nil, errCutOff
		}
		if jpegNeeded(marker, data[at+2:end]) {
			out = append(append(out, 0xff, marker), data[at:end]...)
		}
		if at = end; marker == jpegScan {
			at = scanEnd(data, end)
			out = append(out, data[end:at]...)
		}
	}
}

// jpegMarker reads a marker with the fill bytes before it; next is negative
// where there is none.
func jpegMarker(data []byte, at int) (marker byte, next int) {
	if at >= len(data) || data[at] != 0xff {
		return 0, -1
	}
	for at < len(data) && data[at] == 0xff {
		at++
	}
	if at == len(data) {
		return 0, -1
	}
	return data[at], at + 1
}

// scanEnd is where the packed pixels end: at a marker that is no restart. A
// 0xff among them is followed by 0.
func scanEnd(data []byte, at int) int {
	for ; at+1 < len(data); at++ {
		if next := data[at+1]; data[at] == 0xff && next != 0 && next != 0xff && (next < jpegRestart || next >= jpegStart) {
			return at
		}
	}
	return len(data)
}

// jpegNeeded keeps what a picture is shown by: everything but application
// segments and comments, and of those the head, the colour profile and the
// kind of colours.
func jpegNeeded(marker byte, segment []byte) bool {
	switch {
	case marker == jpegApp0:
		return bytes.HasPrefix(segment, []byte("JFIF\x00")) && len(segment) == 14 // longer ones hold a small picture
	case marker == jpegApp2:
		return bytes.HasPrefix(segment, []byte("ICC_PROFILE\x00"))
	case marker == jpegApp14:
		return bytes.HasPrefix(segment, []byte("Adobe"))
	}
	return marker != jpegComment && (marker < jpegApp0 || marker > jpegApp15)
}

func exifSegment(turned int) []byte {
	exif := append([]byte("Exif\x00\x00"), orientation(turned)...)
	return append([]byte{0xff, jpegApp1, 0, byte(2 + len(exif))}, exif...)
}
