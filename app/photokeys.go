package app

import (
	"fyne.io/fyne/v2"

	"homeside/words"
)

// How far the arrow keys move a mark on the photo, in its pixels, alone and with
// Shift.
const (
	photoStep = 1
	photoLeap = 10
)

// photoBindings are the keys of the photo's page.
func photoBindings() []binding {
	all := []binding{
		{onPhoto, one(fyne.KeyN), false, func() string { return words.T("choose the next mark, then the players") }, always(func(e *Editor) { e.photos.page.Next(1) })},
		{onPhoto, one(fyne.KeyN), true, func() string { return words.T("choose the previous mark or player") }, always(func(e *Editor) { e.photos.page.Next(-1) })},
		{onPhoto, one(fyne.KeyReturn, fyne.KeyEnter), false, func() string { return words.T("put the player chosen where the mark is") }, always(func(e *Editor) { e.photos.page.Put() })},
		{onPhoto, one(fyne.KeyEscape), false, func() string { return words.T("cancel a drag, or close the photo") }, always((*Editor).escapePhoto)},
	}
	for i, key := range []fyne.KeyName{fyne.Key1, fyne.Key2, fyne.Key3, fyne.Key4, fyne.Key5, fyne.Key6, fyne.Key7, fyne.Key8, fyne.Key9} {
		all = append(all, binding{onPhoto, one(key), false, func() string { return words.T("choose mark %d", i+1) }, always(func(e *Editor) { e.photos.page.Point(i) })})
	}
	for _, way := range []struct {
		key         fyne.KeyName
		right, down float64
		name        func() string
	}{
		{fyne.KeyRight, 1, 0, func() string { return words.T("to the right") }}, {fyne.KeyLeft, -1, 0, func() string { return words.T("to the left") }},
		{fyne.KeyUp, 0, -1, func() string { return words.T("up") }}, {fyne.KeyDown, 0, 1, func() string { return words.T("down") }},
	} {
		move := func(by float64) func(*Editor) bool {
			return always(func(e *Editor) { e.photos.page.Move(way.right*by, way.down*by) })
		}
		all = append(all,
			binding{onPhoto, one(way.key), false, func() string { return words.T("move what is chosen by a pixel %s", way.name()) }, move(photoStep)},
			binding{onPhoto, one(way.key), true, func() string { return words.T("move what is chosen by 10 pixels %s", way.name()) }, move(photoLeap)})
	}
	return all
}
