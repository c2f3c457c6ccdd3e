package engine

import (
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"

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
	most    most
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
	for _, wanted := range []func(string) bool{isPolicy, isData} {
		print, err := printOf(files, wanted)
		if err != nil {
			return nil, err
		}
		w.Text(print)
	}
	most, err := mostOf(t.data)
	if err != nil {
		return nil, err
	}
	for _, part := range []any{rules, sortedKeys(t.across()), most} {
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
	if print, err := printOf(files, isPolicy); err != nil || print != ofRules {
		return nil, errors.Join(err, errStale)
	}
	var f planFile
	for _, part := range []any{&f.rules, &f.across, &f.most} {
		if err := knowledge.Parse([]byte(r.Text()), part); err != nil {
			return nil, fmt.Errorf("read the plan: %w", err)
		}
	}
	f.data = value.Packed(r.Text())
	if print, err := printOf(files, isData); err != nil || print != ofData {
		t, err := readFiles(Options{Tree: files}, isData)
		if err != nil {
			return nil, err
		}
		f.data = t.data
		if f.most, err = mostOf(t.data); err != nil {
			return nil, err
		}
	}
	var err error
	if f.program, err = plan.Read(r.Rest); err != nil {
		return nil, fmt.Errorf("read the plan: %w", err)
	}
	return &f, nil
}

// printOf is a sum over files, which any change changes.
func printOf(files fs.FS, wanted func(string) bool) (string, error) {
	sources, err := readSources(files, builtIn, wanted)
	if err != nil {
		return "", err
	}
	sum := sha256.New()
	for _, s := range sources {
		fmt.Fprintf(sum, "%s %d\n", s.name, len(s.text))
		sum.Write(s.text)
	}
	return hex.EncodeToString(sum.Sum(nil)), nil
}

func (f *planFile) lookAcross() map[string]bool {
	found := map[string]bool{}
	for _, file := range f.across {
		found[file] = true
	}
	return found
}
