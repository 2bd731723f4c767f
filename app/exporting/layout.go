package exporting

import (
	"context"
	"fmt"
	"path/filepath"
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/panel"
	"homeside/export"
	"homeside/words"
)

// make makes the controls.
func (g *Page) make() {
	g.what = panel.NewDropdown(nil, func(string) { g.choose() })
	changed := func(string) { g.changed() }
	var outputs, sizes, rates, speeds, grounds []string
	for _, o := range g.outputs {
		outputs = append(outputs, o.Name)
	}
	for _, s := range Sizes {
		sizes = append(sizes, words.Said(s.name))
	}
	for _, r := range Rates {
		rates = append(rates, fmt.Sprint(r))
	}
	for _, v := range Speeds {
		name := words.SpeedTag(v)
		if name == "" {
			name = words.T("match speed")
		}
		speeds = append(speeds, name)
	}
	for _, n := range Grounds {
		grounds = append(grounds, words.Said(n))
	}
	g.output, g.size, g.rate = panel.NewDropdown(outputs, changed), panel.NewDropdown(sizes, changed), panel.NewDropdown(rates, changed)
	g.speed, g.ground = panel.NewDropdown(speeds, changed), panel.NewDropdown(grounds, changed)
	g.beeps = heard.NewCheck(words.T("Sound: beeps at contact, bounce, arrival"), func(bool) { g.changed() })
	for _, p := range Presets {
		b := heard.NewButtonWithIcon(words.Said(p.Name), nil, func() { g.preset(p) })
		b.Alignment = widget.ButtonAlignLeading
		g.presets = append(g.presets, b)
	}
	g.path = heard.NewEntry()
	g.path.OnChanged = g.byName
	g.path.OnSubmitted = func(string) { g.ask() }
	g.moment = heard.NewSlider(0, 1)
	g.moment.Step = 0.01
	g.moment.OnChanged = g.seek
	g.clock = widget.NewLabel("")
	g.text = widget.NewLabel("")
	g.text.TextStyle.Monospace = true
	g.textBox = container.NewScroll(g.text)
	g.needs, g.estimate, g.line = widget.NewLabel(""), widget.NewLabel(""), widget.NewLabel("")
	g.needs.Wrapping, g.line.Wrapping, g.estimate.Wrapping = fyne.TextWrapWord, fyne.TextWrapWord, fyne.TextWrapWord
	g.needs.Importance = widget.WarningImportance
	g.makeButtons()
}

func (g *Page) makeButtons() {
	g.export = heard.NewButtonWithIcon(words.T("Export"), theme.DocumentSaveIcon(), g.ask)
	g.export.Importance = widget.HighImportance
	g.export.Then = func() fyne.Focusable { return g.cancel }
	g.cancel = heard.NewButtonWithIcon(words.T("Cancel"), theme.CancelIcon(), g.stop)
	g.show = heard.NewButtonWithIcon(words.T("Show in folder"), theme.FolderOpenIcon(), g.showFolder)
	g.back = heard.NewButtonWithIcon(words.T("Back"), theme.NavigateBackIcon(), g.Close)
	g.browse = heard.NewButtonWithIcon(words.T("Folder…"), nil, func() {
		g.events.Browse(filepath.Dir(g.path.Text), func(folder string) {
			g.path.SetText(filepath.Join(folder, filepath.Base(g.path.Text)))
		})
	})
	g.bar = widget.NewProgressBar()
	g.cancel.Hide()
	g.show.Hide()
	g.bar.Hide()
}

// Widths of the columns at the sides.
const (
	presetsWidth = 240
	formWidth    = 400
	leastPreview = 280 // its height where it stands alone in its row
)

