"""The nearest spelling of a word that was not understood."""

from collections.abc import Sequence


def nearest(word: str, known: Sequence[str], what: str, most: int = 12) -> str:
    """Help for a wrong word: the known word nearest to it, else the list of known words.

    `what` names the list in the plural (keys, words, names).
    """
    from difflib import get_close_matches

    folded = {name.lower().replace("_", " ").replace("-", " "): name for name in known}
    asked = word.lower().replace("_", " ").replace("-", " ")
    close = get_close_matches(asked, list(folded), n=2, cutoff=0.6)
    if not close:
        close = [name for name in folded if asked and (asked in name or (len(name) > 3 and name in asked))][:2]
    if close:
        return "the nearest spelling is " + " or ".join(f"`{folded[name]}`" for name in close)
    if not known:
        return f"there are no {what} to choose from yet"
    shown = ", ".join(f"`{name}`" for name in known[:most])
    return f"the {what} are {shown}" + (" ..." if len(known) > most else "")
