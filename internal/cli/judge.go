package cli

import (
	"context"
	"runtime"

	"golang.org/x/sync/errgroup"

	"abut/internal/document"
	"abut/internal/engine"
	"abut/internal/output"
)

// judged is what came of one workbook; doc is nil if it could not be read.
type judged struct {
	file     string
	doc      *document.Document
	against  *document.Document // in a comparison, what was specified
	findings []engine.Finding
	drawn    *output.Drawn // what a report with pictures draws of it
	err      error
}

// judgeAll reads and judges workbooks on all processors; what came of each is
// taken in the order of the files. The first are read while the rules load.
func (p *project) judgeAll(ctx context.Context, files []string, draws bool) []<-chan judged {
	results := make([]<-chan judged, len(files))
	send := make([]chan judged, len(files))
	for i := range files {
		send[i] = make(chan judged, 1)
		results[i] = send[i]
	}
	go func() {
		var group errgroup.Group
		group.SetLimit(runtime.GOMAXPROCS(0))
		for i, file := range files {
			group.Go(func() error {
				got, err := guarded(ctx, p.guard, func(ctx context.Context) (judged, error) {
					return p.judge(ctx, file, draws), nil
				})
				if err != nil {
					got = judged{file: file, err: err}
				}
				send[i] <- got
				return nil
			})
		}
	}()
	return results
}

func (p *project) judge(ctx context.Context, file string, draws bool) judged {
	out := judged{file: file}
	doc, err := p.read(file)
	if err != nil {
		out.err = err
		return out
	}
	eng, err := p.engine()
	if err != nil {
		out.err = err
		return out
	}
	out.doc = doc
	out.findings, out.err = eng.Judge(ctx, doc)
	if out.err == nil && draws {
		out.drawn, out.err = drawn(ctx, doc, eng)
	}
	return out
}

// drawn keeps what a report with pictures draws of a file.
func drawn(ctx context.Context, doc *document.Document, eng *engine.Engine) (*output.Drawn, error) {
	bare, err := eng.Bare(ctx, doc)
	return &output.Drawn{Document: doc, Bare: bare}, err
}
