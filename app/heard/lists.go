package heard

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// List is a list of rows.
type List struct{ widget.List }

// NewList is a list: how long it is, an empty row, and what fills one.
func NewList(length func() int, row func() fyne.CanvasObject, fill func(widget.ListItemID, fyne.CanvasObject)) *List {
	l := &List{}
	l.Length, l.CreateItem, l.UpdateItem = length, row, fill
	l.ExtendBaseWidget(l)
	return l
}

// TypedKey implements fyne.Focusable.
func (l *List) TypedKey(k *fyne.KeyEvent) {
	if arrow(k) || !Offered(l, k) {
		l.List.TypedKey(k)
	}
}

// Table is a table of cells.
type Table struct{ widget.Table }

// NewTable is a table: its rows and columns, an empty cell, and what fills one.
func NewTable(size func() (rows, columns int), cell func() fyne.CanvasObject, fill func(widget.TableCellID, fyne.CanvasObject)) *Table {
	t := &Table{}
	t.Length, t.CreateCell, t.UpdateCell = size, cell, fill
	t.ExtendBaseWidget(t)
	return t
}

// TypedKey implements fyne.Focusable.
func (t *Table) TypedKey(k *fyne.KeyEvent) {
	if arrow(k) || !Offered(t, k) {
		t.Table.TypedKey(k)
	}
}
