"""Everything that a person reads, in the languages of the folders here: Fluent messages, and CLDR for what they hold.

A language is a folder of ``*.ftl`` files. A text is asked for by its message's id, or by a code of the care core and
its section; ``told`` carries a text that nobody has put into a language yet. The phone reads the same messages
(``phones_file``), so both say the same (fixtures/conformance/messages.json).
"""

from .choosing import ENGLISH, best_of_accepted, language_of, of_accepted, of_environment
from .saying import in_list, say, say_code, say_portion
from .tags import languages
from .told import Told, Unfit, told, told_of, why_of

__all__ = [
    "ENGLISH",
    "Told",
    "Unfit",
    "best_of_accepted",
    "in_list",
    "language_of",
    "languages",
    "of_accepted",
    "of_environment",
    "say",
    "say_code",
    "say_portion",
    "told",
    "told_of",
    "why_of",
]
