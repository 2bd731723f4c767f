package words

import "homeside/model/finding"

// wording is a sentence in every language. Names in braces stand for what a
// finding tells: {player} is whom it is about, the others are its arguments.
type wording [languages]string

// ruleSentences is what the rules find, in words.
var ruleSentences = map[finding.ID]wording{
	finding.CallMissing:    {English: "Say the score: {player} serves only after the whole of it has been called."},
	finding.CallImpossible: {English: "{call} is never called in {format} to {to}."},
	finding.WrongTeam:      {English: "{player} serves, but it is for {team} to serve."},
	finding.WrongServer:    {English: "{player} serves from the {from}, but at {call} it is for {server} to serve, from the {court}."},
	finding.PlaceNotServer: {English: "Right place, wrong server: {player} belongs on the {from}, but at {call} it is for {server} to serve, from the {court}."},
	finding.WrongCourt:     {English: "{player} serves from the {from}, but at {call} from the {court}."},
	finding.WrongReceiver:  {English: "{player} returns, but at {call} {receiver} receives a serve from the {court}."},

	finding.FootOnCourt:    {English: "{player} touches the court with a {support} at the serve; the baseline is court."},
	finding.FootOutside:    {English: "{player} serves with a {support} beyond the extension of the sideline or the centreline."},
	finding.FeetOffGround:  {English: "{player} serves without a {support} on the ground behind the baseline."},
	finding.ServeIntoNet:   {English: "The serve of {player} goes into the net."},
	finding.ServeInKitchen: {English: "The serve of {player} lands in the kitchen; its line is part of it."},
	finding.ServeElsewhere: {English: "The serve of {player} from the {court} lands in the wrong service court."},
	finding.ServeOut:       {English: "The serve of {player} lands outside the service courts."},
	finding.ServeHitsOwn:   {English: "The serve hits {by}'s partner {player}, {height} above the ground."},
	finding.ServeHitsOther: {English: "The serve hits {player} before it has bounced, {height} above the ground."},

	finding.ServeVolleyed:  {English: "{player} volleys the serve: it must bounce first."},
	finding.ReturnVolleyed: {English: "{player} volleys the return: it must bounce first."},
	finding.SecondBounce:   {English: "{player} strikes the {shot} after a second bounce, which only a player in a wheelchair may wait for."},
	finding.KitchenVolley:  {English: "{player} volleys with a {support} in the kitchen or on its line."},
	finding.Momentum:       {English: "{player} volleys at {speed} and takes {stop} to stop: a {support} comes into the kitchen."},

	finding.WrongSide:      {English: "{player} stands beyond the net at the serve: partners stay on their own side."},
	finding.OverNet:        {English: "{player} steps over the plane of the net."},
	finding.BallHitsPlayer: {English: "The {shot} hits {player}, {height} above the ground."},
	finding.ShotIntoNet:    {English: "The {shot} of {player} goes into the net."},
	finding.ShotOut:        {English: "The {shot} of {player} lands out."},
	finding.ShotImpossible: {English: "The {shot} of {player} cannot be hit as drawn: {reason}."},
	finding.OffSurface:     {English: "{player} is {beyond} outside the playing surface: check fences, benches and the next court."},

	finding.PartnerInside: {English: "{player} is inside the court before the return has bounced: the serving side may not volley it, and from behind the baseline it is in front of them."},
	finding.StackLegal:    {English: "{player} stacks with {partner}: that is legal, partners may stand anywhere on their own side of the net."},
	finding.StackUseless:  {English: "{player} and {partner} stack or switch, but in this format nobody ever changes sides: it has no purpose."},
}
