## A casa: pessoas, telefones, e-mail, e o que se passou nas portas.

house-title = A casa
house-look = Aspecto
house-language = Língua
house-language-as-phone = Como o telefone
house-good-to-know = Bom saber

house-build = Versão { $build }
house-advice = Broodshelf dá conselhos gerais de criação, não conselho veterinário nem médico.
house-never = Nunca solte formigas nem insetos de alimentação. Manter e transportar espécies depende da lei do seu lugar: pergunte à autoridade.
house-hours = Nomes e horas
house-shelf-name = Nome da estante
house-zone = Fuso horário
house-first = Primeira hora de cuidado
house-second = Segunda hora de cuidado
house-quiet-from = Silêncio desde
house-quiet-to = Silêncio até
house-backup-patience = Avisar se a última cópia tiver mais que estes dias
house-backup-patience-hint = 0: nunca. Onde nunca houve cópia, nada é dito.
house-save = Guardar
house-sign-out = Encerrar sessão

house-on-this-phone = Neste telefone
house-this-phone = este telefone
house-last-synced = Última sincronização: { $when }
house-not-synced = Ainda não sincronizado.
house-not-sent = Por enviar: { $count }.
house-nothing-waits = Nada à espera.
house-kept = O navegador prometeu manter os dados.
house-not-kept = O navegador pode apagar dados de apps que não são usados; a cópia no servidor é a segurança. Ajuda pôr o app na tela inicial.
house-sync-now = Sincronizar já
house-export = Exportar o que falta enviar
house-left = De { $who } neste telefone, por enviar: { $count }. Vai por si quando { $who } entrar aqui de novo.
house-leave = Encerrar a sessão de { $who }?
house-leave-unsent = { $count ->
    [one] { $count } anotação ainda não foi enviada e fica neste telefone. Encerrar a sessão mesmo assim?
   *[other] { $count } anotações ainda não foram enviadas e ficam neste telefone. Encerrar a sessão mesmo assim?
  }

## O aspecto do app.

look-light = Luz
look-degrees = Temperaturas em
look-volumes = Volumes em
look-as-phone = Como o telefone
look-day = Claro
look-dark = Escuro
look-red = Vermelho fraco
look-red-why = O vermelho fraco é para olhar dentro de um ninho escuro: as formigas quase não veem o vermelho profundo (prática comum).
look-all-parts = Ver todas as partes do app
