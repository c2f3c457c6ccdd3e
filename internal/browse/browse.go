// Package browse opens a page in a browser for tests, and keeps what the page
// did that a quiet one never does.
package browse

import (
	"context"
	"fmt"
	"net/url"
	"os/exec"
	"path/filepath"
	"reflect"
	"strings"
	"sync"
	"testing"

	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
)

// Tab is a page in a browser.
type Tab struct {
	t   *testing.T
	ctx context.Context

	mu    sync.Mutex
	noise []string
}

// Open shows a file in a browser. Without one the test is left out, which
// ci/test.sh says aloud.
func Open(t *testing.T, file string, before ...chromedp.Action) *Tab {
	t.Helper()
	if testing.Short() {
		t.Skip("the browser is left out of short tests")
	}
	path := ""
	for _, name := range []string{"chromium", "chromium-browser", "google-chrome", "chrome"} {
		if found, err := exec.LookPath(name); err == nil && path == "" {
			path = found
		}
	}
	if path == "" {
		t.Skip("no Chromium here, so the report is not tried in a browser")
	}
	options := append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath(path), chromedp.NoSandbox)
	ctx, cancel := chromedp.NewExecAllocator(context.Background(), options...)
	t.Cleanup(cancel)
	ctx, cancel = chromedp.NewContext(ctx)
	t.Cleanup(cancel)
	b := &Tab{t: t, ctx: ctx}
	chromedp.ListenTarget(ctx, b.listen)
	address := (&url.URL{Scheme: "file", Path: filepath.ToSlash(file)}).String()
	b.Run(append(append([]chromedp.Action{log.Enable(), network.Enable()}, before...), chromedp.Navigate(address))...)
	return b
}

// listen keeps what a quiet page never does: complain, fetch, ask.
func (b *Tab) listen(event any) {
	told := ""
	switch e := event.(type) {
	case *runtime.EventExceptionThrown:
		told = "exception: " + e.ExceptionDetails.Error()
	case *runtime.EventConsoleAPICalled:
		told = fmt.Sprintf("console: %s", e.Type)
	case *log.EventEntryAdded:
		told = "log: " + e.Entry.Text
	case *network.EventRequestWillBeSent:
		if e.Type != network.ResourceTypeDocument || !strings.HasPrefix(e.Request.URL, "file:") {
			told = "request: " + e.Request.URL
		}
	case *page.EventJavascriptDialogOpening:
		told = "dialog: " + e.Message
	}
	if told != "" {
		b.mu.Lock()
		defer b.mu.Unlock()
		b.noise = append(b.noise, told)
	}
}

// Run does what a reader would.
func (b *Tab) Run(actions ...chromedp.Action) {
	b.t.Helper()
	if err := chromedp.Run(b.ctx, actions...); err != nil {
		b.t.Fatal(err)
	}
}

// Wants holds the value of an expression against what it should be.
func Wants[T any](b *Tab, what, expression string, want T) {
	b.t.Helper()
	var got T
	b.Run(chromedp.Evaluate(expression, &got))
	if !reflect.DeepEqual(got, want) {
		b.t.Errorf("%s: got %v, want %v", what, got, want)
	}
}

// Quiet fails if the page complained, fetched or asked anything.
func (b *Tab) Quiet() {
	b.t.Helper()
	b.mu.Lock()
	defer b.mu.Unlock()
	for _, told := range b.noise {
		b.t.Errorf("the page is not quiet: %s", told)
	}
}
