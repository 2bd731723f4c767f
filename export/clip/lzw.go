package clip

// packer packs the indices of a GIF's picture: LZW with codes that begin at the
// right end of a byte and grow to 12 bits (GIF89a, appendix F). It takes runs of
// one index as a whole, since most of a frame says that nothing changed. The
// zero value is ready for begin.
type packer struct {
	out     []byte
	pending uint32 // bits not yet in out
	held    uint   // how many
	bits    uint   // of an index
	width   uint   // of a code
	last    uint32 // the newest code
	full    uint32 // the code at which codes get wider
	code    uint32 // the string read so far
	same    int    // its length if it is a run, else 0
	index   byte   // that runs
	strings [1 << 14]uint32
	runs    [256][]uint16 // runs[b][n] is the code of n times b
	used    []byte        // the indices that have runs
}

const (
	lastCode = 1<<12 - 1
	noCode   = 1 << 13
)

func (p *packer) begin(bits int) {
	p.out, p.pending, p.held = p.out[:0], 0, 0
	p.bits, p.code, p.same = uint(bits), noCode, 0
	p.width = p.bits + 1
	p.clear()
}

// clear begins an empty table of strings, and says so.
func (p *packer) clear() {
	p.write(1 << p.bits)
	p.width, p.last, p.full = p.bits+1, 1<<p.bits+1, 1<<(p.bits+1)
	clear(p.strings[:])
	for _, b := range p.used {
		p.runs[b] = p.runs[b][:0]
	}
	p.used = p.used[:0]
}

// end gives the packed bytes; they are lent until begin.
func (p *packer) end() []byte {
	if p.code != noCode {
		p.write(p.code)
		p.grow()
	}
	p.write(1<<p.bits + 1)
	if p.held > 0 {
		p.out = append(p.out, byte(p.pending))
	}
	return p.out
}

func (p *packer) write(code uint32) {
	p.pending |= code << p.held
	for p.held += p.width; p.held >= 8; p.held -= 8 {
		p.out = append(p.out, byte(p.pending))
		p.pending >>= 8
	}
}

// grow makes room for a new code; false if the table was full and is empty now.
func (p *packer) grow() bool {
	p.last++
	if p.last == p.full {
		p.width++
		p.full <<= 1
	}
	if p.last == lastCode {
		p.clear()
		return false
	}
	return true
}

// add adds n times the index b.
func (p *packer) add(b byte, n int) {
	for n > 0 {
		switch {
		case p.code == noCode:
			p.code, p.same, p.index = uint32(b), 1, b
			n--
		case p.same > 0 && p.index == b:
			n -= p.stretch(b, n)
		default:
			p.step(b)
			n--
		}
	}
}

// stretch makes a run longer by up to n, and says by how many.
func (p *packer) stretch(b byte, n int) int {
	known := p.runs[b]
	if len(known) == 0 {
		p.used = append(p.used, b)
		known = append(known, 0, uint16(b))
	}
	to := min(p.same+n, len(known)-1)
	done := to - p.same
	p.code, p.same = uint32(known[to]), to
	if done < n {
		p.write(p.code)
		p.code, p.same = uint32(b), 1
		if p.grow() {
			known = append(known, uint16(p.last))
		} else {
			known = known[:0]
		}
		done++
	}
	p.runs[b] = known
	return done
}

// step adds one index to a string that is not a run of it.
func (p *packer) step(b byte) {
	key := p.code<<8 | uint32(b)
	slot := (key>>12 ^ key) & (1<<14 - 1)
	for p.strings[slot] != 0 {
		if p.strings[slot]>>12 == key {
			p.code, p.same = p.strings[slot]&lastCode, 0
			return
		}
		slot = (slot + 1) & (1<<14 - 1)
	}
	p.write(p.code)
	p.code, p.same, p.index = uint32(b), 1, b
	if p.grow() {
		p.strings[slot] = key<<12 | p.last
	}
}
