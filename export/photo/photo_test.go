package photo

import (
	"bytes"
	"encoding/binary"
	"errors"
	"fmt"
	"hash/crc32"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"homeside/canvas"
	"homeside/model/court"
)

// The picture as it is looked at, by ImageOps.exif_transpose of Pillow 9.4.0, from
// scripts/exif.py.
func TestOrientations(t *testing.T) {
	stored := image.NewRGBA(image.Rect(0, 0, 3, 2))
	for i := range 6 {
		stored.SetRGBA(i%3, i/3, color.RGBA{uint8(i + 1), 0, 0, 255})
	}
	for w, want := range map[way][][]uint8{
		1: {{1, 2, 3}, {4, 5, 6}},
		2: {{3, 2, 1}, {6, 5, 4}},
		3: {{6, 5, 4}, {3, 2, 1}},
		4: {{4, 5, 6}, {1, 2, 3}},
		5: {{1, 4}, {2, 5}, {3, 6}},
		6: {{4, 1}, {5, 2}, {6, 3}},
		7: {{6, 3}, {5, 2}, {4, 1}},
		8: {{3, 6}, {2, 5}, {1, 4}},
	} {
		img := w.turn(stored)
		var got [][]uint8
		for y := range img.Rect.Dy() {
			var row []uint8
			for x := range img.Rect.Dx() {
				row = append(row, img.RGBAAt(x, y).R)
			}
			got = append(got, row)
		}
		if fmt.Sprint(got) != fmt.Sprint(want) {
			t.Errorf("orientation %d shows %v, want %v", w, got, want)
		}
	}
}

// halves is a picture with a black left and a white right half.
func halves(w, h int) image.Image {
	img := image.NewGray(image.Rect(0, 0, w, h))
	for y := range h {
		for x := w / 2; x < w; x++ {
			img.SetGray(x, y, color.Gray{255})
		}
	}
	return img
}

// jpegOf is a JPEG file with an Exif segment that says an orientation.
func jpegOf(t *testing.T, img image.Image, order binary.AppendByteOrder, w uint16) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := jpeg.Encode(&b, img, nil); err != nil {
		t.Fatal(err)
	}
	mark := "II*\x00"
	if order == binary.AppendByteOrder(binary.BigEndian) {
		mark = "MM\x00*"
	}
	tiff := order.AppendUint32([]byte(mark), 8)
	tiff = order.AppendUint16(tiff, 1)
	tiff = order.AppendUint16(tiff, 0x0112)
	tiff = order.AppendUint16(tiff, 3)
	tiff = order.AppendUint32(tiff, 1)
	tiff = order.AppendUint16(tiff, w)
	tiff = append(tiff, 0, 0, 0, 0, 0, 0)
	body := append([]byte("Exif\x00\x00"), tiff...)
	segment := binary.BigEndian.AppendUint16([]byte{0xff, 0xe1}, uint16(len(body)+2))
	return slices.Concat(b.Bytes()[:2], segment, body, b.Bytes()[2:])
}

// A picture taken with the camera on its side is read upright, in either order of
// bytes, with the size it is looked at.
func TestReadTurnsUpright(t *testing.T) {
	for _, order := range []binary.AppendByteOrder{binary.LittleEndian, binary.BigEndian} {
		p, err := Read(bytes.NewReader(jpegOf(t, halves(64, 32), order, 6)))
		if err != nil {
			t.Fatal(err)
		}
		if p.Width != 32 || p.Height != 64 || p.Image.Rect.Dx() != 32 {
			t.Errorf("read as %d x %d, want 32 x 64", p.Width, p.Height)
		}
		if top, foot := p.Image.RGBAAt(16, 8).R, p.Image.RGBAAt(16, 56).R; top > 20 || foot < 235 {
			t.Errorf("top %d, foot %d, want black above white", top, foot)
		}
	}
}

// A file that is cut short anywhere, in its Exif or after it, is read or refused.
func TestReadCutShort(t *testing.T) {
	data := jpegOf(t, halves(64, 32), binary.LittleEndian, 6)
	for n := range len(data) {
		if _, err := Read(bytes.NewReader(data[:n])); err == nil && n < len(data)-64 {
			t.Errorf("%d of %d bytes are read", n, len(data))
		}
		orientation(data[:n])
	}
	for i := range min(len(data), 60) { // every byte of the header wrong
		bad := bytes.Clone(data)
		bad[i] ^= 0xff
		orientation(bad)
	}
}

