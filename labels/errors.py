"""The one error a label can give, and how a value is quoted in it."""


class LabelError(Exception):
    """A label cannot be made as asked; nothing was drawn or released.

    Attributes:
        title: One short line for the person at the line: which part is wrong.
        detail: What was given, what is allowed, and what to do about it.
    """

    def __init__(self, title: str, detail: str) -> None:
        super().__init__(f"{title}: {detail}")
        self.title = title
        self.detail = detail


def shown(value: object) -> str:
    """Quote a value in a message, unprintable characters escaped, long ones shortened."""
    text = ascii(value) if not str(value).isprintable() else repr(value)
    return text if len(text) <= 60 else text[:57] + "..."
