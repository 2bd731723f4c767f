package words

// KeyName is what stands on a key, or is said of it: "Enter", "Right", "S".
func KeyName(key string) string {
	switch key {
	case "Space":
		return T("Space")
	case "Return", "KP_Enter":
		return T("Enter")
	case "BackSpace":
		return T("Backspace")
	case "Right":
		return T("Right")
	case "Left":
		return T("Left")
	case "Up":
		return T("Up")
	case "Down":
		return T("Down")
	case "Home":
		return T("Home")
	case "End":
		return T("End")
	case "Prior":
		return T("Page Up")
	case "Next":
		return T("Page Down")
	case "Delete":
		return T("Delete key")
	case "Menu":
		return T("Menu key")
	case "Tab":
		return T("Tab")
	}
	return key
}
