// Package picture reads what a camera wrote into a photo, and takes it away
// without touching the pixels.
package picture

import (
	"bytes"
	"fmt"
	"math"
	"net/http"
	"strings"
	"time"

	"github.com/bep/imagemeta"
)

// Written is what a camera wrote into a photo.
type Written struct {
	// Taken is the time on the camera's clock. Without a zone in the photo it
	// is given as UTC, which says no more than what the clock showed.
	Taken time.Time
	// Placed tells whether there is a position, WGS 84 degrees.
	Placed              bool
	Latitude, Longitude float64
	// Orientation is how the picture is to be turned, 1 to 8 (EXIF 2.32, tag
	// 274; from memory); 1 for as it is.
	Orientation int
}

var formats = map[string]imagemeta.ImageFormat{
	"image/jpeg": imagemeta.JPEG, "image/png": imagemeta.PNG, "image/webp": imagemeta.WebP,
}

// Read reads EXIF. A kind of picture that has none gives nothing written.
func Read(data []byte) (Written, error) {
	w := Written{Orientation: 1}
	format, ok := formats[http.DetectContentType(data)]
	if !ok {
		return w, nil
	}
	var tags imagemeta.Tags
	_, err := imagemeta.Decode(imagemeta.Options{
		R: bytes.NewReader(data), ImageFormat: format, Sources: imagemeta.EXIF,
		HandleTag: func(t imagemeta.TagInfo) error { tags.Add(t); return nil },
	})
	if err != nil {
		return w, fmt.Errorf("what the camera wrote cannot be read: %w", err)
	}
	exif := tags.EXIF()
	w.Taken = taken(exif)
	if n, ok := exif["Orientation"].Value.(uint16); ok && n >= 1 && n <= 8 {
		w.Orientation = int(n)
	}
	w.place(tags)
	return w, nil
}

// place takes a position that is one; 0, 0 is what a camera without a fix
// writes.
func (w *Written) place(tags imagemeta.Tags) {
	lat, lon, err := tags.GetLatLong()
	if err != nil || lat == 0 && lon == 0 || math.IsNaN(lat+lon) || math.Abs(lat) > 90 || math.Abs(lon) > 180 {
		return
	}
	w.Placed, w.Latitude, w.Longitude = true, lat, lon
}

func taken(exif map[string]imagemeta.TagInfo) time.Time {
	for _, name := range []string{"DateTimeOriginal", "DateTimeDigitized", "DateTime"} {
		text, _ := exif[name].Value.(string)
		zone, _ := exif["OffsetTimeOriginal"].Value.(string)
		for _, try := range []string{text + zone, text + "Z"} {
			if at, err := time.Parse("2006:01:02 15:04:05Z07:00", strings.TrimSpace(try)); err == nil {
				return at
			}
		}
	}
	return time.Time{}
}
