package lessonfile

import (
	"bytes"

	"github.com/go-json-experiment/json/jsontext"
)

// maxLine is the length in bytes up to which a value stays on one line.
const maxLine = 120

const indent = "  "

// layOut sets JSON for people to read: what fits on a line stands on one line,
// the rest one member a line, two spaces further in. It ends with a newline.
func layOut(compact jsontext.Value) ([]byte, error) {
	p := &printer{}
	if err := p.value(compact, "\n"); err != nil {
		return nil, err
	}
	return append(p.out, '\n'), nil
}

type printer struct{ out []byte }

// value prints v, whose further lines start with newline.
func (p *printer) value(v jsontext.Value, newline string) error {
	if k := v.Kind(); k != '{' && k != '[' {
		p.out = append(p.out, v...)
		return nil
	}
	if room := maxLine - p.column(); len(v) <= room {
		line, err := jsontext.AppendFormat(nil, v, jsontext.SpaceAfterColon(true), jsontext.SpaceAfterComma(true))
		if err != nil {
			return err
		}
		if len(line) <= room {
			p.out = append(p.out, line...)
			return nil
		}
	}
	return p.members(v, newline)
}

func (p *printer) column() int { return len(p.out) - 1 - bytes.LastIndexByte(p.out, '\n') }

// members prints a list or an object with one member a line.
func (p *printer) members(v jsontext.Value, newline string) error {
	d := jsontext.NewDecoder(bytes.NewBuffer(v), jsontext.AllowDuplicateNames(true))
	open, err := d.ReadToken()
	if err != nil {
		return err
	}
	kind := open.Kind()
	p.out = append(p.out, byte(kind))
	for first := true; d.PeekKind() != '}' && d.PeekKind() != ']'; first = false {
		if !first {
			p.out = append(p.out, ',')
		}
		p.out = append(p.out, newline+indent...)
		if err := p.member(d, kind, newline+indent); err != nil {
			return err
		}
	}
	p.out = append(p.out, newline...)
	p.out = append(p.out, byte(kind)+2) // ] and } follow two after [ and {
	return nil
}

func (p *printer) member(d *jsontext.Decoder, in jsontext.Kind, newline string) error {
	if in == '{' {
		name, err := d.ReadValue()
		if err != nil {
			return err
		}
		p.out = append(p.out, name...)
		p.out = append(p.out, ": "...)
	}
	v, err := d.ReadValue()
	if err != nil {
		return err
	}
	return p.value(v, newline)
}
