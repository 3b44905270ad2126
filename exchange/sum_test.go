package exchange_test

import (
	"crypto/sha256"
	"encoding/hex"
)

func sum(data []byte) string {
	s := sha256.Sum256(data)
	return hex.EncodeToString(s[:])
}
