"""Keeping what a household has: backup and restore of the whole server, export and import of its records.

* ``erasing``, ``one_back``: one household erased with all that it has, or put back out of a backup (``scratch``).
* ``backup``: one archive with the database, keys and revocations, and the way back.
* ``entries``: what an export is: every record by kind, self-contained, in a fixed order.
* ``cells``: a field's value as a cell of a table, and back.
* ``files``: an export as JSON, as a folder of CSV files or as a zip of them.
* ``sheet``: a keeper's own table, read by a mapping of columns.
* ``bringing_in``: entries into a household, through the operations of sync; what is there already stays.
"""
