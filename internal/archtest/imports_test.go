package archtest

import (
	"bufio"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

const (
	module = "boughline"
	root   = "../.."
)

// policy maps a package pattern to the patterns that it may import.
type policy map[string][]string

func readPolicy(t *testing.T) policy {
	t.Helper()
	file, err := os.Open("imports.txt")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	p := policy{}
	for lines := bufio.NewScanner(file); lines.Scan(); {
		line := strings.TrimSpace(lines.Text())
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		name, allowed, ok := strings.Cut(line, ":")
		if !ok {
			t.Fatalf("imports.txt: %q has no colon", line)
		}
		p[name] = strings.Fields(allowed)
	}
	return p
}

// rule returns what pkg may import, and whether the policy names it at all.
func (p policy) rule(pkg string) ([]string, bool) {
	for pattern, allowed := range p {
		if matches(pattern, pkg) {
			return allowed, true
		}
	}
	return nil, false
}

func (p policy) allows(pkg, imported string) bool {
	if imported == "quantity" || imported == "source" {
		return true
	}
	allowed, _ := p.rule(pkg)
	for _, pattern := range allowed {
		if matches(pattern, imported) {
			return true
		}
	}
	return false
}

func matches(pattern, pkg string) bool {
	if pattern == "*" || pattern == pkg {
		return true
	}
	folder, ok := strings.CutSuffix(pattern, "/*")
	return ok && strings.HasPrefix(pkg, folder+"/")
}

// TestEveryImportFollowsTheLayers reads the imports of every Go file, whatever
// its build constraints, and compares them with imports.txt.
func TestEveryImportFollowsTheLayers(t *testing.T) {
	p := readPolicy(t)
	files := 0
	err := filepath.WalkDir(root, func(name string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() || !strings.HasSuffix(name, ".go") {
			return err
		}
		files++
		checkFile(t, p, name)
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if files == 0 {
		t.Fatal("no Go file was read")
	}
}

func checkFile(t *testing.T, p policy, name string) {
	t.Helper()
	relative, err := filepath.Rel(root, name)
	if err != nil {
		t.Fatal(err)
	}
	pkg := path.Dir(filepath.ToSlash(relative))
	if _, named := p.rule(pkg); !named {
		t.Errorf("%s: package %q is not in imports.txt", relative, pkg)
		return
	}
	parsed, err := parser.ParseFile(token.NewFileSet(), name, nil, parser.ImportsOnly)
	if err != nil {
		t.Fatal(err)
	}
	test := strings.HasSuffix(name, "_test.go")
	for _, spec := range parsed.Imports {
		imported, err := strconv.Unquote(spec.Path.Value)
		if err != nil {
			t.Fatal(err)
		}
		inside, ok := strings.CutPrefix(imported, module+"/")
		if !ok {
			continue
		}
		if test && testMay(pkg, inside) {
			continue
		}
		if !p.allows(pkg, inside) {
			t.Errorf("%s imports %s, which imports.txt does not allow for %s", relative, inside, pkg)
		}
	}
}

// testMay reports whether the tests of a package may import what the package
// may not: itself, what stands below it, test generators and the demo.
func testMay(pkg, imported string) bool {
	return imported == pkg || strings.HasPrefix(imported, pkg+"/") || strings.HasSuffix(imported, "test") || imported == "demo"
}

// TestThePolicyItselfBites feeds the policy an edge that must never pass.
func TestThePolicyItselfBites(t *testing.T) {
	p := readPolicy(t)
	for _, edge := range [][2]string{{"engine/swing", "survey"}, {"survey", "knowledge"}, {"engine/frame", "engine/swing"}, {"knowledge", "assess"}} {
		if p.allows(edge[0], edge[1]) {
			t.Errorf("imports.txt lets %s import %s", edge[0], edge[1])
		}
	}
}
