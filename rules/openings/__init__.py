"""Outdoor openings: where intakes and exhausts may stand, how they are screened, and what they must keep from."""
