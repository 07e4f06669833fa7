## Who comes in: phones, mail, and what happened at the doors.

house-phones = Telefones
house-this-one = { $phone } (este)
house-last-seen = visto por último: { $when }
house-sign-out-other = Encerrar a sessão de { $name }?
house-new-phone = Deixar entrar um telefone
house-new-phone-hint = digite o código que ele mostra
house-look-up = Procurar
house-asks = Pede para entrar: { $phone }. De quem é?
house-somebody-new = Alguém novo
house-new-keeper = Nome do novo criador
house-let-in = O telefone já entrou
house-mail-title = Avisos por e-mail
house-mail-about = Para quem não tem um telefone que receba avisos. Um endereço vale quando o seu código for digitado aqui.
house-mail-address = Endereço
house-mail-send = Enviar um código
house-mail-asked = Um código foi enviado. Vale uma hora.
house-mail-code = O código do e-mail
house-mail-confirm = Confirmar
house-mail-anew = Enviar outro código
house-mail-comes = Os avisos chegam aqui.
house-mail-remove = Retirar
house-mail-on = Os avisos vão para lá a partir de agora
house-mail-removed = Não vai mais e-mail para lá
house-mail-not-sent = Não foi possível enviar o e-mail: { $why }.
house-doors-title = O que se passou nas portas
house-doors-about = Telefones, links e códigos. Os outros criadores são avisados na hora de um telefone novo, um link e um passe aberto.
house-doors-offline = Isto fica no servidor, por isso precisa de conexão.
house-doors-all = Mostrar { $count }
house-door-new-phone = Telefone novo: { $phone }, para { $who }
house-door-new-phone-by-nobody = Telefone novo: { $phone }, para alguém
house-door-phone-removed = { $who } encerrou a sessão de um telefone: { $phone }
house-door-phone-removed-by-nobody = Alguém encerrou a sessão de um telefone: { $phone }
house-door-person-removed = { $who } removeu { $name }, com todos os telefones
house-door-person-removed-by-nobody = Alguém removeu { $name }, com todos os telefones
house-door-way-back = Quem cuida do servidor criou um link de volta para { $who }
house-door-way-back-by-nobody = Quem cuida do servidor criou um link de volta para um criador
house-door-link-made = { $who } criou um link: { $pass }
house-door-link-made-by-nobody = Alguém criou um link: { $pass }
house-door-pass-opened = { $pass }: o passe foi aberto em: { $phone }
house-door-pass-ended = { $who } retirou um passe: { $pass }
house-door-pass-ended-by-nobody = Alguém retirou um passe: { $pass }
house-door-wrong-codes = { $where ->
    [claim] { $count ->
        [one] { $count } código errado para voltar a entrar, digitado por { $who }
       *[other] { $count } códigos errados para voltar a entrar, digitados por { $who }
      }
    [pass] { $count ->
        [one] { $count } código errado para um passe, digitado por { $who }
       *[other] { $count } códigos errados para um passe, digitados por { $who }
      }
    [pairing] { $count ->
        [one] { $count } código errado para um telefone novo, digitado por { $who }
       *[other] { $count } códigos errados para um telefone novo, digitados por { $who }
      }
   *[mail] { $count ->
        [one] { $count } código errado para um endereço de e-mail, digitado por { $who }
       *[other] { $count } códigos errados para um endereço de e-mail, digitados por { $who }
      }
  }
house-door-wrong-codes-by-nobody = { $where ->
    [claim] { $count ->
        [one] { $count } código errado para voltar a entrar
       *[other] { $count } códigos errados para voltar a entrar
      }
    [pass] { $count ->
        [one] { $count } código errado para um passe
       *[other] { $count } códigos errados para um passe
      }
    [pairing] { $count ->
        [one] { $count } código errado para um telefone novo
       *[other] { $count } códigos errados para um telefone novo
      }
   *[mail] { $count ->
        [one] { $count } código errado para um endereço de e-mail
       *[other] { $count } códigos errados para um endereço de e-mail
      }
  }
house-door-export = Quem cuida do servidor escreveu uma exportação
house-door-import = Quem cuida do servidor trouxe uma exportação
house-door-restore = Quem cuida do servidor repôs uma cópia
