package exporttest

import (
	"bytes"
	"context"
	"image"
	"image/draw"
	"image/png"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
)

// browserPatience is how long one wish of a test may take.
const browserPatience = time.Minute

// Page is a file open in headless Chromium (Debian's package chromium). It notes
// what goes wrong in it and what it asks of the network.
type Page struct {
	t   testing.TB
	ctx context.Context

	mu     sync.Mutex
	errors []string // console errors and uncaught exceptions
	asked  []string // addresses, the page's own first
}

// OpenPage opens a file in a window of a size in CSS pixels, each a pixel of the
// screen. Chromium and all it kept are gone when the test ends.
func OpenPage(t testing.TB, path string, width, height int) *Page {
	t.Helper()
	absolute, err := filepath.Abs(path)
	if err != nil {
		t.Fatal(err)
	}
	p := &Page{t: t}
	allocated, end := chromedp.NewExecAllocator(context.Background(), append(chromedp.DefaultExecAllocatorOptions[:],
		chromedp.NoSandbox, chromedp.DisableGPU, chromedp.UserDataDir(t.TempDir()), chromedp.WindowSize(width, height),
		chromedp.Flag("disable-component-update", true), chromedp.Flag("hide-scrollbars", true))...)
	ctx, closeTab := chromedp.NewContext(allocated, chromedp.WithListener(p.note))
	p.ctx = ctx
	t.Cleanup(func() {
		defer end()
		defer closeTab()
		if err := chromedp.Cancel(ctx); err != nil {
			t.Errorf("close chromium: %v", err)
		}
	})
	if err := chromedp.Do(ctx); err != nil {
		t.Fatalf("start chromium: %v: install the Debian package chromium", err)
	}
	p.Do("open "+path, chromedp.Func(func(ctx context.Context, tab *chromedp.Target) error {
		_, err := cdp.Call(ctx, tab, network.Enable, network.EnableParams{})
		return err
	}), chromedp.EmulateViewport(int64(width), int64(height)), chromedp.Navigate("file://"+absolute))
	return p
}

// note is called by the browser's own goroutine.
func (p *Page) note(event any) {
	p.mu.Lock()
	defer p.mu.Unlock()
	switch e := event.(type) {
	case *network.EventRequestWillBeSent:
		p.asked = append(p.asked, e.Request.URL)
	case *runtime.EventExceptionThrown:
		p.errors = append(p.errors, exception(e.ExceptionDetails))
	case *runtime.EventConsoleAPICalled:
		if string(e.Type) == "error" || string(e.Type) == "assert" {
			p.errors = append(p.errors, said(e.Args))
		}
	}
}

func exception(d *runtime.ExceptionDetails) string {
	if d.Exception == nil {
		return d.Text
	}
	return d.Text + " " + d.Exception.Description
}

func said(args []*runtime.RemoteObject) string {
	words := make([]string, len(args))
	for i, a := range args {
		if words[i] = string(a.Value); words[i] == "" {
			words[i] = a.Description
		}
	}
	return strings.Join(words, " ")
}

// Do runs steps of package chromedp; doing says what they are for.
func (p *Page) Do(doing string, steps ...chromedp.Action[chromedp.Void]) {
	p.t.Helper()
	ctx, cancel := context.WithTimeout(p.ctx, browserPatience)
	defer cancel()
	if err := chromedp.Do(ctx, steps...); err != nil {
		p.t.Fatalf("chromium: %s: %v", doing, err)
	}
}

// Get is what an action of package chromedp gives, such as chromedp.Title();
// doing says what it is for.
func Get[T any](p *Page, doing string, a chromedp.Action[T]) T {
	p.t.Helper()
	ctx, cancel := context.WithTimeout(p.ctx, browserPatience)
	defer cancel()
	v, err := chromedp.Run(ctx, a)
	if err != nil {
		p.t.Fatalf("chromium: %s: %v", doing, err)
	}
	return v
}

// Eval is the value of JavaScript, that of a promise when it is kept.
func Eval[T any](p *Page, script string) T {
	p.t.Helper()
	return Get(p, "run "+script, chromedp.Evaluate[T](script, chromedp.EvalAwaitPromise))
}

// Until waits until an expression of JavaScript is true, looking in every frame.
func (p *Page) Until(expression string) {
	p.t.Helper()
	Get(p, "wait until "+expression, chromedp.Poll[bool]("!!("+expression+")", chromedp.WithPollingTimeout(browserPatience)))
}

// Picture is what the window shows.
func (p *Page) Picture() *image.RGBA {
	p.t.Helper()
	img, err := png.Decode(bytes.NewReader(Get(p, "take a picture", chromedp.CaptureScreenshot())))
	if err != nil {
		p.t.Fatalf("chromium: read the picture: %v", err)
	}
	out := image.NewRGBA(image.Rect(0, 0, img.Bounds().Dx(), img.Bounds().Dy()))
	draw.Draw(out, out.Rect, img, img.Bounds().Min, draw.Src)
	return out
}

// Errors are the console's errors and uncaught exceptions so far.
func (p *Page) Errors() []string {
	p.mu.Lock()
	defer p.mu.Unlock()
	return slices.Clone(p.errors)
}

// Requests are the addresses asked for so far, the page's own first; what stands
// in the page itself (data:, blob:) is left out.
func (p *Page) Requests() []string {
	p.mu.Lock()
	defer p.mu.Unlock()
	inside := func(a string) bool { return strings.HasPrefix(a, "data:") || strings.HasPrefix(a, "blob:") }
	return slices.DeleteFunc(slices.Clone(p.asked), inside)
}
