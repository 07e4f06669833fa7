### Avisos: o que um telefone mostra bloqueado, e as linhas de um e-mail. Curto.

nudge-one-food = { $need } para { $colony }
nudge-one-todo = { $todo }: { $colony }
nudge-same-need = { $need } para { $n } colônias
nudge-same-todo = { $todo }: { $n } colônias
nudge-one-colony = { $colony }: { $needs }
nudge-colonies = { $n } colônias: { $needs }
nudge-need-for = { $need } para { $n }
nudge-line = { $colony }: { $what }
nudge-more = e mais { $n }

## A mensagem na forma mais curta, e o teste.

nudge-short-title = É hora da ronda
nudge-short-body = Abra o app para ver de que precisam as suas colônias.
nudge-test-title = Os avisos funcionam neste telefone
nudge-test-body = É só um teste. Nada é preciso por causa dele.

## O que se conta da casa aos outros criadores.

nudge-new-phone-title = Entrou um telefone novo
nudge-new-phone-body = { $phone }, para { $person }. Se não foi ninguém da casa, encerre a sessão dele em Casa.
nudge-link-made-title = Link novo: { $pass }
nudge-link-made-body = Criado por { $person }. Quem tiver o link pode abrir o passe; um link novo encerra este.
nudge-pass-opened-title = { $pass }: passe aberto
nudge-pass-opened-body = Em: { $phone }. Se não devia ser, retire o passe.
nudge-sensor-silent-title = { $sensor } já não diz nada
nudge-sensor-silent-body =
    Nada chega dele há { $hours ->
        [one] { $hours } hora
       *[other] { $hours } horas
    } ({ $place }). Olhe a energia e o caminho até o servidor; até voltar a falar, os planos seguem o que você ler ou definir.
nudge-sensor-broken-title = { $sensor } mede disparates
nudge-sensor-broken-body = O que ele envia não pode ser ({ $place }). Olhe o cabo e a energia; o que envia fica de fora até voltar a fazer sentido.
