package clip

// block is 8x8 samples or coefficients, row by row.
type block [64]int32

// Fixed point of the cosine transform: 13 bits in constants, 2 between passes.
const (
	constBits = 13
	passBits  = 2
)

// dct turns samples about 0 into the coefficients of the cosine transform of
// ITU-T T.81, A.3.3, times 8: Loeffler, Ligtenberg and Moschytz (1989) in whole
// numbers, so that every machine finds the same ones.
func (b *block) dct() {
	for i := 0; i < 64; i += 8 {
		b.pass(i, 1, constBits-passBits)
	}
	for i := range 8 {
		b.pass(i, 8, constBits+passBits)
	}
}

// pass transforms the 8 values from i on, step apart, and drops bits.
func (b *block) pass(i, step int, drop uint) {
	at := func(k int) *int32 { return &b[i+k*step] }
	s0, s7 := *at(0)+*at(7), *at(0)-*at(7)
	s1, s6 := *at(1)+*at(6), *at(1)-*at(6)
	s2, s5 := *at(2)+*at(5), *at(2)-*at(5)
	s3, s4 := *at(3)+*at(4), *at(3)-*at(4)
	half := int32(1) << (drop - 1)

	e0, e3, e1, e2 := s0+s3, s0-s3, s1+s2, s1-s2
	*at(0) = ((e0+e1)<<constBits + half) >> drop
	*at(4) = ((e0-e1)<<constBits + half) >> drop
	z := (e2 + e3) * 4433 // 0.541196100
	*at(2) = (z + e3*6270 + half) >> drop
	*at(6) = (z - e2*15137 + half) >> drop

	z1, z2, z3, z4 := -(s4+s7)*7373, -(s5+s6)*20995, s4+s6, s5+s7
	z5 := (z3 + z4) * 9633 // 1.175875602
	z3, z4 = z5-z3*16069, z5-z4*3196
	*at(7) = (s4*2446 + z1 + z3 + half) >> drop
	*at(5) = (s5*16819 + z2 + z4 + half) >> drop
	*at(3) = (s6*25172 + z2 + z3 + half) >> drop
	*at(1) = (s7*12299 + z1 + z4 + half) >> drop
}
