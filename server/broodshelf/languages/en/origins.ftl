### Where a food comes from, and whether it may be offered. A careless word here can kill a colony.

origin-bought-or-bred = bought or bred for feeding
origin-home-mixed = mixed at home
origin-shop-fruit = fruit from a shop
origin-garden-fruit = fruit from a garden
origin-hot-syrup = syrup still hot
origin-wild-web-spider = spider from its web
origin-wild-insect = insect caught outdoors
origin-wild-hunter = roaming hunter caught outdoors
origin-home-cockroach = cockroach from a home
origin-unknown = origin unknown

## Why it may be offered, or not.

origin-why-bought-or-bred = Bred for feeding: fine.
origin-why-home-mixed = Fine once it is cool.
origin-why-shop-fruit = Wash it and peel it: peel can carry spray.
origin-why-garden-fruit = Only if nothing was sprayed near it. Wash and peel it.
origin-why-hot-syrup = Hot syrup kills. Let it cool until it feels cold on your wrist, then offer it.
origin-why-wild-web-spider = Keep it apart for at least 2 days and watch it: if it moves badly or dies, do not offer it (common practice). Freezing kills mites, it does not clear poison. A hold lowers the risk, it proves nothing.
origin-why-wild-insect = It may have met bait or spray. Keep it apart for 7 days (common practice); freezing kills mites, not poison. Bought feeders are safer.
origin-why-wild-hunter = It roams and eats what bait has killed. Keep it apart for 7 days at least (common practice). Freezing kills mites, it does not clear poison. Bought feeders are safer.
origin-why-home-cockroach = Never: cockroaches from homes may carry bait, and a little of it kills a colony within weeks.
origin-why-unknown = Do not offer what you cannot place: bait and spray cannot be seen.
