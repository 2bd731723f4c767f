package words

import "homeside/model/finding"

// ruleSentences is what the rules find, in words. Names in braces stand for what
// a finding tells: {player} is whom it is about, the others are its arguments.
// A translation may say {theshot}, the shot with its article, where the English
// says {shot}.
var ruleSentences = map[finding.ID]string{
	finding.CallMissing:    Text("Say the score: {player} serves only after the whole of it has been called."),
	finding.CallImpossible: Text("{call} is never called in {format} to {to}."),
	finding.WrongTeam:      Text("{player} serves, but it is for {team} to serve."),
	finding.WrongServer:    Text("{player} serves from the {from}, but at {call} it is for {server} to serve, from the {court}."),
	finding.PlaceNotServer: Text("Right place, wrong server: {player} belongs on the {from}, but at {call} it is for {server} to serve, from the {court}."),
	finding.WrongCourt:     Text("{player} serves from the {from}, but at {call} from the {court}."),
	finding.WrongReceiver:  Text("{player} returns, but at {call} {receiver} receives a serve from the {court}."),

	finding.FootOnCourt:    Text("{player} touches the court with a {support} at the serve; the baseline is court."),
	finding.FootOutside:    Text("{player} serves with a {support} beyond the extension of the sideline or the centreline."),
	finding.FeetOffGround:  Text("{player} serves without a {support} on the ground behind the baseline."),
	finding.ServeIntoNet:   Text("The serve of {player} goes into the net."),
	finding.ServeInKitchen: Text("The serve of {player} lands in the kitchen; its line is part of it."),
	finding.ServeElsewhere: Text("The serve of {player} from the {court} lands in the wrong service court."),
	finding.ServeOut:       Text("The serve of {player} lands outside the service courts."),
	finding.ServeHitsOwn:   Text("The serve hits {by}'s partner {player}, {height} above the ground."),
	finding.ServeHitsOther: Text("The serve hits {player} before it has bounced, {height} above the ground."),

	finding.ServeVolleyed:  Text("{player} volleys the serve: it must bounce first."),
	finding.ReturnVolleyed: Text("{player} volleys the return: it must bounce first."),
	finding.SecondBounce:   Text("{player} strikes the {shot} after a second bounce, which only a player in a wheelchair may wait for."),
	finding.KitchenVolley:  Text("{player} volleys with a {support} in the kitchen or on its line."),
	finding.Momentum:       Text("{player} volleys at {speed} and takes {stop} to stop: a {support} comes into the kitchen."),

	finding.WrongSide:      Text("{player} stands beyond the net at the serve: partners stay on their own side."),
	finding.OverNet:        Text("{player} steps over the plane of the net."),
	finding.BallHitsPlayer: Text("The {shot} hits {player}, {height} above the ground."),
	finding.ShotIntoNet:    Text("The {shot} of {player} goes into the net."),
	finding.ShotOut:        Text("The {shot} of {player} lands out."),
	finding.ShotImpossible: Text("The {shot} of {player} cannot be hit as drawn: {reason}."),
	finding.OffSurface:     Text("{player} is {beyond} outside the playing surface: check fences, benches and the next court."),

	finding.PartnerInside: Text("{player} is inside the court before the return has bounced: the serving side may not volley it, and from behind the baseline it is in front of them."),
	finding.StackLegal:    Text("{player} stacks with {partner}: that is legal, partners may stand anywhere on their own side of the net."),
	finding.StackUseless:  Text("{player} and {partner} stack or switch, but in this format nobody ever changes sides: it has no purpose."),
}
