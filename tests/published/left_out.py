"""Published values that no function of ours is held against, and why."""

LEFT_OUT = (
    ("combustion-air volumes and openings of NFPA 54 and the IFGC", "the tool has no rules on combustion air yet"),
    ("solar gain through ordinary glass of a system design handbook of the 1960s", "heat after the glass under an "
     "older sky, against irradiance in front of it: it cannot confirm the method"),
    ("height of the sun at an hour", "the load factors know the peak of a day, so the tool computes no hour"),
    ("a handbook's window U-values by glass and frame, with one cell misprinted as 5.83 for 2.53 W/m2 K",
     "the tool takes the label's value or the code's default, which is less favourable"),
    ("skylight defaults of the Washington State Energy Code", "the code's own table for all states is held"),
    ("U-values of attics by zone for commercial buildings", "another class of building"),
    ("F-factors beside insulated basement walls, and the heated-basement rule 10.67 P dT / (R + 8)",
     "both fold wall, floor and soil into one figure of the perimeter, which the tool works out apart"),
    ("ground temperature of seven cities", "the tool asks for the yearly mean of the site"),
    ("U-value of a floor over a vented crawl space, 0.029 for R-30", "it counts the crawl space's own resistance, which "
     "the tool takes by a heat balance where the design gives it"),
    ("equivalent lengths of duct pieces in range-hood instructions", "a maker's table; the design states its own"),
    ("capacity lost in long refrigerant lines", "a maker's table; the design states its own"),
)  # fmt: skip