func (g *Page) layOut() {
	left := []fyne.CanvasObject{g.back, widget.NewLabel(words.T("What")), g.what, widget.NewSeparator(), widget.NewLabel(words.T("What for"))}
	for i, p := range Presets {
		about := widget.NewLabel(p.about(g.outputs))
		about.SizeName = theme.SizeNameCaptionText
		left = append(left, container.New(layout.NewCustomPaddedVBoxLayout(-6), g.presets[i], about))
	}
	g.rows = map[*panel.Dropdown]*widget.Label{}
	var form []fyne.CanvasObject
	for _, row := range []struct {
		name string
		d    *panel.Dropdown
	}{
		{words.T("Format"), g.output}, {words.T("Size"), g.size}, {words.T("Frames a second"), g.rate}, {words.T("Speed"), g.speed}, {words.T("Background"), g.ground},
	} {
		g.rows[row.d] = widget.NewLabel(row.name)
		form = append(form, g.rows[row.d], row.d)
	}
	g.form = container.NewVBox(container.New(layout.NewFormLayout(), form...), g.beeps, g.needs, widget.NewLabel(words.T("File")), container.NewBorder(nil, nil, nil, g.browse, g.path),
		g.estimate, g.export, g.bar, g.cancel, g.line, g.show, container.NewGridWrap(fyne.NewSize(1, 1), g.pulse))
	g.dashes = widget.NewLabel(words.T("Apps that show the clip cover nothing inside the dashes."))
	g.dashes.Wrapping = fyne.TextWrapWord
	g.dashes.SizeName, g.dashes.Alignment = theme.SizeNameCaptionText, fyne.TextAlignCenter
	below := container.NewVBox(g.dashes, container.NewBorder(nil, nil, nil, g.clock, g.moment))
	middle := container.NewBorder(nil, below, nil, nil, container.NewStack(g.frame.Box, g.textBox))
	columns := panel.NewColumns(panel.Column{Content: container.NewPadded(container.NewVBox(left...)), Width: presetsWidth},
		panel.Column{Content: container.NewPadded(middle), Least: leastPreview}, panel.Column{Content: container.NewPadded(g.form), Width: formWidth})
	g.tall = panel.NewTall(columns.Box)
	g.Page = panel.NewPage(container.NewPadded(g.tall.Box))
}

// Reveal scrolls so that a control of the page can be seen.
func (g *Page) Reveal(o fyne.CanvasObject) { g.tall.Reveal(o) }

// showChoice shows the choice in the controls, those only that count for the output.
func (g *Page) showChoice() {
	o, c := g.chosenOutput(), g.choice
	for _, row := range []struct {
		d      *panel.Dropdown
		chosen int
		counts bool
	}{
		{g.output, c.Output, true}, {g.size, c.Size, o.Kind <= Clip}, {g.rate, c.Rate, o.Kind == Clip},
		{g.speed, c.Speed, o.Kind == Clip || o.Kind == Words}, {g.ground, c.Ground, o.Kind <= Clip},
	} {
		if row.d.SelectedIndex() != row.chosen {
			row.d.Selected = row.d.Options[row.chosen]
			row.d.Refresh()
		}
		visible(row.d, row.counts)
		visible(g.rows[row.d], row.counts)
	}
	g.beeps.Checked = c.Beeps
	g.beeps.Refresh()
	visible(g.beeps, c.heard(o))
	g.form.Refresh() // rows came or went: what stands below moves
}

// showPurpose ticks the purpose that is chosen, if what is chosen is one.
func (g *Page) showPurpose() {
	for i, p := range Presets {
		c := p.choice(g.outputs)
		c.Beeps = g.choice.Beeps
		var icon fyne.Resource
		if c == g.choice {
			icon = theme.ConfirmIcon()
		}
		if g.presets[i].Icon != icon {
			g.presets[i].SetIcon(icon)
		}
	}
}

// longestFirst are outputs with the longest endings first.
func longestFirst(all []Output) []Output {
	all = slices.Clone(all)
	slices.SortStableFunc(all, func(a, b Output) int { return len(b.Ext) - len(a.Ext) })
	return all
}

// previewLines is how many lines of a text are shown.
const previewLines = 200

// preview is the beginning of a text as it will be written.
func preview(o Output, s Subject, opt *export.Options) string {
	var b strings.Builder
	if err := o.write(context.Background(), &b, s, opt); err != nil {
		return words.Sentence(err)
	}
	lines := strings.SplitN(b.String(), "\n", previewLines+1)
	return strings.Join(lines[:min(len(lines), previewLines)], "\n")
}

func visible(o fyne.CanvasObject, yes bool) {
	if yes {
		o.Show()
	} else {
		o.Hide()
	}
}

// Named are the page's controls by name, for tests of the window.
func (g *Page) Named() map[string]fyne.CanvasObject {
	named := map[string]fyne.CanvasObject{
		"export-what": g.what, "export-output": g.output, "export-size": g.size, "export-path": g.path, "export-go": g.export,
		"export-cancel": g.cancel, "export-show": g.show, "export-back": g.back, "export-rate": g.rate, "export-beeps": g.beeps,
	}
	for i, b := range g.presets {
		named[fmt.Sprintf("export-preset-%d", i)] = b
	}
	return named
}
