## A moldura de cada página.

frame-name = Broodshelf

frame-opening = A estante está abrindo. Se este texto não sair, este navegador tem JavaScript ou módulos desligados, ou é antigo demais: Broodshelf precisa de Chrome 91, Safari 16.4 ou Firefox 147, ou mais novo. O que você anotou neste telefone continua nele.
frame-description = Cuidado de uma estante de colônias de formigas, também sem rede.
frame-close = Fechar
frame-loading = Um momento…
frame-missing = Não foi possível carregar esta parte do app. Carregue de novo; nada do que você anotou se perdeu.
frame-screens = Páginas

frame-nav-round = Ronda
frame-nav-shelf = Estante
frame-nav-larder = Despensa
frame-nav-handover = Passes
frame-nav-settings = Casa

frame-banner-unsent = Anotações por enviar
frame-banner-sign-in = Entrar de novo
frame-banner-update = Há uma versão nova pronta.
frame-banner-update-waits = A versão nova vem quando você guardar ou deixar o que escreve aqui.
frame-banner-use-it = Usar já
frame-banner-emptied = O navegador tinha esvaziado a sua memória neste telefone, por isso a estante foi trazida de novo do servidor. O que foi anotado aqui antes e não foi enviado perdeu-se: por favor, percorra o diário e anote de novo o que falta.
frame-banner-understood = Já li
frame-banner-signed-out = A sessão deste telefone está encerrada. O que não foi enviado fica aqui.

frame-clock-ahead = { $unit ->
    [minutes] { $count ->
        [one] O relógio deste telefone está { $count } minuto adiantado. O que é preciso fazer, e quando você anota algo, segue o do servidor.
       *[other] O relógio deste telefone está { $count } minutos adiantado. O que é preciso fazer, e quando você anota algo, segue o do servidor.
      }
    [hours] { $count ->
        [one] O relógio deste telefone está { $count } hora adiantado. O que é preciso fazer, e quando você anota algo, segue o do servidor.
       *[other] O relógio deste telefone está { $count } horas adiantado. O que é preciso fazer, e quando você anota algo, segue o do servidor.
      }
   *[days] { $count ->
        [one] O relógio deste telefone está { $count } dia adiantado. O que é preciso fazer, e quando você anota algo, segue o do servidor.
       *[other] O relógio deste telefone está { $count } dias adiantado. O que é preciso fazer, e quando você anota algo, segue o do servidor.
      }
  }
frame-clock-behind = { $unit ->
    [minutes] { $count ->
        [one] O relógio deste telefone está { $count } minuto atrasado. O que é preciso fazer, e quando você anota algo, segue o do servidor.
       *[other] O relógio deste telefone está { $count } minutos atrasado. O que é preciso fazer, e quando você anota algo, segue o do servidor.
      }
    [hours] { $count ->
        [one] O relógio deste telefone está { $count } hora atrasado. O que é preciso fazer, e quando você anota algo, segue o do servidor.
       *[other] O relógio deste telefone está { $count } horas atrasado. O que é preciso fazer, e quando você anota algo, segue o do servidor.
      }
   *[days] { $count ->
        [one] O relógio deste telefone está { $count } dia atrasado. O que é preciso fazer, e quando você anota algo, segue o do servidor.
       *[other] O relógio deste telefone está { $count } dias atrasado. O que é preciso fazer, e quando você anota algo, segue o do servidor.
      }
  }

frame-banner-ended-pass-revoked = O criador retirou este passe. O que este telefone não enviou fica aqui para exportar.
frame-banner-ended-pass-ended = Este passe terminou. Obrigado. O que este telefone não enviou fica aqui para exportar.
frame-banner-ended-device-revoked = Um criador encerrou a sessão deste telefone. O que não foi enviado fica aqui para exportar.
frame-banner-ended-session-old = A sessão deste telefone expirou. O que não foi enviado fica aqui.

## As partes de muitas páginas.

part-table = Os números numa tabela
part-needs-server = Isto precisa do servidor, e agora não há conexão.
part-again = Tentar de novo

part-labelled = { $label }: { $value }
part-labelled-twice = { $label }: { $first }, { $second }
part-percent = { $percent }%

part-less = { $label }: menos
part-more = { $label }: mais

## Onde está uma anotação.

saving-saved = Guardado neste telefone
saving-not-saved = Não guardado: este telefone não conseguiu. Liberte algum espaço ou feche outras abas, e tente de novo.
saving-no-connection = Sem conexão ao servidor. O que você anotar fica neste telefone.
saving-asks-sign-in = Algo entre este telefone e o servidor pede para iniciar sessão.
saving-failed = O servidor não conseguiu fazer isto.
saving-not-signed-in = Este telefone não tem sessão iniciada.

saving-unsent-title = Anotações de Broodshelf por enviar
saving-taken-back = Desfeito

saving-state-synced = Sincronizado
saving-state-saved = Neste telefone
saving-state-attention = Precisa de você

saving-waiting = { $count } neste telefone
saving-attention = { $count ->
    [one] { $count } precisa de você
   *[other] { $count } precisam de você
  }
saving-synced = Tudo sincronizado
saving-joining = Trazendo a sua estante
saving-offline = Sem conexão
saving-syncing = Sincronizando…

saving-told-database-damaged = Na verificação diária, o servidor encontrou a base de dados danificada. Avise quem cuida do servidor: é preciso repor uma cópia.
saving-told-backup-old = A última cópia do servidor é antiga ({ $day }). Avise quem cuida do servidor, ou diga em Casa que idade pode ter.

saving-problem-disk-full = O disco do servidor está cheio. O que você anotar fica neste telefone; avise quem cuida do servidor.
saving-problem-database-locked = O servidor está ocupado. O que você anotar fica neste telefone e é enviado mais tarde.
saving-problem-database-away = O servidor não chega aos seus dados. O que você anotar fica neste telefone e é enviado mais tarde.
saving-problem-database-read-only = O servidor não pode escrever. O que você anotar fica neste telefone; avise quem cuida do servidor.
saving-problem-database-damaged = O servidor perdeu uma parte dos seus dados. O que você anotar fica neste telefone; avise quem cuida do servidor.

## On a nudge itself: the worker reads these three, so they stay on one line and are told nothing.

phone-nudges-done = Feito assim
phone-nudges-in-an-hour = Em uma hora
phone-nudges-something = Há algo a fazer na estante.
