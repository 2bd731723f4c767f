package clip

import "context"

// sampled is how many frames, evenly spread, are looked at for the palette of a
// clip that has too many colours to have them all.
const sampled = 100

// palette looks at frames all over the clip: at some of them, and at every one
// if those have no more colours than a palette.
func (f *film) palette(ctx context.Context) ([]rgb, error) {
	counts, err := f.count(ctx, min(f.times.Count, sampled))
	if err == nil && len(counts) <= paletteSize && f.times.Count > sampled {
		counts, err = f.count(ctx, f.times.Count)
	}
	if err != nil {
		return nil, err
	}
	return newPalette(counts), nil
}

// count counts the colours of a number of frames, evenly spread: those of the
// base as often as they stand in every frame, the others as often as they come.
func (f *film) count(ctx context.Context, frames int) (map[rgb]int, error) {
	var seen [workers]counter
	newMaker := func(k int) func(int) (struct{}, error) {
		c := f.camera()
		return func(i int) (struct{}, error) {
			img, tiles := c.frame(i * f.times.Count / frames)
			for box := range tiles.Boxes() {
				for y := box.Min.Y; y < box.Max.Y; y++ {
					seen[k].count(img.Pix[img.PixOffset(box.Min.X, y):img.PixOffset(box.Max.X, y)], 1)
				}
			}
			return struct{}{}, nil
		}
	}
	if err := inOrder(ctx, frames, newMaker, func(int, struct{}) error { return nil }); err != nil {
		return nil, err
	}
	seen[0].count(f.base.Pix, frames)
	all := map[rgb]int{}
	for k := range seen {
		seen[k].flush()
		for c, n := range seen[k].counts {
			all[c] += n
		}
	}
	return all, nil
}

// counter counts pixels by colour, equal neighbours at once.
type counter struct {
	counts map[rgb]int
	last   rgb
	n      int // of last, not yet in counts
}

func (k *counter) count(pix []byte, times int) {
	for ; len(pix) > 0; pix = pix[4:] {
		if c := pixel(pix); c != k.last {
			k.flush()
			k.last = c
		}
		k.n += times
	}
}

func (k *counter) flush() {
	if k.counts == nil {
		k.counts = map[rgb]int{}
	}
	if k.n > 0 {
		k.counts[k.last] += k.n
	}
	k.n = 0
}
