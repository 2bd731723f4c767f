package main

import "os"

// themeVariable names the environment variable that the toolkit reads light or
// dark from.
const themeVariable = "FYNE_THEME"

// lightUnlessSaid has a desktop that says nothing of light or dark be a light one:
// the toolkit takes it for dark (Fyne 2.7.3, internal/app/theme_xdg.go, the zero of
// CurrentVariant). What a desktop does say comes later and counts (app/app_xdg.go,
// watchTheme).
func lightUnlessSaid() {
	if needsDisplay && os.Getenv(themeVariable) == "" {
		_ = os.Setenv(themeVariable, "light") // a name and a value without a zero byte are always taken
	}
}
