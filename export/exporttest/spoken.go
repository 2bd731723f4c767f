package exporttest

import (
	"context"
	"encoding/json"

	"github.com/chromedp/cdproto/accessibility"
	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/chromedp"
)

// Spoken is what Chromium tells screen readers of an element.
type Spoken struct{ Role, Name, Description string }

// Spoken is what Chromium tells screen readers of the page, in order; what has
// no name and no description is left out.
func (p *Page) Spoken() []Spoken {
	p.t.Helper()
	var all []Spoken
	p.Do("ask what is spoken", chromedp.Func(func(ctx context.Context, tab *chromedp.Target) error {
		tree, err := cdp.Call(ctx, tab, accessibility.GetFullAXTree, accessibility.GetFullAXTreeParams{})
		if err != nil {
			return err
		}
		for _, n := range tree.Nodes {
			if s := (Spoken{text(n.Role), text(n.Name), text(n.Description)}); !n.Ignored && s.Name+s.Description != "" {
				all = append(all, s)
			}
		}
		return nil
	}))
	return all
}

// text is a value of the tree that is a text; "" for none.
func text(v *accessibility.Value) (s string) {
	if v == nil || json.Unmarshal([]byte(v.Value), &s) != nil {
		return ""
	}
	return s
}
