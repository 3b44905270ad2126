package picture

import (
	"bytes"
	"image"
	_ "image/gif"
	_ "image/jpeg"
	_ "image/png"
	"math"
	"reflect"
	"testing"
	"time"

	"github.com/bep/imagemeta"
	_ "golang.org/x/image/webp"
)

func pictures(t testing.TB) map[string][]byte {
	return map[string][]byte{"jpeg": writtenJPEG(t), "png": writtenPNG(t), "gif": writtenGIF(t), "webp": writtenWebP(t)}
}

func TestReadPositionAndTime(t *testing.T) {
	for name, data := range pictures(t) {
		w, err := Read(data)
		must(t, err)
		if name == "gif" {
			if w.Placed || !w.Taken.IsZero() {
				t.Errorf("%s: %+v", name, w)
			}
			continue
		}
		if !w.Placed || math.Abs(w.Latitude-(51+30./60+26./3600)) > 1e-9 || math.Abs(w.Longitude+(7./60+39./3600)) > 1e-9 {
			t.Errorf("%s: %+v", name, w)
		}
		if want := time.Date(2026, 5, 3, 12, 5, 9, 0, time.UTC); !w.Taken.Equal(want) || w.Orientation != 6 {
			t.Errorf("%s: taken %s, turned %d", name, w.Taken, w.Orientation)
		}
	}
}

// tags lists all that a library for metadata finds in a picture.
func tags(t *testing.T, name string, data []byte) []string {
	t.Helper()
	format, ok := map[string]imagemeta.ImageFormat{"jpeg": imagemeta.JPEG, "png": imagemeta.PNG, "webp": imagemeta.WebP}[name]
	if !ok {
		return nil
	}
	var list []string
	_, err := imagemeta.Decode(imagemeta.Options{
		R: bytes.NewReader(data), ImageFormat: format, Sources: imagemeta.EXIF | imagemeta.IPTC | imagemeta.XMP,
		ShouldHandleTag: func(imagemeta.TagInfo) bool { return true },
		HandleTag:       func(tag imagemeta.TagInfo) error { list = append(list, tag.Tag); return nil },
	})
	must(t, err)
	return list
}

func TestNothingIsLeftButTheWayItIsTurned(t *testing.T) {
	for name, data := range pictures(t) {
		bare, err := Strip(data)
		must(t, err)
		if before, after := tags(t, name, data), tags(t, name, bare); name != "gif" && (len(before) < 8 || !reflect.DeepEqual(after, []string{"Orientation"})) {
			t.Errorf("%s: %v became %v", name, before, after)
		}
		for _, text := range []string{"GPSLatitude", "Rigger", "Telephone", "2026", "MPF", "xmp", "XMP", "behind"} {
			if bytes.Contains(bare, []byte(text)) {
				t.Errorf("%s: %q is left", name, text)
			}
		}
		if w, err := Read(bare); err != nil || w.Placed || !w.Taken.IsZero() || name != "gif" && w.Orientation != 6 {
			t.Errorf("%s: %+v, %v", name, w, err)
		}
		if again, err := Strip(bare); err != nil || !bytes.Equal(again, bare) {
			t.Errorf("%s: stripping once more changes it, %v", name, err)
		}
	}
}

func TestThePixelsStay(t *testing.T) {
	for name, data := range pictures(t) {
		bare, err := Strip(data)
		must(t, err)
		before, kind, err := image.Decode(bytes.NewReader(data))
		must(t, err)
		after, _, err := image.Decode(bytes.NewReader(bare))
		must(t, err)
		if kind != name || !reflect.DeepEqual(before, after) {
			t.Errorf("%s: the pixels differ", name)
		}
	}
	bare, err := Strip(writtenJPEG(t))
	must(t, err)
	if !bytes.Contains(bare, []byte("ICC_PROFILE")) || !bytes.Contains(bare, []byte("JFIF")) {
		t.Error("the colour profile or the head is gone")
	}
	if bare, err = Strip(writtenGIF(t)); err != nil || !bytes.Contains(bare, []byte("NETSCAPE2.0")) {
		t.Errorf("the number of repeats is gone, %v", err)
	}
}

func TestCutOffPicturesAreRefused(t *testing.T) {
	for name, data := range pictures(t) {
		bare, err := Strip(data)
		must(t, err)
		for _, n := range []int{len(bare) - 1, len(bare) / 2, 20} {
			if got, err := Strip(bare[:n]); err == nil {
				t.Errorf("%s: %d of %d bytes gave %d", name, n, len(bare), len(got))
			}
		}
	}
	if _, err := Strip([]byte("%PDF-1.7")); err == nil {
		t.Error("a PDF was taken")
	}
}

// FuzzStrip: nothing that is stripped has a position.
func FuzzStrip(f *testing.F) {
	for _, data := range pictures(f) {
		f.Add(data)
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		bare, err := Strip(data)
		if err != nil {
			return
		}
		if w, err := Read(bare); err == nil && (w.Placed || !w.Taken.IsZero()) {
			t.Errorf("left: %+v", w)
		}
	})
}
