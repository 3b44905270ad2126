package picture

import (
	"errors"
	"fmt"
	"net/http"
)

// errCutOff says that a picture ends before its end.
var errCutOff = errors.New("the picture is cut off or damaged, so what the camera wrote could not be taken out; it was left out")

// Strip takes everything out of a picture that is not needed to show it:
// position, times, names, comments, small pictures, and whatever lies behind
// its end. The pixels stay bit by bit, and so do colour profile and the way it
// is turned. No library does this for all four kinds without packing the
// pixels anew.
func Strip(data []byte) ([]byte, error) {
	kind := http.DetectContentType(data)
	strip, ok := map[string]func([]byte, int) ([]byte, error){
		"image/jpeg": stripJPEG, "image/png": stripPNG, "image/webp": stripWebP, "image/gif": stripGIF,
	}[kind]
	if !ok {
		return nil, fmt.Errorf("a file of the type %s; expected JPEG, PNG, WebP or GIF", kind)
	}
	turned := 1
	if w, err := Read(data); err == nil { // what cannot be read is taken out all the same
		turned = w.Orientation
	}
	return strip(data, turned)
}

// orientation is EXIF that says nothing but how to turn the picture.
func orientation(n int) []byte {
	return []byte{
		'M', 'M', 0, 42, 0, 0, 0, 8, // big-endian TIFF, first directory at 8
		0, 1, // one entry
		0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, byte(n), 0, 0, // orientation, one short
		0, 0, 0, 0, // no further directory
	}
}
