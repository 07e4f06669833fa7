### O que 'broodshelf household' mostra.

command-of-households = casas deste servidor: quem são, convites, levar tudo, apagar, repor
command-household-list = quem está cá, quando falou um telefone pela última vez e quanto ocupa cada uma
command-household-invite = fazer links de uso único, cada um para uma casa própria
command-invite-count = quantos
command-invite-days = por quantos dias valem
command-invite-sheet = escrever uma folha para imprimir, com um código QR para cada um
command-invite-take-back = não fazer nenhum; anular os que ninguém usou
command-household-export = escrever todas as anotações e fotos de uma casa num .zip ou numa pasta
command-household-delete = apagar uma casa com tudo o que tem
command-household-restore = repor uma só casa a partir de uma cópia do servidor inteiro
command-household-id = o seu identificador, como 'household list' o mostra
command-list-name = nome
command-list-id = identificador
command-list-people = pessoas
command-list-seen = última vez (UTC)
command-list-records = anotações
command-list-pictures = fotos
command-list-mib = MiB
command-list-share = parte
command-list-invitations = Convites: { $open } por usar, { $used } usados, { $expired } expirados.
command-invite-closed = BROODSHELF_SIGNUP está em closed, por isso nenhum convite abriria nada: ponha-o em invited, para o servidor e para este comando.
command-invite-range = { $name }: dê um número inteiro de 1 a { $most }.
command-invite-done =
    { $n ->
        [one] Este link abre
       *[other] Cada um destes links abre
    } uma casa, uma vez, em { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }. Não é mostrado outra vez.
command-invite-sheet-done =
    { $n ->
        [one] Há { $n } convite
       *[other] Há { $n } convites
    } em { $path }. Abra a folha num navegador e imprima-a; cada um deixa entrar alguém, por isso guarde-a para si.
command-invite-taken-back =
    { $n ->
        [one] Foi anulado { $n } convite por usar.
       *[other] Foram anulados { $n } convites por usar.
    }
sheet-title = Broodshelf: convites
sheet-number = Convite { $number }
sheet-how = Aponte-lhe a câmara do telefone: começa uma estante sua, uma única vez.
sheet-until = Vale até { $on }, inclusive.
sheet-or-code = Ou abra { $server } e escreva este código:
signup-begin = Começar uma estante sua
