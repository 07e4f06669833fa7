"""The ground floor: the words that every room speaks. Standard library only; whatever knows more lies above.

``kinds``: what a household keeps, each kind of record as a dataclass; ``needs``: what a colony can ask for, and what
can go wrong; ``facts``: what a plan is made from; ``gauges``: the store that runs down; ``tasks``: what is due;
``quantities``: numbers with a range.
"""
