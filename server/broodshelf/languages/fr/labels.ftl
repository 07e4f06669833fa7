## Les étiquettes et l’écran qui les lit.

label-title = Étiquettes de tubes
label-about = Imprime la feuille, découpe, et colle une étiquette sur chaque tube. Scannée ou tapée dans l’app, elle ouvre la saisie de cette colonie, même sans connexion.
label-print = Imprimer la feuille
label-choose = Étiquettes pour
label-scan = Scanner une étiquette
label-scan-title = Scanner une étiquette
label-typed = Ou tape le code écrit dessous
label-open = Ouvrir
label-unknown = Aucune colonie de ce téléphone n’a ce code.
label-camera = Tiens l’étiquette devant l’appareil photo.
label-no-camera = L’appareil photo ne marche pas ici. Tape plutôt le code.
label-start = Lancer l’appareil photo
label-foreign = Ce code n’est pas une étiquette de cette étagère.
label-several = Plusieurs colonies possibles :
