"""From a due occurrence to nudges: what is due, who hears of it, what is written down for the sending."""
