// Package archtest holds the layers of the project as text (imports.txt) and
// the test that every import in the module follows them.
package archtest
