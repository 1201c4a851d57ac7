"""The one error a label can give."""


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
