"""Make-up air and house pressure: where the air comes from that fans take out, and what it does on its way."""
