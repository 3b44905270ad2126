package exchange

import (
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"path"
	"strings"

	"boughline/notebook"
	"boughline/store"
	"boughline/survey"
)

// ArchiveVersion is that of the archives that this program writes.
const ArchiveVersion = 1

// The files of an archive; photos and lists for reading have a folder each.
const (
	manifestFile = "manifest.json"
	surveyFile   = "survey.json"
	answersFile  = "answers.json"
	photosFile   = "photos.json"
	photoFolder  = "photos/"
	readFolder   = "read/"
)

// Manifest says what an archive holds and how to know that it is whole.
type Manifest struct {
	Version int    `json:"boughline_archive"`
	ID      string `json:"id,omitempty"` // of the site
	Site    string `json:"site"`
	// Stripped says that what cameras wrote was taken out of the photos.
	Stripped bool `json:"photos_stripped,omitempty"`
	// LeftOut are things of the site that could not be written.
	LeftOut []string `json:"left_out,omitempty"`
	Files   []File   `json:"files"`
}

// File is one file of an archive with its checksum.
type File struct {
	Name   string `json:"name"`
	Size   int64  `json:"bytes"`
	SHA256 string `json:"sha256"`
}

func fileOf(name string, data []byte) File {
	sum := sha256.Sum256(data)
	return File{Name: name, Size: int64(len(data)), SHA256: hex.EncodeToString(sum[:])}
}

// photoName is where a picture lies in the archive.
func photoName(p notebook.Photo) string {
	kind := strings.TrimPrefix(p.Type, "image/")
	if kind == "jpeg" {
		kind = "jpg"
	}
	return photoFolder + store.Segment(p.ID) + "." + store.Segment(kind)
}

// isName reports whether a file may lie in an archive under a name: none leads
// out of a folder it is unpacked into.
func isName(name string) bool {
	switch name {
	case manifestFile, surveyFile, answersFile, photosFile:
		return true
	}
	folder, file, _ := strings.Cut(name, "/")
	if folder+"/" != photoFolder && folder+"/" != readFolder {
		return false
	}
	stem, kind, _ := strings.Cut(file, ".")
	return isPart(stem) && isPart(kind)
}

// isPart takes what store.Segment gives.
func isPart(text string) bool {
	const most = 200
	for _, c := range []byte(text) {
		if (c < 'a' || c > 'z') && (c < '0' || c > '9') && c != '-' && c != '_' {
			return false
		}
	}
	return text != "" && len(text) <= most
}

// mostBytes is the greatest size of a file by its place.
func mostBytes(name string) int64 {
	switch {
	case name == manifestFile || name == photosFile:
		return 16 << 20
	case path.Dir(name)+"/" == photoFolder:
		return notebook.MaxPhoto
	}
	return survey.MaxSize
}

func readManifest(data []byte) (*Manifest, error) {
	var head struct {
		Version int `json:"boughline_archive"`
	}
	if err := json.Unmarshal(data, &head); err != nil || head.Version < 1 {
		return nil, &Refusal{manifestFile, "is no manifest of a site", "check that it is an archive of this program"}
	}
	if head.Version > ArchiveVersion {
		return nil, notebook.Newer("boughline_archive", head.Version, ArchiveVersion)
	}
	var m Manifest
	if err := json.Unmarshal(data, &m); err != nil {
		return nil, &Refusal{manifestFile, "cannot be read: " + err.Error(), getAnew}
	}
	return &m, nil
}
