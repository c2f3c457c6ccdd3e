package html

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	dom "github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"abut/internal/browse"
	"abut/internal/output"
)

// open shows the page of a run in a browser.
func open(t *testing.T, run output.Run, before ...chromedp.Action) *browse.Tab {
	t.Helper()
	name := filepath.Join(t.TempDir(), "report.html")
	if err := os.WriteFile(name, []byte(written(t, run)), 0o600); err != nil {
		t.Fatal(err)
	}
	return browse.Open(t, name, before...)
}

const shownFindings = `[...document.querySelectorAll(".row .finding")].filter(f => f.checkVisibility()).length`

// TestBrowser filters and follows links as a reader does.
func TestBrowser(t *testing.T) {
	b := open(t, runOf(t, "testdata/small.csv"))
	browse.Wants(b, "findings at first", shownFindings, 4)
	b.Run(chromedp.SetValue("select[name=topic]", "exposure"), chromedp.Evaluate(
		`document.querySelector("select[name=topic]").dispatchEvent(new Event("input", {bubbles: true}))`, nil))
	browse.Wants(b, "findings of exposure", shownFindings, 1)
	browse.Wants(b, "the count", `document.querySelector("output").value`, "1 of 4 findings")

	b.Run(chromedp.Click(".chart ~ details summary"), chromedp.Click(`details a[href="#finding2"]`))
	b.Run(chromedp.Poll(shownFindings+` === 4`, nil))
	browse.Wants(b, "the link leads to its finding", `document.querySelector(":target").id`, "finding2")

	b.Run(chromedp.Focus("input[name=words]"), chromedp.KeyEvent("gasket"))
	browse.Wants(b, "findings with gasket", shownFindings, 1)
	b.Run(chromedp.KeyEvent("xyzzy"))
	browse.Wants(b, "findings with no such word", shownFindings, 0)
	browse.Wants(b, "it is said that nothing fits", `document.querySelector(".nothing").checkVisibility()`, true)
	b.Run(chromedp.KeyEvent(kb.Escape), chromedp.Poll(shownFindings+` === 4`, nil))

	b.Run(chromedp.KeyEvent(kb.Tab+kb.Tab), chromedp.KeyEvent(kb.Enter))
	browse.Wants(b, "Next by keyboard", `document.activeElement.id`, "finding1")
	b.Quiet()
}

// TestBrowserAccess walks the page for what a reader without sight or mouse
// needs: headings in order, names, tables, targets.
func TestBrowserAccess(t *testing.T) {
	b := open(t, runOf(t, "testdata/small.csv"))
	browse.Wants(b, "language", `document.documentElement.lang`, "en")
	browse.Wants(b, "headings that skip a level", `[...document.querySelectorAll("h1,h2,h3,h4,h5,h6")].map(h => +h.tagName[1])
		.filter((level, i, all) => i > 0 && level > all[i - 1] + 1).length`, 0)
	browse.Wants(b, "first headings", `document.querySelectorAll("h1").length`, 1)
	browse.Wants(b, "pictures", `document.querySelectorAll("svg[role=img]").length`, 4)
	browse.Wants(b, "pictures without title and description", `[...document.querySelectorAll("svg[role=img]")].filter(s =>
		s.getAttribute("aria-labelledby").split(" ").some(id => !document.getElementById(id)?.textContent)).length`, 0)
	browse.Wants(b, "ids that stand twice", `(() => { const ids = [...document.querySelectorAll("[id]")].map(e => e.id);
		return ids.length - new Set(ids).size; })()`, 0)
	browse.Wants(b, "links that lead nowhere", `[...document.querySelectorAll("a")].filter(a =>
		!document.getElementById(a.getAttribute("href").slice(1))).length`, 0)
	browse.Wants(b, "tables without caption or headings", `[...document.querySelectorAll("table")].filter(t =>
		!t.caption || !t.querySelector("th[scope=col]") || !t.querySelector("th[scope=row]")).length`, 0)
	browse.Wants(b, "fields without a label", `[...document.querySelectorAll("input,select")].filter(e => e.labels.length === 0).length`, 0)
	browse.Wants(b, "cautions", `document.body.innerText.split("licensed professional decide").length - 1`, 1)
	b.Quiet()
}

// TestBrowserWithoutScript has everything but the filter.
func TestBrowserWithoutScript(t *testing.T) {
	b := open(t, runOf(t, "testdata/small.csv"), emulation.SetScriptExecutionDisabled(true))
	b.Run(emulation.SetScriptExecutionDisabled(false))
	browse.Wants(b, "findings", shownFindings, 4)
	browse.Wants(b, "the filter", `document.getElementById("filter").checkVisibility()`, false)
	b.Quiet()
}

// TestBrowserHostile shows what strangers may write into cells: as words.
func TestBrowserHostile(t *testing.T) {
	b := open(t, hostile(t))
	browse.Wants(b, "scripts", `document.scripts.length`, 1)
	browse.Wants(b, "pictures from elsewhere", `document.images.length`, 0)
	browse.Wants(b, "handlers", `[...document.querySelectorAll("*")].filter(e => [...e.attributes].some(a => a.name.startsWith("on"))).length`, 0)
	b.Quiet()
}

// TestBrowserLooks sees the page on paper, in the dark and on a phone.
func TestBrowserLooks(t *testing.T) {
	b := open(t, runOf(t, "testdata/small.csv"))
	paint := `getComputedStyle(document.body).backgroundColor`
	var light, dark string
	b.Run(chromedp.Evaluate(paint, &light),
		emulation.SetEmulatedMedia().WithFeatures([]*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: "dark"}}),
		chromedp.Evaluate(paint, &dark))
	if light == dark {
		t.Errorf("the page is %s in light and in dark", light)
	}
	b.Run(emulation.SetEmulatedMedia().WithMedia("print"))
	browse.Wants(b, "the filter on paper", `document.getElementById("filter").checkVisibility()`, false)
	b.Run(emulation.SetEmulatedMedia(), emulation.SetDeviceMetricsOverride(360, 800, 1, true))
	browse.Wants(b, "wider than a phone", `document.documentElement.scrollWidth > innerWidth`, false)
	b.Run(chromedp.ActionFunc(func(ctx context.Context) error {
		pdf, _, err := dom.PrintToPDF().Do(ctx)
		if err == nil && len(pdf) == 0 {
			err = fmt.Errorf("nothing was printed")
		}
		return err
	}))
	b.Quiet()
}
