counting-open = Contar numa foto
counting-again = Ver a contagem de novo
counting-looking = Procurando formigas…
counting-range = Provavelmente de { $low } a { $high }, pelo menos { $least }
counting-crowded = Estão juntas demais para ver todas: pelo menos { $least }, provavelmente de { $low } a { $high }
counting-brood = Cria: { $count }
counting-plain = O quanto uma formiga deve destacar-se
counting-tap = Um toque marca
counting-sets-worker = Formigas
counting-sets-brood = Cria
counting-sets-frame = Moldura
counting-sets-size = Tamanho
counting-hint-worker = Toque numa formiga sem ponto; toque num ponto para o retirar.
counting-hint-brood = Toque em cria sem ponto; toque num ponto para o retirar.
counting-hint-frame = Arraste os dois cantos em volta do que conta.
counting-hint-size = Ponha as duas pontas em algo de comprimento conhecido.
counting-spans = Entre as pontas está
counting-spans-worker = Uma operária
counting-spans-bore = O interior do tubo
counting-spans-length = Um comprimento em mm
counting-length = Comprimento em mm
counting-corner = { $which ->
    [first] Canto superior esquerdo
   *[other] Canto inferior direito
  }
counting-end = { $which ->
    [first] Uma ponta
   *[other] Outra ponta
  }
counting-picture = Foto com { $count } pontos. Page Up e Page Down passam de um a outro, as setas movem o escolhido, Delete retira-o, Enter põe um.
counting-dot = Ponto { $at } de { $count }: { $what ->
    [brood] cria
   *[worker] operária
  }{ $sure ->
    [no] , sem certeza
   *[yes] {""}
  }
counting-previous = Ponto anterior
counting-next = Próximo ponto
counting-take-away = Retirar este ponto
counting-nearer = Maior
counting-farther = Menor
counting-whole = A foto inteira
counting-part = Só se vê uma parte do ninho
counting-pale = As formigas são mais claras do que o fundo
counting-keep = Guardar esta contagem
counting-kept = A contagem está guardada.
counting-failed = Não foi possível examinar esta foto. Os pontos podem ser postos à mão.
counting-heic = Este navegador não lê fotos HEIC e nada foi guardado. Ponha a câmara em JPEG ou guarde a foto como JPEG e escolha-a outra vez.
counting-growth = Crescimento em fotos
counting-film = Compartilhar como filme
counting-strip = Compartilhar lado a lado
counting-making = Um momento…
counting-still = Este telefone não faz filmes; compartilhe as fotos lado a lado.
counting-shown = Mostrar os pontos
counting-few = Conte em duas fotos ou mais, e elas ficarão aqui lado a lado.
