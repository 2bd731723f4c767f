package page

import (
	"bytes"
	"crypto/sha256"
	_ "embed"
	"encoding/base64"
	"encoding/json"
	"html/template"

	"homeside/export/still"
	"homeside/words"
)

//go:embed page.css
var css string

//go:embed stage.js
var stageJS string

//go:embed drill.js
var drillJS string

//go:embed page.js
var pageJS string

//go:embed page.html
var pageHTML string

// pageTemplate escapes whatever is put into it by its place in the page.
var pageTemplate = template.Must(template.New("page").Parse(pageHTML))

// document is what the page's template is filled with.
type document struct {
	Lang, Title string
	Policy      string
	Style       template.CSS
	Script      template.JS
	Data        template.JS
	Defs        template.HTML
	Plays       []picture
	Cautions    []string
	Say         texts
	lacks       []rune // letters that no font has
}

// document puts the parts together.
func (p Page) document() (document, error) {
	var f still.Fragments
	d := document{Lang: words.Spoken().Tag(), Title: p.title(), Cautions: words.Cautions(), Say: said()}
	data := content{Say: d.Say, Beeps: pitches(), Signs: signs(&f), Means: means(p.lesson)}
	for i, r := range p.rallies {
		s := newStage(p.lesson, r)
		data.Plays = append(data.Plays, s.play())
		d.Plays = append(d.Plays, s.picture(&f, i))
	}
	d.lacks = f.Lacks()
	d.Defs = template.HTML(f.Defs()) // of our own writer, which escapes labels
	script := stageJS + drillJS + pageJS
	style := css + "@media screen and (prefers-color-scheme: dark) {\n" + f.Dark() + "}\n"
	d.Style, d.Script = template.CSS(style), template.JS(script) // embedded, and colours
	d.Policy = policy(script, style)
	text, err := json.Marshal(data) // escapes <, > and &
	d.Data = template.JS(text)
	if err == nil {
		err = f.Err()
	}
	return d, err
}

// title is the lesson's, or says that it has none.
func (p Page) title() string {
	if p.lesson.Title != "" {
		return p.lesson.Title
	}
	return words.T("Untitled lesson")
}

// policy allows the page's own script and style and nothing else (W3C, Content
// Security Policy Level 3).
func policy(script, style string) string {
	return "default-src 'none'; script-src '" + hash(script) + "'; style-src '" + hash(style) + "'; base-uri 'none'; form-action 'none'"
}

func hash(text string) string {
	sum := sha256.Sum256([]byte(text))
	return "sha256-" + base64.StdEncoding.EncodeToString(sum[:])
}

func (d document) html() ([]byte, error) {
	var b bytes.Buffer
	err := pageTemplate.Execute(&b, d)
	return b.Bytes(), err
}
