## Avisos neste telefone.

phone-nudges-title = Avisos neste telefone
phone-nudges-last = O último chegou: { $when }
phone-nudges-none = Ainda não chegou nenhum.
phone-nudges-silent = { $name } não responde há algum tempo: abra o app lá.
phone-nudges-somebody = Alguém

phone-nudges-elsewhere-unheard = Os avisos não chegam a { $who } ({ $phone }): peça para abrir o app lá.
phone-nudges-elsewhere-unseen = { $who } não abre o app há um mês ({ $phone }), por isso os avisos podem ter parado lá.

phone-nudges-ask = Avisar quando for preciso
phone-nudges-test = Enviar um teste
phone-nudges-stop = Desligar aqui

phone-nudges-state-unsupported = Este navegador não pode receber avisos. A ronda aqui está sempre em dia quando você abre o app.
phone-nudges-state-install-first = Num iPhone ou iPad ponha antes o app na tela inicial: Compartilhar (Partilhar), depois “Adicionar à Tela de Início” (“Adicionar ao ecrã principal”). Abra lá e volte a esta página.
phone-nudges-state-denied = Os avisos estão bloqueados para este app nas configurações do navegador. Permita lá as notificações e volte.
phone-nudges-state-off = Os avisos estão desligados. Quando algo for preciso nas suas horas de cuidado, este telefone pode avisar.
phone-nudges-state-on = Os avisos chegam a este telefone.

phone-nudges-tested-waiting = Enviado; à espera de que este telefone diga que chegou…
phone-nudges-tested-heard = Chegou. Os avisos funcionam neste telefone.
phone-nudges-tested-silent = Não chegou.

phone-nudges-not-taken = O serviço de avisos não aceitou: { $outcome }.
phone-nudges-not-heard = Foi enviado, mas este telefone não disse que chegou.
