module homeside

go 1.26.0

require (
	fyne.io/fyne/v2 v2.7.3 // indirect
	github.com/fogleman/gg v1.3.0 // indirect
	github.com/go-json-experiment/json v1.27.2 // indirect
	github.com/golang/freetype v0.0.0-20170609003504-e2365dfdc4a0 // indirect
	github.com/icza/mjpeg v0.0.0-20220812133530-f79265a232f2 // indirect
	github.com/inconshreveable/mousetrap v1.1.0 // indirect
	github.com/spf13/cobra v1.10.2 // indirect
	github.com/spf13/pflag v1.0.9 // indirect
	golang.org/x/image v0.48.0 // indirect
	pgregory.net/rapid v1.3.0 // indirect
)
