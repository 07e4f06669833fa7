"""What exists only for speed, by what it makes quick; each module names the benchmark that pays for it.

``validation``: of plainly right values; ``many_rows``: written or asked for at once; ``statements``: of the store, made
once; ``newest``: the newest events of each topic in one statement; ``row_texts``: the JSON of a record's columns.
"""
