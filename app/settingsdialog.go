package app

import (
	"image"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/panel"
	"homeside/app/settings"
	"homeside/words"
)

// settingsForm asks for the settings.
type settingsForm struct {
	language, look, measures *panel.Dropdown
	large, reduced           *heard.Check
	next                     *widget.Label // says when a language comes
}

func newSettingsForm(s settings.Settings) *settingsForm {
	f := &settingsForm{
		large:   heard.NewCheck(words.T("Large text"), nil),
		reduced: heard.NewCheck(words.T("Reduced motion"), nil),
		next:    widget.NewLabel(""),
	}
	f.large.Checked, f.reduced.Checked = s.LargeText, s.ReducedMotion
	f.language = chosen(languageNames(), int(s.Language), func(string) { f.sayNext() })
	f.look = chosen([]string{words.T("As the desktop"), words.T("Light"), words.T("Dark")}, int(s.Look), nil)
	f.measures = chosen([]string{words.T("Feet and inches"), words.T("Metres")}, int(s.Measures), nil)
	f.sayNext()
	return f
}

// chosen is a choice with one option chosen from the start.
func chosen(options []string, at int, changed func(string)) *panel.Dropdown {
	d := panel.NewDropdown(options, nil)
	d.SetSelectedIndex(at)
	d.OnChanged = changed
	return d
}

func languageNames() []string {
	var names []string
	for _, l := range words.Languages() {
		names = append(names, l.Name())
	}
	return names
}

// sayNext says that another language than the one spoken waits for a start.
func (f *settingsForm) sayNext() {
	text := ""
	if words.Language(f.language.SelectedIndex()) != words.Spoken() {
		text = words.T("From the next start on.")
	}
	f.next.SetText(text)
}

func (f *settingsForm) box() fyne.CanvasObject {
	return container.NewVBox(
		container.New(layout.NewFormLayout(),
			widget.NewLabel(words.T("Language")), container.NewGridWithColumns(2, f.language, f.next),
			widget.NewLabel(words.T("Look")), f.look,
			widget.NewLabel(words.T("Measures")), f.measures),
		f.large, f.about(words.T("In the window and on the court.")),
		f.reduced, f.about(words.T("A play goes from event to event, nothing flashes.")))
}

// about says below a choice what it does.
func (f *settingsForm) about(text string) fyne.CanvasObject {
	l := widget.NewLabel(text)
	l.Wrapping, l.SizeName, l.Importance = fyne.TextWrapWord, theme.SizeNameCaptionText, widget.LowImportance
	return container.New(layout.NewCustomPaddedLayout(-8, 0, theme.IconInlineSize()+2*theme.InnerPadding(), 0), l)
}

func (f *settingsForm) settings() settings.Settings {
	return settings.Settings{
		Language: words.Language(f.language.SelectedIndex()), Look: settings.Looks[f.look.SelectedIndex()],
		LargeText: f.large.Checked, ReducedMotion: f.reduced.Checked, Measures: words.Measures(f.measures.SelectedIndex()),
	}
}

// named are the controls that a test of the window presses.
func (f *settingsForm) named() map[string]fyne.CanvasObject {
	return map[string]fyne.CanvasObject{
		"settings-language": f.language, "settings-look": f.look, "settings-measures": f.measures,
		"settings-large": f.large, "settings-reduced": f.reduced,
	}
}

// askSettings asks for the settings; Escape leaves them as they are.
func (e *Editor) askSettings() {
	f := newSettingsForm(e.settings.Now())
	content := container.NewStack(e.pulse(f.named(), "asking the settings"), container.NewPadded(f.box()))
	q := e.askWith(words.T("Settings"), content, answer{label: words.T("Cancel")},
		answer{label: words.T("Use"), do: func() { e.settings.Set(f.settings()) }})
	q.size(520, 360).focus(f.language)
}

// pulse is painted with a dialog and then tells where its controls are.
func (e *Editor) pulse(named map[string]fyne.CanvasObject, painted string) fyne.CanvasObject {
	return fynecanvas.NewRaster(func(int, int) image.Image {
		e.traceNamed(named)
		e.trace.say("%s", painted)
		return image.NewRGBA(image.Rect(0, 0, 1, 1))
	})
}
