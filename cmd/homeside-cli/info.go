package main

import (
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"

	"homeside/model/court"
	"homeside/model/game"
	"homeside/model/lesson"
	"homeside/model/lessonfile"
	"homeside/model/rally"
	"homeside/model/units"
	"homeside/words"
)

type infoPoint struct {
	X units.Feet `json:"x_ft"`
	Y units.Feet `json:"y_ft"`
}

type infoBall struct {
	infoPoint
	Z units.Feet `json:"z_ft"`
}

type infoPlayer struct {
	Drawn infoPoint `json:"drawn"`
	Run   infoPoint `json:"run"`
}

type infoEvent struct {
	Name    string                `json:"name"`
	T       units.Seconds         `json:"t_s"`
	Reached bool                  `json:"reached"`
	Ball    infoBall              `json:"ball"`
	Players map[string]infoPlayer `json:"players"`
}

type infoPlay struct {
	Title    string        `json:"title"`
	Duration units.Seconds `json:"duration_s"`
	Events   []infoEvent   `json:"events"`
}

type infoLesson struct {
	Title string     `json:"title"`
	Plays []infoPlay `json:"plays"`
}

func infoCommand() *cobra.Command {
	var asJSON bool
	c := &cobra.Command{
		Use:   "info LESSON",
		Short: "Tell a lesson's plays, their events, and who is where at each",
		Args:  cobra.ExactArgs(1),
		RunE: func(c *cobra.Command, args []string) error {
			l, err := lessonfile.Open(args[0])
			if err != nil {
				return err
			}
			info, err := infoOf(l)
			if err != nil {
				return fmt.Errorf("%s: %w", args[0], err)
			}
			if asJSON {
				return printJSON(c.OutOrStdout(), info)
			}
			return printInfo(c.OutOrStdout(), info)
		},
	}
	c.Flags().BoolVar(&asJSON, "json", false, "print JSON")
	return c
}

func infoOf(l lesson.Lesson) (infoLesson, error) {
	info := infoLesson{Title: l.Title, Plays: []infoPlay{}}
	for i := range l.Plays {
		r, err := rally.Solve(l, i)
		if err != nil {
			return info, err
		}
		info.Plays = append(info.Plays, infoOfRally(r))
	}
	return info, nil
}

func infoOfRally(r *rally.Rally) infoPlay {
	p := infoPlay{Title: r.Play.Title, Duration: r.To - r.From, Events: []infoEvent{}}
	for _, e := range r.Events {
		f := r.At(e.At)
		ball := f.Ball.Ground()
		out := infoEvent{
			Name: e.Name.String(), T: e.At, Reached: e.Reached,
			Ball:    infoBall{infoPoint(ball), f.Ball.Height().Feet()},
			Players: map[string]infoPlayer{},
		}
		for _, id := range game.Players {
			out.Players[id.String()] = infoPlayer{infoPoint(f.Players[id].Drawn.Place), infoPoint(f.Players[id].Run.Place)}
		}
		p.Events = append(p.Events, out)
	}
	return p
}

func printInfo(w io.Writer, info infoLesson) error {
	var b strings.Builder
	fmt.Fprintln(&b, info.Title)
	for i, p := range info.Plays {
		fmt.Fprintf(&b, "\n%d. %s (%s)\n", i+1, p.Title, words.Seconds(p.Duration))
		for _, e := range p.Events {
			fmt.Fprintf(&b, "   %8s  %-16s %s\n", words.Seconds(e.T), e.Name, whereBall(e))
		}
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// whereBall is where the ball is at an event that comes to pass.
func whereBall(e infoEvent) string {
	if !e.Reached {
		return words.T("not reached")
	}
	at := e.Ball.infoPoint
	return words.T("ball at %s, %s high", words.Place(endOf(at), court.Point(at)), words.Length(e.Ball.Z))
}

// endOf is the half of the court that a point lies in.
func endOf(p infoPoint) court.End {
	if p.Y > 0 {
		return court.Far
	}
	return court.Near
}
