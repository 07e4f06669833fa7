"""Whether nudges go out in time, and how well each phone hears."""
