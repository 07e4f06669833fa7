## Kolonia: jej ekran, stadia i stan.

colony-gone = Tu jej nie ma
colony-gone-why = Tej kolonii nie ma na tym telefonie. Może została usunięta albo telefon jeszcze się nie zsynchronizował.
colony-change = Zmień
colony-new = Nowa kolonia
colony-log = Wpisz
colony-plan = Plan
colony-diary = Dziennik
colony-charts = Przez miesiące
colony-paper = Drukuj jej kartę
colony-past = Jej historia
colony-no-plan = Plan przyjdzie przy następnym połączeniu z serwerem. Wpisywać można od razu.

colony-stage-founding = Królowa zakłada
colony-stage-nanitics = Nanitki
colony-stage-growing = Rośnie
colony-stage-mature = Dojrzała

colony-condition-well = Ma się dobrze
colony-condition-settling = Urządza się
colony-condition-resting = W spoczynku
colony-condition-queenless-suspected = Królowa niepewna
colony-condition-quarantine = Kwarantanna
colony-condition-given-away = Oddana
colony-condition-dead = Martwa

## Co hodowca mówi o kolonii.

colony-form-change = Zmień: { $name }
colony-form-name = Nazwa
colony-form-number = Numer na pojemniku
colony-form-optional = (opcjonalnie)
colony-form-species = Gatunek
colony-form-species-hint = z listy albo własnymi słowami
colony-form-length = Długość robotnic w mm
colony-form-length-hint = (tylko dla gatunku, którego nie ma na liście)
colony-form-lives = Pojemnik
colony-form-not-listed = nie ma na liście
colony-form-outworld = Ma arenę
colony-form-stage = Stadium
colony-form-condition = Stan
colony-form-roughly = Robotnice, mniej więcej
colony-form-few = Mało (poniżej 20)
colony-form-some = Trochę (20 do 100)
colony-form-many = Dużo
colony-form-larvae = Larwy
colony-form-needed = Nadaj kolonii nazwę.
colony-form-save = Zapisz
colony-form-add = Dodaj kolonię
colony-form-more = Pojemnik, numer i więcej
colony-form-stings = Ten gatunek żądli. Osoby uczulone potrzebują tu pomocy innych.

colony-form-fate-rests-since = W spoczynku od
colony-form-fate-wakes-on = Obudź ją dnia
colony-form-fate-went-to = Do kogo poszła
colony-form-fate-died-of = Przyczyna śmierci, jeśli znana
colony-form-fate-came-from = Skąd pochodzi
colony-form-fate-host = Gatunek gospodarza

colony-form-own-species = Twój własny gatunek
colony-form-own-eats = Je
colony-form-own-founds = Królowa zakłada kolonię
colony-form-own-stings = Żądli

colony-form-own-guild-omnivore = Cukier i owady
colony-form-own-guild-predator = Głównie owady
colony-form-own-guild-harvester = Nasiona
colony-form-own-guild-honeypot = Gromadzi cukier w repletach
colony-form-own-guild-fungus-grower = Liście dla swojego grzyba

colony-form-own-founding-claustral = Sama, bez pokarmu
colony-form-own-founding-semi-claustral = Wychodzi po pokarm
colony-form-own-founding-parasitic = Z robotnicami gospodarza

colony-form-own-vessel = Twój własny pojemnik
colony-form-own-bore = Szerokość lub średnica wewnętrzna w mm
colony-form-own-vessel-length = Długość w mm