// A large picture is kept smaller, but knows its size.
func TestReadLarge(t *testing.T) {
	var b bytes.Buffer
	if err := png.Encode(&b, halves(4800, 600)); err != nil {
		t.Fatal(err)
	}
	p, err := Read(&b)
	if err != nil {
		t.Fatal(err)
	}
	if w, h := p.Size(); w != 2400 || h != 300 || p.Width != 4800 || p.Height != 600 {
		t.Errorf("kept as %d x %d of %d x %d, want 2400 x 300 of 4800 x 600", w, h, p.Width, p.Height)
	}
}

// What is no picture, or too large a one, is refused with the reason before it
// takes any room.
func TestReadRefuses(t *testing.T) {
	var b bytes.Buffer
	if err := png.Encode(&b, halves(4, 4)); err != nil {
		t.Fatal(err)
	}
	huge := b.Bytes()
	binary.BigEndian.PutUint32(huge[16:], 30000) // width and height of the header
	binary.BigEndian.PutUint32(huge[20:], 30000)
	fixSum(huge)
	for name, c := range map[string]struct {
		data []byte
		want error
	}{
		"nothing": {nil, ErrFormat}, "text": {[]byte("a court"), ErrFormat}, "zeros": {make([]byte, 1000), ErrFormat},
		"900 million pixels": {huge, ErrLarge}, "too many bytes": {make([]byte, MaxBytes+1), ErrLarge},
	} {
		if p, err := Read(bytes.NewReader(c.data)); !errors.Is(err, c.want) || p.Image != nil {
			t.Errorf("%s: Read = %v, want %v", name, err, c.want)
		}
	}
	folder := t.TempDir()
	if _, err := Open(folder); !errors.Is(err, ErrFormat) {
		t.Errorf("a folder: Open = %v, want %v", err, ErrFormat)
	}
	if _, err := Open(filepath.Join(folder, "gone.jpg")); !errors.Is(err, os.ErrNotExist) {
		t.Errorf("no file: Open = %v, want not there", err)
	}
}

// A picture that is kept fits, and is still the picture; what the camera wrote
// beside the pixels is gone.
func TestKept(t *testing.T) {
	p, err := Read(bytes.NewReader(jpegOf(t, halves(1000, 500), binary.LittleEndian, 6)))
	if err != nil {
		t.Fatal(err)
	}
	data, err := p.Kept(20_000)
	if err != nil || len(data) > 20_000 || bytes.Contains(data, []byte("Exif")) {
		t.Fatalf("Kept: %d bytes, %v", len(data), err)
	}
	again, err := Read(bytes.NewReader(data))
	if err != nil || again.Width*2 != again.Height {
		t.Errorf("read again as %d x %d, %v, want twice as high as wide", again.Width, again.Height, err)
	}
	if _, err := p.Kept(10); err == nil {
		t.Error("a picture fits into 10 bytes")
	}
}

// A scene is drawn over the picture, which shows where nothing is drawn.
func TestOver(t *testing.T) {
	p, err := Read(bytes.NewReader(jpegOf(t, halves(64, 64), binary.LittleEndian, 1)))
	if err != nil {
		t.Fatal(err)
	}
	red := color.NRGBA{255, 0, 0, 255}
	s := &canvas.Scene{Width: 128, Height: 128, PxPerPoint: 1, Panels: []canvas.Panel{{
		View:   canvas.View{Origin: canvas.Px{X: 64, Y: 64}, PxPerFoot: 1},
		Shapes: []canvas.Shape{{ID: "box", Path: canvas.Box(court.RectOf(court.Pt(-10, -10), court.Pt(10, 10))), Style: canvas.Style{Fill: red}}},
	}}}
	var b bytes.Buffer
	if err := p.WritePNG(&b, s); err != nil {
		t.Fatal(err)
	}
	img, err := png.Decode(&b)
	if err != nil {
		t.Fatal(err)
	}
	for at, want := range map[image.Point]uint32{{X: 10, Y: 64}: 0, {X: 64, Y: 64}: 255, {X: 120, Y: 64}: 255} {
		if r, _, _, _ := img.At(at.X, at.Y).RGBA(); r>>8 < want-min(want, 12) || r>>8 > want+12 {
			t.Errorf("at %v red is %d, want %d", at, r>>8, want)
		}
	}
	if _, g, _, _ := img.At(64, 64).RGBA(); g != 0 {
		t.Errorf("the scene does not hide the picture: green is %d", g>>8)
	}
}

// fixSum makes the checksum of a PNG file's header right again.
func fixSum(file []byte) {
	binary.BigEndian.PutUint32(file[29:], crc32.ChecksumIEEE(file[12:29]))
}
