"""The `project` section: what this is, how far it has got, and which code it is held against."""

from checker.design.annotated import Annotated
from checker.design.fields import Choice, Node, Plain, listed, record, said

CodeEdition = Annotated[
    str,
    Choice(
        "irc-2015", "irc-2018", "irc-2021", "irc-2024",
        irc_2015="2015 IRC | IRC2015", irc_2018="2018 IRC | IRC2018",
        irc_2021="2021 IRC | IRC2021", irc_2024="2024 IRC | IRC2024",
    ),
]  # fmt: skip
StandardEdition = Annotated[
    str,
    Choice(
        "62.2-2010", "62.2-2013", "62.2-2016", "62.2-2019", "62.2-2022",
        **{f"62.2_{year}": f"ashrae 62.2 {year}" for year in (2010, 2013, 2016, 2019, 2022)},
    ),
]  # fmt: skip
Stage = Annotated[
    str,
    Choice(
        "sketch", "permit", "as-built", as_built="built | finished", permit="permit set | permit drawings"
    ),
]

Work = Annotated[
    str,
    Choice(
        "new house", "addition", "alteration",
        new_house="new | new construction", alteration="retrofit | remodel | renovation | gut renovation | existing house",
    ),
]  # fmt: skip


@record
class Project(Node):
    """Title, revision, stage and the code edition and standards that the design is held against."""

    title: Plain | None = said("what the design is called; compulsory", "Foxglove Lane cottage")
    revision: Plain | None = said("mark of this revision", "B")
    stage: Stage | None = said("how far the design has got; `as-built` makes measured values win", "sketch")
    work: Work | None = said("what is built; an existing house is held to less by the energy chapter", "alteration")
    code: CodeEdition | None = said("edition of the residential code in force there", "irc-2021")
    ventilation_standard: StandardEdition | None = said(
        "edition of ASHRAE 62.2, where the design is also held against it", "62.2-2019"
    )
    amendments: list[Plain] = listed(
        "amendments files of the jurisdiction or firm, beside this file", "county.yaml"
    )
    drawn_by: Plain | None = said("who drew it", "owner-builder")
    date: Plain | None = said("date of the revision", "2026-03-14")
    notes: Plain | None = said("anything a reader should know; no rule reads it")
