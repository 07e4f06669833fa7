caution-stings = Ten gatunek żądli. Osoby uczulone potrzebują tu pomocy innych; trudności z oddychaniem, obrzęk, zasłabnięcie lub wymioty po użądleniu: natychmiast zadzwoń pod numer alarmowy.
caution-blade = Tnij zdobycz na desce, z dala od palców.
caution-dead-only = Tylko świeżo zabita zdobycz: w probówce nigdy nic żywego.
caution-never-tilt = Nigdy nie przechylaj ani nie obracaj tego gniazda: replety wiszą pod sufitem i są spiżarnią kolonii.
caution-sting-allergy = Użądlenia tego gatunku znane są z ciężkich reakcji alergicznych. Połóż tę osobę płasko, użyj ampułkostrzykawki z adrenaliną, jeśli jest, i zadzwoń pod numer alarmowy. Nie zajmuj się tą kolonią w pojedynkę.
caution-bites = Duże robotnice przegryzają skórę: używaj pęsety lub pędzelka, nie palców.
caution-tint = Barwnik spożywczy: niebieski bez karminu, najsłabszy odcień, który widać, jedna kolonia, jeden dzień, a obok niebarwiona woda z cukrem. Nie znaleziono opublikowanego stężenia, czasu blaknięcia ani badania bezpieczeństwa dla mrówek, a hodowcy mówią o śmierci po czerwonym (praktyka hodowców, bez źródła).
caution-sprays = Pryska kwasem mrówkowym: trzymaj oczy z dala od otworu i wietrz pokój.
