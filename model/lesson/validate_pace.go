package lesson

// pace checks a player's own pace by the ranges that package movement sets.
func (c *checker) pace(p Player) {
	if err := p.Pace.Validate(); err != nil {
		c.say("", "%v", err)
	}
}
