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
household-export-no-json = As fotos não cabem num documento JSON: indique um ficheiro terminado em .zip ou uma pasta nova.
household-export-done = Escrito em { $path }: { $n } anotações, { $pictures } fotos. Chaves e telefones ligados não estão lá.
household-unknown = Não há aqui nenhuma casa { $id }; 'broodshelf household list' mostra as que há.
household-delete-would = Isto apagaria { $name }: { $n } anotações, { $pictures } fotos, os telefones, os links e o histórico. Leve antes tudo ('household export'); com --yes faz-se.
household-delete-done = Apagado: { $n } linhas, as fotos e o que estava anotado ao lado da base de dados. As cópias anteriores ainda a têm; repor uma não a traz de volta.
household-not-in-backup = { $path } não tem a casa { $id }; tem { $households }.
household-restore-done = Reposto: { $n } linhas. Os telefones enviam o que falta à cópia quando se ligarem; as outras casas ficaram como estavam.
command-move = copiar tudo para outra base de dados, de SQLite para PostgreSQL ou de volta, com o servidor parado
command-move-to = a outra base de dados: sqlite:///CAMINHO ou postgresql://UTILIZADOR@MÁQUINA/NOME
move-same = Essa é a base de dados que o servidor já usa.
move-foreign = A outra base de dados tem casas que esta não conhece ({ $n }, a primeira: { $first }); indique uma vazia ou uma que uma mudança anterior começou a encher.
move-connected = Mais alguém está ligado à base de dados { $name }: pare os servidores e os lembradores e mude então.
move-differs = As duas diferem na tabela { $table }: { $here } linhas aqui, { $there } lá. Aqui nada mudou; comece a mudança outra vez.
move-step = { $number } de { $of }: { $id }, { $n } linhas
move-there = { $number } de { $of }: { $id } já lá está, linha por linha
move-done = Mudadas { $n } linhas; cada tabela foi comparada e é igual. Ponha { $setting } na outra base de dados e arranque o servidor. A daqui fica como estava.
