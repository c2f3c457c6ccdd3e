package html

import (
	"context"
	"fmt"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"reflect"
	"strings"
	"sync"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/network"
	dom "github.com/chromedp/cdproto/page"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"abut/internal/output"
)

// tab is a page in a browser, with what it did that it should not.
type tab struct {
	*testing.T
	ctx context.Context

	mu    sync.Mutex
	noise []string
}

// open shows the page of a file in a browser. Without one the test is left
// out, which ci/test.sh says aloud.
func open(t *testing.T, run output.Run, before ...chromedp.Action) *tab {
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
	name := filepath.Join(t.TempDir(), "report.html")
	if err := os.WriteFile(name, []byte(written(t, run)), 0o600); err != nil {
		t.Fatal(err)
	}
	options := append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath(path), chromedp.NoSandbox)
	ctx, cancel := chromedp.NewExecAllocator(context.Background(), options...)
	t.Cleanup(cancel)
	ctx, cancel = chromedp.NewContext(ctx)
	t.Cleanup(cancel)
	b := &tab{T: t, ctx: ctx}
	chromedp.ListenTarget(ctx, b.listen)
	address := (&url.URL{Scheme: "file", Path: filepath.ToSlash(name)}).String()
	b.run(append(append([]chromedp.Action{log.Enable(), network.Enable()}, before...), chromedp.Navigate(address))...)
	return b
}

// listen keeps what a quiet page never does: complain, fetch, ask.
func (b *tab) listen(event any) {
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
	case *dom.EventJavascriptDialogOpening:
		told = "dialog: " + e.Message
	}
	if told != "" {
		b.mu.Lock()
		defer b.mu.Unlock()
		b.noise = append(b.noise, told)
	}
}

func (b *tab) run(actions ...chromedp.Action) {
	b.Helper()
	if err := chromedp.Run(b.ctx, actions...); err != nil {
		b.Fatal(err)
	}
}

// wants holds the value of an expression against what it should be.
func wants[T any](b *tab, what, expression string, want T) {
	b.Helper()
	var got T
	b.run(chromedp.Evaluate(expression, &got))
	if !reflect.DeepEqual(got, want) {
		b.Errorf("%s: got %v, want %v", what, got, want)
	}
}

func (b *tab) quiet() {
	b.Helper()
	b.mu.Lock()
	defer b.mu.Unlock()
	for _, told := range b.noise {
		b.Errorf("the page is not quiet: %s", told)
	}
}

const shownFindings = `[...document.querySelectorAll(".row .finding")].filter(f => f.checkVisibility()).length`

// TestBrowser filters and follows links as a reader does.
func TestBrowser(t *testing.T) {
	b := open(t, runOf(t, "testdata/small.csv"))
	wants(b, "findings at first", shownFindings, 4)
	b.run(chromedp.SetValue("select[name=topic]", "exposure"), chromedp.Evaluate(
		`document.querySelector("select[name=topic]").dispatchEvent(new Event("input", {bubbles: true}))`, nil))
	wants(b, "findings of exposure", shownFindings, 1)
	wants(b, "the count", `document.querySelector("output").value`, "1 of 4 findings")

	b.run(chromedp.Click(".chart ~ details summary"), chromedp.Click(`details a[href="#finding2"]`))
	b.run(chromedp.Poll(shownFindings+` === 4`, nil))
	wants(b, "the link leads to its finding", `document.querySelector(":target").id`, "finding2")

	b.run(chromedp.Focus("input[name=words]"), chromedp.KeyEvent("gasket"))
	wants(b, "findings with gasket", shownFindings, 1)
	b.run(chromedp.KeyEvent("xyzzy"))
	wants(b, "findings with no such word", shownFindings, 0)
	wants(b, "it is said that nothing fits", `document.querySelector(".nothing").checkVisibility()`, true)
	b.run(chromedp.KeyEvent(kb.Escape), chromedp.Poll(shownFindings+` === 4`, nil))

	b.run(chromedp.KeyEvent(kb.Tab+kb.Tab), chromedp.KeyEvent(kb.Enter))
	wants(b, "Next by keyboard", `document.activeElement.id`, "finding1")
	b.quiet()
}

