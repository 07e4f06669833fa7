## Etykiety i ekran, który je czyta.

label-title = Etykiety na probówki
label-about = Wydrukuj arkusz, potnij i przyklej po jednej na każdą probówkę. Zeskanowana lub wpisana w aplikacji etykieta otwiera wpis tej kolonii, także bez połączenia.
label-print = Drukuj arkusz
label-choose = Etykiety dla
label-scan = Skanuj etykietę
label-scan-title = Skanuj etykietę
label-typed = Albo wpisz kod pod nią
label-open = Otwórz
label-unknown = Żadna kolonia na tym telefonie nie ma tego kodu.
label-camera = Trzymaj etykietę przed aparatem.
label-no-camera = Nie można tu użyć aparatu. Wpisz kod.
label-start = Włącz aparat
label-foreign = Ten kod nie jest etykietą tej półki.
label-several = Pasuje kilka kolonii:
