mail-code-title = { $code } : ton code
mail-code-body = Tape-le dans l’app, et les rappels viendront aussi à cette adresse. Il est valable une heure. · Si personne chez toi ne l’a demandé, ne fais rien : aucun autre courriel ne viendra.
mail-foot = Ce courriel part parce que cette adresse a été confirmée sous Maison ; une personne responsable peut l’y retirer.
