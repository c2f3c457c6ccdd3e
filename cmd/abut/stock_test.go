package main

import (
	"bytes"
	"cmp"
	"context"
	"encoding/json"
	"fmt"
	"io"
	"net"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"runtime/debug"
	"slices"
	"testing"
	"time"

	"golang.org/x/sync/errgroup"

	"abut/internal/document"
	"abut/internal/engine"
	"abut/internal/workbook"
	"abut/policies"
)

const opaModule = "github.com/open-policy-agent/opa"

// serverWait bounds what the stock server may take in all; it is no measure.
const serverWait = 5 * time.Minute

// stockOPA builds OPA's own command from the version that abut is linked with.
func stockOPA(t *testing.T) string {
	t.Helper()
	if testing.Short() {
		t.Skip("-short leaves out what builds OPA's own command")
	}
	version := ""
	info, _ := debug.ReadBuildInfo()
	for _, m := range info.Deps {
		if m.Path == opaModule {
			version = m.Version
		}
	}
	folder := t.TempDir()
	build := exec.Command("go", "install", opaModule+"@"+version)
	build.Env = append(os.Environ(), "GOBIN="+folder, "GOFLAGS=")
	if out, err := build.CombinedOutput(); err != nil {
		t.Fatalf("build OPA's own command: %v\n%s", err, out)
	}
	return filepath.Join(folder, "opa")
}

func writeBundle(t *testing.T) string {
	t.Helper()
	file := filepath.Join(t.TempDir(), "abut.tar.gz")
	if code, _, errs := abut("bundle", file); code != 0 {
		t.Fatalf("exit %d: %s", code, errs)
	}
	return file
}

// TestStock holds OPA as it comes, with the bundle, against abut.
func TestStock(t *testing.T) {
	opa, policies := stockOPA(t), writeBundle(t)
	t.Run("command", func(t *testing.T) { stockCommand(t, opa, policies) })
	t.Run("server", func(t *testing.T) { stockServer(t, opa, policies) })
}

// stockCommand asks about what abut reads of each workbook, and wants the
// findings of abut check.
func stockCommand(t *testing.T, opa, policies string) {
	for _, file := range books(t) {
		t.Run(filepath.Base(file), func(t *testing.T) {
			code, doc, errs := abut("read", file)
			if code != 0 {
				t.Fatalf("exit %d: %s", code, errs)
			}
			eval := exec.Command(opa, "eval", "--bundle", policies, "--stdin-input", "--strict-builtin-errors",
				"--format", "raw", "data.answer.findings")
			eval.Stdin = bytes.NewReader(doc)
			out, err := eval.Output()
			if err != nil {
				t.Fatalf("%v\n%s", err, out)
			}
			want := check(t, file).Findings
			if len(want) == 0 {
				t.Error("no finding, so nothing is shown")
			}
			same(t, out, want)
		})
	}
}

// same holds what OPA answers against findings of abut, in one order, with
// what one rule says twice of a row in the same words taken together.
func same(t *testing.T, answer []byte, want []engine.Finding) {
	t.Helper()
	var got []engine.Finding
	if err := json.Unmarshal(answer, &got); err != nil {
		t.Fatalf("%v in the answer %.200s", err, answer)
	}
	a, b := ordered(t, got), ordered(t, want)
	if !bytes.Equal(a, b) {
		t.Errorf("OPA:\n%s\nabut:\n%s", a, b)
	}
}

func ordered(t *testing.T, findings []engine.Finding) []byte {
	t.Helper()
	type key struct {
		rule, severity, sheet, mark, message string
		row                                  int
	}
	merged := map[key]engine.Finding{}
	for _, f := range findings {
		k := key{f.Rule, f.Severity, f.Sheet, f.Mark, f.Message, f.Row}
		if have, ok := merged[k]; ok {
			f.Cells = slices.Concat(have.Cells, f.Cells)
			f.Related = slices.Concat(have.Related, f.Related)
		}
		merged[k] = f
	}
	lines := make([]string, 0, len(merged))
	for _, f := range merged {
		slices.Sort(f.Cells)
		f.Cells = slices.Compact(f.Cells)
		f.Related = distinct(f.Related)
		line, err := json.Marshal(f)
		if err != nil {
			t.Fatal(err)
		}
		lines = append(lines, string(line))
	}
	slices.Sort(lines)
	out, err := json.MarshalIndent(lines, "", " ")
	if err != nil {
		t.Fatal(err)
	}
	return out
}

func distinct(related []engine.Related) []engine.Related {
	for i := range related {
		slices.Sort(related[i].Cells)
	}
	slices.SortFunc(related, func(a, b engine.Related) int {
		return cmp.Compare(fmt.Sprint(a), fmt.Sprint(b))
	})
	return slices.CompactFunc(related, func(a, b engine.Related) bool { return fmt.Sprint(a) == fmt.Sprint(b) })
}

