package panel

import (
	"fmt"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"homeside/app/heard"
	"homeside/app/session"
	"homeside/model/court"
	"homeside/model/lesson"
	"homeside/model/signal"
	"homeside/words"
)

// signals is the signal mix: four chances, the best mix, when it changes, and a
// sequence to print.
type signals struct {
	box     fyne.CanvasObject
	session *session.Session
	team    court.End
	from    *Dropdown
	chances [2][2]*commitEntry // by signal.Action and signal.Aim
	counted [2][2]*widget.Label
	taken   [2][2]lesson.Count // from the tally; zero where a chance was typed
	typed   bool               // some chance is not the invented one
	length  *commitEntry
	seed    *commitEntry
	say     *widget.Label
	sheet   *widget.Label
	wrong   *widget.Label
	take    *heard.Button
	keep    *heard.Button
	save    func(name, text string)
}

// newSignals is the signal mix of a session; save keeps the printed sequence.
func newSignals(s *session.Session, save func(name, text string)) *signals {
	p := &signals{session: s, save: save, say: wrapped(), wrong: wrapped(), sheet: widget.NewLabel("")}
	p.sheet.TextStyle.Monospace = true
	p.wrong.Importance = widget.DangerImportance
	p.from = NewDropdown([]string{words.T("serving from the right"), words.T("serving from the left")}, nil)
	p.from.SetSelectedIndex(0)
	p.take = heard.NewButton(words.T("Take them from the tally"), p.fromTally)
	p.keep = heard.NewButton(words.T("Save the signals…"), func() { p.save("signals.txt", p.sheet.Text) })
	p.length, p.seed = newCommitEntry(func(string) { p.refresh() }), newCommitEntry(func(string) { p.refresh() })
	p.length.show("40")
	p.seed.show("1")
	left := container.NewVBox(p.matrix(), container.New(&flow{}, p.take, Roomy(p.from)), p.wrong, p.say)
	const entry = 80
	right := container.New(Headed{},
		container.New(&flow{}, container.NewHBox(beside(words.T("Signals")), inWidth(entry, p.length)), container.NewHBox(beside(words.T("seed")), inWidth(entry, p.seed)), p.keep),
		container.NewScroll(p.sheet))
	p.box = container.NewGridWithColumns(2, container.NewVScroll(left), right)
	p.refresh()
	return p
}

// matrix lays out the four chances: what the pair does by where they aim.
func (p *signals) matrix() fyne.CanvasObject {
	grid := []fyne.CanvasObject{wrappedText(words.T("Your chance of winning the rally, in percent, when")), bold(words.Aim(signal.Left)), bold(words.Aim(signal.Right))}
	usual := [2][2]string{{"42", "60"}, {"56", "46"}} // invented, to be typed over
	for _, do := range signal.Actions {
		grid = append(grid, bold(words.Action(do)))
		for _, aim := range signal.Aims {
			p.chances[do][aim] = newCommitEntry(func(string) {
				p.taken[do][aim], p.typed = lesson.Count{}, true
				p.refresh()
			})
			p.chances[do][aim].show(usual[do][aim])
			p.counted[do][aim] = widget.NewLabel("")
			grid = append(grid, container.NewVBox(p.chances[do][aim], p.counted[do][aim]))
		}
	}
	return container.NewGridWithColumns(3, grid...)
}

func bold(text string) *widget.Label {
	l := wrappedText(text)
	l.TextStyle.Bold = true
	return l
}

func wrappedText(text string) *widget.Label {
	l := wrapped()
	l.SetText(text)
	return l
}

// show is for a team's signals. What was counted of another team is dropped.
func (p *signals) show(team court.End) {
	if team != p.team {
		p.team, p.taken = team, [2][2]lesson.Count{}
	}
	p.refresh()
}

// refresh reads what is typed and says the mix.
func (p *signals) refresh() {
	game, err := p.game()
	var often float64
	var sheet, said string
	if err == nil {
		often = game.Best().Switch
		said = p.advice(game)
		sheet, err = p.sequence(game, often)
	}
	p.say.SetText(said)
	p.sheet.SetText(sheet)
	p.keep.Unless(sentence(err))
	p.tell(err)
	for _, do := range signal.Actions {
		for _, aim := range signal.Aims {
			text := ""
			if c := p.taken[do][aim]; c.Rallies > 0 {
				text = words.ChanceCounted(c)
			}
			p.counted[do][aim].SetText(text)
		}
	}
}

func (p *signals) tell(err error) {
	text := sentence(err)
	p.wrong.SetText(text)
	show(p.wrong, text != "")
}

// game is the four chances as typed.
func (p *signals) game() (g signal.Game, err error) {
	for _, do := range signal.Actions {
		for _, aim := range signal.Aims {
			if g[do][aim], err = session.ParsePercent(p.chances[do][aim].Text); err != nil {
				return g, err
			}
			if c := p.taken[do][aim]; c.Rallies > 0 {
				g[do][aim] = float64(c.Won) / float64(c.Rallies) // the field shows it rounded
			}
		}
	}
	return g, nil
}

// advice is the mix and where it changes.
func (p *signals) advice(g signal.Game) string {
	said := []string{words.SignalMix(g)}
	if !p.typed {
		said = []string{words.SignalExample(), words.SignalMix(g)}
	}
	for _, f := range g.Flips() {
		said = append(said, words.SignalFlip(f, p.taken[f.Do][f.Aim]))
	}
	return strings.Join(said, "\n")
}

func (p *signals) sequence(g signal.Game, often float64) (string, error) {
	length, err := strconv.Atoi(strings.TrimSpace(p.length.Text))
	if err != nil || length < 1 {
		return "", fmt.Errorf("signals: want a whole number from 1 to %d", signal.MostSignals)
	}
	seed, err := strconv.ParseUint(strings.TrimSpace(p.seed.Text), 10, 64)
	if err != nil {
		return "", fmt.Errorf("seed: want a whole number, 0 or more")
	}
	s, err := signal.Sequence(often, length, seed)
	if err != nil {
		return "", err
	}
	return words.SignalSheet(g, s, seed), nil
}

// fromTally takes the chances that the lesson's match has counted. Where
// nothing was counted the typed chance stays.
func (p *signals) fromTally() {
	t, err := signal.TallyOf(p.session.Lesson(), p.team, court.Side(p.from.SelectedIndex()))
	if err != nil {
		p.tell(err)
		return
	}
	none := true
	for _, do := range signal.Actions {
		for _, aim := range signal.Aims {
			c := t[do][aim]
			p.taken[do][aim] = c
			if c.Rallies > 0 {
				none, p.typed = false, true
				p.chances[do][aim].show(fmt.Sprintf("%.0f", 100*float64(c.Won)/float64(c.Rallies)))
			}
		}
	}
	p.refresh()
	if none {
		p.tell(fmt.Errorf("the match has no rally %s in which both is noted, whether you switched and where the return went", p.from.Selected))
	}
}

func (p *signals) name(named map[string]fyne.CanvasObject) {
	named["signals-save"], named["signals-tally"], named["signals-length"] = p.keep, p.take, p.length
}
