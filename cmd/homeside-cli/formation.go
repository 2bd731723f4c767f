package main

import (
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"

	"homeside/export"
	"homeside/model/court"
	"homeside/model/formation"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lessonfile"
	"homeside/model/units"
	"homeside/words"
)

// formationAnswer is what the formation command computes.
type formationAnswer struct {
	Contact map[string]infoPoint     `json:"contact"` // at the serve's contact
	End     map[string]infoPoint     `json:"end"`
	Margins map[string]units.Seconds `json:"margins"` // of the pair, at its deadline; below 0 late
	Tell    *units.Seconds           `json:"tell_s"`  // on the play's clock; null where nothing shows
	Order   string                   `json:"order"`
}

func formationCommand() *cobra.Command {
	var flags formationFlags
	var asJSON bool
	c := &cobra.Command{
		Use:   "formation --when serve|return --court even|odd --player PLAYER --kind KIND",
		Short: "Write a stack, switch, stay, poach or ordinary play for a serve or a return",
		Args:  cobra.NoArgs,
		RunE: func(c *cobra.Command, _ []string) error {
			w, tell, err := flags.write()
			if err != nil {
				return err
			}
			if err := flags.save(c, w, tell); err != nil {
				return err
			}
			if asJSON {
				return printJSON(c.OutOrStdout(), formationOf(w, tell))
			}
			return printFormation(c.OutOrStdout(), w, tell)
		},
	}
	flags.add(c)
	c.Flags().BoolVar(&asJSON, "json", false, "print JSON")
	return c
}

// formationFlags are the flags of the formation command as they are typed.
type formationFlags struct{ when, court, player, kind, team, homes, front, serve, out string }

func (f *formationFlags) add(c *cobra.Command) {
	c.Flags().StringVar(&f.when, "when", "", "serve or return")
	c.Flags().StringVar(&f.court, "court", "", "the court served from or received in: even or odd")
	c.Flags().StringVar(&f.player, "player", "", "who serves or receives, such as near1")
	c.Flags().StringVar(&f.kind, "kind", "", "ordinary, stack, switch, stay or poach")
	c.Flags().StringVar(&f.team, "team", "", "near or far; near1 and near2 then are that team's first and second player")
	c.Flags().StringVar(&f.homes, "homes", "", "the sides the partners want, like near1=right,near2=left")
	c.Flags().StringVar(&f.front, "front", "", "who is to go in front where partners cross")
	c.Flags().StringVar(&f.serve, "serve", formation.ServeMiddle.String(), "where the serve goes: wide, middle or tee")
	c.Flags().StringVar(&f.out, "out", "", "write the play to this lesson file")
	for _, name := range []string{"when", "court", "player", "kind"} {
		if err := c.MarkFlagRequired(name); err != nil {
			panic(err) // no such flag: a mistake in the lines above
		}
	}
}

// write is the formation and what it gives away.
func (f *formationFlags) write() (w formation.Written, tell *formation.Tell, err error) {
	s, err := f.situation()
	if err != nil {
		return w, nil, err
	}
	kind, err := lesson.ParseFormation(f.kind)
	if err != nil || kind == lesson.FormationUnsaid {
		return w, nil, fmt.Errorf("--kind %q: want ordinary, stack, switch, stay or poach", f.kind)
	}
	if w, err = formation.Write(s, kind); err != nil {
		return w, nil, err
	}
	w = words.Entitled(w)
	t, ok, err := w.Tell(formation.TellOptions{})
	if err != nil || !ok {
		return w, nil, err
	}
	return w, &t, nil
}

func (f *formationFlags) situation() (s formation.Situation, err error) {
	lead, err := f.lead()
	if err != nil {
		return s, err
	}
	serves, err := oneOf("when", f.when, "serve", "return")
	if err != nil {
		return s, err
	}
	even, err := oneOf("court", f.court, "even", "odd")
	if err != nil {
		return s, err
	}
	side := court.Left
	if even {
		side = court.Right
	}
	if s.State, err = formation.StateFor(game.SideOut, lead, serves, side); err != nil {
		return s, err
	}
	s.Team = lead.Team()
	if s.Serve, err = formation.ParseServeTo(f.serve); err != nil {
		return s, fmt.Errorf("--serve: %w", err)
	}
	for _, id := range game.Players {
		team := &s.Lesson.Teams[id.Team()]
		team.Starter = s.State.Starter(id.Team()).Number()
		team.Players[id.Number()-1].Initials = letters[id]
	}
	if s.Front, err = f.inFront(s.Team); err != nil {
		return s, err
	}
	s.Lesson, err = f.wanted(s.Lesson, s.Team)
	return s, err
}

