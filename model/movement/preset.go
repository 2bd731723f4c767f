package movement

// Preset is a pace by the kind of player. All presets are assumptions, to be
// edited or replaced by a stopwatch; Assumption says what each rests on.
type Preset struct {
	Key  string // in files and on the command line
	Name string // in English, for a list
	Pace Pace

	Assumption string // what the figures rest on, in one sentence
}

// DefaultPreset is the key of the preset that DefaultPace gives.
const DefaultPreset = "recreational-adult"

// Figures shared by the presets. Reach: shoulder to grip 0.665 m for men and
// 0.600 m for women (published medians), of which the mean; paddle tip
// 0.30-0.38 m beyond the grip, a lunge 0.6-1.0 m, backward running about 70 %
// and shuffling 60-75 % of forward speed, braking 5 m/s2 and 2.5-3 m/s2 above
// 65 (from memory). Stroke recovery is 0.2-0.3 s by common practice.
const (
	meanArm   = 0.6325
	paddleTip = 0.34
	shuffle   = 0.67 // of the 60-75 %
	backward  = 0.70
)

// Presets are the presets, fastest first, the wheelchair last. Reaction is the
// published simple visual reaction, 0.231 s (Woods et al. 2015), with 0.55 ms
// more for each year above 40 or so, rounded to 5 ms.
var Presets = []Preset{
	{"fit-adult", "Fit adult", Pace{
		TopSpeed: 7, Tau: 1, Braking: 5, Reaction: 0.230, StrokeRecovery: 0.2,
		ShuffleRatio: shuffle, BackwardRatio: backward, Arm: meanArm, Paddle: paddleTip, Lunge: 1,
	}, "assumed: a trained adult at 7 m/s"},
	{DefaultPreset, "Recreational adult", Pace{
		TopSpeed: 6, Tau: 1, Braking: 5, Reaction: 0.230, StrokeRecovery: 0.2,
		ShuffleRatio: shuffle, BackwardRatio: backward, Arm: meanArm, Paddle: paddleTip, Lunge: 0.8,
	}, "assumed: a healthy adult at 6 m/s"},
	{"50-plus", "50 and over", Pace{
		TopSpeed: 5, Tau: 1, Braking: 5, Reaction: 0.240, StrokeRecovery: 0.2,
		ShuffleRatio: shuffle, BackwardRatio: backward, Arm: meanArm, Paddle: paddleTip, Lunge: 0.8,
	}, "assumed: 5 m/s, sprint speed falling 5-7 % a decade (Korhonen 2003)"},
	{"65-plus", "65 and over", Pace{
		TopSpeed: 4, Tau: 1, Braking: 3, Reaction: 0.245, StrokeRecovery: 0.2,
		ShuffleRatio: shuffle, BackwardRatio: backward, Arm: meanArm, Paddle: paddleTip, Lunge: 0.6,
	}, "assumed: 4 m/s and softer braking"},
	{"cautious", "Cautious mover", Pace{
		TopSpeed: 3, Tau: 0.8, Braking: 3, Reaction: 0.250, StrokeRecovery: 0.3,
		ShuffleRatio: shuffle, BackwardRatio: backward, Arm: meanArm, Paddle: paddleTip, Lunge: 0.6,
	}, "assumed: a brisk walk to a jog, 3 m/s; the fastest walk of adults is 1.75-2.53 m/s (Bohannon 1997)"},
	{"wheelchair", "Wheelchair: push and turn", Pace{
		TopSpeed: 4, Tau: 1.2, Braking: 3, Reaction: 0.230, StrokeRecovery: 0.3, Turn: 0.8,
		// A chair does not slide sideways: it turns, then pushes at full speed.
		ShuffleRatio: 1, BackwardRatio: 0.6, Arm: meanArm, Paddle: paddleTip, Lunge: 0,
	}, "assumed from memory: 4 m/s, 0.8 s for a half turn, no lunge; measure your own"},
}

// PresetByKey finds a preset.
func PresetByKey(key string) (Preset, bool) {
	for _, p := range Presets {
		if p.Key == key {
			return p, true
		}
	}
	return Preset{}, false
}

// DefaultPace is the pace of a recreational adult.
func DefaultPace() Pace {
	p, _ := PresetByKey(DefaultPreset)
	return p.Pace
}
