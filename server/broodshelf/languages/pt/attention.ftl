## O que foi recusado, e onde dois telefones se encontraram.

attention-title = Precisa de você
attention-none = Tudo neste telefone foi enviado.
attention-export = Exportar tudo isto
attention-met = { $name }: mudado em dois telefones

attention-values = { $field }: aqui “{ $here }”; { $who }: “{ $there }” ({ $when }).
attention-other-phone = outro telefone
attention-theirs = A outra mudança foi depois e é a que vale.
attention-mine = A sua mudança foi depois e é a que vale.
attention-leave = Deixar assim
attention-bring = Recuperar a minha
attention-damaged = Anotação danificada
attention-drop = Descartar
attention-sure = Descartar para sempre? Na dúvida, exporte antes.
attention-mend = Enviar de novo
attention-again = Enviar outra vez
attention-again-why = Se entretanto foi recuperado aquilo a que pertence, pode ser enviado de novo.

attention-code-not-allowed = Este telefone não pode fazer isto.
attention-code-outside-pass = Isto fica fora do passe: outra colônia ou outro dia.
attention-code-missing-field = Falta alguma coisa.
attention-code-unknown-field = O servidor não conhece este campo.
attention-code-unknown-kind = O servidor não conhece este tipo de anotação.
attention-code-failed = O servidor falhou com esta. Fica guardada aqui e nada espera por ela: escreva de novo ou exporte.
attention-code-kind-differs = O servidor tem outra coisa com este identificador.
attention-code-too-large = Isto é longo demais.
attention-code-last-keeper = O último criador não pode ser removido; deixe entrar outro antes.
attention-code-purged = Isto foi apagado há muito tempo e já não é guardado.
attention-code-parent-missing = Aquilo a que isto pertence já não está no servidor.
