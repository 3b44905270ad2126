// Package wording is the one catalogue of words for outcomes, checks, reasons
// and changes. The assessment itself holds codes and numbers only.
package wording
