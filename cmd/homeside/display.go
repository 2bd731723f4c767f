package main

import "runtime"

// needsDisplay says whether a display is told by the environment here.
var needsDisplay = runtime.GOOS != "windows" && runtime.GOOS != "darwin"
