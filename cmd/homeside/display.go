package main

import (
	"runtime"

	"github.com/go-gl/glfw/v3.3/glfw"
)

// needsDisplay says whether a display is told by the environment here.
var needsDisplay = runtime.GOOS != "windows" && runtime.GOOS != "darwin"

// wantNoDepth has the toolkit's windows come without buffers for depth and stencils,
// which it does not use: where no graphics card helps, emptying them takes a fifth
// of the time in which a window is drawn. What fails here fails in the toolkit, too,
// which says so.
func wantNoDepth() {
	if glfw.Init() == nil {
		glfw.WindowHint(glfw.DepthBits, 0)
		glfw.WindowHint(glfw.StencilBits, 0)
	}
}
