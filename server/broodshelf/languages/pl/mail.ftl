mail-code-title = { $code } to twój kod
mail-code-body = Wpisz go w aplikacji, a przypomnienia będą przychodzić także na ten adres. Jest ważny godzinę. · Jeśli nikt w twoim domu o to nie prosił, nie rób nic: więcej wiadomości nie będzie.
mail-foot = Poczta przychodzi, bo ten adres potwierdzono w części Dom; hodowca może go tam usunąć.
