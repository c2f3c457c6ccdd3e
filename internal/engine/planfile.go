package engine

import (
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"hash"
	"io"
	"io/fs"
	"path"

	"abut/internal/knowledge"
	"abut/internal/plan"
	"abut/internal/plan/value"
)

// planFile is what is kept of the built-in rules, so that a start need not
// compile them: `go generate ./policies` writes it.
type planFile struct {
	rules   []Rule
	across  []string // files of rules that look across rows
	data    any      // what the rules read of it
	shared  shared
	program *plan.Program
}

var errStale = errors.New("the plan is of other rules; run go generate ./policies")

// Renew writes the file anew for a tree; compile makes a program of modules by
// their names, to be asked for some rules.
func Renew(files fs.FS, compile func(modules map[string]string, rules []string) (*plan.Program, error)) ([]byte, error) {
	t, rules, err := read(Options{Tree: files})
	if err != nil {
		return nil, err
	}
	texts, asked := map[string]string{}, []string{finePath, barePath}
	for name, text := range t.texts {
		texts[name] = string(text)
	}
	for _, r := range rules {
		asked = append(asked, entry(r))
	}
	program, err := compile(texts, asked)
	if err != nil {
		return nil, err
	}
	var w value.Writer
	prints, err := printsOf(files)
	if err != nil {
		return nil, err
	}
	w.Text(prints.rules)
	w.Text(prints.data)
	shared, err := sharedOf(t.data)
	if err != nil {
		return nil, err
	}
	for _, part := range []any{rules, sortedKeys(t.across()), shared} {
		text, err := json.Marshal(part)
		if err != nil {
			return nil, fmt.Errorf("write the plan: %w", err)
		}
		w.Text(string(text))
	}
	var data value.Writer
	var source value.Source
	data.Value(source.Of(program.Prune(t.data)))
	w.Text(string(data.Out))
	return program.Append(w.Out), source.Err
}

// readPlan fails if the plan is of other rules than those of the tree. If only
// the data is another, that is read anew.
func readPlan(files fs.FS, text []byte) (*planFile, error) {
	r := value.Reader{Rest: text}
	ofRules, ofData := r.Text(), r.Text()
	prints, err := printsOf(files)
	if err != nil || prints.rules != ofRules {
		return nil, errors.Join(err, errStale)
	}
	var f planFile
	for _, part := range []any{&f.rules, &f.across, &f.shared} {
		if err := knowledge.Parse(r.Bytes(), part); err != nil {
			return nil, fmt.Errorf("read the plan: %w", err)
		}
	}
	f.data = value.Packed(r.Bytes())
	if prints.data != ofData {
		t, err := readFiles(Options{Tree: files}, isData)
		if err != nil {
			return nil, err
		}
		f.data = t.data
		if f.shared, err = sharedOf(t.data); err != nil {
			return nil, err
		}
	}
	if f.program, err = plan.Read(r.Rest); err != nil {
		return nil, fmt.Errorf("read the plan: %w", err)
	}
	return &f, nil
}

// prints are sums over the files of the rules and of their data, which any change
// changes.
type prints struct{ rules, data string }

func printsOf(files fs.FS) (prints, error) {
	rules, data := sha256.New(), sha256.New()
	room := make([]byte, 1<<16)
	err := fs.WalkDir(files, ".", func(p string, _ fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case isPolicy(p):
			return add(rules, files, p, room)
		case isData(p):
			return add(data, files, p, room)
		}
		return nil
	})
	if err != nil {
		return prints{}, fmt.Errorf("sum up the policies: %w", err)
	}
	return prints{hex.EncodeToString(rules.Sum(nil)), hex.EncodeToString(data.Sum(nil))}, nil
}

// add adds a file to a sum, by way of some room.
func add(sum hash.Hash, files fs.FS, p string, room []byte) error {
	file, err := files.Open(p)
	if err != nil {
		return err
	}
	defer file.Close()
	info, err := file.Stat()
	if err != nil {
		return err
	}
	fmt.Fprintf(sum, "%s %d\n", path.Join(builtIn, p), info.Size())
	_, err = io.CopyBuffer(sum, struct{ io.Reader }{file}, room)
	return err
}

func (f *planFile) lookAcross() map[string]bool {
	found := map[string]bool{}
	for _, file := range f.across {
		found[file] = true
	}
	return found
}