// stockServer sends 200 documents from 8 clients at once to a server that has
// loaded the bundle.
func stockServer(t *testing.T, opa, policies string) {
	const documents, clients = 200, 8
	docs, want := smallDocuments(t, documents)
	ctx, cancel := context.WithTimeout(t.Context(), serverWait)
	defer cancel()
	url := startServer(ctx, t, opa, policies) + "/v1/data/answer/findings"
	answers := make([][]byte, documents)
	group, ctx := errgroup.WithContext(ctx)
	group.SetLimit(clients)
	for i, doc := range docs {
		group.Go(func() (err error) {
			answers[i], err = ask(ctx, url, doc)
			return err
		})
	}
	if err := group.Wait(); err != nil {
		t.Fatal(err)
	}
	for i := range answers {
		same(t, answers[i], want[i])
	}
}

// ask posts a document as OPA's REST interface wants it.
func ask(ctx context.Context, url string, doc *document.Document) ([]byte, error) {
	body, err := json.Marshal(map[string]any{"input": doc})
	if err != nil {
		return nil, err
	}
	request, err := http.NewRequestWithContext(ctx, http.MethodPost, url, bytes.NewReader(body))
	if err != nil {
		return nil, err
	}
	response, err := http.DefaultClient.Do(request)
	if err != nil {
		return nil, err
	}
	defer response.Body.Close()
	text, err := io.ReadAll(response.Body)
	if err != nil {
		return nil, err
	}
	var answer struct{ Result json.RawMessage }
	if err := json.Unmarshal(text, &answer); err != nil || response.StatusCode != http.StatusOK {
		return nil, fmt.Errorf("%s: %v: %.200s", response.Status, err, text)
	}
	return answer.Result, nil
}

// startServer runs a server on a free port of this machine alone until the
// test ends, and gives its address once it has the bundle.
func startServer(ctx context.Context, t *testing.T, opa, policies string) string {
	t.Helper()
	free, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	address := free.Addr().String()
	free.Close()
	var log bytes.Buffer
	server := exec.CommandContext(ctx, opa, "run", "--server", "--disable-telemetry", "--addr", address, "--bundle", policies)
	server.Stderr = &log
	if err := server.Start(); err != nil {
		t.Fatal(err)
	}
	ended := make(chan error, 1)
	go func() { ended <- server.Wait() }()
	t.Cleanup(func() {
		_ = server.Process.Kill() // it may have ended by itself
		<-ended
	})
	for {
		response, err := http.Get("http://" + address + "/health?bundles")
		if err == nil {
			response.Body.Close()
			if response.StatusCode == http.StatusOK {
				return "http://" + address
			}
		}
		select {
		case err := <-ended:
			ended <- err
			t.Fatalf("the server ended: %v\n%s", err, &log)
		case <-ctx.Done():
			t.Fatalf("the server did not get ready: %v", ctx.Err())
		case <-time.After(50 * time.Millisecond):
		}
	}
}

// smallDocuments are schedules of a few lines, each in another mix, and what
// abut finds in them.
func smallDocuments(t *testing.T, count int) ([]*document.Document, [][]engine.Finding) {
	t.Helper()
	builder, err := document.NewBuilder(policies.FS)
	if err != nil {
		t.Fatal(err)
	}
	eng, err := engine.Load(engine.Options{})
	if err != nil {
		t.Fatal(err)
	}
	docs, findings := make([]*document.Document, count), make([][]engine.Finding, count)
	seen := map[string]bool{}
	for i := range docs {
		book, err := workbook.Read(fmt.Sprintf("part-%d.csv", i), []byte(smallSchedule(i)), workbook.DefaultLimits())
		if err != nil {
			t.Fatal(err)
		}
		if docs[i], err = builder.Build(book, document.Settings{}); err != nil {
			t.Fatal(err)
		}
		if findings[i], err = eng.Judge(t.Context(), docs[i]); err != nil {
			t.Fatal(err)
		}
		for _, f := range findings[i] {
			seen[f.Rule] = true
		}
	}
	if len(seen) < 5 {
		t.Fatalf("only %d rules find something in the documents", len(seen))
	}
	return docs, findings
}

func smallSchedule(i int) string {
	materials := []string{"Self-adhered SBS-modified asphalt sheet", "Self-adhered butyl flashing strip", "Copper flashing, 16 oz"}
	substrates := []string{"CMU", "Concrete", "Galvanized steel angle", "Gypsum sheathing", "Dimension lumber"}
	touches := []string{"EPDM gasket", "Plasticized PVC waterstop", "XPS board", "Zinc sheet", "Mineral wool board", "-", "Silicone sealant"}
	text := "Item,Material,Substrate,Primer,Touches,Edge,Installed,Covered\n"
	for row := range 4 {
		n := i*5 + row*11
		text += fmt.Sprintf("W-%d,%s,%s,-,%s,-,2026-09-%02d,2026-%d-20\n", row+1,
			materials[n%len(materials)], substrates[n%len(substrates)], touches[n%len(touches)], 1+n%28, 10+n%3)
	}
	return text
}
