"""From something due to a message on a phone.

The way of one due task: ``rounds.occurrence_states`` (what it may be), ``nudger`` (one tick), ``telling`` (who hears),
``messages`` (what is said), ``sending`` (its turn), ``channels`` (push, mail), ``outcomes`` (what came of it).
"""
