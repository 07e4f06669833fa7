## Passar os cuidados: passes.

handover-title = Passar os cuidados
handover-about = Com um passe, alguém da família ou uma amizade cuida de algumas colônias por alguns dias, sem conta.

handover-state-back = retirado
handover-state-ended = terminado
handover-state-now = de serviço agora
handover-state-from = a partir de { $day }

handover-days = { $from } a { $to }
handover-done-by = Feito por { $who }
handover-nothing = Nada foi anotado.
handover-link-once = Envie este link, ou mostre para ser lido. Só é mostrado uma vez.
handover-by-code = Ou com um código:
handover-share = Enviar
handover-share-title = Passe para { $who }
handover-make-link = Criar o link
handover-new-link = Criar outro link
handover-take-back = Retirar
handover-sure = Retirar o passe de { $who }? O telefone de lá para na hora.
handover-print = Imprimir a folha
handover-preview = Ver como vão ver
handover-preview-title = Como { $who } vê
handover-new = Passe novo
handover-who = Quem
handover-colonies = Colônias
handover-all = Todas

handover-stings = { $colony } (ferroa)
handover-first = Primeiro dia
handover-last = Último dia
handover-know = O que devem saber
handover-call = Para quem ligar
handover-none = Escolha pelo menos uma colônia.
handover-backwards = O último dia é anterior ao primeiro.
handover-go = Criar o passe
handover-calendar = Calendário de toda a estante
handover-stings-words = Você escolheu uma colônia que ferroa. Pergunte antes se alguém lá tem alergia; só passe os cuidados se houver certeza.

## O que se imprime.

paper-sheet = Cuidar da estante: { $who }
paper-record = Ficha de { $name }
paper-print = Imprimir
paper-colony = Colônia
paper-what = O que fazer
paper-done = Feito
paper-nothing = Nada a fazer.
paper-over = O último dia deste passe já passou.
paper-ahead = Os dias foram calculados hoje. O que você fizer ou anotar até o passe começar muda esses dias: imprima a folha de novo na véspera.
paper-colonies = As colônias

paper-call = Ligar para:
paper-made = Impresso: { $day }
paper-gone = Não há nada para imprimir aqui.
paper-species = Espécie
paper-lives = Vive em
paper-count = Última contagem
paper-when = Quando
paper-event = O quê
paper-by = Quem

## O que vê quem fica no lugar do criador.

stand-in-from = A partir de { $day }

stand-in-today = { $count ->
    [one] Hoje: { $count } coisa, cerca de { $minutes } min
   *[other] Hoje: { $count } coisas, cerca de { $minutes } min
  }
stand-in-nothing = Hoje nada
stand-in-calm = Se um dia falhar, não faz mal. Não abra o ninho, não sacuda e não dê nada a mais.
stand-in-from-keeper = Do criador
stand-in-call = Ligar para { $who }
stand-in-yours = As suas colônias

# Os botões de uma tarefa: o que foi feito, na primeira pessoa.
stand-in-gave = Já dei
stand-in-looked = Já olhei
stand-in-took = Já retirei
stand-in-watered = Já dei água
stand-in-could-not = Não consegui
stand-in-why = O que impediu?
stand-in-why-none = Não havia mais nada para dar
stand-in-why-closed = Não consegui abrir
stand-in-why-unsure = Não sabia bem como
stand-in-why-away = Eu não estava lá
stand-in-why-other = Outra coisa
stand-in-note = Não foi possível: { $task }. { $why }
stand-in-told = Anotado para o criador. Continua na lista.
stand-in-read-aloud = Ler em voz alta
stand-in-quiet = Parar de ler
stand-in-how = Como se faz
stand-in-practice = Tempos e quantidades dos passos: prática comum.

# O que o criador junta a cada colônia para quem fica no seu lugar: uma frase e uma foto.
stand-in-hint = Para quem ficar no seu lugar
stand-in-hint-example = por exemplo: as moscas estão na porta do congelador
stand-in-hint-picture = Uma foto para ajudar
stand-in-hint-about = Aparece acima dos passos de cada tarefa desta colônia.

# Na folha impressa: o tamanho de uma porção.
paper-true-size = Tamanho real
paper-drop-of = Uma gota de cerca de { $ul } µL
paper-prey-of = Um pedaço de cerca de { NUMBER($mm) } mm
paper-ruler = Régua em milímetros: compare com a sua
