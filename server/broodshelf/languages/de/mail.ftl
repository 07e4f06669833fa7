### Was nur eine Mail sagt.

mail-code-title = { $code } ist dein Code
mail-code-body = Gib ihn in der App ein, dann kommen Erinnerungen auch an diese Adresse. Er gilt eine Stunde. · Hat niemand in deinem Haushalt danach gefragt, tu nichts: Es kommt keine weitere Mail.
mail-foot = Diese Mail kommt, weil diese Adresse unter Haus bestätigt wurde; ein Halter kann sie dort entfernen.
