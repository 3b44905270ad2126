package picture

import (
	"bytes"
	"encoding/binary"
	"hash/crc32"
	"image"
	"image/color"
	"image/gif"
	"image/jpeg"
	"image/png"
	"testing"
)

// entry is an entry of a TIFF directory, with its values as bytes.
type entry struct {
	tag, kind uint16
	count     uint32
	value     []byte
}

func short(tag, v uint16) entry { return entry{tag, 3, 1, binary.BigEndian.AppendUint16(nil, v)} }
func ascii(tag uint16, text string) entry {
	return entry{tag, 2, uint32(len(text) + 1), append([]byte(text), 0)}
}
func pointer(tag uint16, at int) entry {
	return entry{tag, 4, 1, binary.BigEndian.AppendUint32(nil, uint32(at))}
}
func degrees(tag uint16, d, m, s uint32) entry {
	var b []byte
	for _, x := range []uint32{d, 1, m, 1, s, 100} {
		b = binary.BigEndian.AppendUint32(b, x)
	}
	return entry{tag, 5, 3, b}
}

// directory lays out a directory at a place, long values behind it.
func directory(at int, entries ...entry) []byte {
	head := binary.BigEndian.AppendUint16(nil, uint16(len(entries)))
	behind := at + 2 + 12*len(entries) + 4
	var long []byte
	for _, e := range entries {
		head = binary.BigEndian.AppendUint16(binary.BigEndian.AppendUint16(head, e.tag), e.kind)
		head = binary.BigEndian.AppendUint32(head, e.count)
		if len(e.value) <= 4 {
			head = append(head, append(e.value, 0, 0, 0, 0)[:4]...)
			continue
		}
		head = binary.BigEndian.AppendUint32(head, uint32(behind+len(long)))
		long = append(long, e.value...)
		if len(long)%2 == 1 {
			long = append(long, 0)
		}
	}
	return append(binary.BigEndian.AppendUint32(head, 0), long...)
}

// cameraEXIF is what a telephone writes: 51 30 26.00 N, 0 7 39.00 W, at 14:05:09
// on 3 May 2026 two hours east of UTC, turned by a quarter.
func cameraEXIF() []byte {
	const first, exif, gps = 8, 200, 400
	tiff := append([]byte{'M', 'M', 0, 42, 0, 0, 0, first}, directory(first,
		ascii(271, "Example"), ascii(272, "Telephone"), short(274, 6), pointer(34665, exif), pointer(34853, gps))...)
	tiff = append(tiff, make([]byte, exif-len(tiff))...)
	tiff = append(tiff, directory(exif, ascii(36867, "2026:05:03 14:05:09"), ascii(36881, "+02:00"), ascii(42032, "A. Rigger"))...)
	tiff = append(tiff, make([]byte, gps-len(tiff))...)
	return append(tiff, directory(gps, ascii(1, "N"), degrees(2, 51, 30, 2600), ascii(3, "W"), degrees(4, 0, 7, 3900))...)
}

const xmp = `<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">` +
	`<rdf:Description xmlns:exif="http://ns.adobe.com/exif/1.0/" exif:GPSLatitude="51,30.43N" exif:GPSLongitude="0,7.65W"/></rdf:RDF></x:xmpmeta>`

func pattern() image.Image {
	m := image.NewRGBA(image.Rect(0, 0, 48, 32))
	for y := range 32 {
		for x := range 48 {
			m.Set(x, y, color.RGBA{uint8(5 * x), uint8(8 * y), uint8(x * y), 255})
		}
	}
	return m
}

func segment(marker byte, data string) []byte {
	return append(binary.BigEndian.AppendUint16([]byte{0xff, marker}, uint16(2+len(data))), data...)
}

func writtenJPEG(t testing.TB) []byte {
	var b bytes.Buffer
	must(t, jpeg.Encode(&b, pattern(), nil))
	data := b.Bytes()
	out := append([]byte{}, data[:2]...)
	for _, s := range [][]byte{
		segment(jpegApp0, "JFIF\x00\x01\x02\x00\x00\x01\x00\x01\x00\x00"), segment(jpegApp1, "Exif\x00\x00"+string(cameraEXIF())),
		segment(jpegApp1, "http://ns.adobe.com/xap/1.0/\x00"+xmp), segment(0xed, "Photoshop 3.0\x00byline A. Rigger"),
		segment(jpegApp2, "MPF\x00index"), segment(jpegApp2, "ICC_PROFILE\x00\x01\x01profile"), segment(jpegComment, "made by A. Rigger"),
	} {
		out = append(out, s...)
	}
	return append(append(out, data[2:]...), "a film behind the end GPSLatitude"...)
}

func writtenPNG(t testing.TB) []byte {
	var b bytes.Buffer
	must(t, png.Encode(&b, pattern()))
	data := b.Bytes()
	out := append([]byte{}, data[:33]...)
	out = append(out, pngChunk("eXIf", cameraEXIF())...)
	out = append(out, pngChunk("tEXt", []byte("Author\x00A. Rigger"))...)
	out = append(out, pngChunk("gAMA", []byte{0, 0, 0xb1, 0x8f})...)
	return append(append(out, data[33:]...), "behind GPSLatitude"...)
}

func writtenGIF(t testing.TB) []byte {
	var b bytes.Buffer
	m := image.NewPaletted(image.Rect(0, 0, 9, 7), color.Palette{color.Black, color.White, color.RGBA{R: 200, A: 255}, color.RGBA{G: 9, A: 255}})
	for i := range m.Pix {
		m.Pix[i] = uint8(i % 4)
	}
	must(t, gif.EncodeAll(&b, &gif.GIF{Image: []*image.Paletted{m, m}, Delay: []int{5, 5}, LoopCount: 3}))
	data := b.Bytes()
	at := 13 + gifColours(data[10])
	out := append([]byte{}, data[:at]...)
	out = append(out, "\x21\xfe\x09A. Rigger\x00\x21\xff\x0bXMP DataXMP\x0bGPSLatitude\x00"...)
	return append(out, data[at:]...)
}

// writtenWebP is an extended file about one black pixel without loss (VP8L, a
// usual test of browsers; from memory).
func writtenWebP(testing.TB) []byte {
	chunk := func(kind string, data []byte) []byte {
		c := append(binary.LittleEndian.AppendUint32([]byte(kind), uint32(len(data))), data...)
		return append(c, make([]byte, len(data)%2)...)
	}
	pixels := []byte{0x2f, 0, 0, 0, 0x10, 0x07, 0x10, 0x11, 0x11, 0x88, 0x88, 0xfe, 0x07, 0}
	body := append([]byte("WEBP"), chunk("VP8X", []byte{webpEXIF | webpXMP, 0, 0, 0, 0, 0, 0, 0, 0, 0})...)
	body = append(body, chunk("VP8L", pixels)...)
	body = append(body, chunk("EXIF", cameraEXIF())...)
	body = append(body, chunk("XMP ", []byte(xmp))...)
	return append(binary.LittleEndian.AppendUint32([]byte("RIFF"), uint32(len(body))), body...)
}

func must(t testing.TB, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

func TestTheChunkOfAPNG(t *testing.T) {
	// IEND with its checksum stands at the end of every PNG.
	if got := pngChunk("IEND", nil); !bytes.Equal(got, []byte("\x00\x00\x00\x00IEND\xae\x42\x60\x82")) {
		t.Errorf("% x, %x", got, crc32.ChecksumIEEE([]byte("IEND")))
	}
}