// letters are for the players' discs, who have no names here.
var letters = [4]string{"N1", "N2", "F1", "F2"}

// oneOf says whether a flag has the first of its two values.
func oneOf(flag, got, first, second string) (bool, error) {
	if got != first && got != second {
		return false, fmt.Errorf("--%s %q: want %s or %s", flag, got, first, second)
	}
	return got == first, nil
}

// lead is the player of the flags at the end of the flags.
func (f *formationFlags) lead() (game.Player, error) {
	p, err := game.ParsePlayer(f.player)
	if err != nil {
		return 0, fmt.Errorf("--player: %w", err)
	}
	if f.team == "" {
		return p, nil
	}
	team, err := parseTeam("team", f.team)
	return game.PlayerOf(team, p.Number()), err
}

// inFront is the player of --front; nil if there is none.
func (f *formationFlags) inFront(team court.End) (*game.Player, error) {
	if f.front == "" {
		return nil, nil
	}
	p, err := game.ParsePlayer(f.front)
	if err != nil {
		return nil, fmt.Errorf("--front: %w", err)
	}
	p = game.PlayerOf(team, p.Number())
	return &p, nil
}

// wanted is the lesson with the sides of --homes. Who is not named takes the
// side that the partner leaves.
func (f *formationFlags) wanted(l lesson.Lesson, team court.End) (lesson.Lesson, error) {
	if f.homes == "" {
		return l, nil
	}
	var wants [2]lesson.Want
	for part := range strings.SplitSeq(f.homes, ",") {
		name, side, ok := strings.Cut(strings.TrimSpace(part), "=")
		p, err := game.ParsePlayer(name)
		want, bad := lesson.ParseWant(side)
		if !ok || err != nil || bad != nil || want == lesson.Either || wants[p.Number()-1] != lesson.Either {
			return l, fmt.Errorf("--homes %q: want each player once with right or left, like near1=right,near2=left", f.homes)
		}
		wants[p.Number()-1] = want
	}
	for i, want := range wants {
		if want == lesson.Either {
			want = lesson.WantRight + lesson.WantLeft - wants[1-i]
		}
		l.Teams[team].Players[i].Serving, l.Teams[team].Players[i].Receiving = want, want
	}
	return l, nil
}

// save writes the play as a lesson file, with what it comes to as its notes.
func (f *formationFlags) save(c *cobra.Command, w formation.Written, tell *formation.Tell) error {
	if f.out == "" {
		return nil
	}
	l := w.Situation.Lesson
	l.Title = w.Play.Title
	p := w.Play
	p.Notes = words.FormationNotes(w, tell)
	l.Plays = []lesson.Play{p}
	return export.Save(c.Context(), f.out, func(out io.Writer) error { return lessonfile.Write(out, l) })
}

func formationOf(w formation.Written, tell *formation.Tell) formationAnswer {
	a := formationAnswer{Contact: map[string]infoPoint{}, End: map[string]infoPoint{}, Margins: map[string]units.Seconds{}, Order: orderOf(w)}
	for _, id := range game.Players {
		a.Contact[id.String()], a.End[id.String()] = infoPoint(w.Contact(id)), infoPoint(w.End(id))
	}
	for id, m := range w.Margins {
		a.Margins[id.String()] = m
	}
	if tell != nil && tell.Place.Shows {
		a.Tell = &tell.Place.At
	}
	return a
}

// orderOf is "near1 in front", or that there is no order.
func orderOf(w formation.Written) string {
	if front, ok := w.Order(); ok {
		return words.Order(w.Situation.Lesson, front)
	}
	return words.T("nobody changes sides")
}

func printFormation(out io.Writer, w formation.Written, tell *formation.Tell) error {
	fmt.Fprintln(out, w.Play.Title+".")
	for n := range 2 {
		id := game.PlayerOf(w.Situation.Team, n+1)
		fmt.Fprintln(out, words.T("%v: at the serve %s; at the end %s.", id, words.Place(id.Team(), w.Contact(id)), words.Place(id.Team(), w.End(id))))
	}
	_, err := fmt.Fprintln(out, words.FormationNotes(w, tell)+" "+words.T("Times are estimates, not instructions to sprint."))
	return err
}
