### How long a food in the larder lasts. Dates come in written.

reason-larder-amount-unknown = Write down how much is left, then this can say how long it lasts.
reason-larder-lasts = Lasts for more than { $days } days.
reason-larder-out = Too little is left for today: buy it now.
# $on, $early, $buy_by: days in words. $lead (number): days.
reason-larder-runs-out = Runs out about { $on }, at the earliest { $early }. It takes about { $lead } days to get more (common practice): order by { $buy_by }.
# $amount (number): in what the lot is counted in. $on: a day in words.
reason-larder-spoils = About { $amount } will be left over when it spoils on { $on }: use it first or buy less.
