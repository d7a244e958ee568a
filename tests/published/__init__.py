"""Published values of the trade, each beside what our functions make of the same inputs."""
