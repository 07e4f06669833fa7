"""How simple the stand-in's sentences are, by a published index a language: ``python -m tests.bench.readability``.

A report, no gate. Looked at: the steps, what helps a stand-in, the stand-in's screen and the nudges. The formulas are
from memory of the papers named; syllables are counted as groups of vowels, which is off by a few in a hundred words.

* English: reading ease, Flesch 1948. German: Amstad 1978. French: Kandel & Moles 1958. Spanish: Fernández Huerta 1959.
  Portuguese: Martins et al. 1996. All run from 0 to 100, higher is simpler; 60 and more is plain language.
* Polish: Pisarek 1969, in years of school: lower is simpler; up to 9 is plain language.
"""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass

from tests.languages.resources import read

from broodshelf.languages import languages, say

SPOKEN = re.compile(r"reason-(\w+-)*step(-\w+)*|reason-helper-\w+|stand-in-[\w-]+|nudge-(?!sensor)[\w-]+")
VOWELS = re.compile(r"[aeiouyáéíóúàèìòùâêîôûäëïöüãõåæœąęó]+", re.IGNORECASE)
HARD_SYLLABLES = 4
"""What Pisarek counts as a hard word."""


@dataclass(frozen=True)
class Text:
    """What was counted: words a sentence, syllables a word, hard words in a hundred; the longest sentence in words."""

    words_a_sentence: float
    syllables_a_word: float
    hard_percent: float
    longest: int


INDEX: dict[str, tuple[str, Callable[[Text], float]]] = {
    "en": ("Flesch 1948", lambda t: 206.835 - 1.015 * t.words_a_sentence - 84.6 * t.syllables_a_word),
    "de": ("Amstad 1978", lambda t: 180 - t.words_a_sentence - 58.5 * t.syllables_a_word),
    "fr": ("Kandel & Moles 1958", lambda t: 207 - 1.015 * t.words_a_sentence - 73.6 * t.syllables_a_word),
    "es": ("Fernández Huerta 1959", lambda t: 206.84 - 1.02 * t.words_a_sentence - 60 * t.syllables_a_word),
    "pt": ("Martins et al. 1996", lambda t: 248.835 - 1.015 * t.words_a_sentence - 84.6 * t.syllables_a_word),
    "pl": ("Pisarek 1969", lambda t: math.hypot(t.words_a_sentence, t.hard_percent) / 2),
}


def sentences(tag: str) -> Iterator[list[str]]:
    """Yield the sentences that a stand-in reads, each as its words; a figure counts as none."""
    for name, message in read(tag).items():
        if SPOKEN.fullmatch(name):
            text = say(tag, name, dict.fromkeys(message.parameters, 3))
            for sentence in re.split(r"[.!?:;…]+(?:\s|$)", text):
                words = re.findall(r"[^\W\d_]+(?:['’][^\W\d_]+)?", sentence)
                if words:
                    yield words


def counted(tag: str) -> Text:
    """Return the figures of a language."""
    found = list(sentences(tag))
    syllables = [max(1, len(VOWELS.findall(word))) for words in found for word in words]
    return Text(
        len(syllables) / len(found),
        sum(syllables) / len(syllables),
        100 * sum(n >= HARD_SYLLABLES for n in syllables) / len(syllables),
        max(map(len, found)),
    )


def main() -> None:
    """Print the index of each language."""
    print("| language | index | value | words a sentence | syllables a word | longest sentence |")
    print("|---|---|---|---|---|---|")
    for tag in languages():
        name, index = INDEX.get(tag, ("", lambda _: math.nan))
        text = counted(tag)
        print(
            f"| {tag} | {name} | {index(text):.0f} | {text.words_a_sentence:.1f} | {text.syllables_a_word:.2f} "
            f"| {text.longest} |"
        )


if __name__ == "__main__":
    main()
