package formats

import (
	"bytes"
	"encoding/binary"
	"fmt"
	"hash/crc32"
	"io"
	"os"
	"path/filepath"
	"regexp"

	"homeside/export"
)

// A remark is a line in a file that no reader of its format shows: the program's name
// and Options.Made. It is among the last bytes of the file.

// room is where a format has room for a remark: before the last bytes of the file.
type room struct {
	before int                        // bytes that stay the last
	wrap   func(s string) []byte      // the remark as it stands there, of at most 100 bytes
	grow   func(start []byte, by int) // tells the first bytes of the file that it is longer; nil if none has to know
}

// mostRemark is how long a remark, its wrapping and the bytes after it can be.
const mostRemark = 256

var remark = regexp.MustCompile(`homeside:([0-9a-f]{32})`)

// MadeOf is the Options.Made that the file or folder was written with, as far as
// it says; "" for one of another program, or of a format that has no room for it.
func MadeOf(path string) string {
	if all, err := filepath.Glob(filepath.Join(path, "*.png")); err == nil && len(all) > 0 {
		path = all[len(all)-1] // of a folder of frames
	}
	f, err := os.Open(path)
	if err != nil {
		return ""
	}
	defer f.Close()
	info, err := f.Stat()
	if err != nil {
		return ""
	}
	end := make([]byte, mostRemark)
	n, _ := f.ReadAt(end, max(info.Size()-mostRemark, 0)) // what cannot be read says nothing
	if found := remark.FindSubmatch(end[:n]); found != nil {
		return string(found[1])
	}
	return ""
}

// remarked writes a file with its remark.
func (f Format) remarked(w io.Writer, o *export.Options, write func(io.Writer) error) error {
	if o == nil || o.Made == "" || f.room.wrap == nil {
		return write(w)
	}
	said := f.room.wrap("homeside:" + o.Made)
	held := &holding{w: w, most: f.room.before}
	if f.room.grow != nil {
		held.begin = func(start []byte) { f.room.grow(start, len(said)) }
	}
	if err := write(held); err != nil {
		return err
	}
	_, err := w.Write(append(said, held.last...))
	return err
}

// holding passes on what is written, but for the last bytes.
type holding struct {
	w    io.Writer
	most int // bytes held
	last []byte

	begin func(start []byte) // changes the first bytes, of which there are some; nil after that
}

func (h *holding) Write(p []byte) (int, error) {
	if h.begin != nil && len(p) > 0 {
		p = bytes.Clone(p)
		h.begin(p)
		h.begin = nil
	}
	out := max(len(h.last)+len(p)-h.most, 0) // bytes to pass on: of those held, then of p
	held := min(out, len(h.last))
	if _, err := h.w.Write(h.last[:held]); err != nil {
		return 0, err
	}
	if n, err := h.w.Write(p[:out-held]); err != nil {
		return n, err
	}
	h.last = append(h.last[held:], p[out-held:]...)
	return len(p), nil
}

// inPNG is a tEXt chunk (PNG specification, 11.3.4.3) before IEND.
var inPNG = room{before: 12, wrap: func(s string) []byte {
	chunk := append([]byte("tEXtComment\x00"), s...)
	out := binary.BigEndian.AppendUint32(nil, uint32(len(chunk)-4))
	return binary.BigEndian.AppendUint32(append(out, chunk...), crc32.ChecksumIEEE(chunk))
}}

// inGIF is a comment extension (GIF89a, 24) before the trailer.
var inGIF = room{before: 1, wrap: func(s string) []byte {
	return append(append([]byte{0x21, 0xFE, byte(len(s))}, s...), 0)
}}

// inAVI is a junk chunk in an extension of the file (OpenDML AVI File Format
// Extensions 1.02; from memory).
var inAVI = room{wrap: func(s string) []byte {
	s += "  "[:2-len(s)%2]
	out := binary.LittleEndian.AppendUint32([]byte("RIFF"), uint32(4+8+len(s)))
	return append(binary.LittleEndian.AppendUint32(append(out, "AVIXJUNK"...), uint32(len(s))), s...)
}}

// inMP4 is a box of free space (ISO/IEC 14496-12, 8.1.2), also of a QuickTime file.
var inMP4 = room{wrap: func(s string) []byte {
	return append(append(binary.BigEndian.AppendUint32(nil, uint32(8+len(s))), "free"...), s...)
}}

// inWebM is a Void element (RFC 8794, 11.3.2) at the end of the segment, whose size
// ffmpeg writes in eight bytes, the first of them 1.
var inWebM = room{wrap: func(s string) []byte { return append([]byte{0xEC, 0x80 | byte(len(s))}, s...) }, grow: func(start []byte, by int) {
	segment := []byte{0x18, 0x53, 0x80, 0x67, 1}
	at := bytes.Index(start, segment) + len(segment) - 1
	if at < len(segment)-1 || at+8 > len(start) {
		return // readers pass over what is behind a segment
	}
	binary.BigEndian.PutUint64(start[at:], binary.BigEndian.Uint64(start[at:])+uint64(by))
}}

// Remarks after the end of the text.
var (
	inSVG = room{wrap: func(s string) []byte { return fmt.Appendf(nil, "<!-- %s -->\n", s) }}
	inPDF = room{wrap: func(s string) []byte { return fmt.Appendf(nil, "%% %s\n", s) }}
)