// TestBrowserAccess walks the page for what a reader without sight or mouse
// needs: headings in order, names, tables, targets.
func TestBrowserAccess(t *testing.T) {
	b := open(t, runOf(t, "testdata/small.csv"))
	wants(b, "language", `document.documentElement.lang`, "en")
	wants(b, "headings that skip a level", `[...document.querySelectorAll("h1,h2,h3,h4,h5,h6")].map(h => +h.tagName[1])
		.filter((level, i, all) => i > 0 && level > all[i - 1] + 1).length`, 0)
	wants(b, "first headings", `document.querySelectorAll("h1").length`, 1)
	wants(b, "pictures", `document.querySelectorAll("svg[role=img]").length`, 4)
	wants(b, "pictures without title and description", `[...document.querySelectorAll("svg[role=img]")].filter(s =>
		s.getAttribute("aria-labelledby").split(" ").some(id => !document.getElementById(id)?.textContent)).length`, 0)
	wants(b, "ids that stand twice", `(() => { const ids = [...document.querySelectorAll("[id]")].map(e => e.id);
		return ids.length - new Set(ids).size; })()`, 0)
	wants(b, "links that lead nowhere", `[...document.querySelectorAll("a")].filter(a =>
		!document.getElementById(a.getAttribute("href").slice(1))).length`, 0)
	wants(b, "tables without caption or headings", `[...document.querySelectorAll("table")].filter(t =>
		!t.caption || !t.querySelector("th[scope=col]") || !t.querySelector("th[scope=row]")).length`, 0)
	wants(b, "fields without a label", `[...document.querySelectorAll("input,select")].filter(e => e.labels.length === 0).length`, 0)
	wants(b, "cautions", `document.body.innerText.split("licensed professional decide").length - 1`, 1)
	b.quiet()
}

// TestBrowserWithoutScript has everything but the filter.
func TestBrowserWithoutScript(t *testing.T) {
	b := open(t, runOf(t, "testdata/small.csv"), emulation.SetScriptExecutionDisabled(true))
	b.run(emulation.SetScriptExecutionDisabled(false))
	wants(b, "findings", shownFindings, 4)
	wants(b, "the filter", `document.getElementById("filter").checkVisibility()`, false)
	b.quiet()
}

// TestBrowserHostile shows what strangers may write into cells: as words.
func TestBrowserHostile(t *testing.T) {
	b := open(t, hostile(t))
	wants(b, "scripts", `document.scripts.length`, 1)
	wants(b, "pictures from elsewhere", `document.images.length`, 0)
	wants(b, "handlers", `[...document.querySelectorAll("*")].filter(e => [...e.attributes].some(a => a.name.startsWith("on"))).length`, 0)
	b.quiet()
}

// TestBrowserLooks sees the page on paper, in the dark and on a phone.
func TestBrowserLooks(t *testing.T) {
	b := open(t, runOf(t, "testdata/small.csv"))
	paint := `getComputedStyle(document.body).backgroundColor`
	var light, dark string
	b.run(chromedp.Evaluate(paint, &light),
		emulation.SetEmulatedMedia().WithFeatures([]*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: "dark"}}),
		chromedp.Evaluate(paint, &dark))
	if light == dark {
		t.Errorf("the page is %s in light and in dark", light)
	}
	b.run(emulation.SetEmulatedMedia().WithMedia("print"))
	wants(b, "the filter on paper", `document.getElementById("filter").checkVisibility()`, false)
	b.run(emulation.SetEmulatedMedia(), emulation.SetDeviceMetricsOverride(360, 800, 1, true))
	wants(b, "wider than a phone", `document.documentElement.scrollWidth > innerWidth`, false)
	b.run(chromedp.ActionFunc(func(ctx context.Context) error {
		pdf, _, err := dom.PrintToPDF().Do(ctx)
		if err == nil && len(pdf) == 0 {
			err = fmt.Errorf("nothing was printed")
		}
		return err
	}))
	b.quiet()
}
