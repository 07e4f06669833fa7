## Tastings: what a colony likes.

tasting-title = What they like
tasting-about = A tasting finds out which food they like best: the round offers them in turn, you say what became of it. One new food a week, never while they found or settle.

# $state is a state of the colony, as settling or resting.
tasting-not-now = Not now ({ $state }): a refusal would mean nothing.
tasting-kind = Kind of food
tasting-foods = Foods, 2 to 5
tasting-pick = Choose 2 to 5 foods.
tasting-go = Start the tasting
tasting-started = The tasting has begun
tasting-none = There are no two foods to compare for what they eat.
tasting-since = Since { $day }.
tasting-told = What it has told so far
tasting-wait = The plan chooses the first food with the next connection.
tasting-not-offered = Not offered yet

# $due is one of round-due-….
tasting-next = Next: { $food }, { $due }.

# Shares in percent.
tasting-taken = Taken in about { $mean } %, { $low } to { $high }
tasting-offers = { $count ->
    [one] { $count } offer
   *[other] { $count } offers
  }
tasting-offers-and-likes = { $count ->
    [one] { $others ->
        [one] { $count } offer and what { $others } colony like it took
       *[other] { $count } offer and what { $others } colonies like it took
      }
   *[other] { $others ->
        [one] { $count } offers and what { $others } colony like it took
       *[other] { $count } offers and what { $others } colonies like it took
      }
  }
tasting-best = { $percent } % likely their favourite
tasting-range = The bar is the estimate, the line its range.
tasting-food = Food
tasting-offered = Offers
tasting-share = Taken
tasting-spread = Range
tasting-favourite = Favourite
tasting-end = End the tasting
tasting-ended = The tasting has ended
tasting-part = Part of the tasting: { $name }
tasting-here = This counts for the running tasting.
tasting-earlier = Earlier tastings
tasting-days = { $from } to { $to }
tasting-tally = { $checked ->
    [one] { $food }: taken { $taken } of { $checked } time
   *[other] { $food }: taken { $taken } of { $checked } times
  }
tasting-unchecked = { $food }: never checked
