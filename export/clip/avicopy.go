package clip

import (
	"bytes"
	"encoding/binary"
	"errors"
	"fmt"
	"io"
	"os"
)

// aviHead is how far into the file the lists that describe the film can reach.
const aviHead = 1024

// copyAVI copies a finished file without the name of its stream, which holds
// the time of the clock: the same film gives the same bytes.
func copyAVI(w io.Writer, path string) error {
	f, err := os.Open(path)
	if err != nil {
		return fmt.Errorf("read the AVI back: %w", err)
	}
	defer f.Close()
	head := make([]byte, aviHead)
	n, err := io.ReadFull(f, head)
	if err != nil && !errors.Is(err, io.ErrUnexpectedEOF) {
		return fmt.Errorf("read the AVI back: %w", err)
	}
	head, err = withoutName(head[:n])
	if err != nil {
		return err
	}
	if _, err := w.Write(head); err != nil {
		return fmt.Errorf("write the AVI: %w", err)
	}
	if _, err := io.Copy(w, f); err != nil {
		return fmt.Errorf("write the AVI: %w", err)
	}
	return nil
}

// withoutName takes the strn chunk out of the start of an AVI and its length
// off the three lists round it (Microsoft, AVI RIFF File Reference). The index
// counts from the list of frames and stays right.
func withoutName(head []byte) ([]byte, error) {
	const riff, hdrl = 0, 12 // where these lists begin
	strl := bytes.Index(head, []byte("strl")) - 8
	name := bytes.Index(head, []byte("strn"))
	if strl < hdrl || name < strl || name+8 > len(head) {
		return nil, errors.New("the AVI has not the expected lists")
	}
	length := 8 + binary.LittleEndian.Uint32(head[name+4:])
	if uint32(len(head)-name) < length {
		return nil, errors.New("the AVI has not the expected lists")
	}
	for _, list := range []int{riff, hdrl, strl} {
		size := head[list+4:]
		binary.LittleEndian.PutUint32(size, binary.LittleEndian.Uint32(size)-length)
	}
	return append(head[:name], head[name+int(length):]...), nil
}
