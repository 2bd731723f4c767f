// Package app is the editor's window: it lays out the widgets, wires menus and
// keys to the session, opens and saves files and runs exports. It promises that
// nothing is lost: files are written whole or not at all, and errors are told in
// plain words with what is kept.
package app
